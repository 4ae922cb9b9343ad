package midplate.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.CalibrationFiles;
import midplate.inference.ColumnCalibration;
import midplate.inference.ColumnLawFile;
import midplate.inference.ColumnMeasurements;
import midplate.inference.Fold;
import midplate.inference.Form;
import midplate.inference.GroupForm;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;
import midplate.wire.MeasuredStructures;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calibrate}: fits the strength curves to open measurements. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        description =
                "Fits the strength curves, the noise, the spread of compounds and the effects of functional groups to measurements in FOLDER/tlc.csv, and the law of columns to those in FOLDER/column.csv, where there are any.",
        footer = {"", "The same measurements give the same files."})
public final class CalibrateCommand implements Callable<Integer> {
    private static final String COLUMNS = "column.csv";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", description = "The folder that holds tlc.csv and, if wanted, column.csv.")
    @SuppressWarnings("NullAway.Init") // picocli requires it
    private Path folder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write the files; default: a folder ${DEFAULT-VALUE} here.")
    private Path out = Path.of("curves");

    @Option(
            names = "--without-fold",
            paramLabel = "I/N",
            description = "Leave out part I (from 0) of N parts of the structures, so that they can judge the fit.")
    private @Nullable String withoutFold;

    /** Made by the command line. */
    public CalibrateCommand() {}

    @Override
    public Integer call() throws IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new ParameterException(
                    spec.commandLine(), "--out " + out + " is a file; name a folder, or one that is not there yet.");
        }
        OpenMeasurements measurements = OpenMeasurements.read(folder);
        Optional<ColumnMeasurements> columns = ColumnMeasurements.read(folder);
        String command = "calibrate FOLDER";
        if (withoutFold != null) {
            Fold fold = fold(withoutFold);
            measurements = measurements.select(fold, Fold.Part.OUTSIDE);
            columns = columns.map(all -> all.select(fold, Fold.Part.OUTSIDE));
            command += " --without-fold " + fold;
        }
        FunctionalGroups groups = FunctionalGroups.builtIn();
        MeasuredPairs fitted = PairCalibration.fit(
                measurements,
                SolventCatalogue.builtIn(),
                command,
                Form.THREE_TRAITS,
                groups,
                MeasuredStructures.of(measurements, groups),
                GroupForm.ENERGIES);
        CalibrationFiles.write(fitted, out);
        Optional<ColumnLaw> law = columns(measurements, columns, command);
        PrintWriter to = spec.commandLine().getOut();
        for (PlatePair pair : fitted.pairs()) {
            to.printf(
                    Locale.ROOT,
                    "%s: %d series, %d readings, mean deviation %.3f in Rf%n",
                    pair.id(),
                    pair.compounds(),
                    pair.readings(),
                    pair.residual());
        }
        law.ifPresentOrElse(
                each -> to.printf(
                        Locale.ROOT,
                        "columns: %d structures, %d runs; scatter %.3f from run to run, %.3f between compounds (ln units)%n",
                        each.fit().compounds(),
                        each.fit().runs(),
                        each.runScatter(),
                        each.spotSpread()),
                () -> to.printf(Locale.ROOT, "columns: no %s in the folder, so no law of columns%n", COLUMNS));
        to.printf(Locale.ROOT, "Written to %s%n", out);
        to.flush();
        return 0;
    }

    /** The law of columns, fitted to the curves as they were written; without measurements none is left from before. */
    private Optional<ColumnLaw> columns(
            OpenMeasurements measurements, Optional<ColumnMeasurements> columns, String command) throws IOException {
        if (columns.isEmpty()) {
            Files.deleteIfExists(out.resolve(ColumnLaw.FILE));
            return Optional.empty();
        }
        MeasuredPairs written = MeasuredPairs.read(out, SolventCatalogue.builtIn());
        ColumnLaw law = ColumnCalibration.fit(measurements, columns.get(), written, command);
        ColumnLawFile.write(law, out);
        return Optional.of(law);
    }

    private Fold fold(String text) {
        try {
            return Fold.of(text);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--without-" + e.getMessage());
        }
    }
}
