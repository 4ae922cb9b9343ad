package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import midplate.benchmark.Invented.Knowing;
import midplate.benchmark.Invented.Stubborn;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Marks of a contender")
class MarksTest {
    private static final PairName ACETATE = PairName.HEXANE_ETHYL_ACETATE;

    @TempDir
    Path folder;

    @Test
    void whoKnowsTheTruthMakesNoErrorInAnyKindOfQuestion() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 12);
        Map<String, Sample> samples =
                Benchmark.ask(new Knowing(), RatioTasks.of(all), List.of()).byName();
        for (RatioKind kind : RatioKind.values()) {
            assertTrue(samples.get(kind.id() + ".error").size() > 12, kind.id());
            assertEquals(0, samples.get(kind.id() + ".error").mean(), 1e-9, kind.id());
            assertEquals(1, samples.get(kind.id() + ".cover90").mean(), 0, kind.id());
            assertEquals(2e-6, samples.get(kind.id() + ".interval-score").mean(), 1e-9, kind.id());
        }
    }

    @Test
    void whoKnowsTheTruthHitsAllPlatesThatArePossible() throws IOException {
        List<PlateTask> tasks = PlateTasks.of(Invented.measurements(folder, 30), 600, 5);
        double possible = tasks.stream().filter(PlateTask::possible).count() / (double) tasks.size();
        Map<String, Sample> samples =
                Benchmark.ask(new Peeking(tasks.iterator()), List.of(), tasks).byName();
        assertTrue(possible > 0.2 && possible < 0.99, "both kinds are drawn: " + possible);
        assertEquals(1, samples.get("plates.possible.hit").mean(), 0);
        assertEquals(1, samples.get("plates.possible.three-spots.hit").mean(), 0);
        assertEquals(possible, samples.get("plates.all.hit").mean(), 1e-12);
        assertEquals(0, samples.get("plates.all.said-less-came").mean(), 0);
        assertFalse(samples.containsKey("plates.all.fifth-3.said"), "it is always sure");
    }

    // Own arithmetic: guess 0.5 in [0.4, 0.6] for truths 0.5, 0.7, 0.25. Errors 0, 0.2, 0.25; one of three held, one
    // above, one below; interval scores 0.2, 0.2 + 20·0.1, 0.2 + 20·0.15.
    @Test
    void marksOfOneForecastAreThoseByHand() {
        RatioTask task = new RatioTask(
                RatioKind.ONE_TRIAL,
                Invented.series(0),
                List.of(new TrialReading(ACETATE, 10, 0.3)),
                List.of(20.0, 30.0, 40.0),
                List.of(0.5, 0.7, 0.25));
        Contender contender = new Stubborn(new Guess(0.5, 0.4, 0.6), new Choice(50, 0.5));
        Map<String, Sample> samples =
                Benchmark.ask(contender, List.of(task), List.of()).byName();
        for (String kind : List.of("one-trial", "one-trial-informative")) {
            assertEquals(0.15, samples.get(kind + ".error").mean(), 1e-12);
            assertEquals(1 / 3.0, samples.get(kind + ".cover90").mean(), 1e-12);
            assertEquals(1 / 3.0, samples.get(kind + ".cover90.middle-third").mean(), 1e-12);
            assertEquals(1 / 3.0, samples.get(kind + ".truth-below-band").mean(), 1e-12);
            assertEquals(1 / 3.0, samples.get(kind + ".truth-above-band").mean(), 1e-12);
            assertEquals(5.6 / 3, samples.get(kind + ".interval-score").mean(), 1e-12);
        }
        assertFalse(samples.containsKey("one-trial.cover90.low-third"));
    }

    @Test
    void anRfAtAnEdgeOfTheBandIsHeld() {
        RatioTask task = new RatioTask(
                RatioKind.ONE_TRIAL,
                Invented.series(0),
                List.of(new TrialReading(ACETATE, 10, 0.01)),
                List.of(20.0, 30.0),
                List.of(0.4, 0.6));
        Contender contender = new Stubborn(new Guess(1, 0.4, 0.6), new Choice(50, 0.5));
        Map<String, Sample> samples =
                Benchmark.ask(contender, List.of(task), List.of()).byName();
        assertEquals(1, samples.get("one-trial.cover90.high-third").mean(), 0);
        assertFalse(samples.containsKey("one-trial-informative.error"), "a trial at the start line tells little");
    }

    // Own algebra: with Rf = 1/(1 + exp(−c)·51^−1.5) at 50 %, which is a measured ratio, c = −6.5 + 0.5·i gives for
    // i = 0 … 11 the Rf 0.354, 0.474, 0.598, 0.710, 0.802, …: four of twelve compounds lie in the window.
    @Test
    void whoAlwaysSaysFiftyPercentHitsWhatLiesThere() throws IOException {
        List<PlateTask> tasks = PlateTasks.of(Invented.measurements(folder, 12), 900, 6);
        Contender contender = new Stubborn(new Guess(0.5, 0.4, 0.6), new Choice(50, 0.35));
        Map<String, Sample> samples = Benchmark.ask(contender, List.of(), tasks).byName();
        double hits = 0;
        for (PlateTask task : tasks) {
            hits += task.spots().stream().allMatch(spot -> spot.series().compound() <= 3) ? 1 : 0;
        }
        double came = hits / tasks.size();
        assertEquals(4 / 12.0, samples.get("plates.all.one-spot.hit").mean(), 0.09, "drawn evenly");
        assertEquals(came, samples.get("plates.all.hit").mean(), 1e-12);
        assertEquals(0.35, samples.get("plates.all.said").mean(), 1e-12);
        assertEquals(0.35 - came, samples.get("plates.all.said-less-came").mean(), 1e-12);
        assertEquals(
                came * 0.65 * 0.65 + (1 - came) * 0.35 * 0.35,
                samples.get("plates.all.squared-slip").mean(),
                1e-12);
        assertEquals(0.35, samples.get("plates.all.fifth-2.said").mean(), 1e-12);
        assertEquals(came, samples.get("plates.all.fifth-2.came").mean(), 1e-12);
    }

    @Test
    void whatAContenderDoesNotForetellIsLeftOut() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 6);
        Contender contender = new Knowing() {
            @Override
            public boolean foretells(PairName pair, PairName trials) {
                return pair == trials;
            }
        };
        Map<String, Sample> samples =
                Benchmark.ask(contender, RatioTasks.of(all), List.of()).byName();
        assertTrue(samples.containsKey("methanol-one-trial.error"));
        assertFalse(samples.containsKey("switch-to-methanol.error"));
        assertFalse(samples.containsKey("switch-to-ether.error"));
    }

    @Test
    void tooFewGuessesAreNotedAgainstTheContender() {
        RatioTask task = new RatioTask(
                RatioKind.ONE_TRIAL,
                Invented.series(0),
                List.of(new TrialReading(ACETATE, 10, 0.3)),
                List.of(20.0, 30.0),
                List.of(0.4, 0.6));
        Contender lazy = new Knowing() {
            @Override
            public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
                return List.of();
            }
        };
        Exception refusal =
                assertThrows(IllegalStateException.class, () -> Benchmark.ask(lazy, List.of(task), List.of()));
        assertTrue(refusal.getMessage().contains("0 guesses; asked were 2"), refusal.getMessage());
    }

    /** Sees the tasks as they come, takes the first ratio that is a hit, and says whether there is one. */
    private static final class Peeking implements Contender {
        private final Iterator<PlateTask> tasks;

        Peeking(Iterator<PlateTask> tasks) {
            this.tasks = tasks;
        }

        @Override
        public String name() {
            return "peeking";
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            throw new UnsupportedOperationException("asked about plates only");
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            PlateTask task = tasks.next();
            for (double percent = 0; percent <= 100; percent += 0.5) {
                if (task.hitAt(percent)) {
                    return new Choice(percent, 1);
                }
            }
            return new Choice(50, 0);
        }
    }
}
