package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What cannot be in a question of purity, each with its place in the request. */
public final class PurityFaults {
    /** More spots are no lane that somebody counts. */
    public static final int MOST_SPOTS = 50;
    /** More touches are no spot. */
    public static final int MOST_TOUCHES = 100;

    /** More is no spot on a plate [µl]. */
    private static final double MOST_UL = 100;

    private static final double MOST_PERCENT = 100;
    private static final double MOST_SIZE_MM = 50;
    private static final double LEAST_RUN_MM = 10;
    private static final double MOST_RUN_MM = 300;

    private PurityFaults() {}

    /** All of them; empty where nothing is wrong. */
    public static List<Refusal> in(PurityQuestion question) {
        List<Refusal> faults = new ArrayList<>();
        double rf = question.spot().rf().orElse(Double.NaN);
        if (!(rf >= 0 && rf <= 1)) {
            faults.add(new Refusal(
                    "rf",
                    Message.of("plate.rf-out-of-range", "rf", rf),
                    Allowed.number(rf),
                    Allowed.closed(0, 1),
                    Message.of("todo.divide-distances")));
        }
        whole("spotsSeen", question.spotsSeen(), MOST_SPOTS, "todo.pure-spots", faults);
        whole("touches", question.touches(), MOST_TOUCHES, "todo.pure-touches", faults);
        positive("volumeUl", question.volumeUl(), MOST_UL, "todo.pure-volume", faults);
        positive("concentrationPercent", question.concentrationPercent(), MOST_PERCENT, "todo.pure-percent", faults);
        positive("sizeMm", question.sizeMm(), MOST_SIZE_MM, "todo.pure-size", faults);
        question.runMm().ifPresent(run -> {
            if (!(run >= LEAST_RUN_MM && run <= MOST_RUN_MM)) {
                faults.add(outside("runMm", run, Allowed.closed(LEAST_RUN_MM, MOST_RUN_MM), "todo.pure-run"));
            }
        });
        if (faults.isEmpty()
                && question.sizeMm().isPresent()
                && !(question.sizeMm().getAsDouble() < question.run())) {
            faults.add(outside(
                    "sizeMm",
                    question.sizeMm().getAsDouble(),
                    Allowed.open("0", Allowed.number(question.run())),
                    "todo.pure-size"));
        }
        return List.copyOf(faults);
    }

    private static void whole(String field, int value, int most, String todo, List<Refusal> faults) {
        if (!(value >= 1 && value <= most)) {
            faults.add(outside(field, value, Allowed.closed(1, most), todo));
        }
    }

    private static void positive(String field, OptionalDouble value, double most, String todo, List<Refusal> faults) {
        value.ifPresent(given -> {
            if (!(given > 0 && given <= most)) {
                faults.add(outside(field, given, Allowed.leftOpen("0", Allowed.number(most)), todo));
            }
        });
    }

    private static Refusal outside(String field, double value, Message allowed, String todo) {
        return new Refusal(
                field,
                Message.of("fault.number-out-of-range", "allowed", allowed),
                Allowed.number(value),
                allowed,
                Message.of(todo));
    }
}
