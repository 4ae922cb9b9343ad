package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import midplate.inference.OpenData;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.TableText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Ceilings, and errors by the Rf of the trial")
class CeilingTest {
    private static final PairName ACETATE = PairName.HEXANE_ETHYL_ACETATE;
    private static final PairName ETHER = PairName.HEXANE_DIETHYL_ETHER;
    private static final PairName METHANOL = PairName.DICHLOROMETHANE_METHANOL;

    @TempDir
    Path folder;

    /** Foretells the mean of what it was told, with a band of 0.1 to either side; notes how much each spot was told. */
    private static final class Averaging implements Contender {
        private final List<List<Integer>> told = new ArrayList<>();

        @Override
        public String name() {
            return "averaging";
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            double mean =
                    trials.stream().mapToDouble(TrialReading::rf).average().orElseThrow();
            return Collections.nCopies(percents.length, new Guess(mean, mean - 0.1, mean + 0.1));
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            told.add(spots.stream().map(List::size).toList());
            return new Choice(50, 0.5);
        }
    }

    private static RatioTask task(double trial) {
        return new RatioTask(
                RatioKind.ONE_TRIAL,
                Invented.series(0),
                List.of(new TrialReading(ACETATE, 10, trial)),
                List.of(20.0, 30.0),
                List.of(0.5, 0.7));
    }

    private static Map<String, Sample> asked(RatioTask task, Told told) {
        return Benchmark.ask(new Averaging(), List.of(task), List.of(), told).byName();
    }

    // Own arithmetic: trial 0.3, truths 0.5 and 0.7. From the trial: errors 0.2 and 0.4. With all else told: the mean
    // of
    // 0.3 and 0.7 for the first, of 0.3 and 0.5 for the second: errors 0 and 0.3.
    @Test
    void withAllElseToldTheSameQuestionsAreAsked() {
        Map<String, Sample> usual = asked(task(0.3), Told.TRIALS);
        Map<String, Sample> best = asked(task(0.3), Told.ALL_ELSE);
        for (String kind : List.of("one-trial", "one-trial-informative", "one-trial.trial-rf-04")) {
            assertEquals(0.3, usual.get(kind + ".error").mean(), 1e-12);
            assertEquals(0.15, best.get(kind + ".error").mean(), 1e-12);
            assertEquals(
                    0.15,
                    usual.get(kind + ".error").minus(best.get(kind + ".error")).mean(),
                    1e-12);
        }
        assertEquals(
                usual.keySet().stream().filter(name -> !name.contains("third")).toList(),
                best.keySet().stream().filter(name -> !name.contains("third")).toList());
    }

    @Test
    void theReadingAskedAboutIsNeverTold() throws IOException {
        int asked = 0;
        for (RatioTask task : RatioTasks.of(Invented.measurements(folder, 9))) {
            for (int i = 0; i < task.percents().size() && task.inOnePair(); i++) {
                double percent = task.percents().get(i);
                List<TrialReading> told = task.allElse(i);
                assertTrue(told.stream().noneMatch(trial -> trial.percent() == percent), task.toString());
                assertEquals(task.trials().size() + task.percents().size() - 1, told.size());
                asked++;
            }
        }
        assertTrue(asked > 9 * 8 * 7, "" + asked);
    }

    @Test
    void anotherPairHasNoSuchCeiling() throws IOException {
        List<RatioTask> tasks = RatioTasks.of(Invented.measurements(folder, 6));
        Map<String, Sample> best =
                Benchmark.ask(new Averaging(), tasks, List.of(), Told.ALL_ELSE).byName();
        assertTrue(best.containsKey("methanol-one-trial.error"));
        assertFalse(best.containsKey("switch-to-methanol.error"));
        assertFalse(best.containsKey("switch-to-ether.error"));
    }

    // Invented compounds have 8 readings in hexane and ethyl acetate each.
    @Test
    void aSampleIsToldAllReadingsOfItsCompounds() throws IOException {
        List<PlateTask> tasks = PlateTasks.of(Invented.measurements(folder, 12), 40, 5);
        Averaging averaging = new Averaging();
        Benchmark.ask(averaging, List.of(), tasks, Told.ALL_ELSE);
        for (int i = 0; i < tasks.size(); i++) {
            assertEquals(Collections.nCopies(tasks.get(i).spots().size(), 8), averaging.told.get(i));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1",
        "0.05, 1",
        "0.0501, 2",
        "0.1499, 2",
        "0.15, 3",
        "0.25, 4",
        "0.35, 5",
        "0.45, 6",
        "0.55, 7",
        "0.65, 8",
        "0.75, 9",
        "0.85, 10",
        "0.9499, 10",
        "0.95, 11",
        "1, 11"
    })
    void trialsAreSortedByTheirRf(double rf, int bin) {
        assertEquals(bin, TrialBins.of(rf));
    }

    // Own arithmetic: the trial 0.02 is foretold as 0.02 at both ratios: errors 0.48 and 0.68, half width 0.1.
    @Test
    void errorAndBandAreKeptByTrial() {
        Map<String, Sample> samples = asked(task(0.02), Told.TRIALS);
        assertEquals(0.58, samples.get("one-trial.trial-rf-01.error").mean(), 1e-12);
        assertEquals(0.1, samples.get("one-trial.trial-rf-01.half-width").mean(), 1e-12);
        assertEquals(0.02, samples.get("one-trial.trial-rf-01.trial").mean(), 1e-12);
        assertFalse(samples.containsKey("one-trial.trial-rf-02.error"));
    }

