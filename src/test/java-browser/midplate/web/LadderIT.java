package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The picture of equal strength, drawn from invented pairs whose places are known beforehand. */
class LadderIT extends OnLadder {
    private static final double PIXEL = 1.0;

    private Page openInvented(int width) {
        return openInvented(width, invented());
    }

    private Page openInvented(int width, ObjectNode answer) {
        Page page = openLeft(wide(ColorScheme.LIGHT).setViewportSize(width, 900), TOUCHING);
        routeInvented(page, answer);
        page.click("#swap-open");
        page.waitForSelector("#swap-hexane-acetone");
        return page;
    }

    private static ObjectNode otherOf(ObjectNode answer, int place) {
        return (ObjectNode) answer.get("others").get(place);
    }

    @Test
    void threePairsThatReachComeFirstAndWhatDoesNotReachWaitsInAFold() {
        Page page = openInvented(1280);
        List<String> first = page.locator("#ladder-rows h3").allTextContents();
        assertEquals(
                List.of("hexane : ethyl acetate", "hexane : diethyl ether", "hexane : acetone", "hexane : 2-propanol"),
                first);
        assertEquals("More pairs (1)", page.textContent("#swap-further > summary"));
        assertFalse(page.isVisible("#swap-hexane-dichloromethane"));
        page.click("#swap-further > summary");
        assertTrue(page.isVisible("#swap-hexane-dichloromethane"));
    }

    @Test
    void whatSeldomComesIntoTheWindowIsOfferedInSmall() {
        ObjectNode answer = invented();
        otherOf(answer, 2).put("chance", 0.09);
        Page page = openInvented(1280, answer);
        assertEquals("small", page.getAttribute("#swap-use-hexane-acetone", "class"));
        assertNull(page.getAttribute("#swap-use-hexane-diethyl-ether", "class"));
    }

    @Test
    void aSolventThatIsPouredAloneIsNamedInRowStripAndMillilitres() {
        ObjectNode answer = invented();
        ObjectNode equal = (ObjectNode) otherOf(answer, 2).get("equal");
        equal.put("ratio", "0:1").put("weakMl", 0).put("strongMl", 10);
        otherOf(answer, 0).remove("nearest");
        otherOf(answer, 0)
                .putObject("nearest")
                .put("percentStrong", 100)
                .put("rf", 0.3)
                .put("side", "weaker");
        Page page = openInvented(1280, answer);
        assertEquals("pure acetone", page.textContent("#swap-hexane-acetone .row-ratio b"));
        assertEquals("pure acetone", page.textContent("#strip-hexane-acetone .equal-label"));
        assertTrue(page.textContent("#swap-more-hexane-acetone").contains("10 ml acetone"));
        String row = page.textContent("#swap-hexane-dichloromethane");
        assertTrue(row.contains("Too weak: even pure dichloromethane brings the middle to Rf 0.30 only."), row);
        assertEquals("only Rf 0.30", page.textContent("#strip-hexane-dichloromethane .nearest-label"));
    }

    @Test
    void whereTheSpotsSitAtALineItSaysAtWhichRfTheOthersAreMatched() {
        ObjectNode answer = invented();
        answer.put("aim", 0.5);
        ((ObjectNode) answer.get("of")).put("rf", 0.9);
        Page page = openInvented(1280, answer);
        String words = page.textContent("#swap-words");
        assertTrue(words.contains("sit at a line") && words.contains("their middle to Rf 0.50"), words);
        String strip = page.getAttribute("#strip-hexane-acetone", "aria-label");
        assertTrue(strip.contains("Brings the middle to Rf 0.50"), strip);
        double mark = across(page, "#strip-hexane-acetone .mark").get(0);
        assertEquals(across(page, "#strip-hexane-acetone .aim-line").get(0), mark, PIXEL);
        assertTrue(across(page, "#strip-hexane-acetone .now-line").get(0) > mark + 50, "the line of now stays");
        page.click("#swap-hexane-acetone .row-ratio b .asked");
        page.locator("#origin .basis").first().waitFor();
        assertTrue(page.textContent("#origin").contains("runs to Rf 0.50"), page.textContent("#origin"));
    }

