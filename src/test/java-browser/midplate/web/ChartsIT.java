package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The charts: what is drawn lies where own algebra says, and what is taken away is what the server said. */
class ChartsIT extends OnAnswers {
    /** A place on the drawing, in its units. */
    private record Place(double x, double y) {}

    private static List<Place> readings(Page page, String which) {
        return page.locator("#chart-rf-drawing .chart-point" + which).all().stream()
                .map(point -> point.getAttribute("transform")
                        .replaceAll("[^-\\d.,]", "")
                        .split(",", -1))
                .map(xy -> new Place(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))
                .toList();
    }

    @Test
    void aReadingIsDrawnAtItsRfAndItsShare() {
        Page page = openLeft(EXAMPLE);
        Axes axes = Axes.of(page, "chart-rf");
        assertEquals(1, axes.highest());
        List<Place> readings = readings(page, ".chart-colour-0");
        assertEquals(2, readings.size(), "A was seen twice");
        double part = (readings.get(0).x() - axes.left()) / (axes.right() - axes.left());
        assertEquals(Math.log(11) / Math.log(101), part, 0.003, "10 % on an axis in ln(% + 1)");
        assertEquals(axes.y(3.5 / 52), readings.get(0).y(), 0.3, "13.5 mm between lines at 10 and 62 mm");
        assertEquals(axes.y(3.0 / 52), readings.get(1).y(), 0.3, "13 mm");
        assertEquals(axes.y(7.5 / 52), readings(page, ".chart-colour-1").get(0).y(), 0.3, "17.5 mm");
    }

    @Test
    void aReadingOfAnotherPairIsLeftOut() {
        Page page = openLeft("""
                const other = addPlate(sheet, '20 : 1');
                other.weak = 'dichloromethane'; other.strong = 'methanol';
                other.lanes[0].readings = [{ id: 'r9', spots: ['s1'], by: 'mm', typed: '40' }];
                """);
        assertEquals(3, readings(page, "").size());
    }

    @Test
    void aReadingNobodyLabelledIsDrawnDashedForWhatItIsTakenFor() throws IOException, InterruptedException {
        Page page = openLeft(UNLABELLED);
        List<String> guesses = new ArrayList<>();
        for (JsonNode each : answer(List.of()).get("whichIsWhich")) {
            each.get("guess").forEach(name -> guesses.add(name.asText()));
        }
        assertEquals(List.of("A", "B"), guesses, "the lower for the lower one of the first plate");
        assertEquals(5, readings(page, "").size());
        Axes axes = Axes.of(page, "chart-rf");
        Place lower = readings(page, ".chart-taken.chart-colour-0").get(0);
        assertEquals(axes.x(25), lower.x(), 0.3);
        assertEquals(axes.y(14.0 / 52), lower.y(), 0.3, "24 mm");
        assertEquals(
                axes.y(23.0 / 52),
                readings(page, ".chart-taken.chart-colour-1").get(0).y(),
                0.3,
                "33 mm");
        Locator dashed = page.locator("#chart-rf-drawing .chart-taken").first();
        assertNotEquals("none", dashed.evaluate("each => getComputedStyle(each).strokeDasharray"));
        assertTrue(words(page, "chart-rf").stream().anyMatch(each -> each.contains("without a label")));
        page.locator("#which-r8").selectOption("s1");
        page.locator("#which-r9").selectOption("s2");
        page.locator("#chart-rf-drawing .chart-taken").first().waitFor(gone());
        answered(page);
        assertEquals(5, readings(page, "").size());
        assertFalse(words(page, "chart-rf").stream().anyMatch(each -> each.contains("without a label")));
    }

