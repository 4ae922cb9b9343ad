package midplate.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.CalibrationFiles;
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
                "Fits the strength curves, the noise, the spread of compounds and the effects of functional groups to measurements in FOLDER/tlc.csv.",
        footer = {"", "The same measurements give the same files."})
public final class CalibrateCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", description = "The folder that holds tlc.csv.")
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
        String command = "calibrate FOLDER";
        if (withoutFold != null) {
            Fold fold = fold(withoutFold);
            measurements = measurements.select(fold, Fold.Part.OUTSIDE);
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
        to.printf(Locale.ROOT, "Written to %s%n", out);
        to.flush();
        return 0;
    }

    private Fold fold(String text) {
        try {
            return Fold.of(text);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--without-" + e.getMessage());
        }
    }
}
