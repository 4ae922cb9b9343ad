package midplate.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import midplate.inference.Fold;
import midplate.inference.GroupCounter;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;

/**
 * Cross-validation over structures: each fold is asked about by contenders that have seen the other folds only.
 *
 * <p>Every contender gets the same questions. The same measurements, plan and contenders give the same results to the last
 * digit, whatever the number of threads.
 */
public final class Benchmark {
    private final OpenMeasurements measurements;
    private final List<ContenderFactory> factories;
    private final Plan plan;

    private final Optional<StructureContenders> structures;

    private Benchmark(
            OpenMeasurements measurements,
            List<ContenderFactory> factories,
            Optional<StructureContenders> structures,
            Plan plan) {
        this.structures = structures;
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
        return run(measurements, factories, Optional.empty(), plan);
    }

    /**
     * The same, with structures told besides.
     *
     * @param counter finds the groups of a structure
     */
    public static Accuracy run(
            OpenMeasurements measurements, List<ContenderFactory> factories, GroupCounter counter, Plan plan) {
        return run(measurements, factories, Optional.of(new StructureContenders(counter)), plan);
    }

    private static Accuracy run(
            OpenMeasurements measurements,
            List<ContenderFactory> factories,
            Optional<StructureContenders> structures,
            Plan plan) {
        long names = factories.stream().map(ContenderFactory::name).distinct().count();
        if (names != factories.size()) {
            throw new IllegalArgumentException("Two contenders have one name; give each its own.");
        }
        return new Benchmark(measurements, factories, structures, plan).run();
    }

    private Accuracy run() {
        List<FoldQuestions> folds = new ArrayList<>();
        for (int i = 0; i < plan.folds(); i++) {
            folds.add(FoldQuestions.of(measurements, new Fold(i, plan.folds()), plan));
        }
        Results all = new Results();
        answers(folds).forEach(all::addAll);
        Accuracy accuracy =
                Accuracy.of(setting(folds), all, new Bootstrap(measurements.series(), plan.resamples(), plan.seed()));
        return withCeilings(accuracy, all);
    }

    private Accuracy withCeilings(Accuracy accuracy, Results all) {
        Accuracy more = accuracy.withCeiling(
                Accuracy.REPEAT, RepeatMarks.of(measurements).figures(plan.resamples(), plan.seed()));
        for (Samples samples : all.part(Results.Part.IF_TRUE).values()) {
            Bootstrap bootstrap = new Bootstrap(samples.members(), plan.resamples(), plan.seed());
            more = more.withCeiling(Accuracy.IF_TRUE, Accuracy.figures(samples, bootstrap));
        }
        for (Samples samples : all.part(Results.Part.SHARED_SCATTER).values()) {
            more = more.withCeiling(Accuracy.SHARED_SCATTER, SharedScatter.figures(samples));
        }
        return more;
    }

    private List<Results> answers(List<FoldQuestions> folds) {
        ExecutorService threads = Executors.newFixedThreadPool(plan.threads());
        try {
            List<Future<Results>> running = new ArrayList<>();
            for (FoldQuestions fold : folds) {
                for (ContenderFactory factory : factories) {
                    running.add(threads.submit(() -> ask(fold, factory)));
                }
                structures.ifPresent(contenders -> running.add(threads.submit(() -> {
                    Results results = new Results();
                    contenders.ask(fold, results);
                    return results;
                })));
            }
            List<Results> done = new ArrayList<>();
            for (Future<Results> fold : running) {
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

    private static Results ask(FoldQuestions fold, ContenderFactory factory) {
        Results results = new Results();
        String name = factory.name();
        Set<Further> further = factory.further();
        Contender contender = new Remembering(factory.trainedOn(fold.training()));
        Samples usual = results.samples(Results.Part.CONTENDERS, name);
        ask(contender, fold, Told.TRIALS, usual);
        if (further.contains(Further.UNLABELLED)) {
            UnlabelledMarks marks = new UnlabelledMarks(usual);
            fold.unlabelled().forEach(task -> marks.mark(task, contender));
        }
        if (further.contains(Further.CEILING)) {
            ask(contender, fold, Told.ALL_ELSE, results.samples(Results.Part.CEILINGS, name));
        }
        if (further.contains(Further.IF_TRUE)) {
            contender
                    .expected(fold.training(), fold.number())
                    .ifPresent(expected -> results.samples(Results.Part.IF_TRUE, name)
                            .addAll(ask(contender, RatioTasks.of(expected), fold.platesOf(expected))));
        }
        if (further.contains(Further.SHARED_SCATTER)) {
            SharedScatter.note(fold.wholes(), contender, results.samples(Results.Part.SHARED_SCATTER, name));
        }
        if (further.contains(Further.PLATE_ERROR)) {
            fold.moved().forEach(task -> PlateErrorMarks.mark(task, contender, results));
        }
        if (further.contains(Further.SCOUTING)) {
            fold.scouting().forEach(task -> ScoutingMarks.mark(task, contender, results));
        }
        if (further.contains(Further.THEORY)) {
            for (PairName pair : PairName.values()) {
                Contender unmeasured = new Remembering(factory.trainedWithout(pair, fold.training()));
                List<RatioTask> switches = fold.ratios().stream()
                        .filter(task -> task.kind().pair() == pair && !task.inOnePair())
                        .toList();
                results.samples(Results.Part.THEORY, name).addAll(ask(unmeasured, switches, List.of()));
            }
        }
        if (further.contains(Further.NEIGHBOURS_LEFT_OUT)) {
            Contender stranger = new Remembering(factory.trainedOn(fold.trainingWithoutNeighbours()));
            ask(stranger, fold, Told.TRIALS, results.samples(Results.Part.NEIGHBOURS_LEFT_OUT, name));
        }
        return results;
    }

    private static void ask(Contender contender, FoldQuestions fold, Told told, Samples samples) {
        samples.addAll(ask(contender, fold.ratios(), fold.plates(), told));
    }

    /** Puts questions to one contender and marks its answers. */
    static Samples ask(Contender contender, List<RatioTask> ratios, List<PlateTask> plates) {
        return ask(contender, ratios, plates, Told.TRIALS);
    }

    /** The same with so much told. */
    static Samples ask(Contender contender, List<RatioTask> ratios, List<PlateTask> plates, Told told) {
        Samples samples = new Samples();
        RatioMarks ratioMarks = new RatioMarks(samples, told);
        PlateMarks plateMarks = new PlateMarks(samples, told);
        ratios.forEach(task -> ratioMarks.mark(task, contender));
        plates.forEach(task -> plateMarks.mark(task, contender));
        return samples;
    }

    private Map<String, Object> setting(List<FoldQuestions> folds) {
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
        setting.put("plateErrorPerFold", plan.plateErrorPerFold());
        setting.put("scoutingPerFold", plan.scoutingPerFold());
        setting.put("structuresToLearnFrom", listed(folds, FoldQuestions::training));
        setting.put("structuresWithoutNeighbours", listed(folds, FoldQuestions::trainingWithoutNeighbours));
        setting.put("structuresWithTwoCurves", RepeatMarks.structuresWithTwoCurves(measurements));
        setting.put("resamples", plan.resamples());
        setting.put("seed", plan.seed());
        return setting;
    }

    private static String listed(List<FoldQuestions> folds, Function<FoldQuestions, OpenMeasurements> part) {
        return folds.stream()
                .map(fold -> Integer.toString(part.apply(fold).structures().size()))
                .collect(Collectors.joining(", "));
    }
}
