package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A table of measurements with a mistake")
class BrokenMeasurementsTest {
    private static final String GOOD = "1,,,CC,0.5,0.5,0,0,0,0.3";

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "x1,,,CC,0.5,0.5,0,0,0,0.3 | compound_id | x1 | a whole number in [0, 999999999]",
                "2,,,,0.5,0.5,0,0,0,0.3 | smiles | '' | a structure without blanks around it",
                "1,,,CO,0.5,0.5,0,0,0,0.3 | smiles | CO | CC, as above for this id",
                "2,,,CO,0.5,,0,0,0,0.3 | ethyl_acetate | '' | one number in [0.0, 1.0]",
                "2,,,CO,0.5,NaN,0,0,0,0.3 | ethyl_acetate | NaN | one number in [0.0, 1.0]",
                "2,,,CO,1.5,-0.5,0,0,0,0.3 | hexane | 1.5 | one number in [0.0, 1.0]",
                "2,,,CO,0.5,0.4,0,0,0,0.3 | hexane to methanol | 0.9000 | a sum in [0.999, 1.001]",
                "2,,,CO,0.5,0.5,0,0,0,30 | rf | 30 | one number in [-0.05, 1.05]",
                "2,,,CO,0.5,0.5,0,0,0, | rf | '' | one number in [-0.05, 1.05]",
                "2,,,CO,0.5,0.5,0,0,0 | methanol | 0 | 10 cells in a row, not 9",
                "2,,,CO,0.5,0.5,0,0,0,0.3,7 | rf | 7 | 10 cells in a row, not 11",
            })
    void isRefusedWithFileRowColumnCellAndWhatIsAllowed(String row, String column, String cell, String allowed)
            throws IOException {
        String message = refusal(TableText.HEADER + "\n" + GOOD + "\n" + row + "\n");
        String start = "tlc.csv, row 3, column " + column + ": \"" + cell + "\". Allowed: " + allowed + ". ";
        assertEquals(start, message.substring(0, Math.min(start.length(), message.length())));
        assertTrue(message.length() > start.length(), "says what to do: " + message);
    }

    @Test
    void otherColumnsAreRefused() throws IOException {
        String message = refusal(TableText.HEADER.replace("hexane", "heptane") + "\n" + GOOD + "\n");
        assertTrue(message.startsWith("tlc.csv, row 1, column -: \"compound_id,cas,name,smiles,heptane,"), message);
    }

    @Test
    void anEmptyTableIsRefused() throws IOException {
        assertTrue(refusal(TableText.HEADER + "\n").contains("at least one row"));
        assertTrue(refusal("").startsWith("tlc.csv, row 1"));
    }

    @Test
    void openQuotesAreRefused() throws IOException {
        assertTrue(refusal(TableText.HEADER + "\n1,,\"a,CC,1,0,0,0,0,0.1\n").contains("Mind the quotes."));
    }

    @Test
    void otherEncodingsAreRefused() throws IOException {
        Files.write(folder.resolve("tlc.csv"), new byte[] {'c', (byte) 0xfc, '\n'});
        Exception refusal = assertThrows(BadMeasurements.class, () -> OpenMeasurements.read(folder));
        assertTrue(refusal.getMessage().contains("UTF-8"), refusal.getMessage());
    }

    @Test
    void aMissingFileIsSaidWithTheFolder() {
        Exception refusal = assertThrows(BadMeasurements.class, () -> OpenMeasurements.read(folder.resolve("nowhere")));
        assertTrue(refusal.getMessage().contains("nowhere"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("Give the folder that holds tlc.csv."), refusal.getMessage());
    }

    private String refusal(String text) throws IOException {
        Files.writeString(folder.resolve("tlc.csv"), text);
        return assertThrows(BadMeasurements.class, () -> OpenMeasurements.read(folder))
                .getMessage();
    }
}
