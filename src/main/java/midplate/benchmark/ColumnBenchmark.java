package midplate.benchmark;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import midplate.advice.Adviser;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.BadMeasurements;
import midplate.inference.ColumnCalibration;
import midplate.inference.ColumnMeasurement;
import midplate.inference.ColumnMeasurements;
import midplate.inference.ColumnTerm;
import midplate.inference.Fold;
import midplate.inference.Form;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;
import midplate.inference.Series;

/**
 * Cross-validation of columns over structures: curves and law of each fold were fitted to the other folds, their terms chosen there,
 * too. Asked are the runs of compounds whose plates are known, at an Rf of 0.1 to 0.6.
 */
final class ColumnBenchmark {
    /** The program. */
    static final String PROGRAM = "Midplate";
    /** The ideal law, with the void that was fitted. */
    static final String IDEAL = "Ideal law";
    /** A void and what is held in the proportion of a plate. */
    static final String PLAIN = "Void and hold";
    /** One run of a compound, cartridge and eluent foretelling another. */
    static final String REPEAT = "A second run";

    private static final String COMMAND = "benchmark FOLDER";
    private static final double LOW_RF = 0.1;
    private static final double HIGH_RF = 0.6;

    private final OpenMeasurements plates;
    private final ColumnMeasurements columns;
    private final SolventCatalogue catalogue;
    private final Plan plan;

    private ColumnBenchmark(
            OpenMeasurements plates, ColumnMeasurements columns, SolventCatalogue catalogue, Plan plan) {
        this.plates = plates;
        this.columns = columns;
        this.catalogue = catalogue;
        this.plan = plan;
    }

    /** Runs it: figures by contender, and the differences of the first one less each other. */
    static Accuracy run(
            OpenMeasurements plates,
            ColumnMeasurements columns,
            SolventCatalogue catalogue,
            Plan plan,
            Accuracy before) {
        return new ColumnBenchmark(plates, columns, catalogue, plan).run(before);
    }

    private static Map<String, Set<ColumnTerm>> variants() {
        Map<String, Set<ColumnTerm>> variants = new LinkedHashMap<>();
        variants.put(PROGRAM, EnumSet.allOf(ColumnTerm.class));
        variants.put(PLAIN, EnumSet.of(ColumnTerm.SPOT, ColumnTerm.LOAD));
        for (ColumnTerm term : ColumnTerm.values()) {
            variants.put("without " + NAMES.get(term), EnumSet.complementOf(EnumSet.of(term)));
        }
        return variants;
    }

    private static final Map<ColumnTerm, String> NAMES =
            Map.of(ColumnTerm.STEEPNESS, "γ", ColumnTerm.DRIFT, "λ", ColumnTerm.SPOT, "δ", ColumnTerm.LOAD, "load");

