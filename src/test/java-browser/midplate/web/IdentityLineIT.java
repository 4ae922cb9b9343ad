package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** The line under a compound's name, and how the entry is entered and left. */
class IdentityLineIT extends OnIdentity {
    @Test
    void anEmptySheetFirstAsksWhatTheCompoundIsAndADigitBeginsTheRatioInstead() {
        Page page = openEmpty();
        assertEquals("what-s1", focused(page));
        page.keyboard().type("9:1");
        assertEquals("eluent-p1", focused(page));
        assertEquals("9:1", page.inputValue("#eluent-p1"));
        page.focus("#what-s1");
        page.keyboard().type("4");
        assertEquals("what-s1", focused(page), "every plate has its ratio");
        assertEquals("9:1", page.inputValue("#eluent-p1"));
    }

    @Test
    void enterLeavesALineThatWasReadAndStaysAtOneThatWasNot() {
        Page page = openWhat();
        page.focus("#smiles-s1");
        page.keyboard().type("CC(=O)c1cccc");
        page.keyboard().press("Enter");
        page.waitForSelector("#smiles-s1-fault");
        assertEquals("smiles-s1", focused(page));
        assertEquals("not readable", page.textContent("#what-s1"));
        page.keyboard().type("c1");
        page.keyboard().press("Enter");
        page.waitForFunction("() => document.activeElement.id === 'what-s1'");
        assertTrue(page.isHidden("#what"));
        answered(page);
        assertTrue(page.textContent("#what-s1").contains("aryl ketone"), page.textContent("#what-s1"));
    }

    @Test
    void anAmineBesideACarbamateIsAskedWhetherItIsAnotherN() {
        Page page = openWhat();
        choose(page, "groups");
        page.click("#add-s1-primary-amine");
        assertEquals(0, page.locator("#twice-s1-primary-amine").count(), "an amine alone is none's N");
        page.click("#add-s1-carbamate");
        assertTrue(page.isVisible("#twice-s1-primary-amine"));
        page.click("#less-s1-carbamate");
        assertEquals(0, page.locator("#twice-s1-primary-amine").count());
    }

    @Test
    void eachEffectHasABarToTheLeftWhereItHoldsBack() {
        Page page = openWhat();
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        String middle = "Number(document.querySelector('#found-row-s1-%s .effect-bar rect').getAttribute('x'))";
        double ketone = ((Number) page.evaluate(String.format(middle, "aryl-ketone"))).doubleValue();
        double ring = ((Number) page.evaluate(String.format(middle, "aromatic-carbon"))).doubleValue();
        assertTrue(ketone < 50, "a ketone holds back: its bar begins at " + ketone);
        assertTrue(ketone < ring || ring == 50, "and more than a carbon of the ring: " + ring);
        assertTrue(page.textContent("#found-row-s1-aromatic-carbon").contains("each"));
        assertFalse(page.textContent("#found-row-s1-aryl-ketone").contains("each"), "there is one");
    }

    @Test
    void aLongNameIsALetterOnThePlateAndTheLetterStandsBesideTheName() {
        Page page = open();
        page.fill("#spot-s1", "benzophenone");
        assertEquals("A", page.textContent("#spot-s1-item .sign"));
        assertEquals("A", page.textContent("#reading-r1 .letters"));
        page.fill("#spot-s2", "A");
        assertEquals("1", page.textContent("#spot-s1-item .sign"), "another compound has that name");
    }
}