    /** The last rung at the right end, the first at the left one, on the narrowest strip. */
    @ParameterizedTest
    @ValueSource(ints = {360, 1280})
    void noLabelIsCutAtTheEndsOfTheStrip(int width) {
        ObjectNode answer = invented();
        ArrayNode rungs = (ArrayNode) otherOf(answer, 2).get("rungs");
        ((ObjectNode) rungs.get(0)).put("rf", 0.0);
        ((ObjectNode) rungs.get(3)).put("percentStrong", 100).put("rf", 1.0);
        ((ObjectNode) otherOf(answer, 2).get("equal")).put("percentStrong", 100);
        Page page = openInvented(width, answer);
        assertEquals(
                List.of("100\u00a0%", "10\u00a0%", "20\u00a0%", "0"),
                page.locator("#strip-hexane-acetone .rung-label").allTextContents());
        Object cut = page.evaluate("""
                () => {
                    const frame = document.querySelector('#strip-hexane-acetone').getBoundingClientRect();
                    return [...document.querySelectorAll('#strip-hexane-acetone text')]
                        .map(each => [each.textContent, each.getBoundingClientRect()])
                        .filter(([, box]) => box.width > 0 && (box.left < frame.left - 0.5 || box.right > frame.right + 0.5))
                        .map(([words]) => words);
                }""");
        assertEquals(List.of(), cut);
    }

    /** The middle stands at Rf 0.5 now, which is the third rung of each row; its band ends at the second and the fourth. */
    @ParameterizedTest
    @ValueSource(ints = {390, 1280})
    void oneUprightLineCrossesAllRowsAtTheMarkAndTheBandLiesBetweenItsRungs(int width) {
        Page page = openInvented(width);
        unfoldRows(page);
        List<Double> lines = across(page, ".strip .now-line");
        assertEquals(5, lines.size());
        for (double line : lines) {
            assertEquals(lines.get(0), line, PIXEL, "one upright line");
        }
        for (String row : List.of("hexane-diethyl-ether", "hexane-acetone", "hexane-2-propanol")) {
            List<Double> rungs = across(page, "#strip-" + row + " .rung");
            List<Double> ends = across(page, "#strip-" + row + " .band-end");
            assertEquals(4, rungs.size());
            assertEquals(lines.get(0), across(page, "#strip-" + row + " .mark").get(0), PIXEL, row);
            assertEquals(rungs.get(2), lines.get(0), PIXEL, row);
            assertEquals(rungs.get(1), ends.get(0), PIXEL, row);
            assertEquals(rungs.get(3), ends.get(1), PIXEL, row);
            assertEquals(rungs.get(1) - rungs.get(0), rungs.get(3) - rungs.get(2), PIXEL, "even in Rf");
        }
    }

    @Test
    void aPairThatDoesNotReachHasAnOpenMarkAtItsNearestMixtureAndSaysWhichWay() {
        Page page = openInvented(1280);
        unfoldRows(page);
        String row = "#swap-hexane-dichloromethane";
        assertEquals(0, page.locator(row + " .mark").count());
        double nearest = across(page, row + " .nearest").get(0);
        assertEquals(across(page, row + " .rung").get(3), nearest, PIXEL);
        assertTrue(page.textContent(row).contains("Too strong: even at 50 % dichloromethane"), page.textContent(row));
        assertEquals("already Rf 0.70", page.textContent(row + " .nearest-label"));
    }

    @Test
    void measuredTheoryAndGuessDifferInTheirLinesAndInTheirWords() {
        Page page = openInvented(1280);
        Set<String> drawn = new TreeSet<>();
        List<List<String>> rows = List.of(
                List.of("hexane-diethyl-ether", "measured"),
                List.of("hexane-acetone", "theory"),
                List.of("hexane-2-propanol", "guess"));
        for (List<String> row : rows) {
            drawn.add(String.valueOf(page.evaluate(
                    "row => getComputedStyle(document.querySelector(`#strip-${row} .rail`)).strokeDasharray",
                    row.get(0))));
            assertEquals(row.get(1), page.textContent("#swap-" + row.get(0) + " .row-basis .asked"));
            assertTrue(page.getAttribute("#strip-" + row.get(0), "aria-label").contains(row.get(1)));
        }
        assertEquals(3, drawn.size(), drawn.toString());
    }

    @Test
    void chancesAreToldBesideThoseOfTheMixtureNow() {
        Page page = openInvented(1280);
        String row = page.textContent("#swap-hexane-acetone");
        assertTrue(row.contains("All in the window and A and B at least 0.1 apart: 50 of 100 (now 15)"), row);
        assertTrue(row.contains("in the window 60, apart 55"), row);
        assertTrue(row.contains("boils up to 68.7 °C") && row.contains("harms nerves"), row);
    }
}
