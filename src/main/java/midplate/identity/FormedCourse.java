package midplate.identity;

/**
 * A way in which something may form from what the starting material lost, and be lost again.
 *
 * <p>dq/dt = −df/dt − λ·q, with q the amount [1, all of the starting material], f what is left of the starting material, λ the rate of its
 * loss [1/min]. What is seen is c·q, c standing for the yield and for how strongly it shows.
 *
 * @param strength c, above 0
 * @param loss λ in parts of one over the time of the latest plate, at least 0
 * @param prior how much it is believed before any plate [1]
 */
record FormedCourse(double strength, double loss, double prior) {
    /** So little shows that it is as if nothing did. */
    static final double NOTHING = 0.02;

    private static final double[] STRENGTHS = {NOTHING, 0.1, 0.25, 0.6, 1.3, 3};
    private static final double[] LOSSES = {0, 0.25, 0.7, 1.5, 4};
    private static final double[] PRODUCT_STRENGTHS = {0.06, 0.08, 0.16, 0.28, 0.28, 0.14};
    private static final double[] PRODUCT_LOSSES = {0.84, 0.05, 0.04, 0.04, 0.03};
    private static final double[] OTHER_STRENGTHS = {0.55, 0.18, 0.12, 0.08, 0.05, 0.02};
    private static final double[] OTHER_LOSSES = {0.7, 0.1, 0.08, 0.07, 0.05};

    /** All of a spot that is such a part; own choices. */
    static FormedCourse[] of(SpeciesPart part) {
        boolean product = part == SpeciesPart.PRODUCT;
        double[] ofStrength = product ? PRODUCT_STRENGTHS : OTHER_STRENGTHS;
        double[] ofLoss = product ? PRODUCT_LOSSES : OTHER_LOSSES;
        FormedCourse[] all = new FormedCourse[STRENGTHS.length * LOSSES.length];
        for (int loss = 0; loss < LOSSES.length; loss++) {
            for (int strength = 0; strength < STRENGTHS.length; strength++) {
                all[loss * STRENGTHS.length + strength] =
                        new FormedCourse(STRENGTHS[strength], LOSSES[loss], ofStrength[strength] * ofLoss[loss]);
            }
        }
        return all;
    }

    /** Whether nothing of it shows. */
    boolean isNothing() {
        return strength == NOTHING;
    }

    /**
     * q at each of the times.
     *
     * @param minutes rising [min], the first at least 0
     * @param lossPerMinute λ [1/min]
     */
    static double[] amounts(StartCourse start, double[] minutes, double lossPerMinute) {
        double[] amounts = new double[minutes.length];
        double amount = 0;
        double before = 1;
        double time = 0;
        for (int i = 0; i < minutes.length; i++) {
            double left = start.left(minutes[i]);
            double x = lossPerMinute * (minutes[i] - time);
            amount = amount * Math.exp(-x) + (before - left) * (x < 1e-9 ? 1 : -Math.expm1(-x) / x);
            amounts[i] = amount;
            before = left;
            time = minutes[i];
        }
        return amounts;
    }
}
