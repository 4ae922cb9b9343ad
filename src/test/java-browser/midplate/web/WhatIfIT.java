package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The slider over the ratios: what it shows is what the server says, and nothing else happens while it slides. */
class WhatIfIT extends OnSlider {
    @ParameterizedTest
    @CsvSource({"1280, 900", "390, 844"})
    void whileItSlidesNothingIsAskedAndNothingMoves(int width, int height) {
        Page page = openLeft(new Browser.NewContextOptions().setViewportSize(width, height), EXAMPLE);
        page.locator(SLIDER).scrollIntoViewIfNeeded();
        page.evaluate("""
                () => {
                  window.shifted = [];
                  new PerformanceObserver((seen) => seen.getEntries().forEach((each) => window.shifted.push(
                    each.sources.map((source) => source.node && (source.node.id || source.node.nodeName)).join())))
                    .observe({ type: "layout-shift" });
                }""");
        BoundingBox slider = page.locator(SLIDER).boundingBox();
        int before = asked.size();
        List<List<Double>> places = places(page);
        List<Double> shares = new ArrayList<>();
        double y = slider.y + slider.height / 2;
        page.mouse().move(slider.x + 12, y);
        page.mouse().down();
        for (int i = 0; i <= 20; i++) {
            page.mouse().move(slider.x + 12 + (slider.width - 24) * i / 20, y);
            shares.add(share(page));
            assertEquals(places, places(page), "at " + shares.get(i) + " %");
        }
        page.mouse().up();
        page.waitForTimeout(400); // longer than the pause after which a change is asked about
        assertTrue(shares.get(0) < 1 && shares.get(20) > 90, "slid from end to end: " + shares);
        assertEquals(shares.stream().sorted().toList(), shares);
        assertEquals(before, asked.size(), "requests");
        assertEquals("", String.valueOf(page.evaluate("window.shifted.join()")));
    }

    /** Where the boxes lie that could be pushed, in the page. */
    private static List<List<Double>> places(Page page) {
        return List.of("#next", "#what-if", "#what-if-buttons", "#before-pouring", "#charts", "#chart-rf-words")
                .stream()
                .map(each -> page.locator(each).boundingBox())
                .map(box -> List.of(box.x, box.y, box.width, box.height))
                .toList();
    }

