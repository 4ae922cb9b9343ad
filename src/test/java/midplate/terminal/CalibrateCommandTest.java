package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.PairName;
import midplate.inference.TableText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The command as it is run; the measurements are invented. */
@DisplayName("The command that calibrates")
class CalibrateCommandTest {
    @TempDir
    Path folder;

    private final StringWriter said = new StringWriter();
    private final StringWriter complained = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new CalibrateCommand())
                .setOut(new PrintWriter(said, true))
                .setErr(new PrintWriter(complained, true))
                .setExecutionExceptionHandler((failure, command, parsed) -> Complaint.tell(failure, command.getErr()))
                .execute(arguments);
    }

    /** Ten compounds on the lines ln(Rf/(1 − Rf)) = c + ln(% + 1) in all three pairs, c a little apart between pairs. */
    private Path table() throws IOException {
        TableText text = new TableText();
        for (int i = 0; i < 10; i++) {
            double apart = 0;
            for (PairName pair : PairName.values()) {
                apart += i % 3 == 0 ? 0.3 : 0;
                for (double percent : new double[] {2, 10, 40}) {
                    double rf = 1 / (1 + Math.exp(4 - 0.4 * i + apart) / (percent + 1));
                    text.row(i, "C".repeat(i + 1), pair, percent, Math.rint(rf * 100) / 100);
                }
            }
        }
        text.read(folder);
        return folder;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesWhatTheProgramReads() throws IOException {
        Path out = folder.resolve("made/curves");
        assertEquals(0, run(table().toString(), "--out", out.toString()), complained.toString());
        assertEquals("", complained.toString());
        assertTrue(said.toString().contains("silica-hexane-ethyl-acetate: 10 series, 30 readings, mean deviation 0.0"));
        assertTrue(said.toString().endsWith("Written to " + out + System.lineSeparator()), said.toString());
        MeasuredPairs curves = MeasuredPairs.read(out, SolventCatalogue.builtIn());
        assertEquals(3, curves.pairs().size());
        for (PlatePair pair : curves.pairs()) {
            assertEquals("calibrate FOLDER", pair.provenance().command(), "no path of this machine");
            // put in: ln(% + 1), 0 at 10 %
            assertEquals(Math.log(3.0 / 11), pair.strength().get(0), 0.3);
            assertEquals(Math.log(41.0 / 11), pair.strength().get(2), 0.3);
        }
        assertEquals(4, names(out).size());
        assertTrue(said.toString().contains("columns: no column.csv in the folder"), said.toString());
    }

    @Test
    void aBadCellOfTheColumnsIsSaidBeforeAnythingIsWritten() throws IOException {
        Files.writeString(
                table().resolve("column.csv"),
                "cas,name,smiles,cartridge,petroleum_ether_parts,ethyl_acetate_parts,flow_ml_min,load_ul,start_ml,end_ml\n"
                        + ",,CC,4g,10,1,10,100,14,late\n");
        Path out = folder.resolve("curves");
        assertEquals(1, run(folder.toString(), "--out", out.toString()));
        assertTrue(
                complained.toString().startsWith("column.csv, row 2, column end_ml: \"late\"."), complained.toString());
        assertTrue(Files.notExists(out), "nothing is written");
    }

    @Test
    void aFoldIsLeftOutAndSaidInTheFile() throws IOException {
        Path out = folder.resolve("curves");
        assertEquals(
                0, run(table().toString(), "--without-fold", "1/3", "--out", out.toString()), complained.toString());
        PlatePair pair =
                MeasuredPairs.read(out, SolventCatalogue.builtIn()).pairs().get(0);
        assertTrue(pair.compounds() < 10 && pair.compounds() > 2, "series " + pair.compounds());
        assertEquals("calibrate FOLDER --without-fold 1/3", pair.provenance().command());
    }

    @Test
    void aFolderWithoutATableIsSaid() {
        Path nowhere = folder.resolve("nowhere");
        assertEquals(
                1, run(nowhere.toString(), "--out", folder.resolve("curves").toString()));
        assertTrue(complained.toString().startsWith("tlc.csv, row -, column -: "), complained.toString());
        assertTrue(complained.toString().contains("Give the folder that holds tlc.csv."), complained.toString());
        assertTrue(Files.notExists(folder.resolve("curves")), "nothing is written");
        assertEquals("", said.toString());
    }

    @Test
    void aBadCellIsSaid() throws IOException {
        table();
        Path file = folder.resolve("tlc.csv");
        Files.writeString(file, Files.readString(file) + "99,,,CCO,0.5,0.5,0,0,0,1.7\n");
        assertEquals(1, run(folder.toString()));
        assertTrue(complained.toString().contains("column rf: \"1.7\". Allowed: one number in [-0.05, 1.05]."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5/5", "1", "0/1", "a/b", "-1/5", "0/99"})
    void aFoldThatIsNoneIsSaid(String fold) throws IOException {
        assertEquals(2, run(table().toString(), "--without-fold=" + fold));
        assertTrue(complained.toString().startsWith("--without-fold: came " + fold + ";"), complained.toString());
        assertTrue(complained.toString().contains("N in [2, 20] and I in [0, N)"), complained.toString());
        assertEquals("", said.toString());
    }

    @Test
    void aPlaceThatIsAFileIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "something");
        assertEquals(2, run(table().toString(), "--out", file.toString()));
        assertTrue(complained.toString().startsWith("--out " + file + " is a file; name a folder"));
        assertEquals("something", Files.readString(file), "left as it was");
        assertEquals("", said.toString());
    }

    @Test
    void withoutAFolderTheCommandLineIsWrong() {
        assertEquals(2, run());
        assertTrue(complained.toString().contains("FOLDER"), complained.toString());
    }
}
