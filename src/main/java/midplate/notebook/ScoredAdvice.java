package midplate.notebook;

import java.util.List;
import java.util.Optional;
import midplate.plate.Reading;
import midplate.words.Message;

/**
 * An advice beside what came of it.
 *
 * @param number its place among the advices of its study, from 0
 * @param advice the advice
 * @param plate id of the plate that ran the advised ratio; empty where none did
 * @param outcome what came of it
 * @param why the same in words
 * @param spots where each spot was foretold and where it was read, in the order of the advice
 * @param unlabelled where the spots lay that stand for those without a reading of their own, from the start line up; empty where
 *     all have one
 */
public record ScoredAdvice(
        int number,
        GivenAdvice advice,
        Optional<String> plate,
        Outcome outcome,
        Message why,
        List<SpotOutcome> spots,
        List<Reading> unlabelled) {
    /** Keeps its own copies. */
    public ScoredAdvice {
        spots = List.copyOf(spots);
        unlabelled = List.copyOf(unlabelled);
    }

    /** What came of an advice. */
    public enum Outcome {
        /** Every spot was read where it was wanted. */
        CAME_TRUE,
        /** At least one was not. */
        MISSED,
        /** No plate ran the advised ratio. */
        NOT_RUN,
        /** A plate did, and does not tell. */
        NOT_TOLD
    }

    /** Whether it counts for how often advice comes true. */
    public boolean counts() {
        return outcome == Outcome.CAME_TRUE || outcome == Outcome.MISSED;
    }

    /**
     * One spot.
     *
     * @param foretold where it was foretold
     * @param read where it was read, the lanes together; empty where no reading bears its label
     */
    public record SpotOutcome(GivenAdvice.Foretold foretold, Optional<Reading> read) {}
}
