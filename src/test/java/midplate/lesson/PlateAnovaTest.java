package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scatter within and between plates by repeats. */
class PlateAnovaTest {
    // by hand: means 2, 5, 8; grand 5; SSB = 2·(9 + 0 + 9) = 36, MSB = 36/2 = 18; SSW = 3·2 = 6, MSW = 6/3 = 2; n0 = 2;
    // (18 − 2)/2 = 8
    @Test
    void aBalancedCaseByHand() {
        PlateAnova anova = PlateAnova.of(List.of(new double[] {1, 3}, new double[] {4, 6}, new double[] {7, 9}))
                .orElseThrow();
        assertEquals(18, anova.msBetween(), 1e-12);
        assertEquals(2, anova.msWithin(), 1e-12);
        assertEquals(2, anova.n0(), 1e-12);
        assertEquals(8, anova.between(), 1e-12);
    }

    // by hand: plates {1, 3}, {6}, {5, 7, 9}; N = 6, grand 31/6; SSB = Σ n·x̄² − N·x̄² = 8 + 36 + 147 − 961/6 = 185/6,
    // MSB = 185/12;
    // SSW = 2 + 0 + 8 = 10, MSW = 10/3; n0 = (6 − (4 + 1 + 9)/6)/2 = 11/6
    @Test
    void anUnbalancedCaseByHand() {
        PlateAnova anova = PlateAnova.of(List.of(new double[] {1, 3}, new double[] {6}, new double[] {5, 7, 9}))
                .orElseThrow();
        assertEquals(185.0 / 12, anova.msBetween(), 1e-9);
        assertEquals(10.0 / 3, anova.msWithin(), 1e-12);
        assertEquals(11.0 / 6, anova.n0(), 1e-12);
        assertEquals((185.0 / 12 - 10.0 / 3) * 6 / 11, anova.between(), 1e-9);
    }

    // an independent way to the same: half the mean square of differences within plates, and the expectation of the sum
    // of
    // squared differences between all readings of different plates, Σ n_i·n_j·σ_b² + …, solved for σ_b²
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5"})
    void unbalancedPlatesAgreeWithSumsOverPairsOfReadings(long seed) {
        Random random = new Random(seed);
        List<double[]> plates = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            plates.add(random.doubles(1 + random.nextInt(4)).toArray());
        }
        plates.add(new double[] {0.2, 0.4});
        PlateAnova anova = PlateAnova.of(plates).orElseThrow();
        double within = 0;
        int freedom = 0;
        for (double[] plate : plates) {
            double squares = 0;
            for (double one : plate) {
                for (double other : plate) {
                    squares += (one - other) * (one - other) / 2;
                }
            }
            within += squares / plate.length;
            freedom += plate.length - 1;
        }
        assertEquals(within / freedom, anova.msWithin(), 1e-12);
        double[] all = plates.stream().flatMapToDouble(Arrays::stream).toArray();
        double total = 0;
        for (double one : all) {
            for (double other : all) {
                total += (one - other) * (one - other) / 2;
            }
        }
        double n = all.length;
        double squares =
                plates.stream().mapToDouble(each -> each.length * each.length).sum();
        double w = within / freedom;
        // E Σ over ordered pairs of (x − y)²/2 = N(N − 1)·w + (N² − Σn²)·b
        double solved = (total - within * n - w * (n * (n - 1) - n * freedom)) / (n * n - squares);
        assertEquals(solved, anova.between(), 1e-9);
    }

    // the library's own F test
    @Test
    void theChanceIsThatOfTheLibrary() {
        List<double[]> plates =
                List.of(new double[] {0.31, 0.33}, new double[] {0.36, 0.35, 0.38}, new double[] {0.30, 0.35});
        assertEquals(
                new OneWayAnova().anovaPValue(plates),
                PlateAnova.of(plates).orElseThrow().chance(),
                1e-9);
    }

    @Test
    void withoutRepeatsThereIsNone() {
        assertEquals(Optional.empty(), PlateAnova.of(List.of(new double[] {1}, new double[] {2})));
        assertEquals(Optional.empty(), PlateAnova.of(List.of(new double[] {1, 2})));
    }

    // 2000 classes of 12 plates, one to three readings on each: variances 0.0004 within and 0.0025 between
    @Test
    void intervalsHoldWhatTheySay() {
        Random random = new Random(20261127);
        int classes = 2000;
        int within = 0;
        int between = 0;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < classes; i++) {
            List<double[]> plates = new ArrayList<>();
            for (int p = 0; p < 12; p++) {
                double plate = 0.05 * random.nextGaussian();
                double[] read = new double[1 + p % 3];
                Arrays.setAll(read, r -> 0.5 + plate + 0.02 * random.nextGaussian());
                plates.add(read);
            }
            PlateAnova anova = PlateAnova.of(plates).orElseThrow();
            within += holds(anova.within(), 0.02);
            between += holds(anova.betweenPlates(), 0.05);
            sum += anova.between();
            squares += anova.between() * anova.between();
        }
        double mean = sum / classes;
        double error = Math.sqrt((squares / classes - mean * mean) / classes);
        assertEquals(0.0025, mean, 3 * error);
        assertTrue(within > 0.88 * classes && within < 0.92 * classes, "within " + within);
        assertTrue(between > 0.85 * classes && between < 0.95 * classes, "between " + between);
    }

    private static int holds(Spread spread, double truth) {
        return spread.low() <= truth && truth <= spread.high() ? 1 : 0;
    }
}
