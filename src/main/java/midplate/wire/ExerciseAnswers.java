package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import midplate.lesson.Exercise;
import midplate.lesson.ExerciseCode;
import midplate.lesson.ExerciseCompound;
import midplate.lesson.ExerciseHints;
import midplate.lesson.ExerciseKey;
import midplate.lesson.ExerciseKnowns;
import midplate.lesson.ExercisePlate;
import midplate.lesson.ExerciseProgram;
import midplate.lesson.LessonModel;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Exercises as they are asked for and answered: the same code gives the same answer, to the byte.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class ExerciseAnswers {
    private final LessonModel model;
    private final List<ExerciseCompound> table;
    private final Speech speech;
    private final ExerciseWriter writer;

    ExerciseAnswers(LessonModel model, Compounds compounds, Speech speech) {
        this.model = model;
        this.table = ExerciseTable.of(compounds);
        this.speech = speech;
        this.writer = new ExerciseWriter(compounds, speech);
    }

    /** The exercise of a code, or a new one. */
    public String exercise(byte[] json) {
        return answered(json, ExerciseReader.NEW, (fields, faults) -> {
            Optional<ExerciseCode> code = new ExerciseReader(faults).codeOrNew(fields);
            faults.throwIfAny();
            Exercise exercise = made(code);
            return writer.exercise(exercise, ExerciseKnowns.of(exercise, model, table));
        });
    }

    /** One plate of the unknowns. */
    public String run(byte[] json) {
        return answered(json, ExerciseReader.RUN, (fields, faults) -> {
            ExerciseReader reader = new ExerciseReader(faults);
            Optional<ExerciseCode> code = reader.code(fields);
            double percent = reader.percent(fields);
            int plate = reader.plate(fields);
            faults.throwIfAny();
            Exercise exercise = made(code);
            held(exercise, fields.path("percentStrong"), percent, faults);
            return writer.run(exercise, ExercisePlate.of(exercise, plate, percent));
        });
    }

    /** Hints after some plates. */
    public String hint(byte[] json) {
        return answered(json, ExerciseReader.HINT, (fields, faults) -> {
            ExerciseReader reader = new ExerciseReader(faults);
            Optional<ExerciseCode> code = reader.code(fields);
            List<Double> percents = reader.plates(fields);
            int count = reader.count(fields);
            faults.throwIfAny();
            Exercise exercise = made(code);
            for (int i = 0; i < percents.size(); i++) {
                held(exercise, fields.path("plates[" + i + "]"), percents.get(i), faults);
            }
            List<Message> hints = new ExerciseHints(model, exercise)
                    .after(IntStream.range(0, percents.size())
                            .mapToObj(i -> ExercisePlate.of(exercise, i + 1, percents.get(i)))
                            .toList());
            return writer.hints(hints, Math.min(count, hints.size()));
        });
    }

    /** Where the known compounds were expected, beside the model. */
    public String placed(byte[] json) {
        return answered(json, ExerciseReader.PLACED, (fields, faults) -> {
            ExerciseReader reader = new ExerciseReader(faults);
            Optional<ExerciseCode> code = reader.code(fields);
            List<Double> placed = reader.placed(fields);
            faults.throwIfAny();
            return writer.placed(ExerciseKnowns.of(made(code), model, table), placed);
        });
    }

    /** What the program does with the same unknowns. */
    public String program(byte[] json) {
        return of(json, exercise -> writer.program(exercise, new ExerciseProgram(model, exercise).plates()));
    }

    /** What a teacher keeps. */
    public String key(byte[] json) {
        return of(
                json,
                exercise -> writer.key(
                        exercise, new ExerciseKey(model, exercise), ExerciseKnowns.of(exercise, model, table)));
    }

    private String of(byte[] json, Function<Exercise, String> answer) {
        return answered(json, ExerciseReader.CODE, (fields, faults) -> {
            Optional<ExerciseCode> code = new ExerciseReader(faults).code(fields);
            faults.throwIfAny();
            return answer.apply(made(code));
        });
    }

    private Exercise made(Optional<ExerciseCode> code) {
        return Exercise.of(code.orElseThrow(), model, table);
    }

    /** Refuses a share that the curve of the pair does not hold. */
    private static void held(Exercise exercise, String field, double percent, FaultList faults) {
        if (percent < exercise.lowestPercent() || percent > exercise.highestPercent()) {
            faults.add(
                    field,
                    Message.of("fault.exercise-share", "percent", percent),
                    Double.toString(percent),
                    Allowed.closed(exercise.lowestPercent(), exercise.highestPercent()),
                    Message.of("todo.give-percent-of-volumes"));
            faults.throwIfAny();
        }
    }

    private String answered(byte[] json, List<String> known, BiFunction<JsonFields, FaultList, String> answer) {
        return LessonAnswers.answered(json, known, speech, answer);
    }
}
