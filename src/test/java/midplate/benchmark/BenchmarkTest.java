package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import midplate.benchmark.Invented.Knowing;
import midplate.benchmark.Invented.Stubborn;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.OpenMeasurements;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The benchmark")
class BenchmarkTest {
    private static final Plan SMALL = new Plan(5, 60, 20, 7, 1);

    @TempDir
    Path folder;

    @Test
    void contendersSeeTheOtherFoldsAndNothingOfTheirOwn() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 25);
        List<Set<String>> seen = new CopyOnWriteArrayList<>();
        ContenderFactory watching = new ContenderFactory() {
            @Override
            public String name() {
                return "watching";
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                seen.add(new HashSet<>(training.structures()));
                return new Knowing();
            }
        };
        Benchmark.run(all, List.of(watching), SMALL);
        assertEquals(5, seen.size());
        List<String> hidden = new ArrayList<>();
        for (Set<String> training : seen) {
            all.structures().stream()
                    .filter(smiles -> !training.contains(smiles))
                    .forEach(hidden::add);
        }
        assertEquals(all.structures().size(), hidden.size());
        assertEquals(new HashSet<>(all.structures()), new HashSet<>(hidden));
    }

    @Test
    void theNumberOfThreadsSaysNothing() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 40);
        List<ContenderFactory> peers = Peers.uncalibrated(SolventCatalogue.builtIn());
        String one = AccuracyFile.write(Benchmark.run(all, peers, SMALL));
        String two = AccuracyFile.write(Benchmark.run(all, peers, new Plan(5, 60, 20, 7, 2)));
        assertEquals(one, two);
    }

    @Test
    void aRememberedAnswerIsTheAnswer() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 12);
        List<RatioTask> ratios = RatioTasks.of(all);
        List<PlateTask> plates = PlateTasks.of(all, 400, 3);
        Knowing afresh = new Knowing();
        Knowing once = new Knowing();
        Map<String, Sample> one = Benchmark.ask(afresh, ratios, plates).byName();
        Map<String, Sample> other =
                Benchmark.ask(new Remembering(once), ratios, plates).byName();
        assertEquals(one.keySet(), other.keySet());
        one.forEach((name, sample) -> {
            assertEquals(sample.size(), other.get(name).size(), name);
            assertEquals(sample.mean(), other.get(name).mean(), 0, name);
        });
        assertEquals(ratios.size() + 400, afresh.asked());
        assertTrue(once.asked() < afresh.asked() - 50, once.asked() + " of " + afresh.asked());
    }

    @Test
    void differencesArePairedAndOneAgainstItselfIsNothing() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 20);
        ContenderFactory right = Invented.factory("right", Knowing::new);
        ContenderFactory again = Invented.factory("again", Knowing::new);
        ContenderFactory fixed =
                Invented.factory("fixed", () -> new Stubborn(new Guess(0.5, 0.1, 0.9), new Choice(50, 0.5)));
        Accuracy accuracy = Benchmark.run(all, List.of(right, again, fixed), SMALL);
        accuracy.differences().get("right − again").forEach((name, figure) -> {
            assertEquals(0, figure.value(), 0, name);
            assertEquals(0, figure.standardError(), 0, name);
        });
        Figure gain = accuracy.differences().get("right − fixed").get("one-trial.error");
        Figure error = accuracy.contenders().get("fixed").get("one-trial.error");
        assertEquals(-error.value(), gain.value(), 1e-9);
        assertEquals(error.standardError(), gain.standardError(), 1e-9);
        assertEquals(
                Set.of("right − again", "right − fixed"), accuracy.differences().keySet());
    }

    // Structures 26 and 27 are like 0 and 1: whoever is asked about one of such two has not learned from the other.
    @Test
    void neighboursAreLeftOutOfTheSecondTrainingOnly() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 28);
        List<Set<String>> seen = new CopyOnWriteArrayList<>();
        ContenderFactory watching = new ContenderFactory() {
            @Override
            public String name() {
                return "watching";
            }

            @Override
            public Set<Further> further() {
                return Set.of(Further.NEIGHBOURS_LEFT_OUT);
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                seen.add(new HashSet<>(training.structures()));
                return new Knowing();
            }
        };
        Accuracy accuracy = Benchmark.run(all, List.of(watching), SMALL);
        assertEquals(10, seen.size());
        int left = 0;
        for (int i = 0; i < 10; i += 2) {
            Set<String> usual = seen.get(i);
            Set<String> without = seen.get(i + 1);
            assertTrue(usual.containsAll(without));
            for (String smiles : List.of("A", "B")) {
                boolean apart = usual.contains(smiles.repeat(4)) != usual.contains(smiles.repeat(5));
                boolean neither = !without.contains(smiles.repeat(4)) && !without.contains(smiles.repeat(5));
                assertEquals(apart, neither, smiles);
                left += apart ? 1 : 0;
            }
        }
        assertTrue(left > 0, "some two stood in different folds");
        Figure difference =
                accuracy.differences().get(Accuracy.toUsual("watching")).get("one-trial.error");
        assertEquals(0, difference.value(), 0);
        assertTrue(difference.count() > 28 * 7 * 7, "" + difference);
    }

    @Test
    void onlyWhoIsNamedIsAskedFurther() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 20);
        Accuracy accuracy = Benchmark.run(all, List.of(Invented.factory("plain", Knowing::new)), SMALL);
        assertEquals(Set.of(Accuracy.REPEAT), accuracy.ceilings().keySet());
        assertEquals(Map.of(), accuracy.neighboursLeftOut());
        assertEquals(Map.of(), accuracy.plateError());
    }

    @Test
    void twoContendersOfOneNameAreRefused() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 5);
        ContenderFactory one = Invented.factory("same", Knowing::new);
        assertThrows(IllegalArgumentException.class, () -> Benchmark.run(all, List.of(one, one), SMALL));
    }

    @ParameterizedTest
    @CsvSource({"1, 10, 10, 1, folds", "5, -1, 10, 1, setsPerFold", "5, 10, 1, 1, resamples", "5, 10, 10, 0, threads"})
    void aPlanOutsideItsRangesIsRefused(int folds, int sets, int resamples, int threads, String named) {
        Exception refusal =
                assertThrows(IllegalArgumentException.class, () -> new Plan(folds, sets, resamples, 1, threads));
        assertTrue(refusal.getMessage().startsWith(named + ": came "), refusal.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0, 1", "1.1, 0, 1", "-0.1, 0, 1", "0.5, 0.6, 0.4", "0.5, NaN, 1"})
    void aGuessThatIsNoneIsRefused(double rf, double low, double high) {
        assertThrows(IllegalArgumentException.class, () -> new Guess(rf, low, high));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0.5", "101, 0.5", "-1, 0.5", "50, NaN", "50, 1.01", "50, -0.01"})
    void aChoiceThatIsNoneIsRefused(double percent, double chance) {
        assertThrows(IllegalArgumentException.class, () -> new Choice(percent, chance));
    }
}
