package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values: own algebra on Rf = (1 + ε₀ + ε₁)/(1 + e^(−η)) − ε₀, held between 0 and 1. */
@DisplayName("What a plate shows near its lines")
class StretchTest {
    private static double logistic(double eta) {
        return 1 / (1 + Math.exp(-eta));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.02, 0", "0, 0.03", "0.015, 0.04", "0.2, 0.2"})
    void rfAndLogisticAreInverse(double start, double front) {
        Stretch stretch = new Stretch(start, front);
        for (int i = 0; i <= 100; i++) {
            double rf = i / 100.0;
            assertEquals(rf, stretch.rf(stretch.logistic(rf)), 1e-14);
        }
        for (double eta = -2; eta <= 2; eta += 0.25) {
            double rf = stretch.rf(logistic(eta));
            if (rf > 0 && rf < 1) {
                assertEquals(logistic(eta), stretch.logistic(rf), 1e-14);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.015, 0.04", "0.2, 0.1"})
    void theSlopeIsThatOfTheCurve(double start, double front) {
        Stretch stretch = new Stretch(start, front);
        double h = 1e-5;
        for (double eta = -6; eta <= 6; eta += 0.37) {
            double rise = stretch.beyond(logistic(eta + h)) - stretch.beyond(logistic(eta - h));
            assertEquals(rise / (2 * h), stretch.slope(logistic(eta)), 1e-8, "at " + eta);
        }
    }

    @Test
    void aSpotBeyondALineSitsOnIt() {
        Stretch stretch = new Stretch(0.02, 0.05);
        assertEquals(0, stretch.rf(0.018));
        assertEquals(1, stretch.rf(0.99));
        assertTrue(stretch.rf(0.02) > 0, "0.02·1.07 is beyond 0.02");
        assertEquals(1.07 * 0.5 - 0.02, stretch.rf(0.5), 1e-15);
    }

    // How far beyond its line a spot would be says how surely it is read on it, so the scale goes on there.
    @ParameterizedTest
    @CsvSource({"0.02, 0.05", "0, 0", "0.2, 0.1"})
    void theScaleReachesBeyondTheLines(double start, double front) {
        Stretch stretch = new Stretch(start, front);
        assertEquals(-start, stretch.beyond(0), 1e-15);
        assertEquals(1 + front, stretch.beyond(1), 1e-15);
        double before = -1;
        for (double logistic = 0; logistic <= 1; logistic += 0.01) {
            double beyond = stretch.beyond(logistic);
            assertTrue(beyond > before, "rising at " + logistic);
            assertEquals(Math.max(0, Math.min(1, beyond)), stretch.rf(logistic), 1e-15);
            before = beyond;
        }
    }

    @Test
    void withoutStretchItIsTheLogisticCurve() {
        for (double eta = -20; eta <= 20; eta += 0.5) {
            assertEquals(logistic(eta), new Stretch(0, 0).rf(logistic(eta)));
        }
    }

    @ParameterizedTest
    @CsvSource({"-0.001, 0", "0, -0.001", "0.21, 0", "0, 0.21", "NaN, 0", "0, NaN"})
    void aStretchOutsideItsRangeIsRefused(double start, double front) {
        assertThrows(IllegalArgumentException.class, () -> new Stretch(start, front));
    }
}
