package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One, two or three jars at once, with the real advice behind it. */
class ScoutingIT extends OnPage {
    private Page scouted(Browser.NewContextOptions options, int jars) {
        Page page = open(options);
        page.click("#clear-example");
        page.click("#add-spot");
        answered(page);
        page.click("#scout summary");
        page.click("#scout-" + jars);
        page.waitForSelector("#scout-verdict");
        unfold(page);
        return page;
    }

    /** Several plates are folded away where going straight is as good. */
    private static void unfold(Page page) {
        if (page.locator("#scout-several").count() > 0) {
            page.click("#scout-several summary");
        }
    }

    @Test
    void whereGoingStraightIsAsGoodItsRatioStandsLargeAndIsPutOnTheSheet() {
        Page page = open(size(1280));
        page.click("#scout summary");
        page.click("#scout-3");
        page.waitForSelector("#scout-straight");
        assertTrue(page.textContent("#scout-straight-pour").contains("ml hexane"), page.textContent("#scout-inside"));
        assertFalse(page.isVisible(".jars"), "several are folded away");
        String ratio = page.textContent("#scout-straight");
        page.click("#scout-run-straight");
        assertEquals(ratio, page.inputValue("#eluent-p2"));
    }

    private static Browser.NewContextOptions size(int width) {
        return new Browser.NewContextOptions().setViewportSize(width, 900);
    }

    @Test
    void itsChancesAreComparedAndItsPlatesGoOnTheSheetToBeReadIn() {
        Page page = scouted(size(1280), 3);
        int jars = page.locator(".jars li").count();
        assertTrue(jars >= 1 && jars <= 3, jars + " jars");
        assertTrue(page.textContent(".jars").contains("ml hexane"), page.textContent(".jars"));
        assertTrue(page.isVisible("#compared-straight") && page.isVisible("#compared-habit"));
        String first = page.locator(".jars .jar-ratio").first().textContent();
        page.click("#scout-run");
        assertEquals(jars, page.locator(".one-plate").count(), "the empty plate is used, the others laid beside it");
        assertEquals(first, page.inputValue("#eluent-p1"));
        assertEquals("add-l1", focused(page));
        page.keyboard().type(".3");
        answered(page);
        assertEquals(".3", page.inputValue("#rf-r1"));
        page.click("#undo");
        page.click("#undo");
        assertEquals(1, page.locator(".one-plate").count(), "taken back in one step");
        assertEquals("", page.inputValue("#eluent-p1"));
    }

    @Test
    void whatWasCountedForAnotherSheetIsNotShown() {
        Page page = scouted(size(1280), 1);
        page.fill("#amount", "20");
        page.waitForSelector("#scout-old");
        assertEquals(0, page.locator("#scout-verdict").count());
        page.click("#scout-1");
        page.waitForSelector("#scout-verdict");
    }

    @Test
    void itsNumbersTellWhereTheyComeFrom() {
        Page page = scouted(size(1280), 2);
        for (String number : new String[] {"#compared-straight .asked", ".jars .asked"}) {
            page.locator(number).first().click();
            page.locator("#origin .basis").first().waitFor();
            String told = page.textContent("#origin");
            assertFalse(told.contains("undefined") || told.contains("{"), told);
            page.keyboard().press("Escape");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 390"})
    void itIsCleanAndNothingSpills(ColorScheme scheme, int width) {
        Page page = scouted(size(width).setColorScheme(scheme), 3);
        assertClean(page);
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue());
        Object small = page.evaluate(
                "() => [...document.querySelectorAll('#scout button:not(.asked), #scout summary')].filter(each => each.getBoundingClientRect().height < 43.5).length");
        assertEquals(0, ((Number) small).intValue());
        shoot(page, String.format(Locale.ROOT, "scout-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = open(size(1280).setLocale("de-DE"));
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.click("#clear-example");
        answered(page);
        page.click("#scout summary");
        page.click("#scout-2");
        page.waitForSelector("#scout-verdict");
        String told = page.locator("#scout").innerText();
        assertFalse(
                Pattern.compile("(?i)\\b(the|and|of|with|jar|jars|straight|chance|plate|plates|worth|pure)\\b")
                        .matcher(told)
                        .find(),
                told);
    }
}
