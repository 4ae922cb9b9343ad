package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What lies outside a band is asked of an outlook on the window that the band makes: its chances come from tables of their own, by another way than
 * the ends of the band.
 */
@DisplayName("Bands that reach a line")
class BandsAtLinesTest {
    /** Ends are found between marks 1/512 apart, and Rf is binned by 1/250. */
    private static final double NEAR = 0.006;

    private static final double LINE = 0.001;

    private static Outlook outlook(Setting setting, double percent, double rf, double low, double high) {
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, percent, Map.of("A", rf)));
        return Plates.outlook(Plates.BUILT_IN, Plates.ACETATE, setting, List.of("A"), runs, low, high);
    }

    private static void assertSpent(double onLine, double beyond, String at) {
        if (onLine > 0.15 + NEAR) {
            assertEquals(0.1, beyond, NEAR, at);
        } else {
            assertTrue(beyond > 0.05 - NEAR && beyond < 0.1 + NEAR, at);
        }
    }

    private static double within(double value) {
        return Math.max(LINE, Math.min(1 - LINE, value));
    }

    // 90 of 100 readings lie inside. Away from the lines 5 lie on either side; where a band begins at a line none lies
    // below, and
    // 10 above once 15 sit on that line, 5 to 10 before: what is promised
    @ParameterizedTest
    @CsvSource({
        "AUTOMATED, 25, 0.45",
        "AUTOMATED, 5, 0.04",
        "AUTOMATED, 2, 0.01",
        "AUTOMATED, 50, 0.97",
        "BENCH, 25, 0.3",
        "BENCH, 5, 0.05",
        "BENCH, 75, 0.93",
        "CLASS, 10, 0.6"
    })
    void missTenOfAHundredAndNoMore(Setting setting, double percent, double rf) {
        int atLines = 0;
        int between = 0;
        Outlook usual = outlook(setting, percent, rf, 0.2, 0.8);
        Outlook lines = outlook(setting, percent, rf, LINE, 1 - LINE);
        for (double next : new double[] {0, 1, 2, 5, 10, 16.67, 25, 40, 60, 80, 100}) {
            Outlook.Spot band = usual.spot(0, next);
            if (!(band.low() < 1 - 2 * LINE && band.high() > 2 * LINE && band.high() - band.low() > 2 * LINE)) {
                continue;
            }
            Outlook.Spot outside = outlook(setting, percent, rf, within(band.low()), within(band.high()))
                    .spot(0, next);
            Outlook.Spot onLines = lines.spot(0, next);
            double below = band.low() <= LINE ? 0 : outside.below();
            double above = band.high() >= 1 - LINE ? 0 : outside.above();
            String at = setting + " " + next + " %: " + band + ", outside " + below + " and " + above;
            assertTrue(below + above <= 0.1 + NEAR, at);
            if (band.low() > LINE && band.high() < 1 - LINE) {
                assertEquals(0.05, below, NEAR, at);
                assertEquals(0.05, above, NEAR, at);
                between++;
            } else if (band.low() <= LINE && band.high() < 1 - LINE) {
                assertSpent(onLines.below(), above, at);
                atLines++;
            } else if (band.low() > LINE) {
                assertSpent(onLines.above(), below, at);
                atLines++;
            }
        }
        assertTrue(atLines + between > 3, atLines + ", " + between);
        assertTrue(atLines > 0 || rf > 0.1 && rf < 0.9, "none reached a line");
    }
}
