package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** Following a reaction: clean by the accessibility rules, at every width, in both themes and languages. */
class ReactionViewsIT extends OnReaction {
    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnoughEmptyFollowedUnfoldedAndWithFaults(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        answered(page);
        openReaction(page);
        assertClean(page);
        page.click("#reaction-next");
        keys(page, "Enter 3 ArrowDown 1 Enter 2 ArrowDown 2 Enter 1 ArrowDown 3");
        judged(page);
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#check-done "));
        shoot(page, String.format(Locale.ROOT, "reaction-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
        keys(page, "Enter");
        assertClean(page);
        ViewsIT.unfold(page);
        page.click("#reaction-add");
        page.click("#reaction-baseline");
        page.fill("#minutes-t3", "x");
        page.fill("#rf-x1", "2");
        page.waitForSelector("#minutes-t3-fault");
        cell(page, 4, 1).focus();
        page.keyboard().press("9");
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#check-done "));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void spillsAtNoWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        answered(page);
        fourPlates(page);
        keys(page, "Enter Enter Enter Enter");
        ViewsIT.unfold(page);
        page.click("#reaction-add");
        page.keyboard().type("a by-product with quite a long name");
        ViewsIT.assertNothingSpills(page);
        Object cut = page.evaluate("""
                () => [...document.querySelectorAll('#check-done :is(button, input, select, p, li)')]
                    .filter(each => each.checkVisibility() && !each.classList.contains('unseen'))
                    .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                    .map(each => each.id || each.className || each.tagName)
                """);
        assertEquals(List.of(), cut);
    }

    /** What is told by colour is told in another way too. */
    @Test
    void compoundsDifferByShapeAndLineAndNameNotByColourAlone() {
        Page page = openEmpty();
        fourPlates(page);
        @SuppressWarnings("unchecked")
        List<String> shapes = (List<String>)
                page.evaluate(
                        "() => [...document.querySelectorAll('#reaction-course .course-mark')].map(each => each.getAttribute('d'))");
        assertEquals(2, Set.copyOf(shapes).size(), shapes.toString());
        @SuppressWarnings("unchecked")
        List<String> lines = (List<String>)
                page.evaluate(
                        "() => [...document.querySelectorAll('#reaction-course .chart-curve')].map(each => getComputedStyle(each).strokeDasharray)");
        assertEquals(2, Set.copyOf(lines).size(), lines.toString());
        assertEquals(
                List.of("SM", "P"), page.locator("#time-drawing-t4 .time-name").allTextContents());
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = open();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        answered(page);
        openReaction(page);
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        page.click("#reaction-next");
        keys(page, "Enter 3 ArrowDown 1 Enter 2 ArrowDown 2 Enter 1 ArrowDown 3");
        judged(page);
        page.evaluate("document.querySelectorAll('#check-done details').forEach(each => { each.open = true; })");
        page.click("#reaction-baseline");
        seen.addAll(ViewsIT.english(page));
        page.fill("#minutes-t3", "x");
        page.waitForSelector("#minutes-t3-fault");
        cell(page, 4, 1).focus();
        page.keyboard().press("9");
        seen.addAll(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
    }
}
