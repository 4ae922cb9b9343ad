package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The column and its fractions: clean by the accessibility rules, at every width, in both themes and languages. */
class ColumnViewsIT extends OnColumn {
    private static void runWithMarks(Page page) {
        run(page);
        for (String key : "Enter b 1 ArrowRight b ArrowRight = a ArrowRight a ArrowRight".split(" ")) {
            page.keyboard().press(key);
        }
        pooled(page);
        page.click("#add-flask-c1");
        page.fill("#tare-f1", "25.1");
        page.fill("#gross-f1", "25.12");
        page.waitForSelector("#balance-c1");
        planned(page);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnoughEmptyPlannedRunUnfoldedAndWithFaults(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        openColumn(page);
        assertClean(page);
        runWithMarks(page);
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#column "));
        shoot(page, String.format(Locale.ROOT, "column-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
        ViewsIT.unfold(page);
        page.fill("#tare-f1", "x");
        page.fill("#column-mass", "0");
        page.waitForSelector("#tare-f1-fault");
        page.waitForSelector("#column-mass-fault");
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#column "));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void spillsAtNoWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        runWithMarks(page);
        ViewsIT.assertNothingSpills(page);
        ViewsIT.unfold(page);
        page.selectOption("#column-elution", "own");
        page.waitForSelector("#eluent-column-0");
        ViewsIT.assertNothingSpills(page);
        Object cut = page.evaluate("""
                () => [...document.querySelectorAll('#column :is(button, input, select, p, li)')]
                    .filter(each => each.checkVisibility() && !each.classList.contains('unseen') && !each.closest('.chart-table'))
                    .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                    .map(each => each.id || each.className || each.tagName)
                """);
        assertEquals(List.of(), cut);
    }

    /** On a wide screen the jar follows the plates; it must not lie over the column. */
    @Test
    void theJarDoesNotLieOverIt() {
        Page page = open(ColorScheme.LIGHT, 1280, 900);
        runWithMarks(page);
        page.evaluate("document.getElementById('column-runs').scrollIntoView()");
        double jar = page.locator("#jar").boundingBox().y + page.locator("#jar").boundingBox().height;
        assertTrue(jar <= page.locator("#column").boundingBox().y, "the jar ends at " + jar);
    }

    /** What is told by colour is told in another way too. */
    @Test
    void compoundsDifferByHatchingAndLineAndNameNotByColourAlone() {
        Page page = open();
        plan(page, "50");
        @SuppressWarnings("unchecked")
        List<String> fills = (List<String>) page.evaluate(
                "() => [...document.querySelectorAll('.column-fill')].map(each => each.getAttribute('fill'))");
        assertEquals(2, Set.copyOf(fills).size(), fills.toString());
        @SuppressWarnings("unchecked")
        List<String> lines = (List<String>)
                page.evaluate(
                        "() => [...document.querySelectorAll('.column-line')].map(each => getComputedStyle(each).strokeDasharray)");
        assertEquals(2, Set.copyOf(lines).size(), lines.toString());
        assertEquals(List.of("A", "B"), page.locator(".column-name").allTextContents());
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = open();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        openColumn(page);
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        runWithMarks(page);
        ViewsIT.unfold(page);
        seen.addAll(ViewsIT.english(page));
        page.locator("#plan-chance .asked").click();
        page.locator("#origin .basis").first().waitFor();
        seen.addAll(ViewsIT.english(page));
        page.keyboard().press("Escape");
        page.selectOption("#column-bed", "glass");
        page.click("#column-loading-dry");
        page.selectOption("#column-elution", "steps");
        planned(page);
        seen.addAll(ViewsIT.english(page));
        page.fill("#column-mass", "0");
        page.fill("#column-diameter", "x");
        page.fill("#gross-f1", "1");
        page.waitForSelector("#column-diameter-fault");
        page.waitForSelector("#gross-f1-fault");
        seen.addAll(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
    }
}
