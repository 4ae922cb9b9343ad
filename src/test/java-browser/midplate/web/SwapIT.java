package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Another solvent in place of the one that fails, with the real advice behind it. */
class SwapIT extends OnLadder {
    /** The first pair that is not the one now: its row, and the ids of its solvents as the chooser has them. */
    private static Locator best(Page page) {
        return page.locator("#ladder-rows > li:nth-child(2)");
    }

    private static String pairOf(Locator row) {
        return row.locator("h3").textContent();
    }

    /** The pair in the chooser, without the word about what it rests on. */
    private static String chosen(Page page) {
        return page.locator("#pair option:checked").textContent().replaceAll(" \\(.*\\)$", "");
    }

    @Test
    void twoTouchingSpotsLeadToAnotherPairInOnePressAndUndoLeadsBack() {
        Page page = openLeft(TOUCHING);
        assertTrue(page.textContent("#another-hint").contains("touch"), "the jar says where to look");
        String before = page.textContent("#said");
        page.click("#swap-open");
        page.waitForSelector("#ladder-rows");
        String pair = pairOf(best(page));
        best(page).locator(".row-foot > button").click();
        answered(page);
        assertEquals(pair, chosen(page));
        String strong = pair.replaceAll(".* : ", "");
        assertTrue(page.textContent("#pour").contains(strong), page.textContent("#pour"));
        assertEquals("hexane ethyl-acetate", page.inputValue("#solvents-p1"), "a plate that was run keeps its own");
        assertTrue(page.textContent("#swap-standing").contains(strong), "it is spoken");
        assertEquals("jar", focused(page));
        current(page);
        assertEquals(pair, page.textContent("#swap-now h3"), "the ladder starts from the new pair");
        page.click("#undo");
        answered(page);
        assertEquals("hexane ethyl-acetate", page.inputValue("#pair"));
        assertEquals(before, page.textContent("#said"));
        assertEquals(0, page.locator("#swap-took").count());
    }

    @Test
    void aSolventThatDoesNotStandOnTheShelfIsPutThereInTheSameStep() {
        Page page = openLadder();
        assertEquals(0, page.locator("#swap-hexane-acetone").count(), "the shelf decides");
        showAll(page);
        assertTrue(page.textContent("#swap-hexane-acetone").contains("not on your shelf: acetone"));
        page.click("#swap-use-hexane-acetone");
        answered(page);
        assertEquals("hexane acetone", page.inputValue("#pair"));
        assertTrue(page.isChecked("#shelf-acetone"));
        page.click("#undo");
        answered(page);
        assertEquals("hexane ethyl-acetate", page.inputValue("#pair"));
        assertFalse(page.isChecked("#shelf-acetone"));
    }

    @Test
    void ofAPairOfTheoryJarAndCardSayWhatTheChanceRestsOnAndTheWindowTellsMore() {
        Page page = openLadder();
        showAll(page);
        page.click("#swap-use-hexane-acetone");
        answered(page);
        for (String place : List.of("#chance #rests-on", "#pour-card #card-rests-on")) {
            assertTrue(page.textContent(place).contains("theory"), place);
        }
        page.click("#rests-on .asked");
        page.locator("#origin .basis").first().waitFor();
        String told = page.textContent("#origin");
        assertTrue(told.contains("acetone") && told.contains("Nobody judged it"), told);
        page.keyboard().press("Escape");
        page.locator("#chance-words .asked").first().click();
        page.locator("#origin .basis").first().waitFor();
        assertTrue(
                page.textContent("#origin").contains("no published plates of this pair"), page.textContent("#origin"));
    }

    @Test
    void theChooserOffersPairsOfTheoryByWordOnceTheirSolventsStandOnTheShelf() {
        Page page = openEmpty();
        answered(page);
        assertEquals(0, page.locator("#pair option[value='hexane acetone']").count());
        page.click("#shelf");
        page.check("#shelf-acetone");
        answered(page);
        String option = page.textContent("#pair option[value='hexane acetone']");
        assertTrue(option.endsWith("(theory)"), option);
        assertFalse(
                page.textContent("#pair option[value='hexane ethyl-acetate']").contains("("), "measured needs no word");
        page.selectOption("#pair", "hexane acetone");
        answered(page);
        assertEquals("hexane acetone", page.inputValue("#solvents-p1"), "an untouched plate takes it");
        page.reload();
        ready(page);
        answered(page);
        assertEquals("hexane acetone", page.inputValue("#pair"), "it is kept");
        assertTrue(page.textContent("#card-cautions").contains("acetone"), "its hazards are shown");
    }

    @Test
    void anotherOrderPutsAnotherPairFirstAndTellsItself() {
        Page page = openLadder();
        showAll(page);
        page.click("#swap-rank-measured");
        current(page);
        String told = page.textContent("#swap-standing");
        assertTrue(told.contains("how well known") && told.contains(pairOf(best(page))), told);
        assertEquals("true", page.getAttribute("#swap-rank-measured", "aria-pressed"));
        List<String> bases = page.locator("#swap .ladder-row:not(#swap-now):has(.row-ratio) .row-basis .asked")
                .allTextContents();
        assertEquals(
                bases.lastIndexOf("measured") + 1,
                bases.stream().filter("measured"::equals).count(),
                "measured ones first: " + bases);
        assertTrue(bases.contains("theory"), bases.toString());
    }

