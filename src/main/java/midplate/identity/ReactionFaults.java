package midplate.identity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What keeps a reaction from being followed, each with its place in the request. */
public final class ReactionFaults {
    /** More plates are no reaction that is watched by eye. */
    public static final int MOST_PLATES = 200;
    /** More spots cannot be told apart in one lane. */
    public static final int MOST_SPECIES = 30;

    /** About ten weeks [min]. */
    private static final double MOST_MINUTES = 100_000;

    private final ReactionQuestion question;
    private final List<String> names;
    private final List<Refusal> faults = new ArrayList<>();

    private ReactionFaults(ReactionQuestion question) {
        this.question = question;
        this.names = question.species().stream().map(ReactionSpecies::name).toList();
    }

    /** All of them; empty where nothing is wrong. A reaction without a plate is none: it was not begun yet. */
    public static List<Refusal> in(ReactionQuestion question) {
        ReactionFaults found = new ReactionFaults(question);
        found.start();
        found.expected();
        for (int i = 0; i < question.plates().size(); i++) {
            found.time(i);
            found.plate("plates[" + i + "].", question.plates().get(i));
        }
        return List.copyOf(found.faults);
    }

    private void start() {
        if (question.first(SpeciesPart.START).isEmpty()) {
            faults.add(new Refusal(
                    "species",
                    Message.of("fault.no-start"),
                    String.join(", ", names),
                    Message.of("allowed.a-start"),
                    Message.of("todo.name-start")));
        }
    }

    private void expected() {
        OptionalDouble expected = question.expectedMinutes();
        if (expected.isPresent() && !(expected.getAsDouble() > 0 && expected.getAsDouble() <= MOST_MINUTES)) {
            faults.add(new Refusal(
                    "expectedMinutes",
                    Message.of("fault.minutes-out-of-range"),
                    Allowed.number(expected.getAsDouble()),
                    Allowed.leftOpen("0", Allowed.number(MOST_MINUTES)),
                    Message.of("todo.give-minutes")));
        }
    }

    private void time(int at) {
        double minutes = question.plates().get(at).minutes();
        String field = "plates[" + at + "].minutes";
        if (!(minutes >= 0 && minutes <= MOST_MINUTES)) {
            faults.add(new Refusal(
                    field,
                    Message.of("fault.minutes-out-of-range"),
                    Allowed.number(minutes),
                    Allowed.closed(0, MOST_MINUTES),
                    Message.of("todo.give-minutes")));
            return;
        }
        for (int before = at - 1; before >= 0; before--) {
            double earlier = question.plates().get(before).minutes();
            if (earlier >= 0 && earlier <= MOST_MINUTES) {
                after(field, minutes, earlier);
                return;
            }
        }
    }

    /** A plate is compared with the one before it. */
    private void after(String field, double minutes, double earlier) {
        if (minutes > earlier) {
            return;
        }
        faults.add(new Refusal(
                field,
                Message.of(
                        minutes == earlier ? "fault.same-time" : "fault.time-backwards",
                        "minutes",
                        Allowed.figure(Allowed.number(minutes)),
                        "earlier",
                        Allowed.figure(Allowed.number(earlier))),
                Allowed.number(minutes),
                Allowed.leftOpen(Allowed.number(earlier), Allowed.number(MOST_MINUTES)),
                Message.of("todo.order-plates")));
    }

    private void plate(String place, ReactionPlate plate) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < plate.marks().size(); i++) {
            ReactionMark mark = plate.marks().get(i);
            String at = place + "marks[" + i + "].";
            species(at + "species", mark.species(), seen);
            strength(at + "strength", mark.strength());
            rf(at + "rf", mark.rf());
        }
        plate.baseline().ifPresent(grade -> strength(place + "baseline", grade));
    }

    private void species(String field, String name, Set<String> seen) {
        if (!names.contains(name)) {
            faults.add(new Refusal(
                    field,
                    Message.of("fault.unknown-species", "name", name),
                    name,
                    Allowed.words(names),
                    Message.of("todo.name-among-species")));
        } else if (!seen.add(name)) {
            faults.add(new Refusal(
                    field,
                    Message.of("fault.marked-twice", "name", name),
                    name,
                    Message.of("allowed.each-name-once"),
                    Message.of("todo.keep-one")));
        }
    }

    private void strength(String field, int grade) {
        if (!(grade >= ReactionMark.UNSEEN && grade <= ReactionMark.FULL)) {
            faults.add(new Refusal(
                    field,
                    Message.of("fault.strength-out-of-range"),
                    Integer.toString(grade),
                    Allowed.closed(ReactionMark.UNSEEN, ReactionMark.FULL),
                    Message.of("todo.grade-by-start")));
        }
    }

    private void rf(String field, OptionalDouble rf) {
        if (rf.isPresent() && !(rf.getAsDouble() >= 0 && rf.getAsDouble() <= 1)) {
            faults.add(new Refusal(
                    field,
                    Message.of("plate.rf-out-of-range", "rf", rf.getAsDouble()),
                    Allowed.number(rf.getAsDouble()),
                    Allowed.closed(0, 1),
                    Message.of("todo.divide-distances")));
        }
    }
}
