package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tubes of a column that was run: marked by each hand, pooled, weighed, and counted in the next plan. */
class FractionsIT extends OnColumn {
    private int counted;

    private void press(Locator locator) {
        locator.click();
        counted++;
    }

    private void key(Page page, String... names) {
        for (String name : names) {
            page.keyboard().press(name);
            counted++;
        }
    }

    /** Tubes 1–4 empty, 5 a little B, 6–8 B, 9 both, 10–11 A, the rest empty. */
    private static void assertPooled(Page page) {
        List<String> told = pools(page);
        assertTrue(told.get(0).startsWith("Tubes 1\u20134: empty"), told.toString());
        assertTrue(told.get(1).startsWith("Tubes 5\u20138: B, pure"), told.toString());
        assertTrue(told.get(2).startsWith("Tube 9: mixed"), told.toString());
        assertTrue(told.get(3).startsWith("Tubes 10\u201311: A, pure"), told.toString());
        assertTrue(told.get(4).contains("empty"), told.toString());
        assertEquals(5, told.size(), told.toString());
        double tubeMl = Double.parseDouble(page.inputValue("#fraction-c1"));
        List<Double> pure = numbers(told.get(1));
        assertEquals(4 * tubeMl, pure.get(2), 0.51, "four tubes of " + tubeMl + " ml");
    }

    @Test
    void byMouse() {
        Page page = open();
        run(page);
        press(tube(page, 5));
        for (int i = 0; i < 3; i++) {
            press(page.locator("#put-c1-s2"));
        }
        assertEquals("Tube 5: B: a trace", said(page, 5));
        drag(page, tube(page, 6), tube(page, 8));
        press(page.locator("#put-c1-s2"));
        press(tube(page, 9));
        press(page.locator("#put-c1-s2"));
        press(page.locator("#put-c1-s1"));
        press(page.locator("#next-c1"));
        press(page.locator("#put-c1-s1"));
        press(page.locator("#next-c1"));
        press(page.locator("#same-c1"));
        press(page.locator("#others-c1"));
        assertPooled(page);
        assertTrue(counted <= 16, counted + " presses");
        System.out.printf("a strip of tubes by mouse: %d presses%n", counted);
    }

    private void drag(Page page, Locator from, Locator to) {
        BoundingBox start = from.boundingBox();
        BoundingBox end = to.boundingBox();
        page.mouse().move(start.x + 10, start.y + 20);
        page.mouse().down();
        page.mouse().move(end.x + 10, end.y + 20, new com.microsoft.playwright.Mouse.MoveOptions().setSteps(8));
        page.mouse().up();
        counted++;
    }

    @Test
    void byKeyboardAlone() {
        Page page = open();
        planForRun(page);
        page.focus("#column-run");
        key(page, "Enter");
        assertEquals("tube-c1-t1", focused(page), "the first tube is chosen");
        key(page, "Enter", "Enter", "Enter", "Enter");
        key(page, "b", "1", "ArrowRight");
        key(page, "Shift+ArrowRight", "Shift+ArrowRight", "b", "ArrowRight");
        key(page, "b", "a", "ArrowRight");
        key(page, "a", "ArrowRight", "=");
        assertEquals("Tube 5: B: a trace", said(page, 5));
        assertEquals("Tube 8: B: clear", said(page, 8));
        assertEquals("Tube 9: A: clear, B: clear", said(page, 9));
        assertEquals("Tube 11: A: clear", said(page, 11));
        for (int i = 0; i < 10 && !focused(page).equals("others-c1"); i++) {
            key(page, "Tab");
        }
        key(page, "Enter");
        assertEquals("more-c1", focused(page), "the button is gone, the focus is not lost");
        assertPooled(page);
        assertTrue(counted <= 32, counted + " keys");
        System.out.printf("a strip of tubes by keyboard: %d keys%n", counted);
    }

