package midplate.column;

import java.util.Arrays;
import java.util.Optional;

/** Finds the run of neighbouring fractions that holds most of the target and is pure enough. */
final class PureCut {
    /** What a good cut holds of the target at least [1]. */
    static final double YIELD = 0.8;
    /** What a good cut is target at least [1], all compounds loaded alike. */
    static final double PURITY = 0.95;
    /** Less in a fraction is not worth a look [1]. */
    private static final double NOTHING = 1e-4;
    /** A run that holds less of the target is no cut that anybody would keep; own [1]. */
    private static final double LEAST_YIELD = 0.05;
    /** Less is left off at the edge of a cut [1]. */
    private static final double LITTLE = 0.005;

    private static final double ALMOST = 1e-9;

    private PureCut() {}

    /**
     * The best run that is pure enough; empty where none is that holds anything worth keeping.
     *
     * @param target share of the target in each fraction [1]
     * @param others share of all others together in each [1]
     */
    static Optional<ColumnPlan.Cut> best(double[] target, double[] others) {
        int bestFrom = -1;
        int bestTo = -1;
        double bestYield = 0;
        for (int from = 0; from < target.length; from++) {
            if (target[from] < NOTHING) {
                continue;
            }
            double held = 0;
            double foreign = 0;
            for (int to = from; to < target.length; to++) {
                held += target[to];
                foreign += others[to];
                double purity = held / (held + foreign);
                if (purity >= PURITY && held > bestYield) {
                    bestYield = held;
                    bestFrom = from;
                    bestTo = to;
                }
            }
        }
        return bestYield < LEAST_YIELD ? Optional.empty() : Optional.of(trimmed(target, others, bestFrom, bestTo));
    }

    /** Without the fractions at both ends in which hardly any of the target is, as far as the rest stays pure enough. */
    private static ColumnPlan.Cut trimmed(double[] target, double[] others, int from, int to) {
        int first = from;
        int last = to;
        while (first < last
                && target[first] < LITTLE
                && cut(target, others, first + 1, last).purity() >= PURITY) {
            first++;
        }
        while (last > first
                && target[last] < LITTLE
                && cut(target, others, first, last - 1).purity() >= PURITY) {
            last--;
        }
        return cut(target, others, first, last);
    }

    private static ColumnPlan.Cut cut(double[] target, double[] others, int from, int to) {
        double held = 0;
        double foreign = 0;
        for (int i = from; i <= to; i++) {
            held += target[i];
            foreign += others[i];
        }
        return new ColumnPlan.Cut(from + 1, to + 1, Math.min(1, held), held / (held + foreign));
    }

    /** Whether some run is a good cut. It is not looked further where too little of the target is left, or too much else is in it. */
    static boolean isGood(double[] target, double[] others) {
        double left = Arrays.stream(target).sum();
        double mostForeign = (1 / PURITY - 1) * left + ALMOST;
        for (int from = 0; from < target.length && left >= YIELD - ALMOST; left -= target[from++]) {
            if (target[from] < NOTHING) {
                continue;
            }
            double held = 0;
            double foreign = 0;
            for (int to = from; to < target.length && foreign <= mostForeign; to++) {
                held += target[to];
                foreign += others[to];
                if (held >= YIELD && held >= PURITY * (held + foreign)) {
                    return true;
                }
            }
        }
        return false;
    }
}
