package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Expected values: own algebra on marks from −16 to 16 by 0.01. */
@DisplayName("The ruler along ln(Rf/(1 − Rf))")
class LogitScaleTest {
    private static double eta(int mark) {
        return -16 + mark * 0.01;
    }

    @Test
    void hasAMarkEachHundredthFromEndToEnd() {
        assertEquals(3201, LogitScale.SIZE);
        for (int mark = 0; mark < LogitScale.SIZE; mark++) {
            assertEquals(1 / (1 + Math.exp(-eta(mark))), LogitScale.logistic(mark), 1e-13);
            assertEquals(mark, LogitScale.mark(eta(mark)));
        }
    }

    @Test
    void theNearestMarkIsTaken() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            double eta = random.nextDouble(-16, 16);
            assertEquals(eta, eta(LogitScale.mark(eta)), 0.005 + 1e-9);
        }
    }

    @Test
    void beyondTheEndsTheEndMarkIsTaken() {
        assertEquals(0, LogitScale.mark(-16.02));
        assertEquals(0, LogitScale.mark(-1e9));
        assertEquals(0, LogitScale.mark(Double.NEGATIVE_INFINITY));
        assertEquals(3200, LogitScale.mark(16.02));
        assertEquals(3200, LogitScale.mark(1e12));
        assertEquals(3200, LogitScale.mark(Double.POSITIVE_INFINITY));
        assertTrue(LogitScale.logistic(0) < 2e-7 && LogitScale.logistic(3200) > 1 - 2e-7);
    }
}
