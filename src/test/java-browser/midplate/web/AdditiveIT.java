package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An additive on a plate and in the next jar. Of 10 ml 1 % is 0.1 ml, and 0.5 % is 0.05 ml. Plates and readings are invented. */
class AdditiveIT extends OnIdentity {
    private static final String BENZOIC_ACID = "OC(=O)c1ccccc1";

    private static void read(Page page, String plate, String lane, String eluent, String rf) {
        page.fill("#eluent-" + plate, eluent);
        page.focus("#add-" + lane);
        page.keyboard().type(rf);
        answered(page);
    }

    @Test
    void whatStreaksNamesAnAdditiveFromTheShelf() {
        Page page = openWhat();
        page.fill("#smiles-s1", BENZOIC_ACID);
        recognised(page, "carboxylic-acid");
        assertTrue(page.textContent("#why").contains("1 % of acetic acid"), page.textContent("#why"));
        page.keyboard().press("Escape");
        page.click("#shelf");
        page.uncheck("#shelf-acetic-acid");
        answered(page);
        assertFalse(page.textContent("#why").contains("% of acetic acid"), page.textContent("#why"));
    }

    @Test
    void theNextJarTakesOverTheAdditiveOfTheLastPlateWithItsMillilitres() {
        Page page = openWhat();
        page.keyboard().press("Escape");
        page.selectOption("#additive-p1", "acetic-acid");
        read(page, "p1", "l1", "9:1", ".1");
        assertEquals("acetic-acid", page.inputValue("#additive"));
        assertEquals(2, latest().split("\"additive\":\"acetic acid 1 %\"", -1).length - 1, latest());
        assertEquals("+ 0.1 ml acetic acid (1 %)", page.textContent("#pour-added"));
        assertTrue(page.textContent("#card-head").contains("0.1 ml acetic acid (1 %)"), page.textContent("#card-head"));
        assertTrue(page.textContent("#card-cautions").contains("acetic acid: "), page.textContent("#card-cautions"));
        assertTrue(page.textContent("#card-runs").contains("9:1 with acetic acid 1 %"), page.textContent("#card-runs"));
        assertTrue(page.textContent("#chance").contains("only your own plates count"), page.textContent("#chance"));
        page.click("#run-this");
        assertEquals("acetic-acid", page.inputValue("#additive-p2"), "the plate runs in what was poured");
    }

    @Test
    void platesWithAndWithoutItAreNotCountedTogether() {
        Page page = openEmpty();
        read(page, "p1", "l1", "9:1", ".1");
        page.click("#run-this");
        page.selectOption("#additive-p2", "triethylamine");
        read(page, "p2", "l2", "7:3", ".4");
        assertTrue(
                page.textContent("#why").contains("Plate 1 and the question differ in their additive"),
                page.textContent("#why"));
        page.selectOption("#additive", "none");
        answered(page);
        assertEquals("triethylamine", page.inputValue("#additive-p2"), "what was read stays as it was run");
        assertTrue(
                page.textContent("#why").contains("Plate 2 and the question differ in their additive"),
                page.textContent("#why"));
        page.click("#undo");
        answered(page);
        assertEquals("triethylamine", page.inputValue("#additive"));
    }

    @Test
    void anotherOneIsTypedByKeysAloneAndKeptOverAReload() {
        Page page = openEmpty();
        page.focus("#additive-p1");
        page.keyboard().press("End");
        page.waitForSelector("#additive-p1-text-fault");
        page.keyboard().press("Tab");
        assertEquals("additive-p1-text", focused(page));
        page.keyboard().type("formic acid 0,5 %");
        answered(page);
        assertEquals("+ 0.05 ml formic acid (0.5 %)", page.textContent("#pour-added"));
        page.reload();
        ready(page);
        answered(page);
        assertEquals("formic acid 0,5 %", page.inputValue("#additive-p1-text"));
        assertEquals("formic acid 0,5 %", page.inputValue("#additive-text"));
        page.fill("#additive-p1-text", "ammonia");
        answered(page);
        assertEquals("+ ammonia", page.textContent("#pour-added"), "no share said, no millilitres");
    }

    @Test
    void anOldSheetIsReadWithoutAdditivesAndWithBothOnItsShelf() {
        Page page = openEmpty();
        read(page, "p1", "l1", "9:1", ".1");
        page.evaluate("""
                () => {
                  const [key] = Object.keys(localStorage).filter((each) => each.startsWith("midplate-study-"));
                  const { sheet: now, before } = JSON.parse(localStorage.getItem(key));
                  for (const sheet of [now, ...before]) {
                    for (const newer of ["additive", "id", "title", "notes", "advices", "archived"]) delete sheet[newer];
                    for (const plate of sheet.plates) delete plate.additive;
                    sheet.shelf = ["hexane", "ethyl-acetate"];
                  }
                  localStorage.clear();
                  localStorage.setItem("midplate-sheet", JSON.stringify({ sheet: now, before }));
                  history.replaceState(null, "", location.pathname);
                }""");
        page.reload();
        ready(page);
        answered(page);
        assertEquals("9:1", page.inputValue("#eluent-p1"));
        assertEquals("none", page.inputValue("#additive-p1"));
        page.click("#shelf");
        assertTrue(page.isChecked("#shelf-acetic-acid") && page.isChecked("#shelf-triethylamine"));
        assertFalse(page.isChecked("#shelf-methanol"), "what was not on it stays away");
        page.uncheck("#shelf-acetic-acid");
        page.reload();
        ready(page);
        page.click("#shelf");
        assertFalse(page.isChecked("#shelf-acetic-acid"), "a tick taken away does not come back");
    }

    @Test
    void inGermanItHasGermanNames() {
        Page page = openEmpty();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.selectOption("#additive-p1", "acetic-acid");
        read(page, "p1", "l1", "9:1", "0,1");
        assertEquals("+ 0,1 ml Essigsäure (1 %)", page.textContent("#pour-added"));
        String told = page.locator("#plates").innerText() + page.locator("#jar").innerText();
        assertFalse(
                Pattern.compile("(?i)\\b(acid|none|another|with|additive|the)\\b")
                        .matcher(told)
                        .find(),
                told);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void itIsCleanAndNothingSpills(ColorScheme scheme, int width) {
        Page page = open(wide(width).setColorScheme(scheme));
        page.click("#clear-example");
        page.selectOption("#additive-p1", "own");
        page.fill("#additive-p1-text", "formic acid 0.5 %");
        read(page, "p1", "l1", "9:1", ".1");
        assertClean(page);
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue());
        shoot(page, String.format(Locale.ROOT, "additive-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }
}
