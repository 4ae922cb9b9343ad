package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import midplate.wire.Exchange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is entered stays: over undo, reload, a second window, a server that is gone for a while, and entries that cannot be taken. */
class SheetIT extends OnPage {
    private static String value(Page page, String id) {
        return page.locator("#" + id).inputValue();
    }

    @Test
    void theFirstVisitShowsAnInventedExampleThatOneClickClears() {
        Page page = open();
        answered(page);
        assertTrue(page.isVisible("#example-mark"));
        assertTrue(page.textContent("#example-mark").contains("invented"));
        assertEquals("9 : 1", value(page, "eluent-p1"));
        page.click("#clear-example");
        assertFalse(page.isVisible("#example-bar"));
        assertEquals("", value(page, "eluent-p1"));
        assertEquals("what-s1", focused(page), "the first question");
    }

    @Test
    void theExampleStaysMarkedWhenItIsChanged() {
        Page page = open();
        page.fill("#eluent-p1", "8 : 2");
        assertEquals("Begun from the invented example.", page.textContent("#example-mark"));
        page.keyboard().press("Control+z");
        assertTrue(page.textContent("#example-mark").contains("no such plate was ever run"));
    }

    @Test
    void everyStepCanBeTakenBackAndTakenAgain() {
        Page page = openEmpty();
        page.fill("#eluent-p1", "9 : 1");
        page.fill("#spot-s1", "ester");
        page.click("#add-spot");
        page.locator("#window-choice").selectOption("column");
        page.locator("#setting").selectOption("class");
        page.click("#undo");
        assertEquals("bench", value(page, "setting"));
        page.click("#undo");
        assertEquals("usual", value(page, "window-choice"));
        page.click("#undo");
        assertEquals(0, page.locator("#spot-s2").count());
        page.click("#undo");
        assertEquals("A", value(page, "spot-s1"), "a name is one step, not one for each letter");
        page.click("#undo");
        assertEquals("", value(page, "eluent-p1"));
        page.click("#undo");
        assertTrue(page.isVisible("#example-bar"), "clearing, too, can be taken back");
        for (int i = 0; i < 6; i++) {
            page.click("#redo");
        }
        assertTrue(page.locator("#redo").isDisabled());
        assertEquals("ester", value(page, "spot-s1"));
        assertEquals("class", value(page, "setting"));
        assertEquals("column", value(page, "window-choice"));
    }

