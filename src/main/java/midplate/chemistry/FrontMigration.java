package midplate.chemistry;

/**
 * How fast a front climbs a dry layer.
 *
 * <p>{@code z² = κ·t} and {@code κ = 2·P₀·d_p·(γ/η)·cos θ}: z [mm] height of the front above the solvent's surface, t [s]
 * time, κ [mm²/s] velocity coefficient, P₀ [1] specific permeability of the layer, d_p [mm] mean particle size, γ [mN/m]
 * surface tension, η [mPa s] viscosity, θ contact angle; cos θ is 1 for organic solvents on plain silica.
 *
 * <p>Theory: it holds for a dry layer in a saturated chamber. P₀ was published for plain silica as 0.0067,
 * 0.00815 and 0.0067, of which the source says "about 0.008"; their mean, 0.0072, is taken here. Moist layers, other particles,
 * losses by evaporation and mixed solvents change κ by about {@value #UNCERTAINTY} of it (own estimate), which holds all of these.
 * A number outside its range is refused, NaN included.
 *
 * @see "PlanarFlow"
 */
public final class FrontMigration {
    /** P₀ of plain silica [1]: the mean of the three published figures, (0.0067 + 0.00815 + 0.0067)/3, to two digits. */
    public static final double PERMEABILITY = 7.2e-3;

    /** d_p of usual plates [mm]: 10 µm. */
    public static final double PARTICLE_MM = 0.01;

    /** By which part κ may be higher or lower [1]; own estimate. */
    public static final double UNCERTAINTY = 0.3;

    private static final Range ABOVE_ZERO = Range.open(0, Double.POSITIVE_INFINITY);
    private static final Range NOT_NEGATIVE = Range.rightOpen(0, Double.POSITIVE_INFINITY);

    private FrontMigration() {}

    /**
     * κ [mm²/s] of a pure solvent on plain silica: {@code 2·P₀·d_p·γ/η}; γ/η in mN/m over mPa s is in m/s, hence 1000.
     *
     * @param surfaceTension γ [mN/m], above 0
     * @param viscosity η [mPa s], above 0
     * @see "PlanarFlow"
     */
    public static double coefficient(double surfaceTension, double viscosity) {
        ABOVE_ZERO.require("surfaceTension", surfaceTension);
        ABOVE_ZERO.require("viscosity", viscosity);
        double millimetresPerSecond = 1000 * surfaceTension / viscosity;
        return 2 * PERMEABILITY * PARTICLE_MM * millimetresPerSecond;
    }

    /**
     * t [s] until the front stands at a height: {@code z²/κ}.
     *
     * @param heightMm z above the solvent's surface [mm], 0 or more
     * @param coefficient κ [mm²/s], above 0
     * @see "PlanarFlow"
     */
    public static double seconds(double heightMm, double coefficient) {
        NOT_NEGATIVE.require("heightMm", heightMm);
        ABOVE_ZERO.require("coefficient", coefficient);
        return heightMm * heightMm / coefficient;
    }

    /**
     * z [mm], how high the front stands above the solvent's surface after a time: {@code √(κ·t)}.
     *
     * @param seconds t [s], 0 or more
     * @param coefficient κ [mm²/s], above 0
     * @see "PlanarFlow"
     */
    public static double heightMm(double seconds, double coefficient) {
        NOT_NEGATIVE.require("seconds", seconds);
        ABOVE_ZERO.require("coefficient", coefficient);
        return Math.sqrt(coefficient * seconds);
    }
}
