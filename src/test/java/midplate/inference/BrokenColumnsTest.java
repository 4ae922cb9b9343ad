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

@DisplayName("A table of columns")
class BrokenColumnsTest {
    private static final String HEADER =
            "cas,name,smiles,cartridge,petroleum_ether_parts,ethyl_acetate_parts,flow_ml_min,load_ul,start_ml,end_ml";
    private static final String GOOD = ",,CC,4g,10.0,1.0,10,100.0,14.12,30.8";

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                ",,,4g,10,1,10,100,14,30 | smiles | '' | a structure without blanks around it",
                ",,CC,4,10,1,10,100,14,30 | cartridge | 4 | grams of silica above 0, such as 4g",
                ",,CC,0g,10,1,10,100,14,30 | cartridge | 0g | grams of silica above 0, such as 4g",
                ",,CC,4g,-1,1,10,100,14,30 | petroleum_ether_parts | -1 | one number in [0.0, 1000000.0]",
                ",,CC,4g,0,0,10,100,14,30 | ethyl_acetate_parts | 0 | parts of which one is above 0",
                ",,CC,4g,10,1,ten,100,14,30 | flow_ml_min | ten | one number in [0.0, 1000000.0]",
                ",,CC,4g,10,1,10,,14,30 | load_ul | '' | one number in [0.0, 1000000.0]",
                ",,CC,4g,10,1,10,100,NaN,30 | start_ml | NaN | one number in [-1000000.0, 1000000.0]",
                ",,CC,4g,10,1,10,100,14,1e9 | end_ml | 1e9 | one number in [-1000000.0, 1000000.0]",
                ",,CC,4g,10,1,10,100,14 | start_ml | 14 | 10 cells in a row, not 9",
            })
    void isRefusedWithFileRowColumnCellAndWhatIsAllowed(String row, String column, String cell, String allowed)
            throws IOException {
        String message = refusal(HEADER + "\n" + GOOD + "\n" + row + "\n");
        String start = "column.csv, row 3, column " + column + ": \"" + cell + "\". Allowed: " + allowed + ". ";
        assertEquals(start, message.substring(0, Math.min(start.length(), message.length())));
        assertTrue(message.length() > start.length(), "says what to do: " + message);
    }

    @Test
    void otherColumnsAndAnEmptyTableAreRefused() throws IOException {
        assertTrue(refusal(HEADER.replace("load_ul", "load") + "\n" + GOOD + "\n")
                .startsWith("column.csv, row 1, column -: \"cas,name,smiles"));
        assertTrue(refusal(HEADER + "\n").contains("at least one row"));
    }

    // The rule as the measurements are published: an end not after the start, or a start not above 0, is no column.
    @Test
    void rowsThatCannotBeUsedAreLeftOutAndCounted() throws IOException {
        String rows = String.join(
                "\n",
                HEADER,
                GOOD,
                ",,CC,4g,10,1,10,100,14,14",
                ",,CC,4g,10,1,10,100,14,13",
                ",,CC,4g,10,1,10,100,0,13",
                ",,CC,4g,10,1,10,100,-2,13",
                ",,CO,8g,1,1,10,50,7,13.5");
        Files.writeString(folder.resolve("column.csv"), rows);
        ColumnMeasurements columns = ColumnMeasurements.read(folder).orElseThrow();
        assertEquals(6, columns.rowsRead());
        assertEquals(2, columns.runs().size());
        ColumnMeasurement run = columns.runs("CO").get(0);
        assertEquals(8, run.grams());
        assertEquals(50, run.percentStrong(), 1e-12);
        assertEquals(0.05, run.loadMl(), 1e-12);
        assertEquals(10.25, run.middleMl(), 1e-12);
    }

    @Test
    void aFolderWithoutOneHasNoColumns() {
        assertTrue(ColumnMeasurements.read(folder).isEmpty());
    }

    private String refusal(String text) throws IOException {
        Files.writeString(folder.resolve("column.csv"), text);
        return String.valueOf(assertThrows(BadMeasurements.class, () -> ColumnMeasurements.read(folder))
                .getMessage());
    }
}
