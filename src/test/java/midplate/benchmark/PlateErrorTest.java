package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Plates that an error of their own moves")
class PlateErrorTest {
    private static final double SIZE = 0.05;

    @TempDir
    Path folder;

    /** z for which an error of this size multiplies Rf/(1 − Rf) by a factor. */
    private static double times(double factor) {
        return Math.log(factor) / (4 * SIZE);
    }

    private PlateErrorTask task(double trialError, double nextError) throws IOException {
        return new PlateErrorTask(new PlateTask(CrossingCurves.all(folder), 4.76), trialError, nextError);
    }

    private static List<Double> told(PlateErrorTask task, double size) {
        return task.trials(size).stream().map(spot -> spot.get(0).rf()).toList();
    }

    // Own algebra: Rf 0.1, 0.2, 0.3 have Rf/(1 − Rf) = 1/9, 1/4, 3/7; four times that is 4/9, 1, 12/7, of Rf 4/13, 1/2,
    // 12/19, which read 0.31, 0.5, 0.63.
    @Test
    void theTrialMovesAsAWhole() throws IOException {
        PlateErrorTask task = task(times(4), 0);
        assertEquals(List.of(0.31, 0.5, 0.63), told(task, SIZE));
        assertEquals(List.of(0.1, 0.2, 0.3), told(task, 0));
        assertEquals(task.plate().trials(), task.trials(0));
    }

    // Own algebra: at 50 % Rf is 0.5, 0.7, 0.73. Three times Rf/(1 − Rf) puts 0.7 at 7/8, a third of it puts them at
    // 1/4,
    // 7/16 and 0.47.
    @Test
    void theNextPlateMovesByItsOwn() throws IOException {
        assertFalse(task(0, times(3)).hitAt(50, SIZE));
        assertTrue(task(0, times(1 / 3.0)).hitAt(50, SIZE));
        assertTrue(task(times(3), 0).hitAt(50, SIZE), "the trial's error is not the next plate's");
        assertTrue(task(0, times(3)).hitAt(50, 0));
    }

    // Rf 0 and 1 have no finite logit: at 0 % all three read 0.
    @Test
    void aSpotOnALineStaysThere() throws IOException {
        PlateErrorTask low = new PlateErrorTask(new PlateTask(CrossingCurves.all(folder), 0), 3, 0);
        assertEquals(List.of(0.0, 0.0, 0.0), told(low, SIZE));
    }

    // A standard normal number has mean 0 and variance 1: 2 400 of them are within 0.1 of both by four and three of
    // their
    // standard errors, 1/49 and √2/49.
    @Test
    void errorsAreStandardNormalAndTheSameAgain() throws IOException {
        var measurements = Invented.measurements(folder, 12);
        List<PlateErrorTask> tasks = PlateErrorTask.of(measurements, 2400, 9);
        double mean = 0;
        double square = 0;
        double product = 0;
        for (PlateErrorTask task : tasks) {
            mean += task.trialError() / 2400;
            square += task.nextError() * task.nextError() / 2400;
            product += task.trialError() * task.nextError() / 2400;
        }
        assertEquals(0, mean, 0.1);
        assertEquals(1, square, 0.1);
        assertEquals(0, product, 0.1);
        List<PlateErrorTask> again = PlateErrorTask.of(measurements, 2400, 9);
        for (int i = 0; i < tasks.size(); i++) {
            assertEquals(tasks.get(i).trialError(), again.get(i).trialError(), 0);
            assertEquals(tasks.get(i).nextError(), again.get(i).nextError(), 0);
        }
    }

    // Always 50 %, said 0.9 in the bench and 0.6 elsewhere. A sample whose next plate triples Rf/(1 − Rf) at an error
    // of 0.05,
    // and times 3^0.6 = 1.933 at 0.03, where 0.73 is at 0.839: a miss at both, a hit without.
    @Test
    void marksStandBySettingAndSize() throws IOException {
        Results results = new Results();
        Contender contender = new Invented.Stubborn(new Guess(0.5, 0.4, 0.6), new Choice(50, 0.6)) {
            @Override
            public Optional<Choice> choose(List<List<TrialReading>> spots, Setting setting) {
                return Optional.of(new Choice(50, setting == Setting.BENCH ? 0.9 : 0.6));
            }
        };
        PlateErrorMarks.mark(task(0, times(3)), contender, results);
        Map<String, Samples> marks = results.part(Results.Part.PLATE_ERROR);
        assertEquals(9, marks.size());
        assertEquals(0.9 - 1, mean(marks, "stubborn, bench, 0.00", "plates.all.said-less-came"), 1e-12);
        assertEquals(0.9, mean(marks, "stubborn, bench, 0.03", "plates.all.said-less-came"), 1e-12);
        assertEquals(0.6, mean(marks, "stubborn, class, 0.05", "plates.all.said"), 1e-12);
        assertEquals(1, mean(marks, "stubborn, automated, 0.00", "plates.possible.hit"), 0);
        assertEquals(0, mean(marks, "stubborn, automated, 0.05", "plates.possible.hit"), 0);
        assertEquals(0, mean(marks, "stubborn, class, 0.03", "plates.all.hit"), 0);
    }

    @Test
    void whoKnowsNoSettingsIsLeftOut() throws IOException {
        Results results = new Results();
        PlateErrorMarks.mark(task(0, 0), new Invented.Knowing(), results);
        assertTrue(results.part(Results.Part.PLATE_ERROR).isEmpty());
    }

    private static double mean(Map<String, Samples> marks, String name, String figure) {
        return marks.getOrDefault(name, new Samples()).byName().get(figure).mean();
    }
}
