package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever ratio is tried, the numbers shown are what the server itself says of it. */
class WhatIfNumbersIT extends OnSlider {
    @Test
    void atEveryStopTheNumbersAreTheServersOwn() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        press(page, "Home");
        List<Double> shares = new ArrayList<>();
        List<List<String>> shown = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            press(page, "PageUp", "ArrowRight", "ArrowRight");
            shares.add(share(page));
            shown.add(List.of(line(page, "next", "A"), line(page, "next", "B"), line(page, "what-if-now", "Chance")));
        }
        assertEquals(10, shares.stream().distinct().count());
        JsonNode predictions = answer(shares).get("predictions");
        for (int i = 0; i < 10; i++) {
            JsonNode at = predictions.get(i);
            assertSpot(at.at("/spots/A"), shown.get(i).get(0));
            assertSpot(at.at("/spots/B"), shown.get(i).get(1));
            assertChance(at, shown.get(i).get(2));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {EXAMPLE, PARTLY_MEASURED})
    void betweenThePointsOfTheCurvesTheNumbersAreTheServersOwn(String sheet) throws IOException, InterruptedException {
        Page page = openLeft(sheet);
        List<Double> points = numbers(answer(List.of()).at("/curves/percentStrong"));
        List<Double> shares = List.of(0.05, 1.33, 4.45, 8.88, 12.3, 15.7, 23.5, 41.2, 63.7, 88.4);
        assertTrue(shares.stream().noneMatch(points::contains), "between the points");
        JsonNode predictions = answer(shares).get("predictions");
        List<List<Double>> read = read(page, shares);
        for (int i = 0; i < 10; i++) {
            JsonNode at = predictions.get(i);
            assertEquals(at.at("/spots/A/rf").asDouble(), read.get(i).get(0), 0.005, "A at " + shares.get(i));
            assertEquals(at.at("/spots/B/rf").asDouble(), read.get(i).get(1), 0.005, "B at " + shares.get(i));
            assertEquals(
                    at.get("probabilityAllInWindow").asDouble(),
                    read.get(i).get(2),
                    0.005,
                    "chance at " + shares.get(i));
        }
    }

    /** What the page makes of the curves, before it is rounded to be shown: of A, of B, the chance. */
    private List<List<Double>> read(Page page, List<Double> shares) throws IOException, InterruptedException {
        Object found = page.evaluate("""
                async ([answer, shares]) => {
                  const { outcomeAt } = await import("/answer/outcome.js");
                  const read = (share) => outcomeAt(JSON.parse(answer), share);
                  return shares.map(read).map((at) => [at.spots.A.rf, at.spots.B.rf, at.chance]);
                }""", List.of(answer(List.of()).toString(), shares));
        return ((List<?>) found)
                .stream()
                        .map(row -> ((List<?>) row)
                                .stream()
                                        .map(each -> ((Number) each).doubleValue())
                                        .toList())
                        .toList();
    }

    @Test
    void betweenTwoPointsTheWayIsStraightInTheLogarithm() {
        Page page = openLeft(ONE);
        List<Double> low = List.of(0.0, 0.4, 0.8);
        List<Double> rf = List.of(0.0, 0.5, 0.9);
        List<Double> high = List.of(0.1, 0.6, 1.0);
        Map<String, List<Double>> chance = Map.of("chance", List.of(0.0, 0.8, 0.2), "smallestGap", List.of());
        routeCurves(page, List.of(0.0, 8.0, 100.0), List.of(new Curve("A", rf, low, high)), chance);
        press(page, "Home", "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
        assertEquals(2, share(page));
        assertEquals(List.of(0.25, 0.2, 0.35), spotNumbers(page), "ln 3 is half of ln 9");
        assertEquals("Chance 40 of 100", line(page, "what-if-now", "Chance"));
        press(page, "End", "ArrowLeft");
        double part = Math.log(100.0 / 9) / Math.log(101.0 / 9);
        assertEquals(0.5 + 0.4 * part, spotNumbers(page).get(0), 0.005);
        press(page, "Home", "PageUp", "PageUp", "PageUp", "PageUp", "ArrowRight", "ArrowRight", "ArrowRight");
        assertEquals(13, share(page), "20 halves to 10, then whole ones");
        part = Math.log(14.0 / 9) / Math.log(101.0 / 9);
        assertEquals(0.5 + 0.4 * part, spotNumbers(page).get(0), 0.005, "0.573 where a straight line in % gives 0.522");
    }

    private static List<Double> spotNumbers(Page page) {
        return numbersIn(line(page, "next", "A").replace("9 of 10", ""));
    }
}