    private static Locator.WaitForOptions gone() {
        return new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED);
    }

    @Test
    void beyondTheMeasuredRangeLinesAndBandsAreMarked() throws IOException, InterruptedException {
        Page page = openLeft(PARTLY_MEASURED);
        Object from = page.evaluate("""
                async () => (await (await fetch("/api/library")).json()).pairs
                  .find((pair) => pair.weak.id === "dichloromethane" && pair.strong.id === "methanol").trustedToPercent""");
        double trustedTo = ((Number) from).doubleValue();
        double x = Axes.of(page, "chart-rf").x(trustedTo);
        for (String kind : List.of(".chart-curve", ".chart-band", ".chart-band-edge")) {
            Locator beyond = page.locator("#chart-rf-drawing " + kind + ".chart-beyond");
            assertEquals(kind.endsWith("edge") ? 4 : 2, beyond.count(), kind);
            String start = beyond.first().getAttribute("d").replaceAll("^M([\\d.]+),.*", "$1");
            assertEquals(x, Double.parseDouble(start), 0.3, kind + " from " + trustedTo + " %");
        }
        Object opacities = page.evaluate("""
                () => ["", ".chart-beyond"].map((which) => Number(getComputedStyle(
                  document.querySelector(`#chart-rf-drawing .chart-band${which}`)).fillOpacity))""");
        List<?> paler = (List<?>) opacities;
        assertTrue(((Number) paler.get(1)).doubleValue() < 0.7 * ((Number) paler.get(0)).doubleValue(), paler + "");
        for (String chart : List.of("chart-rf", "chart-chance", "chart-apart")) {
            assertTrue(words(page, chart).stream().anyMatch(each -> each.startsWith("Dashed: outside 0 to ")), chart);
            assertTrue(
                    page.locator("#" + chart + "-drawing .chart-curve.chart-beyond")
                                    .count()
                            > 0,
                    chart);
        }
    }

    @Test
    void longNamesAreCutAndStillTold() {
        Page page = openLeft("sheet.spots[0].name = 'benzyl alcohol'; sheet.spots[1].name = 'benzyl acetate';");
        List<String> names = page.locator("#chart-rf-drawing .chart-name").allTextContents();
        assertEquals(List.of("benzyl\u20261", "benzyl\u20262"), names, "with the numbers of their lines in the sample");
        assertTrue(page.textContent("#chart-rf-read").contains("benzyl alcohol at Rf"), "in full below");
    }

    @Test
    void wordsTellWhereCurvesCrossAndEnterTheWindow() {
        Page page = openLeft(EXAMPLE);
        List<Double> shares = Stream.iterate(0.0, each -> each + 1).limit(101).toList();
        List<Double> one = shares.stream().map(ChartsIT::along).toList();
        List<Double> other =
                one.stream().map(u -> along(15) + 0.5 * (u - along(15))).toList();
        List<Double> gap = one.stream().map(u -> 0.5 * Math.abs(u - along(15))).toList();
        List<Curve> curves = List.of(new Curve("A", one, one, one), new Curve("B", other, other, other));
        routeCurves(page, shares, curves, Map.of("chance", one, "smallestGap", gap));
        assertTold(page, "chart-apart", "A and B are expected to merge near 15 %.");
        assertTold(
                page,
                "chart-apart",
                "The two nearest spots lie farthest apart at 0 %, 0.30 in Rf."); // ln 16 / ln 101 / 2
        assertTold(
                page, "chart-rf", "A is expected between Rf 0.2 and 0.8 from 1.5 to 39 %."); // 101^0.2 - 1, 101^0.8 - 1
        assertEquals(1, page.locator("#chart-apart-drawing .chart-merge line").count());
        double x = Double.parseDouble(page.getAttribute("#chart-apart-drawing .chart-merge line", "x1"));
        assertEquals(Axes.of(page, "chart-apart").x(15), x, 0.5);
    }

    private static void assertTold(Page page, String chart, String sentence) {
        List<String> words = words(page, chart);
        assertTrue(words.contains(sentence), sentence + " in " + words);
    }

    /** How far a share lies along the axis, 0 to 1. */
    private static double along(double percent) {
        return Math.log(percent + 1) / Math.log(101);
    }

    @Test
    void theCurveOfResolutionComesWithItsWords() throws IOException, InterruptedException {
        Page page = openLeft(APART);
        assertEquals("Smallest resolution at every ratio", page.textContent("#chart-apart-title"));
        JsonNode curves = answer(List.of()).get("curves");
        List<Double> resolution = numbers(curves.get("smallestResolution"));
        int best = resolution.indexOf(resolution.stream().max(Double::compare).orElseThrow());
        double share = curves.at("/percentStrong/" + best).asDouble();
        String told = String.format(Locale.ROOT, "%.1f", share).replace(".0", "");
        assertTrue(words(page, "chart-apart").contains("The two nearest spots are best resolved at " + told + " %."));
        assertEquals(2, page.locator("#chart-chance-drawing .chart-name").count(), "two lines, and a key to them");
        assertTrue(words(page, "chart-chance").get(0).startsWith("The chance in the window and apart is highest, "));
    }

    @Test
    void aChartIsReadUnderThePointer() throws IOException, InterruptedException {
        Page page = openLeft(EXAMPLE);
        pointAt(page, "chart-rf", 30);
        String at = page.textContent("#chart-rf-read");
        double share = Double.parseDouble(at.replaceAll("At ([\\d.]+) %.*", "$1"));
        assertEquals(30, share, 0.5, "to a pixel");
        double x = Double.parseDouble(page.getAttribute("#chart-rf-drawing .chart-pointed", "x1"));
        assertEquals(Axes.of(page, "chart-rf").x(share), x, 0.3);
        page.mouse().move(2, 2);
        assertEquals(0, page.locator(".chart-pointed").count());
        assertFalse(page.textContent("#chart-rf-read").equals(at), "back to the advised ratio");
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void chartsFitAndCanBeRead(ColorScheme scheme) {
        Page page = openLeft(wide(scheme), APART + UNLABELLED);
        page.click("#what-if-hold");
        page.focus("#what-if-share");
        page.keyboard().press("ArrowLeft");
        page.click("#chart-rf-numbers summary");
        for (int width : List.of(360, 390, 1280, 1920)) {
            page.setViewportSize(width, 900);
            assertEquals(0, page.evaluate("document.documentElement.scrollWidth - innerWidth"), width + " px");
        }
        assertClean(page);
    }
}
