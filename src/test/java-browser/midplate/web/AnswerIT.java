package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The answer: what it says beside the ratio, what would help, and where it all comes from. */
class AnswerIT extends OnPage {
    @Test
    void tellsWhereTheChanceComesFrom() {
        Page page = open();
        page.selectOption("#setting", "class");
        answered(page);
        page.click("#from-where > summary");
        page.waitForSelector("#from-where .works");
        assertTrue(page.getByText("η = a · c + s · G + t · L").first().isVisible());
        String from = page.textContent("#from-where");
        for (String part : List.of(
                "hexane : ethyl acetate on silica",
                "readings in all",
                "Setting, class",
                "Chem 8 (2022) 3202",
                "Snyder, Principles of Adsorption Chromatography",
                "Refused: ")) {
            assertTrue(from.contains(part), part + " in " + from);
        }
        assertEquals(
                8,
                page.locator("#from-where table").nth(0).locator("tbody tr").count(),
                "the measured ratios of hexane with ethyl acetate");
        assertEquals(
                5,
                page.locator("#from-where table").nth(1).locator("tbody tr").count(),
                "the fifths of the chance said");
        assertTrue(page.textContent("#hold").contains("in a class"));
    }

    @Test
    void tellsOfPublishedValuesTheSourceAndWhetherItWasRead() {
        Page page = open();
        answered(page);
        page.getByText("hexane and ethyl acetate as published").click();
        page.waitForSelector("#published li");
        String values = page.textContent("#published");
        assertTrue(values.contains("Eluent strength ε⁰ (silica newer): 0.48 ["), values);
        assertTrue(values.contains("Boiling point: 68.7 °C ["), values);
        assertTrue(values.contains("p. 70; read there"), values);
        assertTrue(values.contains("from memory, not looked up"), values);
        assertFalse(values.contains("alumina"), values);
    }

    @Test
    void onATelephoneTheAnswerStaysInReachWhileTheEntriesCanBeTaken() {
        Page page = open(ColorScheme.LIGHT, 390, 844);
        answered(page);
        page.evaluate("window.scrollTo(0, 0)");
        assertTrue(page.isVisible("#in-reach"));
        assertTrue(page.textContent("#in-reach").startsWith(page.textContent("#ratio")), page.textContent("#in-reach"));
        page.fill("#eluent-p1", "101");
        page.waitForSelector("#eluent-p1-fault");
        assertEquals("An entry cannot be taken", page.textContent("#in-reach"));
        assertTrue(page.locator("#run-this").isDisabled());
        page.click("#reach-undo");
        answered(page);
        assertTrue(page.textContent("#in-reach").startsWith(page.textContent("#ratio")), "taken back from there");
    }

    /** Every spot stays at the start at 60 % ethyl acetate. */
    @Test
    void aLowChanceSaysWhatWouldHelpBesideIt() {
        Page page = openEmpty();
        page.keyboard().type("60");
        page.keyboard().press("Enter");
        page.keyboard().type("0");
        page.keyboard().press("Enter");
        answered(page);
        assertEquals("pure ethyl acetate", page.textContent("#ratio"));
        assertEquals("10 ml ethyl acetate", page.textContent("#pour"));
        assertTrue(page.textContent("#chance").contains("Most likely no ratio of these two solvents"));
        assertTrue(page.textContent("#chance").contains("Another way: "));
    }

    @Test
    void theAnswerFollowsTheSheetWithoutBeingAsked() {
        Page page = open();
        answered(page);
        String before = page.textContent("#ratio");
        page.fill("#eluent-p1", "2 : 3");
        answered(page);
        assertFalse(before.equals(page.textContent("#ratio")));
        String told = page.textContent("#spoken");
        assertTrue(told.startsWith(page.textContent("#ratio") + ","), "told to whoever does not see it: " + told);
    }

    @Test
    void theAdvisedPlateIsPutOnTheSheetOnceAndFollowsTheAdviceUntilItRan() {
        Page page = open();
        answered(page);
        page.click("#run-this");
        assertEquals(page.textContent("#ratio"), page.inputValue("#eluent-p2"));
        page.selectOption("#window-choice", "column");
        answered(page);
        page.click("#run-this");
        assertEquals(page.textContent("#ratio"), page.inputValue("#eluent-p2"));
        assertEquals(0, page.locator("#eluent-p3").count());
    }

    @Test
    void theChanceShownIsTheOneThatTheServerSent() {
        Page page = open();
        answered(page);
        double meter = Double.parseDouble(page.getAttribute("#chance meter", "value"));
        String words = page.textContent("#chance-words");
        assertTrue(words.contains(String.format(Locale.ROOT, "about %.0f of 100", 100 * meter)), words + " " + meter);
    }
}
