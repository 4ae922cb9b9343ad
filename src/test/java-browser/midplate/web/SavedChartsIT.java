package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts taken away: as a drawing, as a picture, as numbers. */
class SavedChartsIT extends OnAnswers {
    private static Stream<Arguments> sheets() {
        return Stream.of(
                Arguments.of("two", EXAMPLE, ColorScheme.DARK),
                Arguments.of("apart", APART + UNLABELLED, ColorScheme.LIGHT),
                Arguments.of("one", ONE, ColorScheme.DARK),
                Arguments.of("partly measured", PARTLY_MEASURED, ColorScheme.DARK));
    }

    private static List<String> charts(Page page) {
        return page.locator("#charts figure").all().stream()
                .map(each -> each.getAttribute("id"))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void aSavedDrawingIsWholeAndOnLightPaper(String name, String sheet, ColorScheme scheme) throws IOException {
        Page page = openLeft(wide(scheme), sheet);
        page.focus("#what-if-share");
        page.keyboard().press("ArrowLeft"); // so that all marks are there
        page.click("#what-if-hold");
        assertEquals(name.equals("one") ? 2 : 3, charts(page).size());
        for (String chart : charts(page)) {
            SavedDrawing saved = SavedDrawing.of(page, chart);
            saved.assertWhole();
            assertEquals(page.textContent("#" + chart + "-title"), saved.text("title"));
            assertTrue(words(page, chart)
                    .get(0)
                    .startsWith(saved.text("desc").replace('\u00a0', ' ').split("\\.", 2)[0]));
            assertEquals(List.of(2 * saved.width(), 2 * saved.height()), SavedDrawing.pictureSize(page, chart), chart);
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void thePageIsDrawnInItsOwnColoursAfterSaving(ColorScheme scheme) throws IOException {
        Page page = openLeft(wide(scheme), EXAMPLE);
        String look = "() => getComputedStyle(document.querySelector('#chart-rf-drawing .chart-paper')).fill";
        Object before = page.evaluate(look);
        SavedDrawing.of(page, "chart-rf");
        assertEquals(before, page.evaluate(look));
        assertEquals(scheme == ColorScheme.LIGHT, before.equals(SavedDrawing.LIGHT_PAPER), before.toString());
        assertEquals(0, page.locator(".chart-aside-sheet").count());
    }

    private Page openCopying(String sheet) {
        return openLeft(
                new Browser.NewContextOptions().setPermissions(List.of("clipboard-read", "clipboard-write")), sheet);
    }

    /** Copies the numbers of a chart: the head first. */
    private static List<String[]> copied(Page page, String chart) {
        page.click("#" + chart + "-copy");
        page.locator("#" + chart + "-said", new Page.LocatorOptions().setHasText("Copied."))
                .waitFor();
        assertEquals(chart + "-copy", focused(page), "the focus stays");
        String text = String.valueOf(page.evaluate("navigator.clipboard.readText()"));
        return text.lines().map(line -> line.split(",(?=[^ ])", -1)).toList();
    }

    private static void assertColumn(JsonNode curve, double factor, List<String[]> lines, int column, String head) {
        assertEquals(head, lines.get(0)[column].replace("\"", ""));
        List<Double> values = numbers(curve);
        assertEquals(values.size(), lines.size() - 1, "as many lines as the curve has points");
        for (int i = 0; i < values.size(); i++) {
            String shown = lines.get(i + 1)[column];
            assertTrue(shown.matches("\\d+(\\.\\d+)?"), shown);
            assertEquals(factor * values.get(i), Double.parseDouble(shown), 1e-6, head + " in line " + i);
        }
    }

    @Test
    void copiedNumbersAreTheServersWithTheirUnits() throws IOException, InterruptedException {
        Page page = openCopying(APART);
        JsonNode curves = answer(List.of()).get("curves");
        JsonNode shares = curves.get("percentStrong");
        List<String[]> rf = copied(page, "chart-rf");
        assertEquals(7, rf.get(0).length);
        assertColumn(shares, 1, rf, 0, "ethyl acetate, % v/v");
        for (int spot = 0; spot < 2; spot++) {
            String name = List.of("A", "B").get(spot);
            JsonNode curve = curves.at("/spots/" + name);
            assertColumn(curve.get("rf"), 1, rf, 1 + 3 * spot, "Rf of " + name);
            assertColumn(curve.get("low"), 1, rf, 2 + 3 * spot, "Rf of " + name + ", 90 % band from");
            assertColumn(curve.get("high"), 1, rf, 3 + 3 * spot, "Rf of " + name + ", 90 % band to");
        }
        List<String[]> chance = copied(page, "chart-chance");
        assertColumn(shares, 1, chance, 0, "ethyl acetate, % v/v");
        assertColumn(curves.get("chance"), 100, chance, 1, "Chance in the window, of 100 plates");
        assertColumn(curves.get("goal"), 100, chance, 2, "Chance in the window and apart, of 100 plates");
        List<String[]> apart = copied(page, "chart-apart");
        assertColumn(shares, 1, apart, 0, "ethyl acetate, % v/v");
        assertColumn(curves.get("smallestResolution"), 1, apart, 1, "Smallest resolution, relative");
        assertColumn(curves.get("smallestGap"), 1, apart, 2, "Smallest gap, in Rf");
    }

    @Test
    void whereTheBrowserDoesNotCopyTheNumbersCanBeMarked() {
        Page page = openLeft(EXAMPLE);
        page.evaluate("() => { navigator.clipboard.writeText = () => Promise.reject(new Error('refused')); }");
        page.click("#chart-rf-copy");
        page.locator("#chart-rf-csv").waitFor();
        assertEquals("chart-rf-csv", focused(page));
        String all = page.inputValue("#chart-rf-csv");
        assertTrue(all.startsWith("\"ethyl acetate, % v/v\",Rf of A,"), all.substring(0, 60));
        Object marked = page.evaluate("""
                () => { const text = document.getElementById("chart-rf-csv");
                  return text.value.slice(text.selectionStart, text.selectionEnd); }""");
        assertEquals(all, marked);
        assertTrue(page.textContent("#chart-rf-said").contains("does not let a page copy"));
    }
}
