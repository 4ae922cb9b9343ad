package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import midplate.lesson.Slip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes wrong, on the page. */
class SlipsIT extends OnLesson {
    private static void told(Page page, String slip) {
        page.waitForSelector("#lesson-slips-now[data-standing=told][data-slip=" + slip + "]");
    }

    private static void shown(Page page) {
        if (page.locator("#lesson-slips-show").isVisible()) {
            page.focus("#lesson-slips-show");
            page.keyboard().press("Enter");
        }
        page.waitForSelector("#lesson-slips-told");
    }

    private Page openSlips(ColorScheme scheme, int width) {
        Page page = openLesson(scheme, width, 900);
        part(page, "slips");
        told(page, "from-edge");
        return page;
    }

    @Test
    void everySlipIsChosenByKeyboardAndSaysItsOwnNumbers() {
        Page page = openSlips(ColorScheme.LIGHT, 1280);
        Set<String> said = new HashSet<>();
        for (Slip slip : Slip.values()) {
            page.focus("#lesson-slips-" + slip.id());
            page.keyboard().press("Enter");
            told(page, slip.id());
            assertEquals("lesson-slips-" + slip.id(), focused(page));
            assertThat(page.locator("#lesson-slips-told")).hasCount(0);
            shown(page);
            assertEquals("lesson-slips-told", focused(page));
            assertTrue(said.add(page.locator("#lesson-slips-does").innerText()
                    + page.locator("#lesson-slips-table").innerText()
                    + page.locator("#lesson-slips-do").innerText()));
            assertEquals(
                    slip.kind() == Slip.Kind.ILLUSTRATION,
                    page.locator("#lesson-slips-illustration").isVisible());
        }
    }

    @Test
    void aGuessComesBeforeTheNumbersAndTheSizeChangesThem() {
        Page page = openSlips(ColorScheme.LIGHT, 1280);
        page.focus("#lesson-slips-guess-strong");
        page.keyboard().press("Enter");
        assertThat(page.locator("#lesson-slips-guessed")).containsText("Too strong");
        assertThat(page.locator("#lesson-slips-errs")).containsText("too weak");
        // a spot at 10 + r*52 mm is noted at (10 + 52 r)/62: read from the table itself
        String[] row =
                page.locator("#lesson-slips-table tbody tr").nth(2).innerText().split("[=\\t÷]");
        double right = Double.parseDouble(row[3].strip());
        double seen = Double.parseDouble(row[6].strip());
        assertEquals((10 + 52 * right) / 62, seen, 0.011);
        String before = page.locator("#lesson-slips-table").innerText();
        page.focus("#lesson-slips-size");
        page.keyboard().press("Home");
        assertThat(page.locator("#lesson-slips-errs[data-errs=same]")).isVisible();
        assertNotEquals(before, page.locator("#lesson-slips-table").innerText());
        assertEquals("lesson-slips-size", focused(page));
        page.focus("#lesson-slips-again");
        page.keyboard().press("Enter");
        assertThat(page.locator("#lesson-slips-guess")).isVisible();
    }

    @Test
    void aReloadKeepsTheSlip() {
        Page page = openSlips(ColorScheme.LIGHT, 1280);
        page.click("#lesson-slips-front-to-top");
        told(page, "front-to-top");
        page.reload();
        ready(page);
        told(page, "front-to-top");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 360"})
    void isCleanAndFits(ColorScheme scheme, int width) {
        Page page = openSlips(scheme, width);
        for (String slip : List.of("from-edge", "in-the-pool", "ink-line")) {
            page.click("#lesson-slips-" + slip);
            told(page, slip);
            assertClean(page);
            shown(page);
            assertClean(page);
            assertEquals(width, page.evaluate("document.documentElement.scrollWidth"));
        }
    }
}
