package midplate.wire;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.column.Loading;
import midplate.notebook.ColumnFlask;
import midplate.notebook.ColumnRun;
import midplate.notebook.ColumnStep;
import midplate.notebook.ColumnTube;
import midplate.notebook.StudyBed;
import midplate.notebook.StudyColumn;
import midplate.notebook.TubeMark;
import midplate.words.Message;

/** Reads the column of a study, as it was entered: whether it makes sense is said elsewhere. */
final class StudyColumnReader {
    static final int MOST_RUNS = 20;
    static final int MOST_STEPS = 20;
    static final int MOST_TUBES = 400;
    static final int MOST_MARKS = 50;
    static final int MOST_FLASKS = 100;

    static final List<String> COLUMN =
            List.of("massMg", "bed", "loading", "loadMl", "flowMlMin", "fractionMl", "elution", "steps", "runs");
    static final List<String> COLUMN_OPTIONAL = List.of("target");
    static final List<String> RUN = List.of(
            "id",
            "weak",
            "strong",
            "additive",
            "bed",
            "steps",
            "loading",
            "massMg",
            "fractionMl",
            "collectedFromMl",
            "tubes",
            "flasks");
    static final List<String> BED = List.of("kind");
    static final List<String> BED_OPTIONAL = List.of("grams", "diameterMm", "bedMm");
    static final List<String> STEP = List.of("eluent", "volumeMl");
    static final List<String> STEP_OPTIONAL = List.of("percentStrong");
    static final List<String> TUBE = List.of("id");
    static final List<String> TUBE_OPTIONAL = List.of("marks");
    static final List<String> MARK = List.of("spot", "strength");
    static final List<String> FLASK = List.of("id", "fromTube", "toTube", "tareGrams", "grossGrams");

    private final StudyJars jars;
    private final StudySpotReader spots;
    private final FaultList faults;
    private final Set<String> runs = new HashSet<>();

    StudyColumnReader(StudyJars jars, StudySpotReader spots, FaultList faults) {
        this.jars = jars;
        this.spots = spots;
        this.faults = faults;
    }

    /** One of the values of an enum by its word; the first where it is faulty. */
    private static <E extends Enum<E>> E one(StudyFields fields, String name, E[] values) {
        List<String> words = Arrays.stream(values).map(ColumnParts::word).toList();
        return values[words.indexOf(fields.choice(name, words))];
    }

    /** The column. */
    Optional<StudyColumn> read(String path, Json value) {
        return StudyFields.of(path, value, faults, COLUMN, COLUMN_OPTIONAL)
                .map(fields -> new StudyColumn(
                        fields.any("target").flatMap(target -> spots.referToOne(fields, "target")),
                        fields.entered("massMg"),
                        bed(fields),
                        one(fields, "loading", Loading.values()),
                        fields.entered("loadMl"),
                        fields.entered("flowMlMin"),
                        fields.entered("fractionMl"),
                        one(fields, "elution", StudyColumn.Elution.values()),
                        fields.each("steps", MOST_STEPS, this::step),
                        fields.each("runs", MOST_RUNS, this::run)));
    }

    private StudyBed bed(StudyFields column) {
        return column.any("bed")
                .flatMap(value -> StudyFields.of(column.path("bed"), value, faults, BED, BED_OPTIONAL))
                .map(fields -> {
                    StudyBed.Kind kind = one(fields, "kind", StudyBed.Kind.values());
                    List<String> needed = switch (kind) {
                        case ADVISED -> List.of();
                        case CARTRIDGE -> List.of("grams");
                        case GLASS -> List.of("diameterMm", "bedMm");
                    };
                    needed.forEach(fields::demand);
                    return new StudyBed(
                            kind,
                            fields.enteredIfAny("grams"),
                            fields.enteredIfAny("diameterMm"),
                            fields.enteredIfAny("bedMm"));
                })
                .orElse(StudyBed.ADVISED);
    }

    private Optional<ColumnStep> step(String path, Json value) {
        return StudyFields.of(path, value, faults, STEP, STEP_OPTIONAL)
                .map(fields -> new ColumnStep(
                        fields.line("eluent"), fields.typedPercent("percentStrong"), fields.entered("volumeMl")));
    }

    private Optional<ColumnRun> run(String path, Json value) {
        return StudyFields.of(path, value, faults, RUN, List.of()).map(fields -> {
            Set<String> tubes = new HashSet<>();
            Set<String> flasks = new HashSet<>();
            return new ColumnRun(
                    fields.freshId("id", runs),
                    jars.solvent(fields, "weak"),
                    jars.solvent(fields, "strong"),
                    jars.additive(fields),
                    bed(fields),
                    fields.each("steps", MOST_STEPS, this::step),
                    one(fields, "loading", Loading.values()),
                    fields.entered("massMg"),
                    fields.entered("fractionMl"),
                    fields.entered("collectedFromMl"),
                    fields.each("tubes", MOST_TUBES, (place, tube) -> tube(place, tube, tubes)),
                    fields.each("flasks", MOST_FLASKS, (place, flask) -> flask(place, flask, flasks)));
        });
    }

    private Optional<ColumnTube> tube(String path, Json value, Set<String> taken) {
        return StudyFields.of(path, value, faults, TUBE, TUBE_OPTIONAL).map(fields -> {
            Set<String> marked = new HashSet<>();
            Optional<List<TubeMark>> marks = fields.any("marks")
                    .map(list -> fields.each("marks", MOST_MARKS, (place, mark) -> mark(place, mark, marked)));
            return new ColumnTube(fields.freshId("id", taken), marks);
        });
    }

    private Optional<TubeMark> mark(String path, Json value, Set<String> marked) {
        return StudyFields.of(path, value, faults, MARK, List.of()).map(fields -> {
            Optional<String> spot = spots.referToOne(fields, "spot");
            spot.filter(id -> !marked.add(id))
                    .ifPresent(id -> fields.fault(
                            "spot",
                            Message.of("fault.id-twice", "id", id),
                            Message.of("allowed.each-name-once"),
                            Message.of("todo.keep-one")));
            return new TubeMark(spot.orElse(""), StudyStrength.of(fields, "strength"));
        });
    }

    private Optional<ColumnFlask> flask(String path, Json value, Set<String> taken) {
        return StudyFields.of(path, value, faults, FLASK, List.of())
                .map(fields -> new ColumnFlask(
                        fields.freshId("id", taken),
                        fields.entered("fromTube"),
                        fields.entered("toTube"),
                        fields.entered("tareGrams"),
                        fields.entered("grossGrams")));
    }
}
