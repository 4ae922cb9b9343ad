package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.benchmark.Invented.Knowing;
import midplate.chemistry.RetentionFactor;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Samples with a plate without labels")
class UnlabelledTasksTest {
    private static final PairName ACETATE = PairName.HEXANE_ETHYL_ACETATE;

    @TempDir
    Path folder;

    // Invented: on the plates at 5 and 50 % compounds 1 and 2 change places; 3 runs beside 2 at 50 %.
    @Test
    void namesFollowTheFirstPlateAndTheTruthTheSecond() throws IOException {
        UnlabelledTask task = new UnlabelledTask(CrossingCurves.all(folder), 4.76, 50);
        assertEquals(
                List.of(0.1, 0.2, 0.3),
                task.labelled(4.76).stream().map(TrialReading::rf).toList());
        assertEquals(
                List.of(2, 1, 3),
                task.spots().stream().map(spot -> spot.series().compound()).toList());
        // compound 1 is now lowest; 2 and 3, at 0.70 and 0.73, look like one
        assertEquals(List.of(Set.of(1), Set.of(0, 2)), task.truth());
        // halfway between 0.70 and 0.73, read to two decimals
        assertEquals(0.5, task.told().seen().get(0), 1e-12);
        assertEquals(0.715, task.told().seen().get(1), 0.0051);
        assertEquals(task.labelled(4.76), task.told().labelled());
        assertEquals(50, task.told().percent());
        assertFalse(task.apart());
        assertTrue(new UnlabelledTask(CrossingCurves.all(folder).subList(0, 2), 4.76, 50).apart());
    }

    @Test
    void spotsInARowNearerThanFourHundredthsAreOne() throws IOException {
        List<TrueCurve> curves = TrueCurve.of(Invented.measurements(folder, 12).table(ACETATE));
        // own algebra: Rf 0.0015, 0.0025 and 0.0041 at 0 %
        UnlabelledTask task = new UnlabelledTask(curves.subList(0, 3), 50, 0);
        assertEquals(List.of(Set.of(0, 1, 2)), task.truth());
        assertEquals(1, task.told().seen().size());
    }

    @Test
    void otherRatiosAreThoseOfNeitherPlate() throws IOException {
        List<TrueCurve> curves = TrueCurve.of(Invented.measurements(folder, 12).table(ACETATE));
        UnlabelledTask task = new UnlabelledTask(curves.subList(0, 2), 33.3, 2);
        assertArrayEquals(new double[] {5, 10, 20, 50, 75, 100}, task.others());
    }

    @Test
    void areDrawnEvenlyAndTheSameAgain() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 10);
        List<UnlabelledTask> tasks = UnlabelledTasks.of(all, 2400, 11);
        assertEquals(texts(tasks), texts(UnlabelledTasks.of(all, 2400, 11)));
        assertFalse(texts(tasks).equals(texts(UnlabelledTasks.of(all, 2400, 12))));
        for (int spots = 2; spots <= 3; spots++) {
            int size = spots;
            long drawn =
                    tasks.stream().filter(task -> task.spots().size() == size).count();
            assertEquals(1200.0, (double) drawn, 120.0, spots + " spots");
        }
        for (double percent : PlateTasks.TRIAL_PERCENTS) {
            long first = tasks.stream().filter(task -> task.first() == percent).count();
            long second =
                    tasks.stream().filter(task -> task.second() == percent).count();
            assertEquals(300.0, (double) first, 80.0, "first at " + percent);
            assertEquals(300.0, (double) second, 80.0, "second at " + percent);
        }
        assertTrue(tasks.stream().allMatch(task -> task.first() != task.second()));
        assertTrue(tasks.stream()
                .allMatch(task ->
                        new HashSet<>(task.members()).size() == task.spots().size()));
        assertEquals(List.of(), UnlabelledTasks.of(Invented.measurements(folder, 2), 100, 11));
    }

    // Compounds differ by 0.2 in c, which a reading at Rf 0.3 to 0.7 tells apart: what is told names its compound.
    @Test
    void noCompoundThatWasTrainedOnIsJudged() throws IOException {
        int compounds = 28;
        OpenMeasurements all = Invented.measurements(folder, compounds);
        Set<Integer> judged = new HashSet<>();
        ContenderFactory watching = new ContenderFactory() {
            @Override
            public String name() {
                return "watching";
            }

            @Override
            public Set<Further> further() {
                return Set.of(Further.UNLABELLED);
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                Set<Integer> seen = training.series().stream()
                        .map(series -> series.compound())
                        .collect(Collectors.toSet());
                return new Knowing() {
                    @Override
                    public Optional<Matched> match(HalfLabelled plates, double[] percents) {
                        for (TrialReading trial : plates.labelled()) {
                            if (trial.rf() >= 0.3 && trial.rf() <= 0.7) {
                                double c = RetentionFactor.logit(trial.rf()) - Invented.strength(trial.percent());
                                int compound = (int) Math.rint((c + 6.5) / 5.5 * (compounds - 1));
                                assertFalse(seen.contains(compound), compound + " of " + trial);
                                judged.add(compound);
                            }
                        }
                        return Optional.empty();
                    }
                };
            }
        };
        Benchmark.run(all, List.of(watching), new Plan(5, 3000, 2, 7, 1));
        assertTrue(judged.size() > compounds / 2, judged + " were judged");
    }

    private static List<String> texts(List<UnlabelledTask> tasks) {
        return tasks.stream()
                .map(task -> task.first() + " " + task.second() + " " + task.members())
                .toList();
    }
}
