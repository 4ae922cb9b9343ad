package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("More scatter")
class ScatterLawsTest {
    private static final List<String> SPOTS = List.of("A", "B", "C");
    private static final List<PlateRun> RUNS =
            List.of(Plates.run(Plates.ACETATE, 15, Map.of("A", 0.14, "B", 0.19, "C", 0.26)));

    @ParameterizedTest
    @CsvSource({
        "silica-hexane-ethyl-acetate, 20",
        "silica-hexane-diethyl-ether, 40",
        "silica-dichloromethane-methanol, 3"
    })
    void widensTheBands(String pair, double at) {
        List<PlateRun> runs = List.of(Plates.run(pair, at, Map.of("A", 0.4)));
        double automated = Plates.width(Plates.outlook(pair, Setting.AUTOMATED, List.of("A"), runs), at);
        double bench = Plates.width(Plates.outlook(pair, Setting.BENCH, List.of("A"), runs), at);
        double school = Plates.width(Plates.outlook(pair, Setting.CLASS, List.of("A"), runs), at);
        assertTrue(automated < bench && bench < school, automated + ", " + bench + ", " + school);
    }

    private static double product(Outlook outlook, double percent) {
        double product = 1;
        for (int spot = 0; spot < SPOTS.size(); spot++) {
            product *= outlook.chance(percent, List.of(spot));
        }
        return product;
    }

    // Own algebra: without an error shared by the plate the spots are independent.
    @Test
    void theAutomatedChanceIsTheProductOfThoseOfTheSpots() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, SPOTS, RUNS);
        for (double percent = 5; percent <= 60; percent += 2.5) {
            assertEquals(product(outlook, percent), outlook.chance(percent, List.of(0, 1, 2)), 1e-12);
        }
    }

    // Own algebra: a shared error moves all spots alike, so spots at one edge miss it together more often.
    @ParameterizedTest
    @CsvSource({"BENCH", "CLASS"})
    void theSharedErrorMakesNeighboursFailTogether(Setting setting) {
        Outlook outlook = Plates.outlook(Plates.ACETATE, setting, SPOTS, RUNS);
        double apart = 0;
        for (double percent = 15; percent <= 25; percent += 2.5) {
            double joint = outlook.chance(percent, List.of(0, 1, 2));
            assertTrue(joint > product(outlook, percent), percent + " %");
            apart = Math.max(apart, joint - product(outlook, percent));
        }
        assertTrue(apart > 0.02, "by more than a rounding: " + apart);
    }

    // Own algebra: B, known from three plates, reads high on the fourth; so the plate ran high, and A with it.
    @ParameterizedTest
    @CsvSource({"BENCH", "CLASS"})
    void aKnownNeighbourTellsOfThePlatesError(Setting setting) {
        PlateRun known = Plates.run(Plates.ACETATE, 15, Map.of("B", 0.3));
        List<PlateRun> beside = List.of(known, known, known, fourth(Map.of("A", 0.42, "B", 0.42)));
        List<PlateRun> alone = List.of(known, known, known, fourth(Map.of("A", 0.42)));
        double corrected = rfOfA(setting, beside);
        double taken = rfOfA(setting, alone);
        assertTrue(corrected < taken - 0.02, corrected + " against " + taken);
        assertEquals(
                rfOfA(Setting.AUTOMATED, alone),
                rfOfA(Setting.AUTOMATED, beside),
                1e-12,
                "without a shared error B tells nothing of A");
    }

    private static PlateRun fourth(Map<String, Double> rf) {
        return Plates.run(Plates.ACETATE, 15, rf);
    }

    private static double rfOfA(Setting setting, List<PlateRun> runs) {
        return Plates.outlook(Plates.ACETATE, setting, List.of("A", "B"), runs).rf(0, 15);
    }
}
