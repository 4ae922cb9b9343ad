package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The published table of glass columns")
class FlashColumnsTest extends CopiedSolventData {
    private static final FlashColumns TABLE = FlashColumns.builtIn();

    /** Still, Kahn, Mitra, J. Org. Chem. 43 (1978) 2923, Table I; from memory, confidence high. */
    @Test
    void holdsTheRowsAsPrinted() {
        double[][] printed = {
            {10, 100, 100, 40, 5},
            {20, 200, 400, 160, 10},
            {30, 400, 900, 360, 20},
            {40, 600, 1600, 600, 30},
            {50, 1000, 2500, 1000, 50}
        };
        assertEquals(printed.length, TABLE.rows().size());
        for (int i = 0; i < printed.length; i++) {
            FlashColumn row = TABLE.rows().get(i);
            assertEquals(
                    List.of(printed[i][0], printed[i][1], printed[i][2], printed[i][3], printed[i][4]),
                    List.of(row.diameterMm(), row.eluentMl(), row.loadWideMg(), row.loadNarrowMg(), row.fractionMl()));
            assertEquals("Still1978", row.source().key());
            assertEquals(Basis.MEMORY, row.basis());
            assertEquals("H", row.confidence());
        }
    }

    @Test
    void givesARowAsItIsAndGoesStraightBetweenTwo() {
        assertEquals(10, TABLE.at(20, FlashColumn::fractionMl), 0);
        assertEquals(15, TABLE.at(25, FlashColumn::fractionMl), 1e-12);
        assertEquals(800, TABLE.at(45, FlashColumn::eluentMl), 1e-12);
        assertEquals(1000, TABLE.at(50, FlashColumn::eluentMl), 0);
    }

    @Test
    void doesNotGoBeyondItsRows() {
        for (double diameter : new double[] {9.9, 50.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> TABLE.at(diameter, FlashColumn::eluentMl));
        }
    }

    private String fault(String change, String into) throws IOException {
        edit(FlashColumns.FILE, text -> text.replace(change, into));
        DataFolder copy = DataFolder.of(folder);
        return String.valueOf(assertThrows(BadSolventData.class, () -> FlashColumns.read(copy, SourceReader.read(copy)))
                .getMessage());
    }

    @Test
    void refusesRowsOutOfOrderWithTheirPlace() throws IOException {
        String fault = fault("30,400", "15,400");
        assertTrue(fault.contains("flash-columns.csv") && fault.contains("diameter_mm") && fault.contains("15"), fault);
    }

    @Test
    void refusesANumberThatIsNone() throws IOException {
        assertTrue(fault("1600,600,30", "1600,six hundred,30").contains("load_rf_01_mg"));
    }

    @Test
    void refusesASourceThatNobodyKnows() throws IOException {
        assertTrue(fault("20,200,400,160,10,Still1978", "20,200,400,160,10,Nobody1978")
                .contains("source"));
    }
}
