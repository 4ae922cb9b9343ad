package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import midplate.catalogue.SolventCatalogue;
import midplate.identity.Compound;
import midplate.identity.PlateEluent;
import midplate.identity.ReactionFaults;
import midplate.identity.ReactionMark;
import midplate.identity.ReactionPlate;
import midplate.identity.ReactionQuestion;
import midplate.identity.ReactionSpecies;
import midplate.identity.SpeciesPart;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads what plates showed of a reaction. */
final class ReactionReader {
    static final List<String> FIELDS = List.of("species", "plates", "eluent", "expectedMinutes");
    static final List<String> SPECIES = ComparedCompoundReader.fieldsWith("part");
    static final List<String> PLATE = List.of("minutes", "marks", "baseline");
    static final List<String> MARK = List.of("species", "strength", "rf");

    private static final List<String> PARTS =
            Arrays.stream(SpeciesPart.values()).map(SpeciesPart::id).toList();

    private final FaultList faults;
    private final ColumnParts parts;
    private final ComparedCompoundReader compounds;
    private final EluentReader eluents;
    /** Whether all spots could be read, so that it is known who may be marked. */
    private boolean named;

    ReactionReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.faults = faults;
        this.parts = new ColumnParts(faults);
        this.compounds = new ComparedCompoundReader(compounds, faults);
        this.eluents = new EluentReader(catalogue, Setting.BENCH, faults);
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    ReactionQuestion read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        List<ReactionSpecies> species = species(fields);
        List<ReactionPlate> plates = plates(fields);
        Optional<PlateEluent> eluent = eluents.read(fields);
        ReactionQuestion question = new ReactionQuestion(species, plates, eluent, fields.number("expectedMinutes"));
        parts.tell(ReactionFaults.in(question));
        faults.throwIfAny();
        return question;
    }

    /** The spots by name; one whose name cannot be read hides who is meant by the marks. */
    private List<ReactionSpecies> species(JsonFields fields) {
        if (!fields.has("species")) {
            fields.missing(
                    "species",
                    Message.of("allowed.entries", "interval", Allowed.closed(1, ReactionFaults.MOST_SPECIES)),
                    Message.of("todo.name-start"));
        }
        Set<String> names = new LinkedHashSet<>();
        List<ReactionSpecies> species = new ArrayList<>();
        int before = faults.count();
        Optional<List<Json>> items = fields.items("species", ReactionFaults.MOST_SPECIES);
        for (int i = 0; i < items.map(List::size).orElse(0); i++) {
            String path = "species[" + i + "]";
            JsonFields.of(path, items.orElseThrow().get(i), faults, SPECIES)
                    .flatMap(each -> species(each, names))
                    .ifPresent(species::add);
        }
        named = items.isPresent() && faults.count() == before;
        if (!named) {
            parts.passOver("species");
        }
        return species;
    }

    private Optional<ReactionSpecies> species(JsonFields fields, Set<String> names) {
        Optional<Compound> compound = compounds.compound(fields, names);
        if (!fields.has("part")) {
            fields.missing("part", Allowed.words(PARTS), Message.of("todo.say-part"));
        }
        SpeciesPart part =
                fields.choice("part", PARTS).flatMap(SpeciesPart::byId).orElse(SpeciesPart.OTHER);
        return compound.map(known -> new ReactionSpecies(known, part));
    }

    private List<ReactionPlate> plates(JsonFields fields) {
        if (!fields.has("plates")) {
            fields.missing(
                    "plates",
                    Message.of("allowed.entries", "interval", Allowed.closed(0, ReactionFaults.MOST_PLATES)),
                    Message.of("todo.order-plates"));
        }
        List<ReactionPlate> plates = new ArrayList<>();
        fields.items("plates", ReactionFaults.MOST_PLATES).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = "plates[" + i + "]";
                Optional<JsonFields> plate = JsonFields.of(path, list.get(i), faults, PLATE);
                if (plate.isEmpty()) {
                    parts.passOver(path);
                }
                plates.add(
                        plate.map(this::plate).orElse(new ReactionPlate(Double.NaN, List.of(), OptionalInt.empty())));
            }
        });
        return plates;
    }

    /** A time that cannot be read is none, so that the next plate is compared with the one before. */
    private ReactionPlate plate(JsonFields fields) {
        double minutes = parts.number(fields, "minutes", Double.NaN, Message.of("todo.give-minutes"));
        if (!fields.has("marks")) {
            fields.missing(
                    "marks",
                    Message.of("allowed.entries", "interval", Allowed.closed(0, ReactionFaults.MOST_SPECIES)),
                    Message.of("todo.grade-by-start"));
        }
        List<ReactionMark> marks = new ArrayList<>();
        fields.items("marks", ReactionFaults.MOST_SPECIES).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = fields.path("marks[" + i + "]");
                Optional<JsonFields> mark = JsonFields.of(path, list.get(i), faults, MARK);
                if (mark.isEmpty()) {
                    parts.passOver(path);
                }
                marks.add(mark.map(this::mark).orElse(new ReactionMark("", 0, OptionalDouble.empty())));
            }
        });
        OptionalInt baseline = fields.has("baseline")
                ? OptionalInt.of(parts.whole(fields, "baseline", 0, Message.of("todo.grade-by-start")))
                : OptionalInt.empty();
        return new ReactionPlate(minutes, marks, baseline);
    }

    private ReactionMark mark(JsonFields fields) {
        if (!fields.has("species")) {
            fields.missing("species", Message.of("allowed.name"), Message.of("todo.name-among-species"));
        }
        Optional<String> name = fields.text("species", QuestionReader.LONGEST_NAME);
        if (name.isEmpty() || !named) { // told already
            parts.passOver(fields.path("species"));
        }
        int strength = parts.whole(fields, "strength", 0, Message.of("todo.grade-by-start"));
        return new ReactionMark(name.orElse(""), strength, fields.number("rf"));
    }
}
