package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.column.Bed;
import midplate.column.ColumnFaults;
import midplate.column.ColumnQuestion;
import midplate.column.Loading;
import midplate.column.ObservedBand;
import midplate.column.Program;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads a request for the plan of a column: a request for advice with one object more. */
final class ColumnQuestionReader {
    static final String COLUMN = "column";
    static final List<String> FIELDS = List.of(
            "target",
            "massMg",
            "bed",
            "loading",
            "loadMl",
            "flowMlMin",
            "fractionMl",
            "percentStrong",
            "steps",
            "elution",
            "predictAt",
            "earlier");
    static final List<String> EARLIER = List.of("spot", "bed", "steps", "startMl", "endMl", "errorMl");

    static final int MOST_PREDICTIONS = 100;
    static final int MOST_EARLIER = 100;

    private static final String EXAMPLE = "{\"target\": \"B\", \"massMg\": 250}";

    private final SolventCatalogue catalogue;
    private final Compounds compounds;
    private final Setting ifUnsaid;
    private final FaultList faults;
    private final ColumnParts parts;

    ColumnQuestionReader(SolventCatalogue catalogue, Compounds compounds, Setting ifUnsaid, FaultList faults) {
        this.catalogue = catalogue;
        this.compounds = compounds;
        this.ifUnsaid = ifUnsaid;
        this.faults = faults;
        this.parts = new ColumnParts(faults);
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    AskedColumn read(Json value) {
        QuestionReader reader = new QuestionReader(catalogue, compounds, ifUnsaid, faults);
        if (!(value instanceof Json.Fields fields)) {
            reader.read(value);
            throw new IllegalStateException("A request that is no object was taken");
        }
        Map<String, Json> members = new LinkedHashMap<>(fields.members());
        Optional<Json> came = Optional.ofNullable(members.remove(COLUMN));
        if (came.isEmpty()) {
            faults.add(
                    COLUMN,
                    Message.of("fault.missing-field", "name", COLUMN),
                    Message.of("came.nothing"),
                    Message.of("allowed.column"),
                    Message.of("todo.add-column", "example", EXAMPLE));
        }
        onSilica(fields);
        List<String> spots = names(Optional.ofNullable(members.get("spots")));
        Optional<JsonFields> column = came.flatMap(object -> JsonFields.of(COLUMN, object, faults, FIELDS));
        Optional<Function<Question, ColumnQuestion>> wanted = column.map(object -> wanted(object, spots));
        List<Double> predictAt = column.map(this::predictAt).orElse(List.of());
        // a request whose sample is faulty is told the faults of its column as well
        wanted.ifPresent(about -> parts.tell(ColumnFaults.in(about.apply(standIn(spots)))));
        Asked asked = reader.read(new Json.Fields(members));
        return new AskedColumn(asked, wanted.orElseThrow().apply(asked.question()), predictAt);
    }

    private void onSilica(Json.Fields fields) {
        if (fields.members().get("sorbent") instanceof Json.Text sorbent
                && sorbent.value().equals(Sorbent.ALUMINA.id())) {
            faults.add(
                    "sorbent",
                    Message.of("fault.column-not-on-silica"),
                    sorbent.shown(),
                    Allowed.words(Sorbent.SILICA.id()),
                    Message.of("todo.take-silica"));
        }
    }

    /** The names of the spots as far as they can be read: what is wrong with them is told where they are read. */
    private static List<String> names(Optional<Json> spots) {
        Set<String> names = new LinkedHashSet<>();
        if (spots.isPresent() && spots.get() instanceof Json.Items items) {
            for (Json item : items.items()) {
                if (item instanceof Json.Fields spot && spot.members().get("name") instanceof Json.Text name) {
                    names.add(name.value().strip());
                }
            }
        }
        return List.copyOf(names);
    }

    private Question standIn(List<String> spots) {
        List<Solvent> solvents = catalogue.solvents();
        return new Question(
                Sorbent.SILICA,
                solvents.get(0),
                solvents.get(1),
                Optional.empty(),
                spots,
                List.of(),
                Window.USUAL,
                ifUnsaid,
                Glassware.usual(ifUnsaid));
    }

    private Function<Question, ColumnQuestion> wanted(JsonFields fields, List<String> spots) {
        String target = parts.target(fields, spots);
        double massMg = parts.number(fields, "massMg", 1, Message.of("todo.give-mass"));
        Optional<Bed> bed = parts.bed(fields, "bed");
        Loading loading = ColumnParts.one(fields, "loading", Loading.values()).orElse(Loading.WET);
        var loadMl = fields.number("loadMl");
        var flowMlMin = fields.number("flowMlMin");
        var fractionMl = fields.number("fractionMl");
        Optional<Program> program = program(fields);
        ColumnQuestion.Elution elution = elution(fields);
        List<ObservedBand> earlier = earlier(fields, spots);
        return sample -> new ColumnQuestion(
                sample, target, massMg, bed, loading, loadMl, flowMlMin, fractionMl, program, elution, earlier);
    }

    private Optional<Program> program(JsonFields fields) {
        Optional<Program> steps = parts.steps(fields, "steps");
        Optional<Program> one = ColumnParts.isocratic(fields);
        if (fields.has("steps") && fields.has("percentStrong")) {
            faults.add(
                    fields.path("steps"),
                    Message.of("fault.two-programs"),
                    Message.of("came.percent-and-steps"),
                    Message.of("allowed.one-program"),
                    Message.of("todo.keep-one-program"));
        }
        return one.isPresent() ? one : steps;
    }

    private ColumnQuestion.Elution elution(JsonFields fields) {
        if (fields.has("elution") && (fields.has("steps") || fields.has("percentStrong"))) {
            faults.add(
                    fields.path("elution"),
                    Message.of("fault.elution-beside-program"),
                    fields.any("elution").map(Json::shown).orElse(""),
                    Message.of("allowed.no-elution"),
                    Message.of("todo.leave-elution-out"));
        }
        return ColumnParts.one(fields, "elution", ColumnQuestion.Elution.values())
                .orElse(ColumnQuestion.Elution.BEST);
    }

    private List<Double> predictAt(JsonFields fields) {
        List<Double> percents = new ArrayList<>();
        fields.items("predictAt", MOST_PREDICTIONS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.percent(fields.path("predictAt[" + i + "]"), list.get(i), faults)
                        .ifPresent(percents::add);
            }
        });
        return percents;
    }

    private List<ObservedBand> earlier(JsonFields fields, List<String> spots) {
        List<ObservedBand> bands = new ArrayList<>();
        fields.items("earlier", MOST_EARLIER).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = fields.path("earlier[" + i + "]");
                Optional<JsonFields> band = JsonFields.of(path, list.get(i), faults, EARLIER);
                if (band.isEmpty()) {
                    parts.passOver(path);
                }
                bands.add(band.map(object -> earlierBand(object, spots))
                        .orElse(new ObservedBand("", ColumnParts.someBed(), Program.isocratic(0), 0, 1, 1)));
            }
        });
        return bands;
    }

    private ObservedBand earlierBand(JsonFields fields, List<String> spots) {
        for (String name : List.of("spot", "bed", "steps")) {
            if (!fields.has(name)) {
                fields.missing(name, Message.of("allowed.of-earlier"), Message.of("todo.add-of-earlier"));
            }
        }
        Optional<String> spot = fields.text("spot", QuestionReader.LONGEST_NAME);
        if (spot.isEmpty() || spots.isEmpty()) { // told already
            parts.passOver(fields.path("spot"));
        }
        Message todo = Message.of("todo.add-of-earlier");
        Optional<Bed> bed = parts.bed(fields, "bed");
        Optional<Program> steps = parts.steps(fields, "steps");
        double startMl = parts.number(fields, "startMl", 0, todo);
        return new ObservedBand(
                spot.orElse(""),
                bed.orElseGet(ColumnParts::someBed),
                steps.orElse(Program.isocratic(0)),
                startMl,
                parts.number(fields, "endMl", startMl + 1, todo),
                parts.number(fields, "errorMl", 1, todo));
    }
}
