package midplate.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import midplate.inference.Fold;
import midplate.inference.OpenMeasurements;

/**
 * Cross-validation over structures: each fold is asked about by contenders that have seen the other folds only.
 *
 * <p>Every contender gets the same questions. The same measurements, plan and contenders give the same results to the last
 * digit, whatever the number of threads.
 */
public final class Benchmark {
    /** So far from the seeds of the other draws that no fold shares one. */
    private static final int UNLABELLED_SEED = 1_001;

    private final OpenMeasurements measurements;
    private final List<ContenderFactory> factories;
    private final Plan plan;

    private Benchmark(OpenMeasurements measurements, List<ContenderFactory> factories, Plan plan) {
        this.measurements = measurements;
        this.factories = List.copyOf(factories);
        this.plan = plan;
    }

    /**
     * Runs it.
     *
     * @param measurements to learn from and to ask about
     * @param factories the contenders, each with a name of its own
     * @param plan how much is asked
     */
    public static Accuracy run(OpenMeasurements measurements, List<ContenderFactory> factories, Plan plan) {
        long names = factories.stream().map(ContenderFactory::name).distinct().count();
        if (names != factories.size()) {
            throw new IllegalArgumentException("Two contenders have one name; give each its own.");
        }
        return new Benchmark(measurements, factories, plan).run();
    }

    private Accuracy run() {
        Map<String, Samples> all = new LinkedHashMap<>();
        factories.forEach(factory -> all.put(factory.name(), new Samples()));
        for (Map<String, Samples> fold : folds()) {
            fold.forEach((name, samples) ->
                    all.computeIfAbsent(name, key -> new Samples()).addAll(samples));
        }
        Bootstrap bootstrap = new Bootstrap(measurements.series(), plan.resamples(), plan.seed());
        return Accuracy.of(setting(), all, bootstrap);
    }

    private List<Map<String, Samples>> folds() {
        ExecutorService threads = Executors.newFixedThreadPool(Math.min(plan.threads(), plan.folds()));
        try {
            List<Future<Map<String, Samples>>> running = new ArrayList<>();
            for (int i = 0; i < plan.folds(); i++) {
                Fold fold = new Fold(i, plan.folds());
                running.add(threads.submit(() -> ask(fold)));
            }
            List<Map<String, Samples>> done = new ArrayList<>();
            for (Future<Map<String, Samples>> fold : running) {
                done.add(fold.get());
            }
            return done;
        } catch (ExecutionException e) {
            throw new IllegalStateException("A fold failed: " + e.getCause(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted before the last fold was done; run it again.", e);
        } finally {
            threads.shutdownNow();
        }
    }

    private Map<String, Samples> ask(Fold fold) {
        OpenMeasurements training = measurements.select(fold, Fold.Part.OUTSIDE);
        OpenMeasurements asked = measurements.select(fold, Fold.Part.INSIDE);
        List<RatioTask> ratios = RatioTasks.of(asked);
        List<PlateTask> plates = PlateTasks.of(asked, plan.setsPerFold(), plan.seed() + 1 + fold.index());
        List<UnlabelledTask> unlabelled =
                UnlabelledTasks.of(asked, plan.unlabelledPerFold(), plan.seed() + UNLABELLED_SEED + fold.index());
        Map<String, Samples> results = new LinkedHashMap<>();
        for (ContenderFactory factory : factories) {
            Contender contender = new Remembering(factory.trainedOn(training));
            Samples samples = ask(contender, ratios, plates);
            UnlabelledMarks marks = new UnlabelledMarks(samples);
            unlabelled.forEach(task -> marks.mark(task, contender));
            results.put(factory.name(), samples);
        }
        return results;
    }

    /** Puts questions to one contender and marks its answers. */
    static Samples ask(Contender contender, List<RatioTask> ratios, List<PlateTask> plates) {
        Samples samples = new Samples();
        RatioMarks ratioMarks = new RatioMarks(samples);
        PlateMarks plateMarks = new PlateMarks(samples);
        ratios.forEach(task -> ratioMarks.mark(task, contender));
        plates.forEach(task -> plateMarks.mark(task, contender));
        return samples;
    }

    private Map<String, Object> setting() {
        Map<String, Object> setting = new LinkedHashMap<>();
        setting.put("measurements", "Xu2022");
        setting.put("sha256", measurements.sha256());
        setting.put("rows", measurements.rowsRead());
        setting.put("seriesInUse", measurements.series().size());
        setting.put("structuresInUse", measurements.structures().size());
        setting.put("structuresLeftOut", measurements.contradictions().size());
        setting.put("folds", plan.folds());
        setting.put("setsPerFold", plan.setsPerFold());
        setting.put("unlabelledPerFold", plan.unlabelledPerFold());
        setting.put("resamples", plan.resamples());
        setting.put("seed", plan.seed());
        return setting;
    }
}
