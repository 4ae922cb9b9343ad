package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The chances within what is poured")
class PourRangeTest {
    // "the greatest chance between these two" (Pour): also where the greatest lies between the ends and what is poured.
    @Test
    void areTheLeastAndTheGreatestOfTheWholeRange() {
        Asking asking = Asking.acetate()
                .spots("A", "B")
                .run(20, Map.of("A", 0.101, "B", 0.355))
                .run(20, Map.of("A", 0.101, "B", 0.355))
                .poured(5, 2);
        Pour pour = asking.advice().pour();
        List<Double> between = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            between.add(pour.lowPercent() + i * (pour.highPercent() - pour.lowPercent()) / 40);
        }
        for (Forecast forecast : asking.forecasts(between)) {
            assertTrue(
                    forecast.chance() <= pour.highChance() + 0.01,
                    forecast.percentStrong() + " %: " + forecast.chance() + " above " + pour);
            assertTrue(
                    forecast.chance() >= pour.lowChance() - 0.01,
                    forecast.percentStrong() + " %: " + forecast.chance() + " below " + pour);
        }
    }
}
