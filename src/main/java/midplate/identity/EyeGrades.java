package midplate.identity;

/**
 * How the eye grades the amount in a spot: by its logarithm, and now and then one step off.
 *
 * <p>s = {@value ReactionMark#FULL} + ln(a)/ln(k), with a the amount of what stands in the starting material's own lane [1], k the factor
 * in amount from one grade to the next, s the grade before it is rounded. The grade that is said is s with an error, rounded, within 0 to
 * {@value ReactionMark#FULL}. The error is logistic; a tenth of the time it is three times as wide.
 *
 * <p>All figures of this class are own choices, made before anything was measured: no table of grades by eye against amounts was found.
 */
final class EyeGrades {
    /** Factors in amount from one grade to the next: a factor of two to three, and which one depends on eye and stain. */
    static final double[] FACTORS = {2.0, 2.5, 3.2};
    /** How much each is believed. */
    static final double[] FACTOR_CHANCES = {0.3, 0.4, 0.3};

    /** Width of the error in grades: with {@value} a grade in the middle of its range is off in 18 of 100 cases. */
    private static final double SCALE = 0.19;
    /** How often the error is wide. */
    private static final double WIDE = 0.1;
    /** How much wider. */
    private static final double WIDER = 3;

    private static final double LOWEST = -6;
    private static final double HIGHEST = 8;
    private static final int STEPS_A_GRADE = 20;
    /** Logarithm of the chance of each grade, by s in steps. */
    private static final double[][] LOG_CHANCES = table();

    private EyeGrades() {}

    /** The grade before it is rounded, not yet limited to what can be said; low for nothing at all. */
    static double score(double logAmount, double logFactor) {
        return ReactionMark.FULL + logAmount / logFactor;
    }

    /** Logarithm of the chance that the eye says a grade. */
    static double logChance(int grade, double score) {
        double inside = Math.max(LOWEST, Math.min(HIGHEST, score));
        return LOG_CHANCES[grade][(int) Math.rint((inside - LOWEST) * STEPS_A_GRADE)];
    }

    /** A score as the scale of grades shows it. */
    static double shown(double score) {
        return Math.max(ReactionMark.UNSEEN, Math.min(ReactionMark.FULL, score));
    }

    private static double[][] table() {
        int steps = (int) Math.rint((HIGHEST - LOWEST) * STEPS_A_GRADE);
        double[][] table = new double[ReactionMark.FULL + 1][steps + 1];
        for (int i = 0; i <= steps; i++) {
            double score = LOWEST + (double) i / STEPS_A_GRADE;
            for (int grade = 0; grade <= ReactionMark.FULL; grade++) {
                double above = grade == ReactionMark.FULL ? 1 : below(grade + 0.5 - score);
                double under = grade == ReactionMark.UNSEEN ? 0 : below(grade - 0.5 - score);
                table[grade][i] = Math.log(Math.max(above - under, 1e-9));
            }
        }
        return table;
    }

    /** Chance that the error is below. */
    private static double below(double error) {
        return (1 - WIDE) * logistic(error / SCALE) + WIDE * logistic(error / (WIDER * SCALE));
    }

    private static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }
}
