package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a column that was run says of the forecast, whatever else is wrong with it, and in either language. */
class RunJudgedIT extends OnColumn {
    /** B in tubes 5 and 6, nothing in the others. */
    private static void runWithB(Page page) {
        run(page);
        tube(page, 5).click();
        page.keyboard().press("b");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("=");
        page.click("#others-c1");
        pooled(page);
    }

    @Test
    void aFlaskThatCannotBeTakesNothingButItselfOut() {
        Page page = open();
        runWithB(page);
        page.waitForSelector("#column-earlier");
        page.click("#add-flask-c1");
        page.fill("#tare-f1", "25.2");
        page.fill("#gross-f1", "25.1");
        page.waitForSelector("#gross-f1-fault");
        assertTrue(pools(page).get(1).startsWith("Tubes 5–6: B, pure"), "the pools stay");
        planned(page);
        assertEquals(1, page.locator("#column-earlier").count(), "the tubes count whatever the flask says");
        assertThat(page.locator("#flasks-open-c1")).containsText("none is wrong");
        page.click("#add-flask-c1");
        page.fill("#first-f2", "6");
        page.fill("#last-f2", "6");
        page.fill("#tare-f2", "2x");
        page.fill("#gross-f2", "30");
        page.waitForSelector("#tare-f2-fault");
        assertTrue(pools(page).get(1).startsWith("Tubes 5–6: B, pure"), "with two faulty flasks as well");
        page.selectOption("#language", "de");
        assertThat(page.locator("#pool-list-c1 .pool-reason").nth(1)).containsText("Röhrchen");
        page.fill("#gross-f1", "25.3");
        page.click("#unflask-f2");
        page.waitForSelector("#balance-c1");
        assertEquals(0, page.locator("#flasks-c1 .fault").count());
    }

    @Test
    void underARunStandsWhatWasExpectedSeenAndIsExpectedNow() {
        Page page = open();
        runWithB(page);
        Locator observed = page.locator("#observed-c1 li").first();
        assertThat(observed).containsText("expected at");
        List<Double> told = numbers(observed.textContent());
        double expected = told.get(3);
        double seen = told.get(4);
        double now = told.get(5);
        assertEquals((told.get(0) + told.get(1)) / 2, seen, 1, observed.textContent());
        assertTrue(Math.min(expected, seen) <= now && now <= Math.max(expected, seen), "between both: " + told);
        assertTrue(Math.abs(now - seen) < Math.abs(expected - seen), "nearer to what was seen: " + told);
        page.selectOption("#language", "de");
        assertThat(observed).containsText("vor diesem Lauf bei");
    }

    @Test
    void aPhoneHasWideButtonsAndIsToldNothingOfKeys() {
        Page page = open(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        run(page);
        for (Locator button :
                page.locator("#column .chips > button, #strip-c1 .tube").all()) {
            assertTrue(button.boundingBox().width >= 44, button.textContent());
            assertTrue(button.boundingBox().height >= 44, button.textContent());
        }
        assertFalse(page.innerText("#strip-how-c1").contains("Keys:"), page.innerText("#strip-how-c1"));
    }

    @Test
    void aKeyboardIsToldItsKeys() {
        Page page = open();
        run(page);
        assertTrue(page.innerText("#strip-how-c1").contains("Keys:"));
        assertTrue(IntStream.range(0, 2)
                .allMatch(i -> page.locator("#palette-spots-c1 kbd").nth(i).isVisible()));
    }
}
