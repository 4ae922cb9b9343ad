package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.advice.Wishes;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads a request for advice. */
final class QuestionReader {
    static final List<String> FIELDS = List.of(
            "id",
            "sorbent",
            "weak",
            "strong",
            "spots",
            "runs",
            "predictAt",
            "window",
            "setting",
            "additive",
            "amountMl",
            "graduationMl",
            "curves",
            "shelf",
            "apart",
            "nextPlate");

    static final int MOST_SPOTS = 50;
    static final int MOST_RUNS = 50;
    static final int MOST_PREDICTIONS = 1000;
    static final int LONGEST_NAME = 200;
    /** Spots without a label in one request; more would take too long to match. */
    static final int MOST_UNLABELLED = 100;

    static final List<String> SORBENTS =
            Arrays.stream(Sorbent.values()).map(Sorbent::id).toList();
    static final List<String> SETTINGS =
            Arrays.stream(Setting.values()).map(Setting::id).toList();

    private final FaultList faults;
    private final PairReader pairs;
    private final WishesReader wishesReader;
    private final Setting ifUnsaid;
    private final PairAsked pairAsked;
    private final Compounds compounds;

    /** Whether the two solvents asked about must stand on the shelf. */
    enum PairAsked {
        /** They are to be poured. */
        ON_THE_SHELF,
        /** They may be what is to be replaced. */
        ANYWHERE
    }

    QuestionReader(SolventCatalogue catalogue, Compounds compounds, Setting ifUnsaid, FaultList faults) {
        this(catalogue, compounds, ifUnsaid, faults, PairAsked.ON_THE_SHELF);
    }

    QuestionReader(
            SolventCatalogue catalogue, Compounds compounds, Setting ifUnsaid, FaultList faults, PairAsked pairAsked) {
        this.pairAsked = pairAsked;
        this.compounds = compounds;
        this.faults = faults;
        this.pairs = new PairReader(catalogue, faults);
        this.wishesReader = new WishesReader(catalogue, faults);
        this.ifUnsaid = ifUnsaid;
    }

    /** The name that an answer to this input goes by, even when the rest is faulty: a text, a number, or null. */
    static Json id(Json request) {
        if (request instanceof Json.Fields fields) {
            Json id = fields.members().get("id");
            if (id instanceof Json.Text || id instanceof Json.Numeral) {
                return id;
            }
        }
        return new Json.Null();
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    Asked read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        id(fields);
        Sorbent sorbent =
                fields.choice("sorbent", SORBENTS).flatMap(Sorbent::byId).orElse(Sorbent.SILICA);
        Setting setting =
                fields.choice("setting", SETTINGS).flatMap(Setting::byId).orElse(ifUnsaid);
        Optional<PairReader.Pair> pair = pairs.read(fields, sorbent);
        SpotReader spotReader = new SpotReader(compounds, faults);
        Set<String> spots = spotReader.read(fields);
        RunReader runReader = new RunReader(pairs, faults);
        List<Run> runs = runs(fields, runReader, new RunReader.Frame(sorbent, setting, pair, spots));
        List<Double> predictAt = predictAt(fields);
        Window window = window(fields);
        Glassware glassware = glassware(fields, Glassware.usual(setting));
        Optional<String> additive = fields.text("additive", LONGEST_NAME);
        Asked.CurvesWanted curves = curves(fields);
        Wishes wishes = wishesReader.read(fields, pairAsked == PairAsked.ON_THE_SHELF ? pair : Optional.empty(), spots);
        faults.throwIfAny();
        PairReader.Pair sound = pair.orElseThrow();
        Question question = new Question(
                        sorbent,
                        sound.weak(),
                        sound.strong(),
                        additive,
                        List.copyOf(spots),
                        runs,
                        window,
                        setting,
                        glassware)
                .wishing(wishes)
                .knowing(counts(spotReader.structures()));
        return new Asked(id(value), question, predictAt, curves, runReader.notes(), spotReader.structures());
    }

    private static Map<String, GroupCounts> counts(List<SpotStructure> structures) {
        Map<String, GroupCounts> counts = new LinkedHashMap<>();
        structures.forEach(
                structure -> counts.put(structure.spot(), structure.described().counts()));
        return counts;
    }

    private void id(JsonFields fields) {
        fields.any("id").ifPresent(id -> {
            if (!(id instanceof Json.Text || id instanceof Json.Numeral)) {
                JsonFields.wrongType("id", id, Message.of("kind.text"), faults);
            }
        });
    }

    private List<Run> runs(JsonFields fields, RunReader reader, RunReader.Frame frame) {
        List<Run> runs = new ArrayList<>();
        fields.items("runs", MOST_RUNS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                reader.read(fields.path("runs[" + i + "]"), list.get(i), frame).ifPresent(runs::add);
            }
        });
        int unlabelled = runs.stream()
                .flatMap(run -> run.unlabelled().stream())
                .mapToInt(lane -> lane.spots().size())
                .sum();
        if (unlabelled > MOST_UNLABELLED) {
            faults.add(
                    "runs",
                    Message.of("fault.unlabelled-too-many", "count", unlabelled),
                    Message.of("came.unlabelled-in-all", "count", unlabelled),
                    Message.of("allowed.in-a-request", "interval", Allowed.closed(0, MOST_UNLABELLED)),
                    Message.of("todo.label-or-leave-plates"));
        }
        return runs;
    }

    private List<Double> predictAt(JsonFields fields) {
        List<Double> percents = new ArrayList<>();
        fields.items("predictAt", MOST_PREDICTIONS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.percent("predictAt[" + i + "]", list.get(i), faults).ifPresent(percents::add);
            }
        });
        return percents;
    }

    private Window window(JsonFields fields) {
        Optional<Json> came = fields.any("window");
        Optional<List<Json>> edges = fields.items("window", 2);
        if (came.isEmpty() || edges.isEmpty()) {
            return Window.USUAL;
        }
        if (edges.get().size() != 2) {
            JsonFields.wrongType("window", came.get(), Message.of("kind.two-numbers"), faults);
            return Window.USUAL;
        }
        OptionalDouble low = JsonFields.number("window[0]", edges.get().get(0), faults);
        OptionalDouble high = JsonFields.number("window[1]", edges.get().get(1), faults);
        if (low.isPresent() && high.isPresent()) {
            try {
                return new Window(low.getAsDouble(), high.getAsDouble());
            } catch (Refusal refusal) {
                faults.add("window", refusal.reason(), came.get().shown(), refusal.allowed(), refusal.todo());
            }
        }
        return Window.USUAL;
    }

    private Glassware glassware(JsonFields fields, Glassware usual) {
        double amount = fields.number("amountMl").orElse(usual.amountMl());
        double graduation =
                fields.number("graduationMl").orElse(Math.min(usual.graduationMl(), amount / usual.amountMl()));
        try {
            return new Glassware(amount, graduation);
        } catch (Refusal refusal) {
            String came = fields.any(refusal.field()).map(Json::shown).orElse(refusal.came());
            faults.add(refusal.field(), refusal.reason(), came, refusal.allowed(), refusal.todo());
            return usual;
        }
    }

    private Asked.CurvesWanted curves(JsonFields fields) {
        Json value = fields.any("curves").orElse(new Json.Truth(false));
        if (value instanceof Json.Truth truth) {
            return truth.value() ? Asked.CurvesWanted.YES : Asked.CurvesWanted.NO;
        }
        JsonFields.wrongType("curves", value, Message.of("kind.truth"), faults);
        return Asked.CurvesWanted.NO;
    }
}
