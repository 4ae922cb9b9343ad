package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.inference.Fold;
import midplate.inference.OpenData;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.TableText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Questions of the benchmark")
class TasksTest {
    private static final PairName ACETATE = PairName.HEXANE_ETHYL_ACETATE;

    @TempDir
    Path folder;

    // Own count: 8 readings in hexane/ethyl acetate, 5 of them above 0.05 and below 0.95 (10 pairs), 3 of them
    // at 0.2 to 0.8; 2 in ether mixtures; 2 in methanol.
    @Test
    void everyReadingIsATrialForAllOthers() throws IOException {
        OpenMeasurements all = one(0.01, 0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.99);
        List<RatioTask> tasks = RatioTasks.of(all);
        assertEquals(8, of(tasks, RatioKind.ONE_TRIAL).size());
        assertEquals(
                8 * 7,
                of(tasks, RatioKind.ONE_TRIAL).stream()
                        .mapToInt(task -> task.truths().size())
                        .sum());
        assertEquals(
                5,
                of(tasks, RatioKind.ONE_TRIAL).stream()
                        .filter(RatioTask::informative)
                        .count());
        assertEquals(10, of(tasks, RatioKind.TWO_TRIALS).size());
        assertTrue(of(tasks, RatioKind.TWO_TRIALS).stream()
                .allMatch(task -> task.truths().size() == 6));
        assertEquals(3, of(tasks, RatioKind.SWITCH_TO_ETHER).size());
        assertEquals(
                List.of(33.33, 50.0),
                of(tasks, RatioKind.SWITCH_TO_ETHER).get(0).percents());
        assertEquals(3, of(tasks, RatioKind.SWITCH_TO_METHANOL).size());
        assertEquals(2, of(tasks, RatioKind.METHANOL_ONE_TRIAL).size());
    }

    @Test
    void noTrialIsAskedAbout() throws IOException {
        for (RatioTask task : RatioTasks.of(Invented.measurements(folder, 9))) {
            for (TrialReading trial : task.trials()) {
                boolean asked =
                        trial.pair() == task.kind().pair() && task.percents().contains(trial.percent());
                assertFalse(asked, task.toString());
            }
        }
    }

