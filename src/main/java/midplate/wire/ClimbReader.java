package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.lesson.DippedPlate;
import midplate.lesson.LessonSample;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads what is to be seen while it develops. */
final class ClimbReader {
    static final String PERCENT = "percentStrong";
    static final String PLATE = "plate";
    static final List<String> FIELDS = LessonSampleReader.fieldsWith(PERCENT, PLATE);
    static final List<String> PLATE_FIELDS = List.of("heightMm", "startMm", "levelMm", "stopMm");

    private final LessonSampleReader samples;
    private final FaultList faults;

    ClimbReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.samples = new LessonSampleReader(catalogue, compounds, faults);
        this.faults = faults;
    }

    /**
     * What is asked, read without a fault.
     *
     * @param sample what runs in what
     * @param percentStrong share of the strong solvent [% v/v]
     * @param plate where the lines are
     */
    record Asked(LessonSample sample, double percentStrong, DippedPlate plate) {}

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    Asked read(JsonFields fields) {
        Optional<LessonSample> sample = samples.read(fields);
        OptionalDouble percent = percent(fields);
        DippedPlate plate = plate(fields);
        faults.throwIfAny();
        return new Asked(sample.orElseThrow(), percent.orElseThrow(), plate);
    }

    /** The share of the strong solvent, which must be there. */
    static OptionalDouble percent(JsonFields fields) {
        if (!fields.has(PERCENT)) {
            fields.missing(PERCENT, Allowed.closed(0, 100), Message.of("todo.give-percent"));
        }
        return fields.percent(PERCENT);
    }

    private DippedPlate plate(JsonFields fields) {
        DippedPlate usual = DippedPlate.USUAL;
        Optional<JsonFields> lines =
                fields.any(PLATE).flatMap(value -> JsonFields.of(PLATE, value, faults, PLATE_FIELDS));
        if (lines.isEmpty()) {
            return usual;
        }
        int before = faults.count();
        double height = lines.get().number("heightMm").orElse(usual.heightMm());
        double start = lines.get().number("startMm").orElse(usual.startMm());
        double level = lines.get().number("levelMm").orElse(usual.levelMm());
        double stop = lines.get().number("stopMm").orElse(usual.stopMm());
        if (faults.count() > before) {
            return usual;
        }
        List<Refusal> wrong = DippedPlate.faults(height, start, level, stop);
        wrong.forEach(refusal -> faults.add(refusal.field(), refusal));
        return wrong.isEmpty() ? new DippedPlate(height, start, level, stop) : usual;
    }
}