    // The band of a trial at 0.1 is 0 to 0.2, that of one at 0.9 is 0.8 to 1: neither can be missed on its outer side.
    @Test
    void bandsThatEndAtALineAreCounted() {
        Map<String, Sample> low = asked(task(0.1), Told.TRIALS);
        Map<String, Sample> high = asked(task(0.9), Told.TRIALS);
        Map<String, Sample> middle = asked(task(0.5), Told.TRIALS);
        assertEquals(1, low.get("one-trial.band-from-0").mean(), 0);
        assertEquals(0, low.get("one-trial.band-to-1").mean(), 0);
        assertEquals(1, high.get("one-trial.band-to-1").mean(), 0);
        assertEquals(
                0,
                middle.get("one-trial.band-from-0").mean()
                        + middle.get("one-trial.band-to-1").mean(),
                0);
    }

    // Own arithmetic. CC: three series at 10 % ethyl acetate, 0.1, 0.2, 0.4: differences 0.1, 0.3, 0.2; two of them
    // with 5 %
    // methanol, 0.5 and 0.6: 0.1; two of them in hexane alone, 0 and 0.02, which counts once: 0.02. CO: two series, no
    // eluent
    // in common. CN: one series. All: (0.6 + 0.1 + 0.02)/5.
    @Test
    void aSecondSeriesSaysSoMuchOfTheFirst() throws IOException {
        OpenMeasurements all = new TableText()
                .row(1, "CC", ACETATE, 10, 0.1)
                .row(2, "CC", ACETATE, 10, 0.2)
                .row(3, "CC", ACETATE, 10, 0.4)
                .row(1, "CC", METHANOL, 5, 0.5)
                .row(3, "CC", METHANOL, 5, 0.6)
                .row(1, "CC", ACETATE, 0, 0)
                .row(2, "CC", ACETATE, 0, 0.02)
                .row(4, "CO", ACETATE, 10, 0.3)
                .row(5, "CO", ETHER, 50, 0.9)
                .row(6, "CN", ACETATE, 10, 0.7)
                .read(folder);
        Map<String, Figure> figures = RepeatMarks.of(all).figures(50, 3);
        assertEquals(0.62 / 4, value(figures, "repeat.hexane-ethyl-acetate.error"), 1e-12);
        assertEquals(0.1, value(figures, "repeat.dichloromethane-methanol.error"), 1e-12);
        assertEquals(0.02, value(figures, "repeat.hexane-diethyl-ether.error"), 1e-12);
        assertEquals(0.72 / 5, value(figures, "repeat.error"), 1e-12);
        assertEquals(1, value(figures, "repeat.structures"), 0);
        Figure all5 = figures.getOrDefault("repeat.error", new Figure(0, 0, 0));
        assertEquals(5, all5.count());
        assertTrue(Double.isNaN(all5.standardError()), "one structure tells no error");
    }

    // Own algebra: one structure with differences 0.1 and 0.1, one with 0.14 and 0.14. A resample holds the first twice
    // (mean
    // 0.1), the second twice (0.14) or both (0.12), once, once and twice in four; the standard deviation is 0.025/√2.
    // 4 000
    // resamples know it to 1/√8000 = 1.1 %.
    @Test
    void theErrorOfRepeatsComesFromResamplingStructures() throws IOException {
        OpenMeasurements all = new TableText()
                .row(1, "CC", ACETATE, 10, 0.1)
                .row(2, "CC", ACETATE, 10, 0.2)
                .row(1, "CC", ACETATE, 20, 0.4)
                .row(2, "CC", ACETATE, 20, 0.3)
                .row(3, "CO", METHANOL, 1, 0.36)
                .row(4, "CO", METHANOL, 1, 0.5)
                .row(3, "CO", METHANOL, 2, 0.5)
                .row(4, "CO", METHANOL, 2, 0.64)
                .read(folder);
        Map<String, Figure> figures = RepeatMarks.of(all).figures(4000, 3);
        assertEquals(0.12, value(figures, "repeat.error"), 1e-12);
        Figure error = figures.getOrDefault("repeat.error", new Figure(0, 0, 0));
        assertEquals(0.02 / Math.sqrt(2), error.standardError(), 0.04 * 0.0141);
        assertEquals(2, value(figures, "repeat.structures"), 0);
    }

    // Own: the counts that an independent program (Python) gave for the same table.
    @Test
    void openMeasurementsHoldAsManyRepeatsAsAnIndependentCount() {
        Map<String, Figure> figures = RepeatMarks.of(OpenData.read()).figures(50, 3);
        assertEquals(0.0482182, value(figures, "repeat.error"), 1e-6);
        assertEquals(21, value(figures, "repeat.structures"), 0);
        Figure error = figures.getOrDefault("repeat.error", new Figure(0, 0, 0));
        assertEquals(170, error.count());
    }

    @Test
    void structuresWithTwoCurvesAreCounted() throws IOException {
        TableText text = new TableText();
        for (int compound = 1; compound <= 4; compound++) {
            String smiles = compound <= 2 ? "CC" : "C".repeat(compound);
            for (double percent : Invented.ACETATE) {
                text.row(compound, smiles, ACETATE, percent, percent / 100);
            }
        }
        assertEquals(
                1,
                RepeatMarks.structuresWithTwoCurves(
                        text.row(5, "CCC", ACETATE, 50, 0.5).read(folder)));
    }

    private static double value(Map<String, Figure> figures, String name) {
        return figures.getOrDefault(name, new Figure(Double.NaN, 0, 0)).value();
    }
}
