package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** "Where from?", with the real advice: each number tells what it is, its source, and how sure it is. */
class OriginIT extends OnPage {
    private Page openExample(ColorScheme scheme) {
        Page page = open(scheme, 1280, 900);
        answered(page);
        return page;
    }

    private static void ask(Page page, String asked) {
        page.evaluate("""
                asked => {
                  const button = document.createElement("button");
                  button.dataset.asked = asked;
                  document.body.append(button);
                  button.click();
                  button.remove();
                }""", asked);
        page.waitForSelector("#origin-title");
    }

    private static boolean isOpen(Page page) {
        return (boolean) page.evaluate("document.getElementById('origin').open");
    }

    @Test
    @SuppressWarnings("unchecked")
    void everyNumberTellsWhatItIsItsSourceAndHowSure() {
        Page page = openExample(ColorScheme.LIGHT);
        page.click("#published summary");
        page.waitForSelector("#published li");
        List<String> shown = (List<String>) page.evaluate(
                "[...new Set([...document.querySelectorAll('[data-asked]')].map(each => each.dataset.asked))]");
        List<String> known =
                (List<String>) page.evaluate("import('/where/origins.js').then(({ ORIGINS }) => Object.keys(ORIGINS))");
        for (String about : List.of("ratio", "pour", "chance", "rf?spot=A", "rf?spot=B", "gap", "window", "setting")) {
            assertTrue(shown.contains(about), about + " in " + shown);
        }
        assertTrue(shown.stream().anyMatch(about -> about.startsWith("hazard?")), "in " + shown);
        assertTrue(shown.stream().anyMatch(about -> about.startsWith("value?")), "in " + shown);
        for (String about : Stream.concat(shown.stream(), known.stream()).toList()) {
            ask(page, about);
            assertTrue(isOpen(page), about);
            assertFalse(page.textContent("#origin-title").isBlank(), about);
            assertTrue(page.locator("#origin .sources .basis").count() > 0, about);
            String told = page.textContent("#origin");
            assertFalse(told.contains("undefined"), told);
            page.keyboard().press("Escape");
            assertFalse(isOpen(page), about);
        }
    }

    @Test
    void whichSpotIsWhichTellsHowManyGuessesWereRightAndItsError() {
        Page page = openExample(ColorScheme.LIGHT);
        String right = (String) page.evaluate("""
                async () => {
                  const { contenders } = await (await fetch("/api/accuracy")).json();
                  const right = contenders["Midplate"]["unlabelled.guess.right"];
                  return `${(100 * right.value).toFixed(0)} \u00b1 ${(100 * right.standardError).toFixed(0)} of 100`;
                }""");
        ask(page, "which");
        String told = page.textContent("#origin");
        assertTrue(told.contains(right + " guesses were right"), right + " in " + told);
    }

    @Test
    void everyWorkNamedIsAmongThePublishedSources() {
        Page page = openExample(ColorScheme.LIGHT);
        Object unknown = page.evaluate("""
                async () => {
                  const { ORIGINS } = await import("/where/origins.js");
                  const { sources } = await (await fetch("/api/sources")).json();
                  const named = Object.values(ORIGINS).flatMap((each) => each.sources.map((one) => one.source));
                  return named.filter((key) => key !== undefined && !sources.some((one) => one.key === key));
                }""");
        assertEquals(List.of(), unknown);
    }

    @Test
    void theKeyboardOpensItStaysInItAndComesBack() {
        Page page = openExample(ColorScheme.LIGHT);
        Locator chance = page.locator("#chance-words [data-asked=chance]");
        chance.focus();
        page.keyboard().press("Enter");
        assertTrue(isOpen(page));
        page.waitForSelector("#origin-title");
        assertTrue(page.textContent("#origin").contains("Chem 8 (2022) 3202"));
        for (int i = 0; i < 4; i++) {
            page.keyboard().press("Tab");
            assertEquals(true, page.evaluate("document.getElementById('origin').contains(document.activeElement)"));
        }
        page.keyboard().press("Escape");
        assertFalse(isOpen(page));
        assertEquals(true, chance.evaluate("each => each === document.activeElement"));
    }

    @Test
    void readMoreOpensTheFoldBelow() {
        Page page = openExample(ColorScheme.LIGHT);
        page.click("#ratio .asked");
        page.click("#origin-further");
        assertFalse(isOpen(page));
        Locator formula = page.getByText("η = a · c + s · G + t · L");
        formula.waitFor();
        assertTrue(formula.isVisible());
    }

    @Test
    void aPublishedValueTellsPageAndBasis() {
        Page page = openExample(ColorScheme.LIGHT);
        page.click("#published summary");
        page.locator("#published li", new Page.LocatorOptions().setHasText("silica newer"))
                .nth(1)
                .locator(".asked")
                .click();
        page.waitForSelector("#origin-title");
        String told = page.textContent("#origin");
        assertTrue(told.contains("0.48 (silica newer)"), told);
        assertTrue(told.contains("p. 70"), told);
        assertTrue(told.contains("Read there"), told);
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "DARK"})
    void windowAndCardPassTheAccessibilityRules(ColorScheme scheme) {
        Page page = openExample(scheme);
        assertClean(page);
        page.click("#chance-words [data-asked=chance]");
        assertClean(page);
    }

    /** The browser closes it on Escape and tells the page a moment later; typing may come in between. */
    @Test
    void whatIsTypedRightAfterEscapeDoesNotOpenItAgain() {
        Page page = openExample(ColorScheme.LIGHT);
        ask(page, "ratio");
        assertTrue(isOpen(page));
        page.evaluate("""
                () => {
                  document.getElementById("origin").close();
                  const entry = document.getElementById("amount");
                  entry.value = "20";
                  entry.dispatchEvent(new Event("input"));
                }""");
        assertFalse(isOpen(page));
        answered(page);
        assertFalse(isOpen(page));
        assertEquals("20", page.inputValue("#amount"));
    }
}