    @Test
    void keysGoByStops() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        double advised = answer(List.of()).at("/advice/percentStrong").asDouble();
        assertTrue(advised > 20, "the example's advice lies above the stops below");
        press(page, "Home");
        List<Double> seen = new ArrayList<>(List.of(share(page)));
        for (String key : List.of(
                "ArrowRight",
                "ArrowUp",
                "PageUp",
                "ArrowLeft",
                "ArrowDown",
                "PageDown",
                "ArrowLeft",
                "End",
                "ArrowRight",
                "ArrowLeft",
                "PageDown")) {
            press(page, key);
            seen.add(share(page));
        }
        assertEquals(List.of(0.0, 0.5, 1.0, 3.5, 3.0, 2.5, 0.0, 0.0, 100.0, 100.0, 99.0, 94.0), seen);
        assertEquals("what-if-share", focused(page));
        assertTrue(page.textContent("#what-if-now").contains("94 % ethyl acetate"));
        assertTrue(page.textContent("#chart-rf-read").contains("At 94 %"), "the charts follow");
    }

    @Test
    void backGoesToTheAdviceAndToTheSlider() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        JsonNode advice = answer(List.of()).get("advice");
        assertTrue(page.isDisabled("#what-if-back"));
        List<String> advised = page.locator("#next li").allTextContents();
        assertSpot(advice.get("spots").get(0), advised.get(0));
        press(page, "Home");
        assertFalse(page.isDisabled("#what-if-back"));
        assertFalse(advised.equals(page.locator("#next li").allTextContents()));
        page.click("#what-if-back");
        assertEquals("what-if-share", focused(page));
        // above 10 % the slider names whole percents
        assertEquals(advice.get("percentStrong").asDouble(), share(page), 0.5);
        assertEquals(advised, page.locator("#next li").allTextContents());
        assertTrue(page.isDisabled("#what-if-back"));
    }

    @Test
    void aHeldRatioStandsBesideTheOneTried() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        press(page, "Home", "PageUp", "PageUp", "PageUp", "PageUp");
        page.click("#what-if-hold");
        press(page, "PageUp", "PageUp", "PageUp");
        double tried = share(page);
        List<List<String>> rows = page.locator("#what-if-both tbody tr").all().stream()
                .map(row -> row.locator("th, td").allTextContents())
                .toList();
        assertEquals(List.of("Ratio", "9 : 1"), rows.get(0).subList(0, 2), "10 %");
        assertEquals(List.of("hexane, ml", "9"), rows.get(1).subList(0, 2), "of 10 ml");
        assertEquals(10 * (100 - tried) / 100, Double.parseDouble(rows.get(1).get(2)), 0.05);
        assertEquals(List.of("ethyl acetate, ml", "1"), rows.get(2).subList(0, 2));
        assertEquals(10 * tried / 100, Double.parseDouble(rows.get(2).get(2)), 0.05);
        JsonNode foretold = answer(List.of(10.0, tried)).get("predictions");
        for (int spot = 0; spot < 2; spot++) {
            String name = List.of("A", "B").get(spot);
            List<String> row = rows.get(5 + spot);
            assertEquals("Rf of " + name, row.get(0));
            for (int side = 0; side < 2; side++) {
                JsonNode at = foretold.get(side).get("spots").get(name);
                List<Double> shown = numbersIn(row.get(1 + side));
                assertEquals(at.get("low").asDouble(), shown.get(0), SHOWN, row.toString());
                assertEquals(at.get("high").asDouble(), shown.get(1), SHOWN, row.toString());
            }
        }
        page.click("#what-if-free");
        assertEquals(0, page.locator("#what-if-both").count());
        assertEquals("what-if-hold", focused(page));
    }

    @Test
    void theAdvisedRatioHeldSaysWhatTheAdviceSays() throws IOException, InterruptedException {
        Page page = openLeft(ONE);
        List<Double> flat = List.of(0.5, 0.5);
        Curve spot = new Curve("A", flat, flat, flat);
        Map<String, List<Double>> chance = Map.of("chance", List.of(0.25, 0.25), "smallestGap", List.of());
        routeCurves(page, List.of(0.0, 100.0), List.of(spot), chance);
        double advised = answer(List.of()).at("/advice/probabilityAllInWindow").asDouble();
        assertTrue(advised > 0.3, "not the chance of the curve: " + advised);
        page.click("#what-if-hold");
        press(page, "ArrowLeft");
        List<String> chances =
                page.locator("#what-if-both tbody tr").nth(3).locator("td").allTextContents();
        assertEquals(List.of(String.valueOf(Math.round(100 * advised)), "25"), chances);
    }

    @Test
    void whatIsHeldGoesWithThePair() {
        Page page = openLeft(EXAMPLE);
        page.click("#what-if-hold");
        page.locator("#what-if-both").waitFor();
        page.locator("#pair").selectOption("dichloromethane methanol");
        assertEquals(0, page.locator("#what-if-both").count());
    }

    @Test
    void theExpectedPlateFollows() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        press(page, "Home", "PageUp", "PageUp", "PageUp");
        JsonNode foretold = answer(List.of(share(page))).at("/predictions/0/spots");
        for (String name : List.of("A", "B")) {
            String cloud = "#ghost-cloud-" + (name.equals("A") ? "s1" : "s2");
            double low = 70 - 10 - 52 * foretold.get(name).get("low").asDouble();
            double high = 70 - 10 - 52 * foretold.get(name).get("high").asDouble();
            double middle = Double.parseDouble(page.getAttribute(cloud, "cy"));
            double half = Double.parseDouble(page.getAttribute(cloud, "ry"));
            assertEquals((low + high) / 2, middle, 0.1, name + ": mm from the upper edge of a plate of 70 mm");
            assertEquals((low - high) / 2, half, 0.1, name);
        }
    }

    @Test
    void oneCompoundHasNoGap() {
        Page page = openLeft(ONE);
        press(page, "ArrowLeft");
        page.click("#what-if-hold");
        assertFalse(page.textContent("#what-if").contains("gap"));
        assertEquals(1, page.locator("#next li").count());
        assertEquals(0, page.locator("#chart-apart").count());
        assertEquals(2, page.locator("#charts figure").count());
    }

    @Test
    void withCompoundsToKeepApartTheChanceIsThatOfBoth() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        page.locator("#apart").selectOption("s1 s2");
        answered(page);
        JsonNode curves = answer(List.of()).get("curves");
        List<Double> shares = numbers(curves.get("percentStrong"));
        List<Double> goal = numbers(curves.get("goal"));
        List<Double> window = numbers(curves.get("chance"));
        int at = IntStream.range(0, shares.size())
                .filter(i -> shares.get(i) >= 20 && shares.get(i) == Math.rint(shares.get(i)))
                .boxed()
                .max((one, other) ->
                        Double.compare(window.get(one) - goal.get(one), window.get(other) - goal.get(other)))
                .orElseThrow();
        assertTrue(window.get(at) - goal.get(at) > 0.02, "the two chances differ at " + shares.get(at) + " %");
        press(page, "End");
        while (share(page) > shares.get(at)) {
            press(page, "ArrowLeft");
        }
        String both = String.valueOf(Math.round(100 * goal.get(at)));
        String one = String.valueOf(Math.round(100 * window.get(at)));
        assertEquals("Chance " + both + " of 100", line(page, "what-if-now", "Chance"));
        assertEquals(
                "Chance in the window " + one + " of 100", line(page, "chart-chance-read", "Chance in the window "));
        assertEquals(
                "Chance in the window and apart " + both + " of 100",
                line(page, "chart-chance-read", "Chance in the window and"));
    }
}
