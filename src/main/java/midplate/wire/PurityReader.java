package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WaysOfSeeing;
import midplate.identity.Compound;
import midplate.identity.PlateEluent;
import midplate.identity.PurityFaults;
import midplate.identity.PurityQuestion;
import midplate.identity.PurityQuestion.StartSpot;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;

/** Reads what a plate showed of a sample that may be pure. */
final class PurityReader {
    static final List<String> FIELDS = List.of(
            "name",
            "rf",
            "spotsSeen",
            "eluent",
            "smiles",
            "groups",
            "class",
            "seenBy",
            "volumeUl",
            "concentrationPercent",
            "touches",
            "sizeMm",
            "runMm",
            "startSpot");

    /** Stands in for an Rf that cannot be read [1]. */
    private static final double SOME_RF = 0.3;

    private final EluentReader eluents;
    private final CompoundReader compounds;
    private final WaysOfSeeing ways;
    private final FaultList faults;
    private final ColumnParts parts;

    PurityReader(EluentReader eluents, Compounds compounds, WaysOfSeeing ways, FaultList faults) {
        this.eluents = eluents;
        this.compounds = new CompoundReader(compounds, faults);
        this.ways = ways;
        this.faults = faults;
        this.parts = new ColumnParts(faults);
    }

    /**
     * The question.
     *
     * @throws BadInput with all faults
     */
    PurityQuestion read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        String name = fields.text("name", QuestionReader.LONGEST_NAME).orElse("");
        double rf = parts.number(fields, "rf", SOME_RF, Message.of("todo.pure-rf"));
        int spots = parts.whole(fields, "spotsSeen", 1, Message.of("todo.pure-spots"));
        Optional<PlateEluent> eluent = eluents.read(fields);
        Optional<Compounds.Described> described = compounds.read(fields);
        PurityQuestion question = new PurityQuestion(
                new Compound(name, OptionalDouble.of(rf), described.map(Compounds.Described::counts)),
                spots,
                eluent,
                seenBy(fields),
                fields.number("volumeUl"),
                fields.number("concentrationPercent"),
                fields.has("touches") ? parts.whole(fields, "touches", 1, Message.of("todo.pure-touches")) : 1,
                fields.number("sizeMm"),
                fields.number("runMm"),
                startSpot(fields));
        parts.tell(PurityFaults.in(question));
        faults.throwIfAny();
        return question;
    }

    private List<WayOfSeeing> seenBy(JsonFields fields) {
        List<WayOfSeeing> seenBy = new ArrayList<>();
        Set<WayOfSeeing> seen = new HashSet<>();
        fields.items("seenBy", ways.all().size()).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = fields.path("seenBy[" + i + "]");
                JsonFields.text(path, list.get(i), QuestionReader.LONGEST_NAME, faults)
                        .flatMap(id -> way(path, id))
                        .ifPresent(way -> {
                            if (seen.add(way)) {
                                seenBy.add(way);
                            } else {
                                faults.add(
                                        path,
                                        Message.of("fault.way-twice", "way", way.id()),
                                        way.id(),
                                        Message.of("allowed.each-name-once"),
                                        Message.of("todo.keep-one"));
                            }
                        });
            }
        });
        return seenBy;
    }

    private Optional<WayOfSeeing> way(String path, String id) {
        Optional<WayOfSeeing> way = ways.find(id);
        if (way.isEmpty()) {
            faults.add(
                    path,
                    Message.of("fault.unknown-way", "came", id),
                    id,
                    Allowed.words(ways.ids()),
                    Nearest.to(id, ways.ids())
                            .map(near -> Message.of("todo.did-you-mean", "name", near))
                            .orElse(Message.of("todo.take-one-of-these")));
        }
        return way;
    }

    private static Optional<StartSpot> startSpot(JsonFields fields) {
        List<String> words =
                Arrays.stream(StartSpot.values()).map(StartSpot::id).toList();
        return fields.choice("startSpot", words).map(word -> StartSpot.values()[words.indexOf(word)]);
    }
}
