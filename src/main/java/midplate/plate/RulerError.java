package midplate.plate;

/**
 * What an error of a length, read with a ruler or worked out from a picture, does to an Rf.
 *
 * <p>Rf = (c − s)/(f − s) with c the spot's centre, s the start line, f the front, all in mm, and L = f − s. Its slopes
 * are ∂Rf/∂c = 1/L, ∂Rf/∂s = −(1 − Rf)/L, ∂Rf/∂f = −Rf/L (own algebra). With independent errors of variance V_c in the
 * centre and σ² in each line, to first order: var(Rf) = [V_c + σ²·((1 − Rf)² + Rf²)]/L².
 *
 * <p>Valid where the error is small beside the run; plates with a run below {@link PlateFaults#LEAST_RUN_MM} are refused.
 */
final class RulerError {
    /** Standard deviation of one length read with a ruler, σ [mm]. Common practice, no source: half a millimetre mark. */
    static final double LENGTH_MM = 0.5;

    private RulerError() {}

    /**
     * Standard error of an Rf [1].
     *
     * @param rf the Rf [1], in [0, 1]
     * @param runMm distance from start line to front, L [mm], above 0
     * @param centreVariance variance of the centre, V_c [mm²], at least 0
     */
    static double ofRf(double rf, double runMm, double centreVariance) {
        double lines = LENGTH_MM * LENGTH_MM * ((1 - rf) * (1 - rf) + rf * rf);
        return Math.sqrt(centreVariance + lines) / runMm;
    }

    /** Variance of a centre read once on a compact spot, σ² [mm²]. */
    static double compactVariance() {
        return LENGTH_MM * LENGTH_MM;
    }

    /**
     * Variance of the centre of a streak [mm²]: σ² + d²/12.
     *
     * <p>Its substance may lie anywhere along its length d [mm]; d²/12 is the variance of an even spread over d (own
     * algebra).
     */
    static double streakVariance(double lengthMm) {
        return compactVariance() + lengthMm * lengthMm / 12;
    }
}