    @Test
    void foldsShareTheQuestionsOut() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 25);
        List<RatioTask> together = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            together.addAll(RatioTasks.of(all.select(new Fold(i, 5), Fold.Part.INSIDE)));
        }
        assertEquals(new HashSet<>(RatioTasks.of(all)), new HashSet<>(together));
        assertEquals(RatioTasks.of(all).size(), together.size());
    }

    @Test
    void theTrueCurvePassesThroughItsReadingsAndNeverFalls() throws IOException {
        TrueCurve curve = TrueCurve.of(
                        one(0.01, 0.05, 0.3, 0.28, 0.5, 0.8, 0.9, 0.99).table(ACETATE))
                .get(0);
        double[] expected = {0.01, 0.05, 0.3, 0.3, 0.5, 0.8, 0.9, 0.99};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], curve.rf(Invented.ACETATE[i]), 1e-12);
        }
        double before = 0;
        for (double percent = 0; percent <= 100; percent += 0.25) {
            assertTrue(curve.rf(percent) >= before - 1e-12);
            before = curve.rf(percent);
        }
    }

    @Test
    void aSeriesWithoutAnEndOrWithSixReadingsHasNoCurve() throws IOException {
        assertEquals(
                1,
                TrueCurve.of(one(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7).table(ACETATE))
                        .size());
        assertEquals(
                1,
                TrueCurve.of(one(0, 0.1, Double.NaN, 0.3, 0.4, 0.5, 0.6, 0.7).table(ACETATE))
                        .size());
        assertEquals(
                0,
                TrueCurve.of(one(0, 0.1, Double.NaN, Double.NaN, 0.4, 0.5, 0.6, 0.7)
                                .table(ACETATE))
                        .size());
        assertEquals(
                0,
                TrueCurve.of(one(Double.NaN, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7).table(ACETATE))
                        .size());
        assertEquals(
                0,
                TrueCurve.of(one(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, Double.NaN).table(ACETATE))
                        .size());
    }

    @Test
    void aPlateIsPossibleWhenOneRatioSuitsAll() throws IOException {
        List<TrueCurve> curves = TrueCurve.of(Invented.measurements(folder, 12).table(ACETATE));
        assertTrue(new PlateTask(curves.subList(0, 3), 5).possible());
        // own algebra: c differs by 5.5, more than ln 16 = 2.77, and all slopes are alike
        assertFalse(new PlateTask(List.of(curves.get(0), curves.get(11)), 5).possible());
    }

    @Test
    void theTrialPlateIsToldSortedAndToTwoDecimals() throws IOException {
        List<TrueCurve> curves = TrueCurve.of(Invented.measurements(folder, 12).table(ACETATE));
        PlateTask task = new PlateTask(List.of(curves.get(9), curves.get(2)), 25);
        List<TrialReading> told =
                task.trials().stream().map(spot -> spot.get(0)).toList();
        assertEquals(2, told.size());
        assertTrue(told.get(0).rf() < told.get(1).rf());
        for (TrialReading trial : told) {
            assertEquals(25, trial.percent());
            assertEquals(Math.rint(trial.rf() * 100), trial.rf() * 100, 1e-9);
        }
        assertEquals(curves.get(2).rf(25), told.get(0).rf(), 0.005);
        assertEquals(new PlateTask(List.of(curves.get(2), curves.get(9)), 25).trials(), task.trials());
    }

    // Own algebra: c = −6.5 and G(0) = 0 give Rf 0.0015; c = −1 and G(100 %) = 6.92 give 0.997.
    @Test
    void spotsAtTheEndsOfTheTrialPlateAreNoted() throws IOException {
        List<TrueCurve> curves = TrueCurve.of(Invented.measurements(folder, 12).table(ACETATE));
        PlateTask low = new PlateTask(curves.subList(0, 1), 2);
        PlateTask high = new PlateTask(curves.subList(11, 12), 100);
        PlateTask good = new PlateTask(curves.subList(0, 1), 50);
        assertTrue(low.baseline() && low.failedTrial() && !low.front());
        assertTrue(high.front() && high.failedTrial() && !high.baseline());
        assertTrue(!good.front() && !good.failedTrial() && !good.baseline());
    }

    @Test
    void samplesAreDrawnEvenlyAndTheSameAgain() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 10);
        List<PlateTask> tasks = PlateTasks.of(all, 2400, 11);
        assertEquals(texts(tasks), texts(PlateTasks.of(all, 2400, 11)));
        assertFalse(texts(tasks).equals(texts(PlateTasks.of(all, 2400, 12))));
        for (int spots = 1; spots <= 3; spots++) {
            int size = spots;
            long drawn =
                    tasks.stream().filter(task -> task.spots().size() == size).count();
            assertEquals(800.0, (double) drawn, 100.0, spots + " spots");
        }
        Set<Double> percents = tasks.stream().map(PlateTask::percent).collect(Collectors.toSet());
        assertEquals(Set.of(2.0, 5.0, 10.0, 20.0, 33.3, 50.0, 75.0, 100.0), percents);
        assertTrue(tasks.stream()
                .allMatch(task ->
                        new HashSet<>(task.spots()).size() == task.spots().size()));
        assertEquals(List.of(), PlateTasks.of(Invented.measurements(folder, 2), 100, 11));
    }

    // Own: the counts that an independent program (Python, pandas) gave for the same table and definitions.
    @Test
    void openMeasurementsGiveAsManyQuestionsAsAnIndependentCount() {
        OpenMeasurements all = OpenData.read();
        List<RatioTask> tasks = RatioTasks.of(all);
        assertEquals(8946, asked(tasks, RatioKind.ONE_TRIAL));
        assertEquals(13364, asked(tasks, RatioKind.TWO_TRIALS));
        assertEquals(5730, asked(tasks, RatioKind.METHANOL_ONE_TRIAL));
        assertEquals(468, asked(tasks, RatioKind.SWITCH_TO_ETHER));
        assertEquals(2899, asked(tasks, RatioKind.SWITCH_TO_METHANOL));
        assertEquals(6399, asked(tasks.stream().filter(RatioTask::informative).toList(), RatioKind.ONE_TRIAL));
        assertEquals(4068, asked(tasks.stream().filter(RatioTask::informative).toList(), RatioKind.METHANOL_ONE_TRIAL));
    }

    private static int asked(List<RatioTask> tasks, RatioKind kind) {
        return of(tasks, kind).stream().mapToInt(task -> task.truths().size()).sum();
    }

    private static List<RatioTask> of(List<RatioTask> tasks, RatioKind kind) {
        return tasks.stream().filter(task -> task.kind() == kind).toList();
    }

    private static List<String> texts(List<PlateTask> tasks) {
        return tasks.stream()
                .map(task -> task.percent() + " "
                        + task.spots().stream().map(TrueCurve::series).toList())
                .toList();
    }

    private OpenMeasurements one(double... acetate) throws IOException {
        TableText text = new TableText()
                .row(1, "CC", PairName.HEXANE_DIETHYL_ETHER, 33.33, 0.5)
                .row(1, "CC", PairName.HEXANE_DIETHYL_ETHER, 50, 0.6)
                .row(1, "CC", PairName.HEXANE_DIETHYL_ETHER, 100, 0.97)
                .row(1, "CC", PairName.DICHLOROMETHANE_METHANOL, 0, 0.2)
                .row(1, "CC", PairName.DICHLOROMETHANE_METHANOL, 9.09, 0.9);
        IntStream.range(0, acetate.length)
                .filter(i -> !Double.isNaN(acetate[i]))
                .forEach(i -> text.row(1, "CC", ACETATE, Invented.ACETATE[i], acetate[i]));
        return text.read(folder);
    }
}