    @Test
    void aReloadLosesNothingAndCanStillBeUndone() {
        Page page = openEmpty();
        page.fill("#spot-s1", "starting ester");
        page.locator("#pair").selectOption("dichloromethane methanol");
        page.locator("#setting").selectOption("class");
        page.fill("#eluent-p1", "5 %");
        page.reload();
        ready(page);
        assertEquals("starting ester", value(page, "spot-s1"));
        assertEquals("5 %", value(page, "eluent-p1"));
        assertEquals("class", value(page, "setting"));
        assertEquals("dichloromethane methanol", value(page, "pair"));
        page.click("#undo");
        assertEquals("", value(page, "eluent-p1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "null",
                "[]",
                "{\"sheet\": {}, \"before\": []}",
                "{\"sheet\": {\"spots\": [null]}, \"before\": 3}",
                "{\"pair\": 0, \"plates\": [null]}"
            })
    void aDraftThatCannotBeReadIsPassedOver(String draft) {
        Page page = openEmpty();
        page.evaluate("""
                text => {
                    for (const key of Object.keys(localStorage)) {
                        if (key.startsWith('midplate-study-')) localStorage.setItem(key, text);
                    }
                    localStorage.setItem('midplate-sheet', text);
                }
                """, draft);
        page.reload();
        ready(page);
        answered(page);
        assertTrue(page.isVisible("#example-bar"));
    }

    @Test
    void twoWindowsShowOneSheetAndNeitherLosesWhatTheOtherWrote() {
        Page one = openEmpty();
        Page other = another();
        other.navigate(server.address());
        ready(other);
        one.fill("#spot-s1", "from the first");
        assertThat(other.locator("#spot-s1")).hasValue("from the first");
        other.fill("#eluent-p1", "7 : 3");
        assertThat(one.locator("#eluent-p1")).hasValue("7 : 3");
        assertEquals("from the first", value(one, "spot-s1"));
        one.reload();
        ready(one);
        assertEquals("from the first", value(one, "spot-s1"));
        assertEquals("7 : 3", value(one, "eluent-p1"));
    }

    @Test
    void whatIsTypedLetterByLetterInOneWindowStaysWholeWhileAnotherLooksOn() {
        Page one = openEmpty();
        Page other = another();
        other.navigate(server.address());
        ready(other);
        one.focus("#spot-s1");
        one.keyboard().press("Control+a");
        one.keyboard().type("benzophenone, long name", new Keyboard.TypeOptions().setDelay(15));
        assertThat(other.locator("#spot-s1")).hasValue("benzophenone, long name");
        assertEquals("benzophenone, long name", value(one, "spot-s1"));
        other.click("#undo");
        assertEquals("A", value(other, "spot-s1"), "what came from the other window is one step");
    }

    @Test
    void aFoldThatWasClosedStaysClosedAndOneWithAFaultOpens() {
        Page page = open();
        answered(page);
        page.click("#wanted > summary");
        page.fill("#spot-s1", "ester");
        answered(page);
        assertFalse(page.isVisible("#amount"));
        page.fill("#spot-s1", "");
        page.waitForSelector("#spot-s1-fault");
        page.fill("#spot-s1", "A");
        answered(page);
        page.evaluate("document.getElementById('amount').value = 'x';"
                + "document.getElementById('amount').dispatchEvent(new Event('input', {bubbles: true}))");
        page.waitForSelector("#amount-fault");
        assertTrue(page.isVisible("#amount-fault"), "unfolded");
    }

    @Test
    void limitsOfOnesOwnStayOpenWhateverIsTyped() {
        Page page = open();
        page.selectOption("#window-choice", "own");
        page.fill("#window-high", "0.35");
        page.fill("#window-high", "0.8");
        assertTrue(page.isVisible("#window-high"), "the usual limits typed by hand are one's own, too");
        assertEquals("own", value(page, "window-choice"));
    }

    @Test
    void aSpotThatHasNoPlaceYetCountsForNothing() {
        Page page = openEmpty();
        page.keyboard().type("4:1");
        answered(page);
        String before = page.textContent("#said");
        page.click("#add-l1");
        answered(page);
        assertEquals(before, page.textContent("#said"));
        page.keyboard().type("13");
        page.keyboard().press("Enter");
        answered(page);
        assertFalse(before.equals(page.textContent("#said")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4 : 1", "4:1", "4/1", "4 + 1", "20 %", "20", "20,0"})
    void aRatioIsReadAsPeopleWriteIt(String typed) {
        Page page = open();
        page.fill("#eluent-p1", typed);
        answered(page);
        assertEquals(0, page.locator(".fault").count());
        assertTrue(page.textContent("#card").contains("A at Rf 0.07"), page.textContent("#card-runs"));
        Object percent = page.evaluate(
                "() => import('./numbers.js').then(numbers => numbers.percentStrong(document.getElementById('eluent-p1').value))");
        assertEquals(20.0, ((Number) percent).doubleValue(), 1e-9);
    }

    @Test
    void aServerThatIsStoppedAndStartedAgainLosesNothing() {
        PageServer first =
                PageServer.of(Exchange.builtIn(), folder, 0, Path.of("web")).start();
        String address = first.address();
        int port = URI.create(address).getPort();
        furtherServers.add(address);
        Page page = open();
        page.navigate(address);
        ready(page);
        page.click("#clear-example");
        page.fill("#eluent-p1", "9 : 1");
        answered(page);
        first.stop();
        page.fill("#spot-s1", "written while it was gone");
        page.getByText("Is it still running in its terminal?").waitFor();
        assertEquals("written while it was gone", value(page, "spot-s1"));
        PageServer again =
                PageServer.of(Exchange.builtIn(), folder, port, Path.of("web")).start();
        answered(page);
        assertEquals("written while it was gone", value(page, "spot-s1"));
        assertTrue(
                page.textContent("#next").contains("written while it was gone"), "the answer is to what was written");
        again.stop();
    }

    @Test
    void eachFaultIsToldBesideItsEntryAndNothingIsLost() {
        Page page = open();
        answered(page);
        page.fill("#eluent-p1", "101");
        page.fill("#rf-r1", "1.2");
        page.fill("#amount", "much");
        page.waitForSelector("#amount-fault");
        assertTrue(page.textContent("#eluent-p1-fault").contains("101"), page.textContent("#eluent-p1-fault"));
        assertTrue(page.textContent("#rf-r1-fault").contains("1.2"), page.textContent("#rf-r1-fault"));
        assertEquals("\"much\" is no number. Give millilitres, such as 10.", page.textContent("#amount-fault"));
        assertEquals("true", page.getAttribute("#rf-r1", "aria-invalid"));
        assertEquals("rf-r1-fault", page.getAttribute("#rf-r1", "aria-describedby"));
        assertEquals("101", value(page, "eluent-p1"));
        assertEquals("1.2", value(page, "rf-r1"));
        assertTrue(page.textContent("#jar").contains("Each is told beside its field."));
        shoot(page, "faults");
        assertClean(page);
        page.fill("#eluent-p1", "9 : 1");
        page.fill("#rf-r1", "0.2");
        page.fill("#amount", "10");
        answered(page);
        assertEquals(0, page.locator(".fault").count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.1", "1.2", "NaN", "low", "1e999", "0.3.1", "∞"})
    void anRfThatIsNoneIsToldBesideItAndStays(String typed) {
        Page page = open();
        answered(page);
        page.fill("#rf-r1", typed);
        page.waitForSelector("#rf-r1-fault");
        assertEquals(typed, value(page, "rf-r1"));
        page.reload();
        ready(page);
        page.waitForSelector("#rf-r1-fault");
        assertEquals(typed, value(page, "rf-r1"));
    }

    @Test
    void aFrontBelowTheStartLineIsToldAtTheFront() {
        Page page = open();
        answered(page);
        page.evaluate("document.querySelectorAll('#plates details').forEach(each => { each.open = true; })");
        page.fill("#front-p1", "8");
        page.waitForSelector("#front-p1-fault");
        assertTrue(page.textContent("#front-p1-fault").contains("8"), page.textContent("#front-p1-fault"));
        page.fill("#front-p1", "62");
        answered(page);
    }

    @Test
    void aPlateThatWaitsForItsEluentIsNamed() {
        Page page = open();
        answered(page);
        page.fill("#eluent-p1", "");
        page.getByText("Plate 1 does not count yet").waitFor();
        assertEquals(0, page.locator(".fault").count());
    }

    @Test
    void fiftyOneSpotsAreToldAndKept() {
        Page page = openEmpty();
        page.evaluate("""
                () => {
                    const key = Object.keys(localStorage).find(each => each.startsWith('midplate-study-'));
                    const { sheet } = JSON.parse(localStorage.getItem(key));
                    for (let i = sheet.spots.length; i < 51; i++) {
                        sheet.spots.push({ id: `s${i + 1}`, name: `S${i + 1}` });
                    }
                    localStorage.setItem(key, JSON.stringify({ sheet, before: [], version: 'x' }));
                }
                """);
        page.reload();
        ready(page);
        page.locator("#spot-s1-fault").waitFor();
        assertTrue(page.textContent("#spot-s1-fault").contains("50"), page.textContent("#spot-s1-fault"));
        assertEquals(51, page.locator("#spots li").count());
    }

    @Test
    void namesAreTextAndNeverMarkup() {
        Page page = open();
        String name = "<img src=x onerror=alert(1)>";
        page.fill("#spot-s1", name);
        answered(page);
        assertEquals(0, page.locator("img").count());
        assertTrue(page.textContent("#next").contains(name));
    }

    /** Pairs offered; those that were measured come first, the others say by a word what they rest on. */
    private static List<String> measuredPairs(Page page) {
        List<String> offered = page.locator("#pair option").allTextContents();
        List<String> measured =
                offered.stream().filter(pair -> !pair.endsWith(")")).toList();
        assertEquals(measured, offered.subList(0, measured.size()));
        assertTrue(offered.stream().skip(measured.size()).allMatch(pair -> pair.matches(".* \\((theory|guess)\\)")));
        return measured;
    }

    @Test
    void adviceNamesOnlyWhatStandsOnTheShelf() {
        Page page = open();
        answered(page);
        assertEquals(
                List.of("hexane : ethyl acetate", "hexane : diethyl ether", "dichloromethane : methanol"),
                measuredPairs(page));
        page.click("#shelf");
        page.uncheck("#shelf-diethyl-ether");
        page.check("#shelf-heptane");
        assertEquals(
                List.of("hexane : ethyl acetate", "heptane : ethyl acetate", "dichloromethane : methanol"),
                measuredPairs(page));
        assertFalse(page.textContent("#pair").contains("ether"), page.textContent("#pair"));
        page.uncheck("#shelf-hexane");
        page.locator("#pair-fault").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.VISIBLE));
        assertTrue(page.textContent("#pair-fault").contains("shelf"), page.textContent("#pair-fault"));
    }

    @Test
    void theWindowAndTheTwoToKeepApartChangeTheAdvice() {
        Page page = open();
        answered(page);
        String usual = page.textContent("#ratio");
        page.locator("#window-choice").selectOption("column");
        answered(page);
        assertFalse(usual.equals(page.textContent("#ratio")));
        assertTrue(page.textContent("#chance").contains("0.35"), page.textContent("#chance"));
        page.locator("#window-choice").selectOption("usual");
        page.locator("#apart").selectOption("s1 s2");
        answered(page);
        assertTrue(page.textContent("#chance").contains("apart"), page.textContent("#chance"));
    }
}
