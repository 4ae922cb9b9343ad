package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.Test;

/** Going from one study to another: nothing of the one before is taken for the next, and what cannot be had is told by its name. */
class AnotherStudyIT extends OnStudies {
    /** Two studies: one that is answered, and one, on the sheet, whose plate cannot be taken. @return the id of the first */
    private String withOneRefused(Page page) {
        page.fill("#eluent-p1", "9 : 1");
        read(page, "0.3");
        answered(page);
        fillAndSave(page, "#title", "Is answered");
        String first = idOf(page);
        page.click("#clear");
        page.fill("#eluent-p1", "nine to one");
        read(page, "0.3");
        fillAndSave(page, "#title", "Is refused");
        page.waitForSelector("html[data-standing=refused]");
        return first;
    }

    private static void read(Page page, String rf) {
        page.click("#add-l1");
        page.keyboard().type(rf);
        page.keyboard().press("Enter");
    }

    private static void go(Page page, String id, String title) {
        page.evaluate("id => { location.hash = id; }", id);
        assertThat(page.locator("#title")).hasValue(title);
    }

    private static void assertNoAnswer(Page page) {
        assertEquals(0, page.locator("#ratio").count(), "no ratio of another study");
        assertEquals(0, page.locator("#run-this").count());
        assertEquals(0, page.locator("#pour-card").count(), "nothing to pour");
        assertEquals(0, page.locator("#in-reach").count());
        assertEquals(0, page.locator("#reasons").count());
    }

    @Test
    void theAnswerToOneNeverStandsBesideAnotherThatIsRefusedOrNotAnswered() {
        Page page = openEmpty();
        String first = withOneRefused(page);
        assertNoAnswer(page);
        String refused = idOf(page);
        go(page, first, "Is answered");
        answered(page);
        assertTrue(page.isVisible("#ratio"));
        go(page, refused, "Is refused");
        assertNoAnswer(page);
        page.waitForSelector("html[data-standing=refused]");
        assertNoAnswer(page);
        assertThat(page.locator("#eluent-p1-fault")).containsText("nine to one");
        page.route("**/api/advice", Route::abort);
        go(page, first, "Is answered");
        page.waitForSelector("html[data-standing=unreachable]");
        assertNoAnswer(page);
        assertThat(page.locator("#jar")).containsText("does not answer");
    }

    @Test
    void anAnswerThatComesBeforeTheWordsWaitsForThem() {
        Page page = openEmpty();
        withOneRefused(page);
        Page other = otherBrowser();
        other.route("**/api/texts", route -> {
            try {
                Thread.sleep(1500);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            route.resume();
        });
        other.navigate(page.url());
        ready(other);
        other.waitForSelector("html[data-standing=refused]");
        assertThat(other.locator("#eluent-p1-fault")).containsText("nine to one");
    }

    @Test
    void aStudyThatCannotBeOpenedIsNamedAndTheListSaysThatItIsOld() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Cannot be had");
        String id = idOf(page);
        Page other = otherBrowser(server.address());
        openStudies(other);
        other.waitForSelector("#open-" + id);
        other.route("**/api/studies**", Route::abort);
        other.click("#open-" + id);
        assertThat(other.locator("#study-told")).containsText("Cannot be had");
        assertThat(other.locator("#study-told")).containsText("does not answer");
        assertThat(other.locator("#studies-said")).containsText("does not answer");
        other.click("#unknown-seen");
        other.click("#studies-close");
        other.click("#studies-open");
        assertThat(other.locator("#studies-said")).containsText("does not answer");
        other.unroute("**/api/studies**");
        assertThat(other.locator("#studies-said")).not().containsText("does not answer");
        other.click("#open-" + id);
        assertThat(other.locator("#title")).hasValue("Cannot be had");
    }

    @Test
    void whatIsWrongInTheFolderCanBePutAside() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Beside a torn one");
        page.route(
                "**/api/studies?*",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody("{\"folder\": \"/f\", \"total\": 1, \"studies\": [], \"troubles\": "
                                + "[{\"file\": \"torn.json\", \"kind\": \"damaged\", \"text\": \"Torn.\"}]}")));
        page.reload();
        ready(page);
        page.click("#troubles-seen");
        assertEquals(0, page.locator("#study-told").count());
        page.reload();
        ready(page);
        page.waitForTimeout(1000);
        assertEquals(0, page.locator("#study-told").count(), "it stays aside");
    }

    @Test
    void whatAnotherBrowserSavedIsSeenWhenTheWindowIsGoneBackTo() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Seen on coming back");
        Page other = otherBrowser(page.url());
        fillAndSave(page, "#spot-s1", "newer");
        other.waitForTimeout(1100);
        other.evaluate("window.dispatchEvent(new Event('focus'))");
        assertThat(other.locator("#spot-s1")).hasValue("newer");
        assertThat(other.locator("#study-told")).containsText("changed elsewhere");
    }
}
