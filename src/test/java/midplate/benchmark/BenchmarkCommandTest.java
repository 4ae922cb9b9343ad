package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

@DisplayName("The command that measures accuracy")
class BenchmarkCommandTest {
    @TempDir
    Path folder;

    private final StringWriter said = new StringWriter();
    private final StringWriter complained = new StringWriter();

    @Test
    void writesTheSameResultsToFileDocumentAndScreen() throws IOException {
        Invented.molecules(folder, 20);
        Path json = folder.resolve("accuracy.json");
        Path readme = folder.resolve("README.md");
        Files.writeString(readme, "# A\n" + MarkedPlace.BEGIN + "\n" + MarkedPlace.END + "\n");
        int status = run(folder.toString(), "--sets", "20", "--out", json.toString(), "--readme", readme.toString());
        assertEquals("", complained.toString());
        assertEquals(0, status);
        String table = AccuracyTable.of(AccuracyFile.read(Files.readString(json)));
        assertEquals(table, MarkedPlace.found(Files.readString(readme)));
        assertEquals(table, said.toString());
    }

    @Test
    void aMissingTableIsSaidAndNothingIsWritten() {
        Path json = folder.resolve("accuracy.json");
        assertEquals(1, run(folder.resolve("nowhere").toString(), "--out", json.toString()));
        assertTrue(complained.toString().contains("Give the folder that holds tlc.csv."), complained.toString());
        assertTrue(Files.notExists(json));
    }

    @Test
    void aStructureThatCannotBeReadIsNamed() throws IOException {
        Invented.measurements(folder, 20);
        assertEquals(1, run(folder.toString(), "--sets", "20"));
        assertTrue(complained.toString().contains("tlc.csv"), complained.toString());
        assertTrue(complained.toString().contains("smiles"), complained.toString());
        assertTrue(complained.toString().contains("AAAA"), complained.toString());
    }

    @Test
    void aNumberOfSetsOutsideItsRangeIsSaid() throws IOException {
        Invented.measurements(folder, 20);
        assertEquals(1, run(folder.toString(), "--sets", "-4"));
        assertTrue(complained.toString().contains("setsPerFold: came -4"), complained.toString());
    }

    @Test
    void columnsAloneNeedTheResultsOfAWholeRunAndMeasurements() throws IOException {
        Invented.measurements(folder, 20);
        Path json = folder.resolve("accuracy.json");
        assertEquals(2, run(folder.toString(), "--only", "COLUMNS", "--out", json.toString()));
        assertTrue(complained.toString().contains("--only columns needs the file of a whole run by --out"));
        assertTrue(Files.notExists(json));
    }

    private int run(String... arguments) {
        return new CommandLine(new BenchmarkCommand())
                .setOut(new PrintWriter(said, true))
                .setErr(new PrintWriter(complained, true))
                .execute(arguments);
    }
}
