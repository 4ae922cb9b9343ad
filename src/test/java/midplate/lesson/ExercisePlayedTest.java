package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import midplate.advice.Ratio;
import midplate.words.Message;
import org.junit.jupiter.api.Test;

/** The program against the unknowns, hints by arithmetic, and what the key says of the truth. */
class ExercisePlayedTest {
    // measured over these 90 codes: see the message of the assertion
    @Test
    void theProgramIsThereWithinThreePlatesMostly() {
        int[] counts = new int[ExerciseProgram.MOST_PLATES + 1];
        List<ExerciseCode> codes = Exercises.codes(10);
        for (ExerciseCode code : codes) {
            List<ExerciseProgram.Played> played = new ExerciseProgram(Exercises.MODEL, Exercises.of(code)).plates();
            counts[played.size()]++;
            for (ExerciseProgram.Played each : played.subList(0, played.size() - 1)) {
                assertTrue(!each.plate().isDone(), code.text());
            }
        }
        int within = counts[1] + counts[2] + counts[3];
        // regression only: 74 of 90 when it was measured, less two standard errors of such a count,
        // 2*sqrt(90*0.82*0.18) = 7
        assertTrue(90 * within >= 67 * codes.size(), Arrays.toString(counts));
    }

    @Test
    void hintsAreTheArithmeticOfTheLastPlate() {
        Exercise exercise =
                Exercises.of(new ExerciseCode(ExerciseLevel.GROUPS_TOLD, ExercisePair.HEXANE_ETHYL_ACETATE, 1));
        ExerciseHints hints = new ExerciseHints(Exercises.MODEL, exercise);
        ExercisePlate weak = ExercisePlate.of(exercise, 1, 2);
        List<Message> told = hints.after(List.of(weak));
        double lowest = weak.own().values().stream()
                .mapToDouble(ExercisePlate.Spot::rf)
                .min()
                .orElseThrow();
        assertTrue(lowest > 0.03 && lowest < 0.2, "a plate too weak: " + lowest);
        Message k = (Message) told.get(0).args().get("lowest");
        assertEquals((1 - lowest) / lowest, (Double) k.args().get("k"), 1e-9);
        assertEquals("lesson.exercise-hint-stronger", told.get(1).key());
        // ln k at Rf 0.2 is ln 4
        double least = Math.log((1 - lowest) / lowest) - Math.log(4);
        assertEquals(least, (Double) told.get(1).args().get("least"), 1e-9);
        assertEquals("lesson.exercise-hint-step-stronger", told.get(2).key());
        assertEquals(4.0, (Double) told.get(2).args().get("to"), 0);
        assertTrue((Double) told.get(2).args().get("change") > 0);
        Ratio next = new ExerciseProgram(Exercises.MODEL, exercise).next(List.of(weak));
        Message eluent = (Message) told.get(3).args().get("eluent");
        assertEquals(next.percentStrong(), (Double) eluent.args().get("percent"), 0);
        assertTrue(next.percentStrong() > 2, "stronger, as the hint says");
        List<Message> strong = hints.after(List.of(weak, ExercisePlate.of(exercise, 2, 70)));
        assertEquals("lesson.exercise-hint-weaker", strong.get(1).key());
        assertEquals(35.0, (Double) strong.get(2).args().get("to"), 0);
        assertEquals(
                List.of("lesson.exercise-hint-first", "lesson.exercise-hint-begin"),
                hints.after(List.of()).stream().map(Message::key).toList());
    }

    /** Spots grow by σ² = σ0² + H·d, 4σ long: 2 mm at the start, H 0.05 mm; front at 61 mm, start line at 10 mm. */
    private static boolean apart(List<Double> rf) {
        for (double one : rf) {
            for (double other : rf) {
                double half = 2 * Math.sqrt(0.25 + 0.05 * 51 * one) + 2 * Math.sqrt(0.25 + 0.05 * 51 * other);
                if (one > other && (one - other < 0.05 || 51 * (one - other) < half)) {
                    return false;
                }
            }
        }
        return rf.stream().distinct().count() == rf.size();
    }

    @Test
    void theKeyNamesShareThatDoItAndNoOther() {
        for (ExerciseCode code : Exercises.codes(2)) {
            Exercise exercise = Exercises.of(code);
            ExerciseKey key = new ExerciseKey(Exercises.MODEL, exercise);
            assertTrue(!key.ranges().isEmpty(), code.text());
            double highest = exercise.truth().model().highestPercent();
            for (double percent = 0; percent <= highest; percent += 0.25) {
                double at = percent;
                boolean listed = key.ranges().stream().anyMatch(range -> range.from() <= at && at <= range.to());
                List<Double> rf = exercise.truth().at(percent);
                boolean inside = rf.stream().allMatch(each -> each >= 0.2 && each <= 0.8);
                boolean apart = apart(rf);
                assertEquals(inside && apart, listed, code.text() + " " + percent);
            }
            assertTrue(
                    key.rows().stream()
                            .anyMatch(row -> row.ratio().equals(key.best()) && row.serves() == ExerciseKey.Serves.YES),
                    code.text());
            assertEquals(
                    10,
                    key.needed().stream().mapToInt(ExerciseKey.Needed::times).sum());
            for (ExerciseKey.Expected each : key.expected()) {
                assertTrue(each.deviation() > 0.02 && each.deviation() < 0.15, code.text() + " " + each);
            }
        }
    }
}
