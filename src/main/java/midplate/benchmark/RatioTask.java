package midplate.benchmark;

import java.util.ArrayList;
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

    /** All readings of the compound in the pair asked about that are known but the one asked about, and the trials; sorted. */
    List<TrialReading> allElse(int asked) {
        List<TrialReading> told = new ArrayList<>(trials);
        for (int i = 0; i < percents.size(); i++) {
            if (i != asked) {
                told.add(new TrialReading(kind.pair(), percents.get(i), truths.get(i)));
            }
        }
        told.sort(null);
        return told;
    }

    /** Whether the trials were run in the pair asked about. */
    boolean inOnePair() {
        return trials.get(0).pair() == kind.pair();
    }

    /** Whether every trial lies far enough from both ends to tell something: Rf above 0.05 and below 0.95. */
    boolean informative() {
        return trials.stream().allMatch(trial -> informative(trial.rf()));
    }

    static boolean informative(double rf) {
        return rf > LOW && rf < HIGH;
    }
}
