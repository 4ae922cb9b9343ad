package midplate.wire;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TeachingCompound;
import midplate.catalogue.TeachingCompounds;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.lesson.LessonCompound;
import midplate.lesson.LessonSample;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;

/** Reads the compounds of a lesson, and the two solvents they run in. */
final class LessonSampleReader {
    /** The fields of a request that say what runs in what. */
    static final List<String> FIELDS = List.of("compounds", "sorbent", "weak", "strong", "setting");

    private static final String COMPOUNDS = "compounds";
    private static final String TEACHING = "compound";
    private static final List<String> OF_A_COMPOUND = Stream.concat(
                    Stream.of("name", TEACHING), CompoundReader.FIELDS.stream())
            .toList();
    private static final int LONGEST_ID = 100;

    private final Compounds compounds;
    private final CompoundReader structures;
    private final ComparedCompoundReader named;
    private final PairReader pairs;
    private final FaultList faults;

    LessonSampleReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.compounds = compounds;
        this.structures = new CompoundReader(compounds, faults);
        this.named = new ComparedCompoundReader(compounds, faults);
        this.pairs = new PairReader(catalogue, faults);
        this.faults = faults;
    }

    /** These fields and those of a sample. */
    static List<String> fieldsWith(String... own) {
        return Stream.concat(FIELDS.stream(), Stream.of(own)).toList();
    }

    /** The sample of a request; empty where anything of it is missing or faulty. */
    Optional<LessonSample> read(JsonFields request) {
        int before = faults.count();
        Sorbent sorbent = request.choice("sorbent", QuestionReader.SORBENTS)
                .flatMap(Sorbent::byId)
                .orElse(Sorbent.SILICA);
        Setting setting = request.choice("setting", QuestionReader.SETTINGS)
                .flatMap(Setting::byId)
                .orElse(Setting.CLASS);
        Optional<PairReader.Pair> pair = pairs.read(request, sorbent);
        List<LessonCompound> read = compounds(request);
        return pair.isEmpty() || faults.count() > before
                ? Optional.empty()
                : Optional.of(new LessonSample(
                        read, sorbent, pair.get().weak(), pair.get().strong(), setting));
    }

    private List<LessonCompound> compounds(JsonFields request) {
        List<LessonCompound> read = new ArrayList<>();
        Message allowed = Message.of("allowed.entries", "interval", Allowed.closed(1, LessonSample.MOST_COMPOUNDS));
        if (!request.has(COMPOUNDS)) {
            request.missing(COMPOUNDS, allowed, todo());
            return read;
        }
        int before = faults.count();
        Set<String> taken = new HashSet<>();
        read.addAll(named.each(
                request, COMPOUNDS, LessonSample.MOST_COMPOUNDS, OF_A_COMPOUND, fields -> compound(fields, taken)));
        if (read.isEmpty() && faults.count() == before) {
            faults.add(request.path(COMPOUNDS), Message.of("fault.no-lesson-compounds"), "[]", allowed, todo());
        }
        return read;
    }

    private static Message todo() {
        return Message.of(
                "todo.name-lesson-compound", "example", "[{\"name\": \"vanillin\", \"compound\": \"vanillin\"}]");
    }

    /** One compound: of the table of lessons, or by what it is made of. */
    private Optional<LessonCompound> compound(JsonFields fields, Set<String> taken) {
        int before = faults.count();
        Optional<String> name = isBlank(fields.any("name")) ? unnamed(fields) : named.name(fields, taken);
        Optional<GroupCounts> counts = fields.has(TEACHING)
                ? teaching(fields)
                : structures.read(fields).map(Compounds.Described::counts);
        if (counts.isEmpty() && faults.count() == before) {
            faults.add(
                    fields.place(),
                    Message.of("fault.lesson-compound-unsaid"),
                    Message.of("came.nothing"),
                    Message.of("allowed.lesson-structure"),
                    Message.of("todo.say-lesson-structure"));
        }
        return counts.isEmpty() || name.isEmpty()
                ? Optional.empty()
                : Optional.of(new LessonCompound(name.get(), counts.get()));
    }

    private static boolean isBlank(Optional<Json> name) {
        return name.isPresent()
                && name.get() instanceof Json.Text text
                && text.value().isBlank();
    }

    private Optional<String> unnamed(JsonFields fields) {
        faults.add(
                fields.path("name"),
                Message.of("fault.lesson-compound-unnamed"),
                Message.of("came.nothing"),
                Message.of("allowed.name"),
                Message.of("todo.name-lesson-spot"));
        return Optional.empty();
    }

    private Optional<GroupCounts> teaching(JsonFields fields) {
        Optional<String> besides =
                CompoundReader.FIELDS.stream().filter(fields::has).findFirst();
        if (besides.isPresent()) {
            faults.add(
                    fields.path(besides.get()),
                    Message.of("fault.two-structures", "fields", TEACHING + ", " + besides.get()),
                    fields.any(besides.get()).map(Json::shown).orElse(""),
                    Message.of("allowed.lesson-structure"),
                    Message.of("todo.keep-one-structure"));
            return Optional.empty();
        }
        TeachingCompounds table = TeachingCompounds.builtIn();
        return fields.text(TEACHING, LONGEST_ID).flatMap(id -> {
            Optional<TeachingCompound> found = table.byId(id);
            if (found.isEmpty()) {
                List<String> ids =
                        table.all().stream().map(TeachingCompound::id).toList();
                List<String> near = Nearest.to(id, ids).stream().toList();
                faults.add(
                        fields.path(TEACHING),
                        Message.of("fault.unknown-lesson-compound", "came", id),
                        id,
                        Allowed.words(near.isEmpty() ? ids : near),
                        Message.of("todo.take-from-list"));
            }
            return found.map(compound ->
                    compounds.molecule(fields.path(TEACHING), compound.smiles()).counts());
        });
    }
}
