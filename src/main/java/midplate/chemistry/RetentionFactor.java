package midplate.chemistry;

/**
 * What an Rf says in other words. Rf [1] is the distance of the spot's centre over that of the front, both from the start
 * line, 0 to 1.
 *
 * <p>These are definitions and own algebra, taken over the Rf as it is read on the plate: that is usually a little below
 * the thermodynamic one, which a calibration on plates already contains. A number outside its range is refused, NaN
 * included.
 *
 * @see "IupacRf"
 * @see "Geiss1987"
 */
public final class RetentionFactor {
    private static final double LN10 = Math.log(10);
    private static final Range CLOSED = Range.closed(0, 1);
    private static final Range OPEN = Range.open(0, 1);
    private static final Range MOVED = Range.leftOpen(0, 1);
    private static final Range NOT_NEGATIVE = Range.closed(0, Double.POSITIVE_INFINITY);
    private static final Range ANY = Range.closed(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    private RetentionFactor() {}

    /**
     * k [1], the capacity factor: {@code k = (1 − Rf)/Rf}; 0 at the front.
     *
     * @param rf Rf [1], above 0 to 1: a spot on the start line has no finite k
     * @see "IupacRf"
     */
    public static double capacity(double rf) {
        MOVED.require("rf", rf);
        return (1 - rf) / rf;
    }

    /**
     * Rf [1] from the capacity factor: {@code Rf = 1/(1 + k)}.
     *
     * @param capacity k [1], 0 or more; infinite gives 0
     * @see "IupacRf"
     */
    public static double fromCapacity(double capacity) {
        return 1 / (1 + NOT_NEGATIVE.require("capacity", capacity));
    }

    /**
     * R_M [1], {@code R_M = log10((1 − Rf)/Rf)}; the window Rf 0.2 to 0.8 is |R_M| ≤ 0.602.
     *
     * @param rf Rf [1], above 0 and below 1
     * @see "SoczewinskiXIV"
     */
    public static double rM(double rf) {
        OPEN.require("rf", rf);
        return (Math.log1p(-rf) - Math.log(rf)) / LN10;
    }

    /**
     * The logit [1], {@code ln(Rf/(1 − Rf)) = −ln k}: R_M upside down and in natural logarithms.
     *
     * @param rf Rf [1], above 0 and below 1
     */
    public static double logit(double rf) {
        OPEN.require("rf", rf);
        return Math.log(rf) - Math.log1p(-rf);
    }

    /**
     * Rf [1] from its logit: {@code Rf = 1/(1 + e^(−x))}.
     *
     * @param logit x [1], any number; the infinite ones give 0 and 1
     */
    public static double fromLogit(double logit) {
        ANY.require("logit", logit);
        if (logit >= 0) {
            return 1 / (1 + Math.exp(-logit));
        }
        double odds = Math.exp(logit);
        return odds / (1 + odds);
    }

    /**
     * Rf [1] after developing the plate n times to the same front, dried in between: {@code Rf(n) = 1 − (1 − Rf)ⁿ}.
     *
     * @param rf Rf [1] of one development, 0 to 1
     * @param developments n [1], 1 or more
     */
    public static double afterDevelopments(double rf, int developments) {
        CLOSED.require("rf", rf);
        Range.rightOpen(1, Double.POSITIVE_INFINITY).require("developments", developments);
        return -Math.expm1(developments * Math.log1p(-rf));
    }

    /**
     * Rf [1] of one development that gives an Rf after n of them: {@code Rf(1) = 1 − (1 − Rf(n))^(1/n)}, the inverse of
     * {@link #afterDevelopments(double, int)}.
     *
     * @param rf Rf [1] after n developments, 0 to 1
     * @param developments n [1], 1 or more
     */
    public static double beforeDevelopments(double rf, int developments) {
        CLOSED.require("rf", rf);
        Range.rightOpen(1, Double.POSITIVE_INFINITY).require("developments", developments);
        return -Math.expm1(Math.log1p(-rf) / developments);
    }

    /**
     * The share of resolution [1] that the place on the plate leaves to a close pair: {@code √Rf·(1 − Rf)}. Its maximum is
     * 0.3849 at Rf 1/3.
     *
     * @param rf Rf [1], 0 to 1
     * @see "Geiss1987"
     */
    public static double plateResolution(double rf) {
        CLOSED.require("rf", rf);
        return Math.sqrt(rf) * (1 - rf);
    }

    /**
     * CV [column volumes], after how much eluent a spot of this Rf leaves a column: {@code CV = 1/Rf}.
     *
     * @param rf Rf [1], above 0 to 1
     */
    public static double columnVolumes(double rf) {
        return 1 / MOVED.require("rf", rf);
    }
}
