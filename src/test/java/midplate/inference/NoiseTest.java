package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import midplate.plate.Limit;
import midplate.plate.Reading;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The noise of a reading")
class NoiseTest {
    private static final Noise NOISE =
            Noise.of(new double[] {0, 10, 100}, new double[] {0.06, 0.03, 0.02}, 0.04, 0.005);

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
                IllegalArgumentException.class,
                () -> Noise.of(new double[] {0, 100}, new double[] {0.1, 0.1}, left, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void aScaleThatIsNoneIsRefused(double scale) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Noise.of(new double[] {0, 100}, new double[] {0.1, scale}, 0.5, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 0.101, Double.NaN})
    void aWidthOfTheLinesOutsideItsRangeIsRefused(double atLines) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Noise.of(new double[] {0, 100}, new double[] {0.1, 0.1}, 0.5, atLines));
    }

    // By definition: a reading on a line says that it lies no farther from it; reference: Apache Commons Math.
    @ParameterizedTest
    @CsvSource({"-0.01, 0.004", "0, 0.004", "0.02, 0.01", "0.3, 0.05", "0.98, 0.01", "1.02, 0.004"})
    void aReadingOnALineIsAsLikelyAsItIsToReadThere(double at, double sigma) {
        TDistribution student = new TDistribution(5);
        double start = student.cumulativeProbability((0.005 - at) / sigma);
        double front = 1 - student.cumulativeProbability((0.995 - at) / sigma);
        for (double read : new double[] {0, 0.001, 0.005}) {
            assertEquals(start, Noise.likelihood(read, at, sigma, 0.005), 1e-9);
            assertEquals(front, Noise.likelihood(1 - read, at, sigma, 0.005), 1e-9);
        }
        for (double read : new double[] {0.0051, 0.3, 0.9949}) {
            assertEquals(student.density((read - at) / sigma) / sigma, Noise.likelihood(read, at, sigma, 0.005), 1e-9);
        }
        assertEquals(student.density(-at / sigma) / sigma, Noise.likelihood(0, at, sigma, 0), 1e-9, "no lines");
    }

    // Own algebra: a reading lies on one of the lines or between them.
    @ParameterizedTest
    @CsvSource({"-0.015, 0.01", "0.004, 0.01", "0.1, 0.05", "0.5, 0.05", "0.99, 0.02", "1.02, 0.01"})
    void linesAndWhatLiesBetweenThemSumToOne(double at, double sigma) {
        double between = new SimpsonIntegrator(1e-10, 1e-12, 3, 32)
                .integrate(1 << 22, read -> Noise.likelihood(read, at, sigma, 0.005), 0.005 + 1e-12, 0.995 - 1e-12);
        double lines = Noise.likelihood(0, at, sigma, 0.005) + Noise.likelihood(1, at, sigma, 0.005);
        assertEquals(1, between + lines, 1e-8);
    }

    // A spot far below its line is surer to read on it than one at the line.
    @Test
    void onTheStartLineFallsWithTheClimbAndIsSurestFarBelow() {
        Stretch stretch = new Stretch(0.015, 0.02);
        double before = 1;
        double atLine = Noise.likelihood(0, 0, 0.01, 0.005);
        for (double eta = -12; eta <= 12; eta += 0.25) {
            double at = stretch.beyond(1 / (1 + Math.exp(-eta)));
            double likelihood = Noise.likelihood(0, at, 0.01, 0.005);
            assertTrue(likelihood < before, "at " + eta);
            before = likelihood;
        }
        double farBelow = Noise.likelihood(0, stretch.beyond(0), 0.01, 0.005);
        assertTrue(farBelow > 0.9 && atLine < 0.75, farBelow + " and " + atLine);
        assertEquals(farBelow, Noise.likelihood(1, 1.015, 0.01, 0.005), 1e-12, "alike at the front");
    }

    @Test
    void aNumberAtALineIsABoundAndAnyOtherReadingStaysAsItIs() {
        assertEquals(Reading.atStart(0.005), NOISE.bound(Reading.of(0)));
        assertEquals(Reading.atStart(0.005), NOISE.bound(Reading.of(0.005)));
        assertEquals(Reading.atFront(0.995), NOISE.bound(Reading.of(0.997)));
        OptionalDouble ruler = OptionalDouble.of(0.02);
        assertEquals(new Reading(0.005, Limit.AT_START, ruler), NOISE.bound(new Reading(0.001, Limit.NONE, ruler)));
        for (Reading reading : new Reading[] {Reading.of(0.006), Reading.atStart(0.03), Reading.atFront(1)}) {
            assertEquals(reading, NOISE.bound(reading));
        }
        Noise without = Noise.of(new double[] {0, 100}, new double[] {0.1, 0.1}, 0.5, 0);
        assertEquals(Reading.of(0), without.bound(Reading.of(0)));
    }
}
