package midplate.identity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.identity.ReactionAnswer.LookAgain;
import midplate.words.Message;

/**
 * When to run the next plate: when the starting material should be one grade fainter or no longer seen, in half of the courses that the
 * plates leave. Never sooner than a plate takes, nor later than as long again as it has run. All figures are common practice.
 */
final class NextLook {
    /** A plate from the capillary to the lamp takes about so long [min]. */
    static final double A_PLATE = 10;
    /** The longest wait where nothing is known yet [min]. */
    private static final double FIRST_WAIT = 30;
    /** A reaction that is expected to take some time is looked at about so often. */
    private static final double LOOKS = 4;

    private NextLook() {}

    /** After a verdict. */
    static Optional<LookAgain> after(ReactionVerdict verdict, ReactionQuestion question, ReactionPosterior posterior) {
        double last = question.lastMinutes();
        double most = Math.max(A_PLATE, last);
        double inHalf = median(posterior.draws().stream()
                .mapToDouble(draw -> draw.minutesToNextGrade(most))
                .toArray());
        return switch (verdict.state()) {
            case FINISHED -> isUnseenOnce(question) ? Optional.of(confirm(last)) : Optional.empty();
            case GONE_WRONG -> Optional.empty();
            case STALLED -> Optional.of(look(last, most / 2, "done.look-stalled"));
            case NOT_TOLD ->
                Optional.of(
                        isUnseenOnce(question) ? confirm(last) : look(last, Math.min(most, inHalf), "done.look-again"));
            case RUNNING -> Optional.of(look(last, Math.min(most, inHalf), "done.look-again"));
        };
    }

    private static boolean isUnseenOnce(ReactionQuestion question) {
        return question.first(SpeciesPart.START)
                .filter(start -> new ReactionSight(question, start).isUnseenOnce(start.name()))
                .isPresent();
    }

    /** Before enough was seen. */
    static LookAgain first(ReactionQuestion question) {
        OptionalDouble expected = question.expectedMinutes();
        double last = question.lastMinutes();
        double wait = expected.isPresent()
                ? Math.min(FIRST_WAIT, expected.getAsDouble() / LOOKS)
                : Math.min(FIRST_WAIT, last);
        return look(last, wait, "done.look-first");
    }

    private static LookAgain confirm(double last) {
        return look(last, A_PLATE, "done.look-confirm");
    }

    private static LookAgain look(double last, double wait, String said) {
        double after = rounded(Math.max(A_PLATE, wait));
        return new LookAgain(
                after,
                last + after,
                Message.of(said, "after", ReactionReasons.minutes(after), "at", ReactionReasons.minutes(last + after)));
    }

    /** Times that one sets a clock to, downwards. */
    private static double rounded(double minutes) {
        double step = minutes < 60 ? 5 : minutes < 240 ? 15 : 60;
        return Math.floor(minutes / step + 1e-9) * step;
    }

    private static double median(double[] values) {
        List<Double> sorted = Arrays.stream(values).sorted().boxed().toList();
        return sorted.get(sorted.size() / 2);
    }
}