    @Test
    void whileItIsAskedAgainTheOldRowsAreMarkedAsSuch() {
        Page page = openLadder();
        assertNull(page.getAttribute("#swap-said", "aria-busy"));
        page.evaluate("""
                new MutationObserver(() => {
                    window.busy ||= document.querySelector('#swap-said').getAttribute('aria-busy');
                }).observe(document.querySelector('#swap'), { subtree: true, attributes: true })""");
        page.click("#swap-rank-drying");
        current(page);
        assertEquals("true", page.evaluate("window.busy"), "while it was asked");
        assertNull(page.getAttribute("#swap-said", "aria-busy"));
    }

    @Test
    void escapeInsideClosesItAndTheFocusGoesBack() {
        Page page = openLadder();
        page.focus("#swap-rank-safety");
        page.keyboard().press("Escape");
        assertFalse(page.isVisible("#swap"));
        assertEquals("swap-open", focused(page));
    }

    /** Rf 0.35 and 0.40 at 20 %, which lie about as near at any ratio between; and Rf 0.23 and 0.62. */
    @Test
    void whereTheClosestTwoAreExpectedNearTheJarSaysWhereToLook() {
        Page near = openLeft("""
                plate.lanes.pop();
                plate.eluent = '4 : 1';
                plate.lanes[0].readings[0].typed = '28.2';
                plate.lanes[0].readings[1].typed = '30.8';
                """);
        assertTrue(near.textContent("#another-hint").contains("touch"));
        Page far = openLeft("""
                plate.lanes.pop();
                plate.eluent = '4 : 1';
                plate.lanes[0].readings[0].typed = '22';
                plate.lanes[0].readings[1].typed = '42';
                """);
        assertEquals(0, far.locator("#another-hint").count());
    }

    @Test
    void anOwnPlateOfAPairOfTheoryIsNotDenied() {
        Page page = openLeft("""
                for (const each of [sheet, plate]) { each.strong = 'acetone'; }
                sheet.shelf.push('acetone');
                """);
        String told = page.textContent("#rests-on");
        assertTrue(told.contains("theory") && told.contains("your own plates of this pair count"), told);
        assertFalse(told.contains("not on plates"), told);
        assertEquals(told, page.textContent("#card-rests-on"));
        page.locator("#chance-words .asked").first().click();
        page.locator("#origin .basis").first().waitFor();
        assertTrue(page.textContent("#origin").contains("count already"), page.textContent("#origin"));
    }

    @Test
    void anotherMixtureIsMatchedAndNonsenseIsToldBesideItsField() {
        Page page = openLadder();
        page.fill("#swap-match", "9 : 1");
        page.waitForFunction("() => document.querySelector('#swap-words')?.textContent.includes('9 : 1')");
        page.fill("#swap-match", "13.37");
        page.waitForFunction("() => document.querySelector('#swap-words')?.textContent.includes('13.37\u00a0%')");
        page.fill("#swap-match", "150");
        page.waitForSelector("#swap-match-fault");
        assertEquals("150", page.inputValue("#swap-match"), "nothing entered is lost");
        page.fill("#swap-match", "");
        page.waitForSelector("#swap-match-fault", detached());
        current(page);
    }

    private static Page.WaitForSelectorOptions detached() {
        return new Page.WaitForSelectorOptions().setState(WaitForSelectorState.DETACHED);
    }

    @Test
    void whereTheServerIsSilentItSaysSoAndAsksAgainOnAPress() {
        Page page = openLeft(TOUCHING);
        page.route(OTHERS, route -> route.abort());
        page.click("#swap-open");
        page.waitForSelector("#swap-again");
        page.unroute(OTHERS);
        page.click("#swap-again");
        page.waitForSelector("#ladder-rows");
    }

    @Test
    void byKeyboardAloneItIsOpenedOrderedChosenAndTakenBack() {
        Page page = openLeft(wide(ColorScheme.LIGHT), TOUCHING);
        page.focus("#swap-open");
        page.keyboard().press("Enter");
        page.waitForSelector("#ladder-rows");
        assertEquals("swap-title", focused(page));
        tabTo(page, "swap-rank-measured");
        page.keyboard().press("Space");
        page.waitForSelector("#swap-rank-measured[aria-pressed=true]");
        current(page);
        assertEquals("swap-rank-measured", focused(page), "the focus stays");
        String use = best(page).locator(".row-foot > button").getAttribute("id");
        tabTo(page, use);
        page.keyboard().press("Enter");
        answered(page);
        assertEquals("jar", focused(page));
        page.keyboard().press("Control+z");
        answered(page);
        assertEquals("hexane ethyl-acetate", page.inputValue("#pair"));
        page.focus("#swap-close");
        page.keyboard().press("Enter");
        assertEquals("swap-open", focused(page));
        assertFalse(page.isVisible("#swap"));
    }

    private static void tabTo(Page page, String id) {
        for (int steps = 0; steps < 60 && !focused(page).equals(id); steps++) {
            page.keyboard().press("Tab");
        }
        assertEquals(id, focused(page));
    }

    @Test
    void itsNumbersTellWhereTheyComeFrom() {
        Page page = openLadder();
        showAll(page);
        int numbers =
                page.locator("#ladder-rows > li:nth-child(-n+3) .asked:visible").count();
        assertTrue(numbers > 8, numbers + " numbers");
        for (int i = 0; i < numbers; i++) {
            page.locator("#ladder-rows > li:nth-child(-n+3) .asked:visible")
                    .nth(i)
                    .click();
            page.locator("#origin .basis").first().waitFor();
            String told = page.textContent("#origin");
            assertFalse(told.contains("undefined") || told.contains("{") || told.contains("NaN"), told);
            page.keyboard().press("Escape");
            page.waitForSelector(
                    "dialog:not([open])", new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
        }
    }
}
