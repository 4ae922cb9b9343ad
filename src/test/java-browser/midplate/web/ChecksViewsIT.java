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

/** Same, pure, done: clean by the accessibility rules, at every width, in both themes and languages. */
class ChecksViewsIT extends OnChecks {
    /** Every part with something in it, and an answer beside it. */
    private static void fillAll(Page page) {
        openChecks(page);
        threeLanes(page, 41, 41, 34);
        tap(page, "i1", 2, 3, 34);
        told(page);
        unfoldFold(page, "check-candidates");
        page.click("#add-candidate");
        page.fill("#name-n1", "Zz");
        page.fill("#rf-n1", "0.5");
        unfoldFold(page, "check-hrf");
        page.selectOption("#hrf-system", "TC");
        page.fill("#standard-desipramine", "13");
        page.fill("#hrf-h1", "42");
        page.waitForSelector("#hrf-answer:not(.old)");
        unfold(page, "pure");
        page.click("#pure-spot-s1");
        page.waitForSelector("#pure-answer:not(.old)");
        unfold(page, "seeing");
        page.waitForSelector("#see-answer:not(.old)");
        unfold(page, "done");
        told(page);
    }

    private static void unfoldFold(Page page, String id) {
        if (page.getAttribute("#" + id, "open") == null) {
            page.click("#" + id + " > summary");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnoughEmptyFilledAndWithFaults(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        openChecks(page);
        assertClean(page);
        fillAll(page);
        ViewsIT.unfold(page);
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#checks "));
        shoot(page, String.format(Locale.ROOT, "checks-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
        page.fill("#mm-e1", "x");
        page.fill("#rf-pure", "y");
        page.waitForSelector("#mm-e1-fault");
        page.waitForSelector("#rf-pure-fault");
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void spillsAtNoWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        fillAll(page);
        page.click("#add-reference");
        page.click("#add-lane-plate");
        ViewsIT.unfold(page);
        ViewsIT.assertNothingSpills(page);
        Object cut = page.evaluate("""
                () => [...document.querySelectorAll('#checks :is(button, input, select, p, li, td, th)')]
                    .filter(each => each.checkVisibility() && !each.classList.contains('unseen'))
                    .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                    .map(each => each.id || each.className || each.tagName)
                """);
        assertEquals(List.of(), cut);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = open();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        openChecks(page);
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        fillAll(page);
        ViewsIT.unfold(page);
        seen.addAll(ViewsIT.english(page));
        page.fill("#mm-e1", "-");
        page.fill("#rf-pure", "2");
        page.fill("#front-i1", "5");
        page.waitForSelector("#front-i1-fault");
        page.waitForSelector("#rf-pure-fault");
        seen.addAll(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
    }
}