    @Test
    void byTouch() {
        Page page = open(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        run(page);
        tube(page, 2).tap();
        page.locator("#put-c1-s2").tap();
        page.locator("#next-c1").tap();
        page.locator("#same-c1").tap();
        page.locator("#others-c1").tap();
        List<String> told = pools(page);
        assertTrue(told.get(1).startsWith("Tubes 2\u20133: B, pure"), told.toString());
    }

    /** Marks as in `assertPooled`, the short way. */
    private static void mark(Page page) {
        for (String key :
                "Enter Enter Enter Enter b 1 ArrowRight b = = ArrowLeft ArrowRight a 3 b ArrowRight a =".split(" ")) {
            page.keyboard().press(key);
        }
    }

    @Test
    void repeatedTapsChangeTheStrengthAndDigitsSayIt() {
        Page page = open();
        run(page);
        for (String how : List.of("clear", "strong", "a trace", "weak")) {
            page.keyboard().press("b");
            assertEquals("Tube 1: B: " + how, said(page, 1));
        }
        page.keyboard().press("b");
        assertEquals("Tube 1: nothing in it", said(page, 1));
        page.keyboard().press("4");
        assertEquals("Tube 1: B: strong", said(page, 1), "a digit is for the compound marked last");
        page.keyboard().press("0");
        assertEquals("Tube 1: nothing in it", said(page, 1));
        page.keyboard().press("Delete");
        assertEquals("Tube 1: not looked at", said(page, 1));
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("Enter");
        assertEquals("Tube 2: not looked at", said(page, 2), "passed by with the arrow");
        assertEquals("Tube 3: nothing in it", said(page, 3), "done with");
        assertEquals("tube-c1-t4", focused(page));
        page.click("#undo");
        assertEquals("Tube 3: not looked at", said(page, 3));
    }

    @Test
    void flasksGiveYieldAndBalanceAndFaultsStandAtThem() {
        Page page = open();
        run(page);
        tube(page, 5).click();
        page.keyboard().press("b");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("=");
        page.click("#others-c1");
        pooled(page);
        page.click("#add-flask-c1");
        assertEquals("5", page.inputValue("#first-f1"), "the pure tubes are filled in");
        assertEquals("6", page.inputValue("#last-f1"));
        assertEquals("tare-f1", focused(page));
        page.keyboard().type("25.1o");
        page.keyboard().press("Tab");
        page.keyboard().type("25.1234");
        page.waitForSelector("#tare-f1-fault");
        page.fill("#tare-f1", "25.2");
        page.waitForSelector("#gross-f1-fault");
        page.fill("#tare-f1", "25.1000");
        assertThat(page.locator("#balance-c1")).containsText("23.4 mg of B");
        assertTrue(
                page.textContent("#balance-c1").contains("47 %"), "23.4 of 50 mg: " + page.textContent("#balance-c1"));
        assertTrue(pools(page).get(1).contains("23.4 mg"), pools(page).toString());
        page.click("#unflask-f1");
        assertEquals("add-flask-c1", focused(page));
        page.waitForSelector(
                "#balance-c1",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
    }

    @Test
    void whatARunShowedCountsInTheNextPlanAndNarrowsIt() {
        Page page = open();
        openColumn(page);
        page.click("#column-target-s2");
        page.fill("#column-mass", "50");
        page.selectOption("#column-bed", "8");
        page.click("#column-further > summary");
        page.selectOption("#column-elution", "own");
        page.fill("#eluent-column-0", "6 : 1");
        page.fill("#amount-column-0", "300");
        page.fill("#column-fraction", "10");
        planned(page);
        page.click("#column-run");
        page.waitForSelector("#strip-c1");
        assertEquals(0, page.locator("#column-earlier").count());
        List<Double> before = numbers(
                page.locator("#plan-bands tbody tr").nth(1).locator("td").nth(2).textContent());
        int middle = (int) Math.round(before.get(0) / 10);
        for (int number = middle - 1; number <= middle + 2; number++) {
            tube(page, number).click();
            page.keyboard().press("b");
        }
        page.click("#others-c1");
        pooled(page);
        assertThat(page.locator("#observed-c1")).containsText("B left from");
        page.waitForSelector("#column-earlier");
        planned(page);
        List<Double> after = numbers(
                page.locator("#plan-bands tbody tr").nth(1).locator("td").nth(2).textContent());
        double widthBefore = before.get(2) / before.get(1);
        double widthAfter = after.get(2) / after.get(1);
        assertTrue(widthAfter < widthBefore, before + " became " + after);
        page.click("#run-remove-c1");
        page.waitForSelector(
                "#column-earlier",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
        planned(page);
        List<Double> again = numbers(
                page.locator("#plan-bands tbody tr").nth(1).locator("td").nth(2).textContent());
        assertEquals(before, again, "without the run as before it");
        page.click("#undo");
        page.waitForSelector("#column-earlier");
    }

    @Test
    void aRunOfOtherSolventsSaysThatItDoesNotCount() {
        Page page = open();
        run(page);
        tube(page, 2).click();
        page.keyboard().press("b");
        page.click("#others-c1");
        pooled(page);
        page.selectOption("#pair", "dichloromethane methanol");
        page.waitForSelector("#run-other-c1");
        assertThat(page.locator("#observed-c1, #run-other-c1").first()).isVisible();
        assertThat(page.locator("#column-earlier")).hasCount(0); // once the next plan is there
    }

    @Test
    void aReloadAndAnotherWindowHaveTheTubes() {
        Page page = open();
        run(page);
        mark(page);
        page.fill("#title", "Invented run");
        kept(page, "saved");
        String five = said(page, 5);
        String nine = said(page, 9);
        page.reload();
        ready(page);
        page.waitForSelector("#strip-c1");
        assertEquals(five, said(page, 5));
        assertEquals(nine, said(page, 9));
        pooled(page);
        Page other = another();
        other.navigate(page.url());
        ready(other);
        other.waitForSelector("#strip-c1");
        tube(other, 1).click();
        other.keyboard().press("a");
        assertThat(tube(page, 1)).hasAttribute("aria-label", "Tube 1: A: clear");
        page.click("#undo");
        assertThat(tube(other, 1)).hasAttribute("aria-label", "Tube 1: nothing in it");
    }

    @Test
    void howItWasRunCanBeCorrectedAndASpotTakenAwayTakesItsMarks() {
        Page page = open();
        run(page);
        tube(page, 2).click();
        page.keyboard().press("b");
        page.keyboard().press("a");
        page.click("#run-how-c1 summary");
        page.fill("#fraction-c1", "7,5");
        page.click("#others-c1");
        assertThat(page.locator("#pool-list-c1")).containsText("7.5");
        page.fill("#fraction-c1", "x");
        page.waitForSelector("#fraction-c1-fault");
        page.fill("#fraction-c1", "10");
        int tubes = page.locator("#strip-c1 .tube").count();
        page.click("#more-c1");
        assertEquals(tubes + 10, page.locator("#strip-c1 .tube").count());
        page.click("#fewer-c1");
        assertEquals(tubes + 9, page.locator("#strip-c1 .tube").count());
        page.locator("#spots button[aria-label='Remove A']").click();
        assertEquals("Tube 2: B: clear", said(page, 2));
        assertFalse(page.isVisible("#column-target-s1"));
    }
}
