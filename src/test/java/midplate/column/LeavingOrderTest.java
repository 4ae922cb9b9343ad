package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.inference.Knowledge;
import midplate.inference.PlateRun;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.English;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packed law; readings at 20 % ethyl acetate are invented, and a blank one is a spot nobody has run. */
@DisplayName("Spots of which nothing shows that they part")
class LeavingOrderTest {
    /** Of a pair that is shown to part, the lesser chance of its two spots [1]. */
    private static double parted;

    @BeforeAll
    static void aPairThatParts() {
        ColumnPlan first = plan("A", 0.35, 0.20);
        ColumnPlan last = plan("B", 0.35, 0.20);
        parted = Math.min(first.chancePure(), last.chancePure());
        for (ColumnPlan plan : List.of(first, last)) {
            assertEquals("chance", plan.chanceInWords().code());
            assertTrue(plan.cut().isPresent());
        }
    }

    private static ColumnPlan plan(String target, double one, double other) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        put(readings, "A", one);
        put(readings, "B", other);
        List<PlateRun> plates = readings.isEmpty() ? List.of() : List.of(new PlateRun(Columns.ACETATE, 20, readings));
        Knowledge knowledge = Columns.MODELS.learn(Columns.ACETATE, Setting.BENCH, List.of("A", "B"), plates);
        ColumnForecast law =
                ColumnForecast.of(Columns.LAW, knowledge, List.of("A", "B"), BandLaw.Conditions.MEASURED, List.of());
        return PlanAsked.about(target, 60, "A", "B").plan(law);
    }

    private static void put(Map<String, Reading> readings, String spot, double rf) {
        if (!Double.isNaN(rf)) {
            readings.put(spot, Reading.of(rf));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.30, 0.30",
        "0.31, 0.30",
        "0.30, 0.32",
        "0.60, 0.60",
        "0.10, 0.10",
        "0, 0",
        "0, 0.03",
        "1, 1",
        "0.98, 0.95",
        "NaN, NaN",
        "0.30, NaN",
        "NaN, 0.70"
    })
    void getNoConfidentChanceLittleSolventAndAreSaidSoFirst(double one, double other) {
        for (String target : List.of("A", "B")) {
            ColumnPlan plan = plan(target, one, other);
            String told = one + " and " + other + ", " + target + ": ";
            assertTrue(plan.chancePure() <= 0.5, told + plan.chancePure());
            assertTrue(plan.chancePure() < parted, told + plan.chancePure() + " of " + parted);
            assertEquals("not-shown", plan.warnings().get(0).code(), told);
            assertEquals("chance-unshown", plan.chanceInWords().code(), told);
            assertTrue(plan.solventMl() <= 10 * plan.voidMl() + 1e-9, told + plan.solventMl() + " ml");
            assertEquals(1, plan.program().steps().size(), told);
            // 60 mg at 0.68 % of the silica, as for spots 0.1 apart: 8.8 g
            assertTrue(plan.bed().silicaGrams() <= 12, told + plan.bed());
        }
    }

    @Test
    void areToldWhatToDoFirst() {
        String said = English.said(plan("A", 0.3, 0.3).warnings().get(0));
        assertTrue(said.contains("B and A") && said.contains("First find an eluent"), said);
    }

    @ParameterizedTest
    @CsvSource({"0.40, 0.30", "0, 0.30", "0.98, 0.50", "0.30, 0.20"})
    void areNotThoseThatAPlateSetsApart(double one, double other) {
        for (String target : List.of("A", "B")) {
            List<String> codes = PlanAsked.codes(plan(target, one, other).warnings());
            assertTrue(!codes.contains("not-shown"), one + " and " + other + ": " + codes);
        }
    }

    /** By hand. */
    @Test
    void aSideIsThatOfTheMediansAndHoldsInTheCasesThatKeepIt() {
        DrawnBands bands = new DrawnBands(2, 4);
        double[][] middles = {{10, 20, 30, 40}, {15, 15, 50, 60}};
        for (int spot = 0; spot < 2; spot++) {
            for (int k = 0; k < 4; k++) {
                bands.put(spot, k, middles[spot][k] - 1, middles[spot][k], middles[spot][k] + 1);
            }
        }
        LeavingOrder order = LeavingOrder.of(bands, 2, 0, 1);
        // medians 25 and 32.5: the other leaves after the target, in all cases but the second
        assertEquals(0.75, order.share(1), 0);
        assertTrue(order.holds(0) && !order.holds(1) && order.holds(2) && order.holds(3));
    }
}
