package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** From an empty sheet to the next jar, for two spots, by each hand: every press, tap and key is counted. */
class MainJobIT extends OnPage {
    private static final int MOST = 20;
    private static final double WIDTH_MM = 40;
    private static final double HEIGHT_MM = 70;

    private int counted;

    private static final Pattern RATIO = Pattern.compile("(\\d+) : (\\d+)");

    /** The advice for two spots low on a plate of 9 : 1: more of the stronger solvent, and a chance between 0 and 1. */
    private static void assertAdvised(Page page) {
        answered(page);
        String ratio = page.textContent("#ratio");
        Matcher parts = RATIO.matcher(ratio);
        assertTrue(parts.matches(), ratio);
        double weak = Double.parseDouble(parts.group(1));
        double strong = Double.parseDouble(parts.group(2));
        double percent = 100 * strong / (weak + strong);
        assertTrue(percent > 20 && percent < 60, "two spots at the start line at 10 % want more: " + percent);
        double chance = Double.parseDouble(page.getAttribute("#chance meter", "value"));
        assertTrue(chance > 0.3 && chance < 1, "chance " + chance);
        assertTrue(page.textContent("#pour").contains("ml hexane"));
        assertTrue(page.textContent("#jar").contains("safety data sheet"));
        assertEquals(2, page.locator("#next li").count(), "both spots are foretold");
    }

    private static BoundingBox layer(Page page) {
        page.locator("#layer-p1").scrollIntoViewIfNeeded();
        return page.locator("#layer-p1 .backing").boundingBox();
    }

    private void tap(Page page, double fromLeftMm, double fromBelowMm) {
        BoundingBox box = layer(page);
        double pixelsPerMm = box.width / WIDTH_MM;
        page.touchscreen().tap(box.x + fromLeftMm * pixelsPerMm, box.y + (HEIGHT_MM - fromBelowMm) * pixelsPerMm);
        counted++;
    }

    private void tap(Locator locator) {
        locator.tap();
        counted++;
    }

    private void click(Page page, double fromLeftMm, double fromBelowMm) {
        BoundingBox box = layer(page);
        double pixelsPerMm = box.width / WIDTH_MM;
        page.mouse().click(box.x + fromLeftMm * pixelsPerMm, box.y + (HEIGHT_MM - fromBelowMm) * pixelsPerMm);
        counted++;
    }

    private void keys(Page page, String typed) {
        page.keyboard().type(typed);
        counted += typed.length();
    }

    private void key(Page page, String name) {
        page.keyboard().press(name);
        counted++;
    }

    @Test
    void byMouse() {
        Page page = open();
        page.click("#clear-example");
        counted++;
        page.locator("#plates")
                .getByText("9 : 1", new Locator.GetByTextOptions().setExact(true))
                .click();
        counted++;
        click(page, 20, 13);
        click(page, 20, 17.5);
        assertAdvised(page);
        assertTrue(counted <= MOST, counted + " presses");
        System.out.printf("by mouse: %d presses%n", counted);
    }

    @Test
    void byTouch() {
        Page page = open(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        tap(page.locator("#clear-example"));
        tap(page.locator("#plates").getByText("9 : 1", new Locator.GetByTextOptions().setExact(true)));
        tap(page, 20, 13);
        tap(page, 20, 18.5);
        assertAdvised(page);
        assertTrue(page.isVisible("#in-reach"), "the answer is in reach without scrolling");
        assertTrue(counted <= MOST, counted + " taps");
        System.out.printf("by touch: %d taps%n", counted);
    }

    @Test
    void byKeyboardAlone() {
        Page page = open();
        for (int i = 0; i < MOST && !focused(page).equals("clear-example"); i++) {
            key(page, "Tab");
        }
        assertEquals("clear-example", focused(page));
        key(page, "Enter");
        keys(page, "9:1");
        key(page, "Enter");
        keys(page, ".06");
        key(page, "Enter");
        keys(page, ".14");
        key(page, "Enter");
        assertAdvised(page);
        assertTrue(counted <= MOST, counted + " keys");
        System.out.printf("by keyboard: %d keys%n", counted);
    }

    /** The second plate: nobody knows which spot is which; the page guesses, and is corrected. */
    @Test
    void aSecondPlateIsMatchedToTheFirstAndTheGuessCanBeCorrected() {
        Page page = openEmpty();
        keys(page, "9:1");
        key(page, "Enter");
        keys(page, ".06");
        key(page, "Enter");
        keys(page, ".14");
        key(page, "Enter");
        answered(page);
        page.click("#run-this");
        answered(page);
        assertEquals(page.textContent("#ratio"), page.inputValue("#eluent-p2"));
        page.focus("#add-l2");
        keys(page, ".30");
        key(page, "Enter");
        keys(page, ".52");
        key(page, "Enter");
        answered(page);
        assertEquals(2, page.locator("#spots li").count(), "no third compound");
        assertTrue(page.textContent("#reading-r3").contains("A"), page.textContent("#reading-r3"));
        assertTrue(page.textContent("#reading-r4").contains("B"), page.textContent("#reading-r4"));
        page.selectOption("#which-r3", "s2");
        page.selectOption("#which-r4", "s1");
        answered(page);
        assertTrue(page.textContent("#next").contains("A"));
        page.click("#undo");
        page.click("#undo");
        answered(page);
        assertEquals("", page.inputValue("#which-r3"), "not sure again");
    }
}
