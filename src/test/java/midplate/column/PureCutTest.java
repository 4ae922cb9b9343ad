package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Bands in fractions, and the cut")
class PureCutTest {
    /** Against the lognormal distribution of a general library. */
    @Test
    void sharesAreThoseOfABellOverTheLogarithm() {
        FractionGrid grid = new FractionGrid(5, 200);
        double[] shares = grid.shares(60, 100);
        LogNormalDistribution bell = new LogNormalDistribution(null, Math.log(60 * 100) / 2, Math.log(100 / 60.0) / 4);
        assertEquals(40, grid.count());
        for (int i = 0; i < shares.length; i++) {
            assertEquals(bell.probability(5 * i, 5 * (i + 1)), shares[i], 1e-5);
        }
    }

    /** Two standard deviations to each side hold 95.45 %. */
    @Test
    void betweenStartAndEndLiesNearlyAllOfIt() {
        double[] shares = new FractionGrid(1, 300).shares(60, 100);
        assertEquals(0.9545, Arrays.stream(shares, 60, 100).sum(), 1e-4);
        assertEquals(1, Arrays.stream(shares).sum(), 1e-9);
    }

    @Test
    void whatLeavesAfterTheRunIsInNoFraction() {
        assertEquals(
                0.5,
                Arrays.stream(new FractionGrid(10, Math.sqrt(60 * 100)).shares(60, 100))
                        .sum(),
                1e-5);
        assertEquals(8, new FractionGrid(10, 71).count());
    }

    @Test
    void theCutIsTheRunThatHoldsMostAndIsPureEnough() {
        double[] target = {0, 0.1, 0.4, 0.4, 0.1};
        double[] other = {0.5, 0.45, 0.03, 0, 0};
        ColumnPlan.Cut cut = PureCut.best(target, other).orElseThrow();
        assertEquals(3, cut.fromFraction());
        assertEquals(5, cut.toFraction());
        assertEquals(0.9, cut.yield(), 1e-12);
        assertEquals(0.9 / 0.93, cut.purity(), 1e-12);
        assertTrue(PureCut.isGood(target, other));
    }

    @Test
    void edgesThatHoldHardlyAnythingAreLeftOff() {
        double[] target = {0.001, 0.004, 0.3, 0.6, 0.09, 0.004, 0.001};
        double[] none = new double[7];
        ColumnPlan.Cut cut = PureCut.best(target, none).orElseThrow();
        assertEquals(3, cut.fromFraction());
        assertEquals(5, cut.toFraction());
        assertEquals(0.99, cut.yield(), 1e-12);
    }

    @Test
    void whereOnlyLittleIsPureThereIsACutButNoGoodOne() {
        double[] target = {0.25, 0.5, 0.25, 0};
        double[] other = {0, 0.25, 0.5, 0.25};
        assertEquals(0.25, PureCut.best(target, other).orElseThrow().yield(), 1e-12);
        assertFalse(PureCut.isGood(target, other));
    }

    // Every run tried, as the definition says it.
    @Test
    void aGoodCutIsFoundWhereverThereIsOne() {
        Random random = new Random(5);
        int good = 0;
        for (int i = 0; i < 400; i++) {
            FractionGrid grid = new FractionGrid(4, 160);
            double start = 20 + 100 * random.nextDouble();
            double other = 20 + 100 * random.nextDouble();
            double[] target = grid.shares(start, start * (1.1 + random.nextDouble()));
            double[] others = grid.shares(other, other * (1.1 + random.nextDouble()));
            boolean found = false;
            for (int from = 0; from < target.length; from++) {
                for (int to = from; to < target.length; to++) {
                    double held = Arrays.stream(target, from, to + 1).sum();
                    double foreign = Arrays.stream(others, from, to + 1).sum();
                    found |= target[from] >= 1e-4 && held >= 0.8 && held >= 0.95 * (held + foreign);
                }
            }
            assertEquals(found, PureCut.isGood(target, others));
            good += found ? 1 : 0;
        }
        assertTrue(good > 100 && good < 300, "good " + good);
    }

    @Test
    void aTraceOfTheTargetIsNoCutHoweverPure() {
        assertEquals(Optional.empty(), PureCut.best(new double[] {0, 0, 0.002}, new double[] {0.5, 0.4, 0}));
    }

    @Test
    void whereBothLieTogetherThereIsNone() {
        double[] same = {0.2, 0.6, 0.2};
        assertEquals(Optional.empty(), PureCut.best(same, same));
        assertFalse(PureCut.isGood(same, same));
    }
}
