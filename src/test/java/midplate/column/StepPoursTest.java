package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import midplate.advice.Ratio;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What to mix for each step")
class StepPoursTest {
    private static ColumnPlan.StepPour one(double percent, double ml) {
        return StepPours.of(new Program(List.of(new Program.Step(percent, ml)))).get(0);
    }

    @Test
    void isATenthMoreInReadingsOfACylinder() {
        ColumnPlan.StepPour pour = one(10, 190);
        assertEquals(new Ratio(9, 1), pour.ratio());
        assertEquals(21, pour.strongMl(), 0);
        assertEquals(190, pour.weakMl(), 0);
        assertEquals(211, pour.mixMl(), 0);
    }

    /** 6 : 1 of 1100 ml with a tenth to spare is 1210 ml: 1037 and 173, no readings; 1050 and 175 are, and 6 : 1. */
    @Test
    void keepsTheRatioWhereReadingsOfACylinderDo() {
        ColumnPlan.StepPour pour = one(100.0 / 7, 1100);
        assertEquals(175, pour.strongMl(), 0);
        assertEquals(1050, pour.weakMl(), 0);
        assertEquals(1225, pour.mixMl(), 0);
    }

    @Test
    void neverFallsShortAndStaysNearTheShare() {
        for (double percent : new double[] {0, 0.5, 1, 4.76, 12.5, 33.33, 50, 90, 100}) {
            for (double ml : new double[] {3, 17, 60, 240, 777, 1500}) {
                ColumnPlan.StepPour pour = one(percent, ml);
                assertTrue(pour.mixMl() >= 1.1 * ml - 1e-9, pour.toString());
                assertTrue(pour.mixMl() <= 1.1 * ml + 60, pour.toString());
                assertTrue(pour.weakMl() >= 0 && pour.strongMl() >= 0, pour.toString());
                assertEquals(percent, 100 * pour.strongMl() / pour.mixMl(), 0.08 * percent + 0.15, pour.toString());
            }
        }
    }

    @Test
    void aShareThatIsNoSimpleRatioKeepsItsParts() {
        assertEquals(new Ratio(7, 1), StepPours.ratio(12.5));
        assertEquals(new Ratio(10, 1), StepPours.ratio(100.0 / 11));
        assertEquals(new Ratio(863, 137), StepPours.ratio(13.7));
        assertEquals(new Ratio(6, 1), StepPours.ratio(14.3), "a sixth and a bit, told to a decimal");
    }
}
