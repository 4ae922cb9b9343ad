package midplate.advice;

import java.util.Arrays;
import java.util.List;

/** The mixtures that are poured in practice: small whole parts, finer where little of the strong solvent is in them. */
public final class PourableRatios {
    /** From weak to strong. */
    private static final int[][] PARTS = {
        {1, 0}, {200, 1}, {100, 1}, {80, 1}, {60, 1}, {50, 1}, {40, 1}, {30, 1}, {25, 1}, {20, 1}, {15, 1}, {12, 1},
        {10, 1}, {9, 1}, {8, 1}, {7, 1}, {6, 1}, {5, 1}, {9, 2}, {4, 1}, {7, 2}, {3, 1}, {5, 2}, {7, 3}, {2, 1},
        {13, 7}, {3, 2}, {4, 3}, {11, 9}, {1, 1}, {9, 11}, {3, 4}, {2, 3}, {7, 13}, {1, 2}, {3, 7}, {2, 5}, {1, 3},
        {1, 4}, {1, 5}, {1, 7}, {1, 9}, {1, 19}, {0, 1}
    };

    private static final List<Ratio> ALL =
            Arrays.stream(PARTS).map(p -> new Ratio(p[0], p[1])).toList();

    private PourableRatios() {}

    /** Shares are printed to two decimals: 9.09 % is 10 : 1. */
    static final double PRINTED = 0.01;

    /** Those between two shares of the strong solvent [% v/v], both included. */
    public static List<Ratio> between(double lowPercent, double highPercent) {
        return ALL.stream()
                .filter(ratio ->
                        ratio.percentStrong() >= lowPercent - PRINTED && ratio.percentStrong() <= highPercent + PRINTED)
                .toList();
    }
}
