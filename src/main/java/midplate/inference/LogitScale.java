package midplate.inference;

import midplate.chemistry.RetentionFactor;

/**
 * A fixed ruler along η = ln(Rf/(1 − Rf)) [1], from −16 to 16 by 0.01, on which functions of Rf are tabulated.
 *
 * <p>Everything a plate can tell depends on a spot's traits through η alone, so a likelihood or a chance is worked out once
 * for each mark and looked up for each pair of traits. The noise of a reading is never below 0.05 in η, so the nearest mark
 * is near enough; beyond the ends Rf is 0 or 1 to seven digits.
 */
final class LogitScale {
    static final double END = 16;
    static final double STEP = 0.01;
    static final int SIZE = (int) Math.round(2 * END / STEP) + 1;

    /** Steps in one unit of η. */
    static final double PER_UNIT = 1 / STEP;
    /** The place of η = 0, with the half step that makes cutting off rounding. */
    static final double FIRST = END / STEP + 0.5;

    private static final double[] LOGISTIC = new double[SIZE];

    static {
        for (int k = 0; k < SIZE; k++) {
            LOGISTIC[k] = RetentionFactor.fromLogit(-END + k * STEP);
        }
    }

    private LogitScale() {}

    /** 1/(1 + e^(−η)) at a mark [1]. */
    static double logistic(int mark) {
        return LOGISTIC[mark];
    }

    /** The mark nearest to η; the end marks beyond the ends. */
    static int mark(double eta) {
        return held(eta * PER_UNIT + FIRST);
    }

    /** The mark at a place on the ruler [steps from its beginning, half a step added]; the end marks beyond the ends. */
    static int held(double place) {
        int mark = (int) place;
        return mark < 0 ? 0 : Math.min(mark, SIZE - 1);
    }
}
