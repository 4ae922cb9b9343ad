package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.PairName;
import midplate.inference.TableText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThinTablesTest {
    @TempDir
    Path folder;

    private final StringWriter complained = new StringWriter();

    private int calibrate(TableText text) throws IOException {
        text.read(folder);
        return new picocli.CommandLine(new CalibrateCommand())
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(complained, true))
                .setExecutionExceptionHandler((f, c, p) -> Complaint.tell(f, c.getErr()))
                .execute(folder.toString(), "--out", folder.resolve("curves").toString());
    }

    private static void add(TableText text, PairName pair, int from, int to, double apart) {
        for (int i = from; i < to; i++) {
            for (double percent : new double[] {2, 10, 40}) {
                double rf = 1 / (1 + Math.exp(4 - 0.4 * (i - from) + apart) / (percent + 1));
                text.row(i, "C".repeat(i + 1), pair, percent, Math.rint(rf * 100) / 100);
            }
        }
    }

    // ArrayIndexOutOfBoundsException at Calibration.recentre today.
    @Test
    void aTableWithoutOneOfThePairsIsSaidOrDone() throws IOException {
        TableText text = new TableText();
        add(text, PairName.HEXANE_ETHYL_ACETATE, 0, 10, 0);
        calibrate(text);
        assertFalse(complained.toString().contains("Exception"), complained.toString());
    }

    // NumberFormatException (NaN) at CalibrationFiles.rounded today.
    @Test
    void pairsWithoutACommonCompoundAreSaidOrDone() throws IOException {
        TableText text = new TableText();
        add(text, PairName.HEXANE_ETHYL_ACETATE, 0, 10, 0);
        add(text, PairName.HEXANE_DIETHYL_ETHER, 20, 30, 0);
        add(text, PairName.DICHLOROMETHANE_METHANOL, 40, 50, 0);
        calibrate(text);
        assertFalse(complained.toString().contains("Exception"), complained.toString());
    }

    // Status 0, and then index.json is refused, if the pairs leave no room for errors.
    @Test
    void whatIsWrittenCanBeReadAlsoWherePairsAgreeExactly() throws IOException {
        TableText text = new TableText();
        for (PairName pair : PairName.values()) {
            add(text, pair, 0, 10, 0);
        }
        if (calibrate(text) == 0) {
            assertEquals(
                    3,
                    MeasuredPairs.read(folder.resolve("curves"), SolventCatalogue.builtIn())
                            .pairs()
                            .size());
        }
    }
}
