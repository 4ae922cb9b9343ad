package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.catalogue.PairLink;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A reading in another pair")
class LinkedPairTest {
    private static final List<String> A = List.of("A");

    private static Outlook ether(Setting setting, PlateRun... runs) {
        return Plates.outlook(Plates.ETHER, setting, A, List.of(runs));
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void movesTheExpectationTheSameWay(Setting setting) {
        double before = 0;
        for (double read : new double[] {0.05, 0.2, 0.4, 0.6, 0.9}) {
            double rf = ether(setting, Plates.run(Plates.ACETATE, 20, Map.of("A", read)))
                    .rf(0, 40);
            assertTrue(rf > before + 0.01, read + ": " + rf);
            before = rf;
        }
        double unread = ether(setting).rf(0, 40);
        assertTrue(ether(setting, Plates.run(Plates.ACETATE, 20, Map.of("A", 0.05)))
                        .rf(0, 40)
                < unread);
        assertTrue(ether(setting, Plates.run(Plates.ACETATE, 20, Map.of("A", 0.9)))
                        .rf(0, 40)
                > unread);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void tellsSomethingAndLessThanOneInThePairItself(Setting setting) {
        double unread = Plates.width(ether(setting), 40);
        double other = Plates.width(ether(setting, Plates.run(Plates.ACETATE, 20, Map.of("A", 0.4))), 40);
        double own = Plates.width(ether(setting, Plates.run(Plates.ETHER, 40, Map.of("A", 0.4))), 40);
        assertTrue(own < other && other < unread, own + ", " + other + ", " + unread);
    }

    // Own algebra: c in the other pair is intercept + slope·c, and scatters by the link and by what is unsure of c.
    @ParameterizedTest
    @CsvSource({"silica-hexane-diethyl-ether, 0.5", "silica-dichloromethane-methanol, 0.12"})
    void theLinkIsAStraightLineWithItsScatter(String pair, double read) {
        PairLink link = Plates.CURVES.links().stream()
                .filter(each -> each.from().equals(Plates.ACETATE) && each.to().equals(pair))
                .findFirst()
                .orElseThrow();
        PlateRun run = Plates.run(Plates.ACETATE, 25, Map.of("A", read));
        Knowledge here = Plates.BUILT_IN.learn(Plates.ACETATE, Setting.AUTOMATED, A, List.of(run));
        Knowledge there = Plates.BUILT_IN.learn(pair, Setting.AUTOMATED, A, List.of(run));
        assertEquals(link.intercept() + link.slope() * here.meanC(0), there.meanC(0), 0.01);
        TraitCloud cloud = there.scenarios().get(0).spots().get(0);
        TraitCloud from = here.scenarios().get(0).spots().get(0);
        double expected = Math.hypot(link.deviation(), link.slope() * deviation(from));
        assertEquals(expected, deviation(cloud), 0.01);
    }

    private static double deviation(TraitCloud cloud) {
        double mean = cloud.meanC();
        double sum = 0;
        for (int i = 0; i < cloud.size(); i++) {
            sum += cloud.weight(i) * (cloud.c(i) - mean) * (cloud.c(i) - mean);
        }
        return Math.sqrt(sum);
    }

    @Test
    void ofASpotThatIsNotAskedAboutSaysNothing() {
        assertEquals(
                ether(Setting.BENCH).rf(0, 40),
                ether(Setting.BENCH, Plates.run(Plates.ACETATE, 20, Map.of("B", 0.9)))
                        .rf(0, 40));
    }

    @Test
    void withoutALinkSaysNothing() {
        PlateModels unlinked = PlateModels.of(Plates.CURVES.pairs(), List.of());
        assertFalse(unlinked.isLinked(Plates.ACETATE, Plates.ETHER));
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, 20, Map.of("A", 0.9)));
        assertEquals(
                ether(Setting.BENCH).rf(0, 40),
                Plates.outlook(unlinked, Plates.ETHER, Setting.BENCH, A, runs, 0.2, 0.8)
                        .rf(0, 40));
    }
}
