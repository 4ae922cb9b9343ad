package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import midplate.advice.Consultation;
import midplate.advice.SpotForecast;
import midplate.lesson.ClassReading;
import midplate.lesson.ClassReadings;
import midplate.lesson.ClassSpot;
import midplate.lesson.ClassYardstick;
import midplate.lesson.InventedClass;
import midplate.lesson.LessonCode;
import midplate.lesson.LessonCompound;
import midplate.lesson.LessonModel;
import midplate.lesson.LessonSample;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Answers about the readings of a class. */
final class ClassAnswers {
    static final List<String> FIELDS = LessonSampleReader.fieldsWith("percentStrong", "readings");
    static final List<String> EXAMPLE = LessonSampleReader.fieldsWith("percentStrong", "code", "seed", "pairs");

    private static final String PERCENT = "percentStrong";
    private static final int LONGEST_CODE = 40;

    private final LessonModel model;
    private final Compounds compounds;
    private final FaultList faults;

    ClassAnswers(LessonModel model, Compounds compounds, FaultList faults) {
        this.model = model;
        this.compounds = compounds;
        this.faults = faults;
    }

    /** What readings show. Without compounds nothing is foretold. */
    String readings(JsonFields fields) {
        Optional<LessonSample> sample = fields.has("compounds") ? sample(fields) : Optional.empty();
        OptionalDouble percent = fields.has("compounds") ? percent(fields) : fields.percent(PERCENT);
        List<String> named = sample.map(LessonSample::compounds).orElse(List.of()).stream()
                .map(LessonCompound::name)
                .toList();
        ClassReadingsReader reader = new ClassReadingsReader(named, faults);
        List<ClassReading> readings = reader.read(fields);
        faults.throwIfAny();
        Optional<Consultation> consultation = sample.map(model::consult);
        List<SpotForecast> foretold = consultation
                .map(one -> one.at(List.of(percent.orElseThrow())).get(0).spots())
                .orElse(List.of());
        var forecasts = foretold.stream().collect(Collectors.toMap(SpotForecast::spot, Function.identity()));
        List<ClassSpot> spots = new ArrayList<>();
        for (String name : reader.spots()) {
            spots.add(new ClassSpot(name, Optional.ofNullable(forecasts.get(name))));
        }
        Optional<ClassYardstick> yardstick = consultation.map(one -> ClassYardstick.of(one, percent.orElseThrow()));
        return new ClassWriter(faults.texts())
                .write(reader.spots(), readings, ClassReadings.judged(spots, readings, yardstick));
    }

    /** An invented class. */
    String example(JsonFields fields) {
        Optional<LessonSample> sample = sample(fields);
        OptionalDouble percent = percent(fields);
        Optional<LessonCode> code = code(fields);
        faults.throwIfAny();
        LessonSample of = sample.orElseThrow();
        InventedClass invented = InventedClass.of(model, code.orElseThrow(), of, percent.orElseThrow());
        List<String> spots = of.compounds().stream().map(LessonCompound::name).toList();
        return new ClassWriter(faults.texts()).write(spots, invented);
    }

    private Optional<LessonSample> sample(JsonFields fields) {
        return new LessonSampleReader(model.catalogue(), compounds, faults).read(fields);
    }

    private OptionalDouble percent(JsonFields fields) {
        if (!fields.has(PERCENT)) {
            fields.missing(PERCENT, Allowed.closed(0, 100), Message.of("todo.give-percent-of-volumes"));
        }
        return fields.percent(PERCENT);
    }

    /** A code, or one made of a seed and a number of pairs. */
    private Optional<LessonCode> code(JsonFields fields) {
        Optional<Integer> pairs =
                ClassRfReader.whole(fields, "pairs", InventedClass.LEAST_PAIRS, ClassReadings.MOST_PAIRS, faults);
        Optional<Integer> seed = ClassRfReader.whole(fields, "seed", 0, LessonCode.MOST_SEED, faults);
        if (fields.has("code") == fields.has("seed")) {
            faults.add(
                    fields.path("code"),
                    Message.of("fault.class-code-or-seed"),
                    fields.any("code").map(Json::shown).orElse("–"),
                    Message.of("allowed.class-code-or-seed"),
                    Message.of("todo.class-code-or-seed"));
            return Optional.empty();
        }
        if (fields.has("seed")) {
            return seed.map(drawn ->
                    new LessonCode(LessonCode.Kind.CLASS_READINGS, pairs.orElse(InventedClass.USUAL_PAIRS), drawn));
        }
        return fields.text("code", LONGEST_CODE).flatMap(typed -> read(fields, typed));
    }

    private Optional<LessonCode> read(JsonFields fields, String typed) {
        try {
            LessonCode code = LessonCode.read(fields.path("code"), typed, LessonCode.Kind.CLASS_READINGS);
            if (code.choices() >= InventedClass.LEAST_PAIRS && code.choices() <= ClassReadings.MOST_PAIRS) {
                return Optional.of(code);
            }
            faults.add(
                    fields.path("code"),
                    Message.of("lesson.code-form", "came", typed),
                    typed,
                    Message.of(
                            "allowed.lesson-code",
                            "example",
                            new LessonCode(LessonCode.Kind.CLASS_READINGS, InventedClass.USUAL_PAIRS, 1).text()),
                    Message.of("todo.type-lesson-code"));
        } catch (Refusal refusal) {
            faults.add(refusal.field(), refusal);
        }
        return Optional.empty();
    }
}
