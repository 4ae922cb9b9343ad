package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.column.Bed;
import midplate.column.Flask;
import midplate.column.FractionFaults;
import midplate.column.FractionQuestion;
import midplate.column.Program;
import midplate.column.Tube;
import midplate.column.TubeMark;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads what was found in the tubes of a column. */
final class FractionsReader {
    static final List<String> FIELDS =
            List.of("spots", "target", "massMg", "fractionMl", "collectedFromMl", "bed", "steps", "tubes", "flasks");
    static final List<String> TUBE = List.of("marks");
    static final List<String> MARK = List.of("spot", "strength");
    static final List<String> FLASK = List.of("fromTube", "toTube", "tareGrams", "grossGrams");

    static final int MOST_FLASKS = 100;

    private final FaultList faults;
    private final ColumnParts parts;

    FractionsReader(FaultList faults) {
        this.faults = faults;
        this.parts = new ColumnParts(faults);
    }

    /**
     * A run, read without a fault.
     *
     * @param question what was found
     * @param bed the column, where it was said
     * @param program what was poured, where it was said
     */
    record Run(FractionQuestion question, Optional<Bed> bed, Optional<Program> program) {}

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    Run read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        List<String> spots = spots(fields);
        Optional<Bed> bed = parts.bed(fields, "bed");
        Optional<Program> program = parts.steps(fields, "steps");
        FractionQuestion question = new FractionQuestion(
                spots,
                parts.target(fields, spots),
                parts.number(fields, "massMg", 1, Message.of("todo.give-mass")),
                parts.number(fields, "fractionMl", 1, Message.of("todo.give-fraction")),
                fields.has("collectedFromMl")
                        ? parts.number(fields, "collectedFromMl", 0, Message.of("todo.leave-out"))
                        : 0,
                tubes(fields, spots),
                flasks(fields));
        parts.tell(FractionFaults.in(question));
        faults.throwIfAny();
        return new Run(question, bed, program);
    }

    private List<String> spots(JsonFields fields) {
        Message allowed = Message.of("allowed.spots", "interval", Allowed.closed(1, QuestionReader.MOST_SPOTS));
        if (!fields.has("spots")) {
            fields.missing("spots", allowed, Message.of("todo.name-one-spot"));
        }
        Set<String> names = new LinkedHashSet<>();
        fields.items("spots", QuestionReader.MOST_SPOTS).ifPresent(list -> {
            if (list.isEmpty()) {
                faults.add("spots", Message.of("fault.no-spots"), "[]", allowed, Message.of("todo.name-one-spot"));
            }
            for (int i = 0; i < list.size(); i++) {
                String path = "spots[" + i + "]";
                JsonFields.text(path, list.get(i), QuestionReader.LONGEST_NAME, faults)
                        .filter(name -> !names.add(name))
                        .ifPresent(name -> faults.add(
                                path,
                                Message.of("fault.duplicate-spot", "spot", name),
                                name,
                                Message.of("allowed.own-name"),
                                Message.of("todo.give-own-name")));
            }
        });
        return List.copyOf(names);
    }

    private List<Tube> tubes(JsonFields fields, List<String> spots) {
        if (!fields.has("tubes")) {
            fields.missing(
                    "tubes",
                    Message.of("allowed.entries", "interval", Allowed.closed(1, FractionFaults.MOST_TUBES)),
                    Message.of("todo.give-tubes"));
        }
        Optional<List<Json>> items = fields.items("tubes", FractionFaults.MOST_TUBES);
        if (items.isEmpty()) {
            parts.passOver("tubes");
            parts.passOver("flasks");
            return List.of();
        }
        List<Tube> tubes = new ArrayList<>();
        for (int i = 0; i < items.get().size(); i++) {
            tubes.add(JsonFields.of("tubes[" + i + "]", items.get().get(i), faults, TUBE)
                    .map(tube -> tube(tube, spots))
                    .orElse(Tube.notLookedAt()));
        }
        return tubes;
    }

    /** A tube whose marks are null or absent was not looked at. */
    private Tube tube(JsonFields fields, List<String> spots) {
        if (fields.any("marks").map(Json.Null.class::isInstance).orElse(true)) {
            return Tube.notLookedAt();
        }
        List<TubeMark> marks = new ArrayList<>();
        fields.items("marks", QuestionReader.MOST_SPOTS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = fields.path("marks[" + i + "]");
                Optional<JsonFields> mark = JsonFields.of(path, list.get(i), faults, MARK);
                if (mark.isEmpty()) {
                    parts.passOver(path);
                }
                marks.add(mark.map(object -> mark(object, spots)).orElse(new TubeMark("", 0)));
            }
        });
        return new Tube(Optional.of(marks));
    }

    private TubeMark mark(JsonFields fields, List<String> spots) {
        if (!fields.has("spot")) {
            fields.missing("spot", Allowed.words(spots), Message.of("todo.say-which-spot"));
        }
        Optional<String> spot = fields.text("spot", QuestionReader.LONGEST_NAME);
        if (spot.isEmpty() || spots.isEmpty()) { // told already
            parts.passOver(fields.path("spot"));
        }
        return new TubeMark(spot.orElse(""), parts.whole(fields, "strength", 0, Message.of("todo.give-strength")));
    }

    private List<Flask> flasks(JsonFields fields) {
        List<Flask> flasks = new ArrayList<>();
        fields.items("flasks", MOST_FLASKS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = "flasks[" + i + "]";
                Optional<JsonFields> flask = JsonFields.of(path, list.get(i), faults, FLASK);
                if (flask.isEmpty()) {
                    parts.passOver(path);
                }
                flasks.add(flask.map(this::flask).orElse(new Flask(1, 1, 1, 1)));
            }
        });
        return flasks;
    }

    private Flask flask(JsonFields fields) {
        Message todo = Message.of("todo.give-flask");
        int from = parts.whole(fields, "fromTube", 1, todo);
        int to = parts.whole(fields, "toTube", from, todo);
        double tare = parts.number(fields, "tareGrams", 1, todo);
        return new Flask(from, to, tare, parts.number(fields, "grossGrams", tare, todo));
    }
}
