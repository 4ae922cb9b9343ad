package midplate.benchmark;

import java.util.List;
import java.util.Set;

/**
 * What a contender makes of {@link HalfLabelled} plates.
 *
 * @param guesses what each spot seen is, in the order in which they were told
 * @param rfs the Rf [1] that each labelled spot will read at each percentage asked about
 * @param choice the ratio advised next
 */
public record Matched(List<Which> guesses, List<List<Double>> rfs, Choice choice) {
    /** Keeps its own copies. */
    public Matched {
        guesses = List.copyOf(guesses);
        rfs = rfs.stream().map(List::copyOf).toList();
    }

    /**
     * The likeliest meaning of a spot without a label.
     *
     * @param spots the places of all compounds that lie there in {@link HalfLabelled#labelled}; empty for none of them
     * @param probability how likely that is [1], 0 to 1
     */
    public record Which(Set<Integer> spots, double probability) {
        /** Refuses what is no probability; a slip of the contender. */
        public Which {
            spots = Set.copyOf(spots);
            if (!(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException("Which: came probability " + probability
                        + "; allowed is [0, 1]. Give the probability of the likeliest way.");
            }
        }
    }
}
