package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plate that develops in the browser: played, paused, scrubbed by keyboard, stepped where nothing is to move. */
class ClimbIT extends OnLesson {
    private static Page climb(Page page) {
        part(page, "climb");
        page.waitForSelector("#climb-stage[data-current=yes]");
        return page;
    }

    private static String cell(Page page, int row, int column) {
        return page.textContent("#climb-row-" + row + " td:nth-of-type(" + column + ")");
    }

    private static double front(Page page) {
        return Double.parseDouble(page.getAttribute("#climb-wet", "height"));
    }

    @Test
    void playsAndPausesBySpace() {
        Page page = climb(openLesson());
        assertEquals(5, front(page), 1e-6, "the surface of the eluent");
        page.focus("#climb-play");
        page.keyboard().press("Space");
        page.waitForFunction("() => Number(document.getElementById('climb-wet').getAttribute('height')) > 12");
        page.keyboard().press("Space");
        page.waitForFunction("() => document.getElementById('climb-play').textContent === 'Play'");
        double paused = front(page);
        assertTrue(paused > 12 && paused < 62, () -> "front " + paused);
        assertEquals("climb-play", focused(page));
    }

    @Test
    void theScrubGoesByKeyboardAndTheRfStays() {
        Page page = climb(openLesson());
        assertEquals("not yet", cell(page, 0, 3));
        page.focus("#climb-time");
        page.keyboard().press("End");
        assertEquals(62, front(page), 1e-3);
        String end = cell(page, 1, 3);
        assertTrue(page.getAttribute("#climb-time", "aria-valuetext").contains("min"));
        for (int i = 0; i < 50; i++) {
            page.keyboard().press("ArrowLeft");
        }
        assertTrue(front(page) < 60);
        assertEquals(end, cell(page, 1, 3), "Rf is the same at every moment");
        page.keyboard().press("Home");
        assertEquals("not yet", cell(page, 1, 3));
    }

    @Test
    void whereNothingIsToMoveItGoesInTenSteps() {
        context = browser.newContext(new Browser.NewContextOptions()
                .setReducedMotion(ReducedMotion.REDUCE)
                .setViewportSize(1280, 900)
                .setLocale("en-GB"));
        Page page = another();
        page.navigate(server.address() + "lesson.html");
        ready(page);
        climb(page);
        assertEquals("Next step", page.textContent("#climb-play"));
        assertEquals(0, page.locator("#climb-speed").count());
        for (int step = 1; step <= 10; step++) {
            page.click("#climb-play");
            assertEquals(String.valueOf(20 * step), page.inputValue("#climb-time"));
        }
        assertEquals(62, front(page), 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 360", "DARK, 360"})
    void isCleanAndSpillsNowhere(ColorScheme scheme, int width) {
        Page page = climb(openLesson(scheme, width, 800));
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
    }
}
