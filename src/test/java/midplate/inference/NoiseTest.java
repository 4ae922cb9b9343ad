package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The noise of a reading")
class NoiseTest {
    private static final Noise NOISE = Noise.of(new double[] {0, 10, 100}, new double[] {0.06, 0.03, 0.02}, 0.04);

    // Reference: Student's t with 5 degrees of freedom in Apache Commons Math (incomplete beta function).
    @Test
    void theDistributionIsStudentsWithFiveDegreesOfFreedom() {
        TDistribution student = new TDistribution(5);
        for (int i = -600; i <= 600; i++) {
            double z = i / 20.0;
            assertEquals(student.cumulativeProbability(z), Noise.below(z), 1e-9, "below " + z);
            assertEquals(student.density(z), Noise.density(z, 1), 1e-9, "density at " + z);
        }
    }

    // Own algebra: a density is the slope of its distribution function.
    @ParameterizedTest
    @ValueSource(doubles = {-12, -3, -0.7, 0, 0.4, 2, 9})
    void theDensityIntegratesToTheDistribution(double z) {
        double from = -40;
        double area = new SimpsonIntegrator(1e-10, 1e-12, 3, 32)
                .integrate(1 << 22, x -> Noise.density(x / 0.05, 0.05), from * 0.05, z * 0.05);
        assertEquals(Noise.below(z) - Noise.below(from), area, 1e-9);
    }

    // Own algebra: 4·Rf·(1 − Rf) is 1 midway and 0 at both lines, where √a of the scale is left.
    @Test
    void isFullMidwayAndLeastAtBothLines() {
        assertEquals(0.03, NOISE.sigma(10, 0.5, 0), 1e-15);
        assertEquals(0.03 * 0.2, NOISE.sigma(10, 0, 0), 1e-15);
        assertEquals(0.03 * 0.2, NOISE.sigma(10, 1, 0), 1e-15);
        assertEquals(0.03 * Math.sqrt(0.04 + 0.96 * 0.64), NOISE.sigma(10, 0.2, 0), 1e-15);
        for (double rf = 0; rf <= 0.5; rf += 0.05) {
            assertEquals(NOISE.sigma(10, rf, 0), NOISE.sigma(10, 1 - rf, 0), 1e-15, "alike from both lines");
            assertTrue(rf == 0 || NOISE.sigma(10, rf, 0) > NOISE.sigma(10, rf - 0.05, 0), "rising to the middle");
        }
    }

    @Test
    void passesThroughTheMeasuredScalesAndStaysBetweenThem() {
        assertEquals(0.06, NOISE.sigma(0, 0.5, 0), 1e-15);
        assertEquals(0.02, NOISE.sigma(100, 0.5, 0), 1e-15);
        for (double percent = 0; percent <= 10; percent += 0.5) {
            double sigma = NOISE.sigma(percent, 0.5, 0);
            assertTrue(sigma >= 0.03 && sigma <= 0.06, percent + " %: " + sigma);
        }
    }

    // Own algebra: independent errors add by their squares; 0.03 and 0.04 make 0.05.
    @Test
    void anErrorOnTopAddsByItsSquare() {
        assertEquals(0.05, NOISE.sigma(10, 0.5, 0.04), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.0001, Double.NaN})
    void aShareLeftAtTheLinesOutsideItsRangeIsRefused(double left) {
        assertThrows(
                IllegalArgumentException.class, () -> Noise.of(new double[] {0, 100}, new double[] {0.1, 0.1}, left));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void aScaleThatIsNoneIsRefused(double scale) {
        assertThrows(
                IllegalArgumentException.class, () -> Noise.of(new double[] {0, 100}, new double[] {0.1, scale}, 0.5));
    }
}
