package midplate.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    @Parameters(paramLabel = "FOLDER", description = "The folder that holds tlc.csv.")
    @SuppressWarnings("NullAway.Init") // picocli requires it
    private Path folder;

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
            description = "Measure one part anew and keep the rest of what the file of --out says: columns.")
    private @Nullable Only only;

    /** A part that can be measured alone. */
    enum Only {
        /** Columns foretold from plates. */
        COLUMNS
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

    @Override
    public Integer call() throws IOException {
        try {
            OpenMeasurements measurements = OpenMeasurements.read(folder);
            Optional<ColumnMeasurements> columns = ColumnMeasurements.read(folder);
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
            String json = AccuracyFile.write(accuracy);
            // tables and charts are made from what the file says, so that they never differ
            Accuracy told = AccuracyFile.read(json);
            String table = AccuracyTable.of(told);
            if (out != null) {
                Files.writeString(out, json);
                Files.writeString(out.resolveSibling(TrialChart.FILE), TrialChart.of(told));
                Files.writeString(out.resolveSibling(ChanceChart.FILE), ChanceChart.of(told));
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
