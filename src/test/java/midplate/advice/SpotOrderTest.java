package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The order of spots")
class SpotOrderTest {
    // Law: what is advised does not depend on the order in which the spots are named.
    @Test
    void doesNotMatterForTheAdvice() {
        Map<String, Double> rf = Map.of("A", 0.0, "B", 0.04, "C", 0.38);
        Advice one = Asking.acetate()
                .spots("A", "B", "C")
                .in(Setting.BENCH)
                .run(15, rf)
                .advice();
        Advice other = Asking.acetate()
                .spots("C", "A", "B")
                .in(Setting.BENCH)
                .run(15, rf)
                .advice();
        assertEquals(one.bestPercentStrong(), other.bestPercentStrong());
        assertEquals(one.chanceNoRatioWorks(), other.chanceNoRatioWorks(), 1e-12);
    }
}
