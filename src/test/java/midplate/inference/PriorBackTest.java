package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import midplate.catalogue.MeasuredPair;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Law: no reading gives the prior back. What the prior says is summed here from the packed file by other means: the density
 * of c as printed, s and the plate's error by even steps.
 */
@DisplayName("Without a reading")
class PriorBackTest {
    private static MeasuredPair pair(String id) {
        return Plates.CURVES.pairs().stream()
                .filter(pair -> pair.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The mean of a quantity of (c, s) over the prior, s between 0.3 and 2. */
    private static double mean(MeasuredPair.Traits prior, ToDoubleBiFunction<Double, Double> quantity) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < prior.cDensity().size(); i++) {
            double c = prior.cFrom() + i * prior.cStep();
            double centre = prior.sMean() + prior.sSlope() * (c - prior.cCentre());
            double overS = 0;
            double ofS = 0;
            for (double s = 0.3; s <= 2.0001; s += 0.01) {
                double weight = Math.exp(-0.5 * Math.pow((s - centre) / prior.sDeviation(), 2));
                overS += weight * quantity.applyAsDouble(c, s);
                ofS += weight;
            }
            sum += prior.cDensity().get(i) * overS / ofS;
            weights += prior.cDensity().get(i);
        }
        return sum / weights;
    }

    private static double shown(MeasuredPair pair, double eta, double sharedError) {
        double sum = 0;
        double weights = 0;
        for (double z = sharedError == 0 ? 0 : -5; z <= (sharedError == 0 ? 0 : 5); z += 0.5) {
            double weight = Math.exp(-0.5 * z * z);
            double rf = (1 + pair.stretchStart() + pair.stretchFront()) / (1 + Math.exp(-eta - z * sharedError))
                    - pair.stretchStart();
            sum += weight * Math.max(0, Math.min(1, rf));
            weights += weight;
        }
        return sum / weights;
    }

    @ParameterizedTest
    @CsvSource({
        "silica-hexane-ethyl-acetate, AUTOMATED, 0",
        "silica-hexane-ethyl-acetate, BENCH, 0.14",
        "silica-hexane-ethyl-acetate, CLASS, 0.24",
        "silica-hexane-diethyl-ether, BENCH, 0.14",
        "silica-dichloromethane-methanol, AUTOMATED, 0",
        "silica-dichloromethane-methanol, CLASS, 0.24",
    })
    void thePriorComesBack(String id, Setting setting, double sharedError) {
        MeasuredPair pair = pair(id);
        Outlook outlook = Plates.outlook(id, setting, List.of("A"), List.of());
        assertEquals(mean(pair.prior(), (c, s) -> c), outlook.knowledge().meanC(0), 0.01);
        assertEquals(mean(pair.prior(), (c, s) -> s), outlook.knowledge().meanS(0), 0.003);
        for (int j = 0; j < pair.percentStrong().size(); j++) {
            double g = pair.strength().get(j);
            double expected = mean(pair.prior(), (c, s) -> shown(pair, c + s * g, sharedError));
            double percent = pair.percentStrong().get(j);
            assertEquals(expected, outlook.rf(0, percent), 0.003, percent + " %");
            assertEquals(expected, outlook.spot(0, percent).rf(), 0.003, percent + " %");
        }
    }

    @ParameterizedTest
    @CsvSource({"AUTOMATED", "BENCH", "CLASS"})
    void aSpotThatWasNotReadLearnsNothingFromPlatesOfOthers(Setting setting) {
        Outlook before = Plates.outlook(Plates.ACETATE, setting, List.of("A"), List.of());
        Outlook after = Plates.outlook(
                Plates.ACETATE, setting, List.of("A", "B"), List.of(Plates.run(Plates.ACETATE, 10, Map.of("B", 0.3))));
        // in a setting with shared error 32 thinned clouds stand for the prior: even to a few hundredths
        double near = setting == Setting.AUTOMATED ? 1e-12 : 0.01;
        for (double percent : new double[] {0, 5, 25, 60, 100}) {
            assertEquals(before.rf(0, percent), after.rf(0, percent), near, percent + " %");
        }
        assertTrue(Math.abs(after.rf(1, 25) - after.rf(0, 25)) > 0.01, "B did learn");
    }
}
