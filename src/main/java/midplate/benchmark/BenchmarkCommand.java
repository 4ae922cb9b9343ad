package midplate.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.BadMeasurements;
import midplate.inference.ColumnMeasurements;
import midplate.inference.OpenMeasurements;
import midplate.wire.MeasuredStructures;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchmark FOLDER}: measures accuracy by cross-validation and writes it down. */
@Command(
        name = "benchmark",
        mixinStandardHelpOptions = true,
        description =
                "Measures the accuracy of the advice, next to published models, on measurements in FOLDER/tlc.csv, and of columns on those in FOLDER/column.csv, where there are any.")
public final class BenchmarkCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "The folder that holds tlc.csv; not needed with --only identity.")
    private @Nullable Path folder;

    @Option(
            names = "--sets",
            paramLabel = "N",
            description =
                    "Samples drawn in each fold; default ${DEFAULT-VALUE}. A tenth as many get a plate without labels, three in forty plates moved by an error.")
    private int sets = Plan.FULL.setsPerFold();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the results to this file, as JSON, and two charts of them beside it: "
                    + TrialChart.FILE + " and " + ChanceChart.FILE + ".")
    private @Nullable Path out;

    @Option(
            names = "--readme",
            paramLabel = "FILE",
            description = "Put the tables between the marks " + MarkedPlace.BEGIN + " and " + MarkedPlace.END
                    + " of this document.")
    private @Nullable Path readme;

    @Option(
            names = "--only",
            paramLabel = "PART",
            description =
                    "Measure one part anew and keep the rest of what the file of --out says: columns, or identity.")
    private @Nullable Only only;

    /** A part that can be measured alone. */
    enum Only {
        /** Columns foretold from plates. */
        COLUMNS,
        /** Verdicts on drawn plates, for which nothing measured is needed. */
        IDENTITY
    }

    /** Made by the command line. */
    public BenchmarkCommand() {}

    /** What the file says so far, columns to be measured being at hand. */
    private Accuracy before(boolean areColumns) throws IOException {
        if (out == null || !Files.exists(out) || !areColumns) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--only columns needs the file of a whole run by --out, and column.csv in the folder; give both.");
        }
        return AccuracyFile.read(Files.readString(out));
    }

    /** The verdicts measured anew, beside what the file says; a document needs all of it. */
    private Accuracy verdicts() throws IOException {
        if (readme != null && (out == null || !Files.exists(out))) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--only identity with --readme needs the file of a whole run by --out, too; give it.");
        }
        Accuracy before = out != null && Files.exists(out)
                ? AccuracyFile.read(Files.readString(out))
                : new Accuracy(
                        Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
        return IdentityBenchmark.run(before);
    }

    /** Everything but verdicts, or columns alone. */
    private Accuracy measured(Path from) throws IOException {
        OpenMeasurements measurements = OpenMeasurements.read(from);
        Optional<ColumnMeasurements> columns = ColumnMeasurements.read(from);
        Plan full = Plan.FULL;
        Plan plan = new Plan(full.folds(), sets, full.resamples(), full.seed(), full.threads());
        Accuracy accuracy = only == Only.COLUMNS
                ? before(columns.isPresent())
                : Benchmark.run(
                        measurements,
                        Contenders.all(),
                        MeasuredStructures.of(measurements, FunctionalGroups.builtIn()),
                        plan);
        if (columns.isPresent()) {
            accuracy = ColumnBenchmark.run(measurements, columns.get(), SolventCatalogue.builtIn(), plan, accuracy);
        }
        return accuracy;
    }

    private Path folder() {
        if (folder == null) {
            throw new ParameterException(
                    spec.commandLine(), "FOLDER is missing: only --only identity needs no measurements. Give it.");
        }
        return folder;
    }

    @Override
    public Integer call() throws IOException {
        try {
            Accuracy accuracy = only == Only.IDENTITY ? verdicts() : measured(folder());
            if (only == null) {
                accuracy = IdentityBenchmark.run(accuracy);
            }
            String json = AccuracyFile.write(accuracy);
            // tables and charts are made from what the file says, so that they never differ
            Accuracy told = AccuracyFile.read(json);
            String table = told.contenders().isEmpty() ? IdentityTable.of(told).orElse("") : AccuracyTable.of(told);
            if (out != null) {
                Files.writeString(out, json);
                if (!told.contenders().isEmpty()) {
                    Files.writeString(out.resolveSibling(TrialChart.FILE), TrialChart.of(told));
                    Files.writeString(out.resolveSibling(ChanceChart.FILE), ChanceChart.of(told));
                }
            }
            if (readme != null) {
                Files.writeString(readme, MarkedPlace.placed(Files.readString(readme), table));
            }
            spec.commandLine().getOut().print(table);
            spec.commandLine().getOut().flush();
            return 0;
        } catch (BadMeasurements | IllegalArgumentException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return 1;
        }
    }
}
