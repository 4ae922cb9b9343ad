package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RowsTest {
    /** Rows of s 0.5 and 1.25; the second lacks the points at c = 0.1 and 0.2. */
    private static final TraitCloud.Points POINTS = new TraitCloud.Points(
            new double[] {-0.1, 0, 0.1, 0, 0.3, 0.4},
            new double[] {0.5, 0.5, 0.5, 1.25, 1.25, 1.25},
            new double[6],
            new double[] {0.1, 0.3, 0.15, 0.2, 0.2, 0.05});

    private static double[] logistic() {
        double[] onMarks = new double[LogitScale.SIZE];
        Arrays.setAll(onMarks, LogitScale::logistic);
        return onMarks;
    }

    private static double summed(double strength, double shift) {
        double sum = 0;
        for (int i = 0; i < POINTS.weight().length; i++) {
            double eta = POINTS.c()[i] + POINTS.s()[i] * strength + shift;
            sum += POINTS.weight()[i] / (1 + Math.exp(-Math.max(-16, Math.min(16, eta))));
        }
        return sum;
    }

    @Test
    void anExpectationIsTheSumOverThePoints() {
        // half a mark of η moves the logistic by at most 0.00125
        assertEquals(summed(0.7, 0), Rows.of(POINTS).expect(logistic(), 0.7, 0), 0.00126);
        assertEquals(summed(-2.3, 0.4), Rows.of(POINTS).expect(logistic(), -2.3, 0.4), 0.00126);
    }

    @Test
    void beyondTheRulerItsEndsCount() {
        assertEquals(summed(60, 0), Rows.of(POINTS).expect(logistic(), 60, 0), 1e-6);
        assertEquals(summed(-60, 0), Rows.of(POINTS).expect(logistic(), -60, 0), 1e-6);
        assertEquals(summed(12.8, 0), Rows.of(POINTS).expect(logistic(), 12.8, 0), 1e-6);
    }
}
