package midplate.catalogue;

import java.util.List;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.MonotoneCubic;

/**
 * The curve of a measured pair read by published strength ε instead of by share: what an eluent of ε would do in any pair, if equal
 * strength by the published law meant equal climbing.
 *
 * <p>G(ε) is G of the measured pair at the share p that Snyder's law gives the strength ε; between its measured shares, as in the
 * model of a pair, a monotone cubic in ln(p + 1). Beyond its weakest and strongest mixture G goes on straight with κ, and all else is
 * that of the end.
 *
 * @see "Snyder1968"
 */
public final class BorrowedCurve {
    private final EluentComponent weak;
    private final EluentComponent strong;
    private final double activity;
    private final double slope;
    private final double[] shares;
    private final double[] strengths;
    private final MonotoneCubic strength;
    private final MonotoneCubic error;
    private final MonotoneCubic hold;
    private final MonotoneCubic early;
    private final MonotoneCubic noise;

    private BorrowedCurve(
            PlatePair measured, EluentComponent weak, EluentComponent strong, double activity, double slope) {
        this.weak = weak;
        this.strong = strong;
        this.activity = activity;
        this.slope = slope;
        List<Double> percents = measured.percentStrong();
        this.shares = new double[] {percents.get(0), percents.get(percents.size() - 1)};
        this.strengths = new double[] {strengthAt(shares[0]), strengthAt(shares[1])};
        double[] places = percents.stream().mapToDouble(Math::log1p).toArray();
        this.strength = through(places, measured.strength());
        this.error = through(places, measured.strengthError());
        this.hold = through(places, measured.hold());
        this.early = through(places, measured.early());
        this.noise = through(places, measured.noiseScale());
    }

    /**
     * The curve of a measured pair.
     *
     * @param measured the pair
     * @param weak what the law needs of its weak solvent
     * @param strong and of its strong one, stronger than the weak one
     * @param activity α' [1], above 0 to 1
     * @param slope κ [ln units per unit of ε], above 0
     */
    public static BorrowedCurve of(
            PlatePair measured, EluentComponent weak, EluentComponent strong, double activity, double slope) {
        return new BorrowedCurve(measured, weak, strong, activity, slope);
    }

    /**
     * What an eluent does to spots.
     *
     * @param strength G [ln units]
     * @param error standard error of G in the measured pair [ln units]
     * @param hold a [1]
     * @param early L [ln units]
     * @param noiseScale σ₀ [1]
     */
    public record Place(double strength, double error, double hold, double early, double noiseScale) {}

    /** What an eluent of a published strength ε [1] does. */
    public Place at(double epsilon) {
        double beyond = epsilon < strengths[0] ? epsilon - strengths[0] : Math.max(0, epsilon - strengths[1]);
        double place = Math.log1p(percent(epsilon));
        return new Place(
                strength.at(place) + slope * beyond, error.at(place), hold.at(place), early.at(place), noise.at(place));
    }

    /** The share of the measured pair with that published strength, or its nearest end [% v/v]. */
    public double percent(double epsilon) {
        if (!(epsilon > strengths[0])) {
            return shares[0];
        }
        return epsilon < strengths[1] ? EluentStrength.percentForStrength(weak, strong, epsilon, activity) : shares[1];
    }

    private double strengthAt(double percent) {
        return EluentStrength.binary(weak, strong, percent / 100, activity);
    }

    private static MonotoneCubic through(double[] places, List<Double> values) {
        return MonotoneCubic.through(
                places, values.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
