package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import midplate.catalogue.JointTraits;
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

    // Own algebra: x in the other pair is B·x + b, and scatters by R and by what is unsure of x.
    @ParameterizedTest
    @CsvSource({"silica-hexane-diethyl-ether, 0.5", "silica-dichloromethane-methanol, 0.12"})
    void leadsToANormalCurveAroundTheOneOfTheJointTraits(String pair, double read) {
        JointTraits joint = Plates.CURVES.joint().orElseThrow();
        LinkedPair link = JointNormal.of(joint).link(Plates.ACETATE, pair);
        PlateRun run = Plates.run(Plates.ACETATE, 25, Map.of("A", read));
        Knowledge here = Plates.BUILT_IN.learn(Plates.ACETATE, Setting.AUTOMATED, A, List.of(run));
        Knowledge there = Plates.BUILT_IN.learn(pair, Setting.AUTOMATED, A, List.of(run));
        Moments from = Moments.of(here.scenarios().get(0).spots().get(0), 3);
        TraitCloud cloud = there.scenarios().get(0).spots().get(0);
        assertEquals(link.meanC(from), cloud.meanC(), 0.01);
        double above = link.meanC(from) - JointNormal.of(joint).of(pair).mean()[0];
        double times = joint.width().factor() * Math.exp(joint.width().slope() * above);
        double variance = times * link.around()[0][0] + link.carriedC(from);
        assertEquals(Math.sqrt(variance), deviation(cloud), 0.01);
    }

    // Own algebra: the width of the law, held beyond the compounds that were measured.
    @ParameterizedTest
    @CsvSource({"-1, 0.119346", "0, 0.08", "1, 0.0536256", "-5, 0.178043", "5, 0.0359463"})
    void theScatterAroundItFollowsTheLawBetweenItsLimits(double c, double variance) {
        LinkedPair plain = new LinkedPair(new double[][] {{1}}, new double[] {0}, new double[][] {{0.1}});
        LinkedPair link = plain.with(new LinkedPair.Widths(new JointTraits.Width(0.8, -0.4), 0, -2, 2));
        TraitGrid grid = TraitGrid.spots(TraitGrid.Trait.ALIKE, TraitGrid.Trait.ALIKE);
        double[] even = new double[grid.size()];
        Arrays.fill(even, 1);
        TraitPrior there = TraitPrior.of(grid, even);
        TraitCloud one = TraitCloud.of(
                new TraitCloud.Points(new double[] {c}, new double[] {1}, new double[] {0}, new double[] {1}));
        assertEquals(variance, link.varianceC(new Moments(new double[] {c}, new double[1][1])), 1e-4 * variance);
        assertEquals(variance, link.prior(one, there).varianceC(), 0.02 * variance);
    }

    // Two other pairs: their readings agree, or one says nothing; the narrowest is not widened, and both together tell
    // more.
    @Test
    void besideAnotherOneTellsMoreThanAlone() {
        PlateRun acetate = Plates.run(Plates.ACETATE, 25, Map.of("A", 0.4));
        double alone = width(Plates.METHANOL, 3, acetate);
        double expected = Plates.outlook(Plates.ETHER, Setting.AUTOMATED, A, List.of(acetate))
                .rf(0, 40);
        double both = width(Plates.METHANOL, 3, acetate, Plates.run(Plates.ETHER, 40, Map.of("A", expected)));
        assertTrue(both < alone, both + " against " + alone);
        double ether = width(Plates.ETHER, 40, acetate);
        double three = width(Plates.ETHER, 40, acetate, Plates.run(Plates.METHANOL, 3, Map.of("A", 0.4)));
        assertTrue(three < ether + 0.005, three + " against " + ether);
    }

    @Test
    void besideAnotherOneMovesTheExpectationItsWay() {
        PlateRun acetate = Plates.run(Plates.ACETATE, 25, Map.of("A", 0.4));
        double before = 0;
        for (double read : new double[] {0.2, 0.4, 0.6}) {
            PlateRun ether = Plates.run(Plates.ETHER, 40, Map.of("A", read));
            double rf = Plates.outlook(Plates.METHANOL, Setting.AUTOMATED, A, List.of(acetate, ether))
                    .rf(0, 3);
            assertTrue(rf > before, read + ": " + rf);
            before = rf;
        }
    }

    @Test
    void besideAnotherOneCountsAlikeInWhateverOrder() {
        PlateRun acetate = Plates.run(Plates.ACETATE, 25, Map.of("A", 0.4));
        PlateRun ether = Plates.run(Plates.ETHER, 40, Map.of("A", 0.3));
        assertEquals(
                Plates.outlook(Plates.METHANOL, Setting.BENCH, A, List.of(acetate, ether))
                        .rf(0, 3),
                Plates.outlook(Plates.METHANOL, Setting.BENCH, A, List.of(ether, acetate))
                        .rf(0, 3));
    }

    private static double width(String pair, double percent, PlateRun... runs) {
        return Plates.width(Plates.outlook(pair, Setting.AUTOMATED, A, List.of(runs)), percent);
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
        PlateModels unlinked = PlateModels.of(Plates.CURVES.pairs());
        assertFalse(unlinked.isLinked(Plates.ACETATE, Plates.ETHER));
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, 20, Map.of("A", 0.9)));
        assertEquals(
                ether(Setting.BENCH).rf(0, 40),
                Plates.outlook(unlinked, Plates.ETHER, Setting.BENCH, A, runs, 0.2, 0.8)
                        .rf(0, 40));
    }
}
