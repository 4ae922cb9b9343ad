package midplate.benchmark;

import java.util.List;
import midplate.inference.Series;

/**
 * One question about one compound.
 *
 * @param kind which kind
 * @param series of which compound
 * @param trials what is told, sorted
 * @param percents what is asked [% v/v of the stronger solvent], one or more, rising
 * @param truths the Rf measured there [1]
 */
record RatioTask(RatioKind kind, Series series, List<TrialReading> trials, List<Double> percents, List<Double> truths) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    RatioTask {
        trials = trials.stream().sorted().toList();
        percents = List.copyOf(percents);
        truths = List.copyOf(truths);
    }

    /** Whether every trial lies far enough from both ends to tell something: Rf above 0.05 and below 0.95. */
    boolean informative() {
        return trials.stream().allMatch(trial -> informative(trial.rf()));
    }

    static boolean informative(double rf) {
        return rf > LOW && rf < HIGH;
    }
}