    private Accuracy run(Accuracy before) {
        Results all = new Results();
        List<String> terms = new ArrayList<>();
        variants().keySet().forEach(name -> all.samples(Results.Part.COLUMNS, name));
        ExecutorService threads = Executors.newFixedThreadPool(plan.threads());
        try {
            List<Future<Answered>> running = new ArrayList<>();
            for (int i = 0; i < plan.folds(); i++) {
                Fold fold = new Fold(i, plan.folds());
                running.add(threads.submit(() -> ask(fold)));
            }
            for (Future<Answered> fold : running) {
                all.addAll(fold.get().results());
                terms.add(fold.get().terms());
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof BadMeasurements bad) {
                throw bad;
            }
            throw new IllegalStateException("A fold failed: " + e.getCause(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted before the last fold was done; run it again.", e);
        } finally {
            threads.shutdownNow();
        }
        List<Series> compounds = ColumnTask.of(plates, columns).stream()
                .flatMap(task -> ColumnMarks.of(task.smiles()).stream())
                .toList();
        Map<String, Object> setting = new LinkedHashMap<>();
        setting.put("columnMeasurements", "Wu2024");
        setting.put("columnSha256", columns.sha256());
        setting.put("columnRows", columns.rowsRead());
        setting.put("columnRunsInUse", columns.runs().size());
        setting.put("columnTerms", String.join(", ", terms));
        setting.put("columnStructuresWithPlates", compounds.size());
        return before.withColumns(setting, all, new Bootstrap(compounds, plan.resamples(), plan.seed()));
    }

    /** The marks of a fold, and the terms that its training called for. */
    private record Answered(Results results, String terms) {}

    private Answered ask(Fold fold) {
        OpenMeasurements training = plates.select(fold, Fold.Part.OUTSIDE);
        MeasuredPairs curves = PairCalibration.fit(training, catalogue, COMMAND, Form.THREE_TRAITS);
        Adviser adviser = Adviser.of(catalogue, curves);
        ColumnMeasurements others = columns.select(fold, Fold.Part.OUTSIDE);
        List<ColumnTask> tasks =
                ColumnTask.of(plates.select(fold, Fold.Part.INSIDE), columns.select(fold, Fold.Part.INSIDE));
        Results results = new Results();
        StringBuilder found = new StringBuilder();
        variants().forEach((name, terms) -> {
            ColumnLaw law = ColumnCalibration.fit(training, others, curves, COMMAND, terms);
            if (name.equals(PROGRAM)) {
                found.append(terms(law));
            }
            ColumnAnswers answers = new ColumnAnswers(adviser, law, catalogue);
            Samples samples = results.samples(Results.Part.COLUMNS, name);
            Optional<Samples> ideal =
                    name.equals(PROGRAM) ? Optional.of(results.samples(Results.Part.COLUMNS, IDEAL)) : Optional.empty();
            for (ColumnTask task : tasks) {
                ask(
                        task,
                        answers,
                        new ColumnMarks(samples, task.smiles()),
                        ideal.map(each -> new ColumnMarks(each, task.smiles())));
                if (name.equals(PROGRAM)) {
                    repeats(
                            task,
                            answers,
                            new ColumnMarks(results.samples(Results.Part.COLUMNS, REPEAT), task.smiles()));
                }
            }
        });
        return new Answered(results, found.toString());
    }

    private static String terms(ColumnLaw law) {
        StringBuilder terms = new StringBuilder();
        terms.append(law.steepness() == 1 ? "" : NAMES.get(ColumnTerm.STEEPNESS));
        terms.append(law.drift() == 0 ? "" : NAMES.get(ColumnTerm.DRIFT));
        terms.append(law.spotSpread() == 0 ? "" : NAMES.get(ColumnTerm.SPOT));
        terms.append(law.width().perLogLoad() == 0 ? "" : " " + NAMES.get(ColumnTerm.LOAD));
        return terms.toString();
    }

    private static void ask(ColumnTask task, ColumnAnswers answers, ColumnMarks marks, Optional<ColumnMarks> ideal) {
        ColumnAnswers.Remembered all = new ColumnAnswers.Remembered(answers.told(task.plates(), Optional.empty()));
        Map<Double, ColumnAnswers.Remembered> same = new LinkedHashMap<>();
        List<ColumnMeasurement> asked = task.runs().stream()
                .filter(run -> isAsked(task, all, run.percentStrong()))
                .toList();
        for (ColumnMeasurement run : asked) {
            marks.middle("all", run, all.of(run).middleMl());
            marks.bands("all", run, all.of(run));
            ideal.ifPresent(each -> each.middle("all", run, all.idealMl(run)));
            Map<Double, Double> plate = task.plateAt(run.percentStrong());
            if (!plate.isEmpty()) {
                ColumnAnswers.Remembered one = same.computeIfAbsent(
                        run.percentStrong(),
                        key -> new ColumnAnswers.Remembered(answers.told(plate, Optional.empty())));
                marks.middle("same", run, one.of(run).middleMl());
                ideal.ifPresent(each -> each.middle("same", run, one.idealMl(run)));
            }
        }
        earlier(task, answers, marks, all, asked);
    }

    /** Each eluent of the 4 g cartridges once as the earlier column, its first run; every run in another eluent is asked. */
    private static void earlier(
            ColumnTask task,
            ColumnAnswers answers,
            ColumnMarks marks,
            ColumnAnswers.Remembered all,
            List<ColumnMeasurement> asked) {
        Map<Double, ColumnMeasurement> first = new LinkedHashMap<>();
        task.runs().stream()
                .filter(ColumnMarks::isUsualSize)
                .forEach(run -> first.putIfAbsent(run.percentStrong(), run));
        for (ColumnMeasurement seen : first.values()) {
            ColumnAnswers.Remembered told =
                    new ColumnAnswers.Remembered(answers.told(task.plates(), Optional.of(seen)));
            for (ColumnMeasurement run : asked) {
                if (ColumnMarks.isUsualSize(run) && seen.percentStrong() != run.percentStrong()) {
                    String set = seen.percentStrong() < run.percentStrong() ? "weaker" : "stronger";
                    marks.middle(set, run, told.of(run).middleMl());
                    marks.middle("earlier", run, told.of(run).middleMl());
                    marks.bands("earlier", run, told.of(run));
                    marks.middle("unearlier", run, all.of(run).middleMl());
                }
            }
        }
    }

    /** One run of a cartridge and eluent foretelling another one. */
    private static void repeats(ColumnTask task, ColumnAnswers answers, ColumnMarks marks) {
        ColumnAnswers.Remembered all = new ColumnAnswers.Remembered(answers.told(task.plates(), Optional.empty()));
        for (ColumnMeasurement one : task.runs()) {
            for (ColumnMeasurement other : task.runs()) {
                if (one != other
                        && one.grams() == other.grams()
                        && one.percentStrong() == other.percentStrong()
                        && isAsked(task, all, other.percentStrong())) {
                    marks.middle("all", other, one.middleMl());
                }
            }
        }
    }

    /** By the plate with that eluent, or what all plates say of it. */
    private static boolean isAsked(ColumnTask task, ColumnAnswers.Remembered all, double percent) {
        double rf = task.plateAt(percent).values().stream().findFirst().orElseGet(() -> all.rf(percent));
        return rf >= LOW_RF && rf <= HIGH_RF;
    }
}
