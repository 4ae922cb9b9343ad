package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.inference.Knowledge;
import midplate.inference.SpotGuess;
import midplate.words.Message;

/** What to say of spots that were seen without a label. */
final class Identities {
    /** Below this chance a guess is to be looked at [1]; common practice, no source. */
    private static final double SURE = 0.9;
    /** With less than this share of the ways to match them counted, too many were left out [1]; common practice, no source. */
    private static final double MOST = 0.95;
    /** So many of the unlabelled spots must be expected to be a spot for it to count as read [1]. */
    private static final double READ = 0.5;

    private final List<SpotGuess> guesses;
    private final double matched;

    private Identities(List<SpotGuess> guesses, double matched) {
        this.guesses = guesses;
        this.matched = matched;
    }

    static Identities of(Knowledge knowledge) {
        return new Identities(knowledge.guesses(), knowledge.matched());
    }

    /** Whether a spot was probably seen without its label. */
    boolean isProbablySeen(String spot) {
        double expected = 0;
        for (SpotGuess guess : guesses) {
            for (SpotGuess.Possibility each : guess.possibilities()) {
                expected += each.spots().contains(spot) ? each.probability() : 0;
            }
        }
        return expected >= READ;
    }

    /** That unlabelled spots count, and how; empty where there are none. */
    Optional<Message> why() {
        return guesses.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("advice.why-unlabelled", "count", guesses.size()));
    }

    /** What is not sure about them. */
    List<Message> notes() {
        List<Message> notes = new ArrayList<>();
        long unsure = guesses.stream()
                .filter(guess -> guess.guess().probability() < SURE)
                .count();
        if (unsure > 0) {
            notes.add(Message.of("advice.which-unsure", "unsure", (int) unsure, "count", guesses.size()));
        }
        if (matched < MOST) {
            notes.add(Message.of("advice.which-too-many", "times", Reasons.times(matched)));
        }
        return notes;
    }
}
