package midplate.lesson;

import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What an exercise is made from: its level, its two solvents, and a seed. In the choices of its {@link LessonCode} the level takes the lowest 2
 * bits, the pair the next 3.
 *
 * @param level what is told
 * @param pair what runs up the plate
 * @param seed by what the unknowns are drawn, 0 to {@value LessonCode#MOST_SEED}
 */
public record ExerciseCode(ExerciseLevel level, ExercisePair pair, int seed) {
    private static final int LEVEL_BITS = 2;
    private static final int LEVELS = 1 << LEVEL_BITS;

    /** As students type it. */
    public LessonCode code() {
        return new LessonCode(LessonCode.Kind.EXERCISE, pair.ordinal() << LEVEL_BITS | level.ordinal(), seed);
    }

    /** As it is shown. */
    public String text() {
        return code().text();
    }

    /**
     * What a code says.
     *
     * @param field the place in the input, for a refusal
     * @param typed the code as it came
     * @throws Refusal where it is no code of an exercise
     */
    public static ExerciseCode read(String field, String typed) {
        LessonCode code = LessonCode.read(field, typed, LessonCode.Kind.EXERCISE);
        int level = code.choices() % LEVELS;
        int pair = code.choices() >> LEVEL_BITS;
        if (level >= ExerciseLevel.values().length || pair >= ExercisePair.values().length) {
            throw new Refusal(
                    field,
                    Message.of("lesson.exercise-code-unknown", "came", typed.strip()),
                    typed,
                    Allowed.words(
                            new ExerciseCode(ExerciseLevel.GROUPS_TOLD, ExercisePair.HEXANE_ETHYL_ACETATE, 0).text()),
                    Message.of("todo.type-lesson-code"));
        }
        return new ExerciseCode(ExerciseLevel.values()[level], ExercisePair.values()[pair], code.seed());
    }
}
