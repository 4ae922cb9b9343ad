package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A study is saved by itself, and nothing entered is lost: not by a reload, a lost answer, a refusal, or a second person. */
class StudyIT extends OnStudies {
    private static final Pattern SAVES = Pattern.compile(".*/api/studies/\\d{8}-.*");

    private static boolean saves(Route route) {
        return route.request().method().equals("PUT");
    }

    @Test
    void theUntouchedExampleAndAnUntouchedEmptySheetAreNotSaved() throws Exception {
        Page page = open();
        answered(page);
        long before = files();
        page.click("#clear-example");
        answered(page);
        page.waitForTimeout(1500);
        assertEquals("untouched", page.getAttribute("#kept", "data-kept"));
        assertEquals("", idOf(page), "no address to remember yet");
        assertEquals(before, files());
        assertTrue(page.textContent("#kept").contains("as soon as"));
    }

    private static long files() throws Exception {
        Path studies = place.resolve("studies");
        if (!Files.isDirectory(studies)) {
            return 0;
        }
        try (var files = Files.list(studies)) {
            return files.count();
        }
    }

    @Test
    void whatIsSavedSaysWhereAndWhenAndIsAFileOfThatName() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Two ketones from one flask");
        assertThat(page.locator("#kept")).containsText(place.toString());
        assertThat(page.locator("#kept")).containsText(idOf(page) + ".json");
        assertTrue(Files.exists(place.resolve("studies").resolve(idOf(page) + ".json")));
    }

    @Test
    void aReloadLosesNothingAndAnotherBrowserFindsAllByTheAddress() {
        Page page = openEmpty();
        page.fill("#title", "By its address");
        page.fill("#spot-s1", "ester");
        page.fill("#eluent-p1", "7 : 2");
        page.click("#notes-fold > summary");
        fillAndSave(page, "#notes", "first line\nsecond line");
        page.reload();
        ready(page);
        assertEquals("7 : 2", value(page, "eluent-p1"));
        assertEquals("first line\nsecond line", value(page, "notes"));
        page.click("#undo");
        assertEquals("", value(page, "notes"), "steps outlive a reload");
        page.click("#redo");
        Page other = otherBrowser(page.url());
        assertEquals("By its address", value(other, "title"));
        assertEquals("ester", value(other, "spot-s1"));
        assertEquals("7 : 2", value(other, "eluent-p1"));
        assertEquals("first line\nsecond line", value(other, "notes"));
    }

    @Test
    void whatWasTypedLastIsNotLostWhenThePageIsLeftAtOnce() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Left");
        String address = page.url();
        page.fill("#spot-s1", "typed and left");
        page.navigate("about:blank");
        Page other = otherBrowser(address);
        other.waitForFunction("""
                async id => (await (await fetch(`/api/studies/${id}`)).json()).study.spots[0].name === 'typed and left'
                """, idOf(other));
        page.navigate(address);
        ready(page);
        kept(page, "saved");
        assertEquals("typed and left", value(page, "spot-s1"));
        assertEquals(0, page.locator("#both-other").count(), "what arrived without an answer is no other's work");
    }

    @Test
    void anAddressThatNamesNoStudyIsTold() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Stays on the sheet");
        page.evaluate("location.hash = '20260101-aaaaaaaaaa'");
        assertThat(page.locator("#study-told")).containsText("20260101-aaaaaaaaaa");
        assertEquals("Stays on the sheet", value(page, "title"));
        assertNotEquals("20260101-aaaaaaaaaa", idOf(page));
        page.click("#unknown-seen");
        assertEquals(0, page.locator("#study-told").count());
    }

    @Test
    void leadingToAPartOfThePageKeepsTheAddressOfTheStudy() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Stays in the address");
        answered(page);
        String id = idOf(page);
        page.click("#to-card");
        page.waitForFunction("id => location.hash === '#' + id", id);
    }

    @Test
    void clearingBeginsAnotherStudyAndTheOneBeforeIsKept() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "The one before");
        String before = idOf(page);
        page.click("#clear");
        assertEquals("", value(page, "title"));
        fillAndSave(page, "#title", "The one after");
        assertNotEquals(before, idOf(page));
        page.goBack();
        assertThat(page.locator("#title")).hasValue("The one before");
        assertEquals(before, idOf(page));
        page.click("#clear");
        page.click("#undo");
        assertEquals("The one before", value(page, "title"), "clearing can be taken back");
        assertEquals(before, idOf(page));
    }

    @Test
    void theStudyBeforeIsNamedBesideANewOne() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Named beside the new one");
        page.click("#clear");
        assertThat(page.locator("#study-before")).containsText("Named beside the new one");
        page.fill("#title", "No longer untouched");
        assertEquals(0, page.locator("#study-before").count());
    }

    @Test
    void whoComesWithoutAnAddressIsToldOfTheStudiesKeptHere() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Kept here");
        Page other = otherBrowser(server.address());
        assertTrue(other.isVisible("#example-bar"), "the invented example");
        assertThat(other.locator("#studies-kept")).containsText("kept here");
        assertClean(other);
        other.click("#studies-kept-open");
        other.getByText("Kept here", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(other.locator("#title")).hasValue("Kept here");
        assertEquals(0, other.locator("#studies-kept").count());
    }

    @Test
    void aTabOrAControlSignInALineIsABlankAndIsSaved() {
        Page page = openEmpty();
        page.focus("#title");
        page.keyboard().insertText("one\ttwo\u0007three\u0085");
        assertEquals("one two three ", value(page, "title"));
        page.focus("#spot-s1");
        page.keyboard().press("Home");
        page.keyboard().insertText("x\ty");
        page.keyboard().insertText("z");
        assertEquals("x yzA", value(page, "spot-s1"), "the caret stays where it was");
        page.click("#notes-fold > summary");
        fillAndSave(page, "#notes", "first\n\tsecond");
        Page other = otherBrowser(page.url());
        assertEquals("one two three ", value(other, "title"));
        assertEquals("first\n\tsecond", value(other, "notes"), "notes have lines and tabs");
    }

    @Test
    void aTitleHoldsNoMoreThanCanBeSaved() {
        Page page = openEmpty();
        page.focus("#title");
        page.keyboard().insertText("t".repeat(400));
        assertEquals(300, value(page, "title").length());
        kept(page, "saved");
        Object second = page.evaluate("""
                async () => {
                    const { titleFrom } = await import('./line.js');
                    return titleFrom('t'.repeat(300), title => `${title} (second version)`);
                }
                """);
        assertEquals(300, String.valueOf(second).length());
        assertTrue(String.valueOf(second).endsWith("\u2026 (second version)"), String.valueOf(second));
    }

    @Test
    void anEluentThatCannotBeReadIsToldBesideItBeforeAnySpot() {
        Page page = openEmpty();
        page.fill("#eluent-p1", "20% EtOAc/Hex");
        assertThat(page.locator("#eluent-p1-fault")).containsText("20% EtOAc/Hex");
        assertClean(page);
        page.fill("#eluent-p1", "4 : 1");
        assertThat(page.locator("#eluent-p1-fault")).hasCount(0);
        kept(page, "saved");
    }

    @Test
    void aSaveWhoseAnswerWasLostIsNoConflict() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Answers get lost");
        AtomicInteger lost = new AtomicInteger();
        page.route(SAVES, route -> {
            if (saves(route) && lost.getAndIncrement() == 0) {
                route.fetch();
                route.abort();
            } else {
                route.resume();
            }
        });
        page.fill("#spot-s1", "arrived");
        kept(page, "gone");
        page.fill("#eluent-p1", "3 : 1");
        kept(page, "saved");
        assertTrue(lost.get() > 1);
        assertEquals(0, page.locator("#both-other").count());
        Page other = otherBrowser(page.url());
        assertEquals("arrived", value(other, "spot-s1"));
        assertEquals("3 : 1", value(other, "eluent-p1"));
    }

    @ParameterizedTest
    @CsvSource({
        "507, The disk is full.",
        "409, A newer Midplate wrote it.",
        "413, It is too large.",
        "422, It cannot be read."
    })
    void aRefusalIsToldWhereSavedStandsAndNothingIsLost(int status, String why) {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Refused " + status);
        page.route(SAVES, route -> {
            if (saves(route)) {
                route.fulfill(new Route.FulfillOptions()
                        .setStatus(status)
                        .setContentType("application/json")
                        .setBody("{\"errors\": [{\"field\": \"\", \"code\": \"x\", \"message\": \"" + why
                                + "\", \"todo\": \"Do this.\"}]}"));
            } else {
                route.resume();
            }
        });
        page.fill("#spot-s1", "not lost");
        kept(page, "refused");
        assertThat(page.locator("#kept")).containsText(why);
        assertThat(page.locator("#kept")).containsText("Do this.");
        assertClean(page);
        page.reload();
        ready(page);
        assertEquals("not lost", value(page, "spot-s1"));
        kept(page, "refused");
        page.unroute(SAVES);
        page.click("#save-again");
        kept(page, "saved");
        assertEquals("not lost", value(otherBrowser(page.url()), "spot-s1"));
    }

    @Test
    void whatThePageHasNoEntryForIsCarriedThrough() throws Exception {
        Page page = open();
        serveStudy(page);
        String id = "20261026-carriedxyz";
        put(page, id, "{}");
        String before = contents(page, id);
        page.evaluate("id => { location.hash = id; }", id);
        assertThat(page.locator("#title")).hasValue(Pattern.compile("Invented.*"));
        assertTrue(before.contains("invented lot 7") && before.contains("\"4o\""), before);
        String title = value(page, "title");
        fillAndSave(page, "#title", "Changed");
        fillAndSave(page, "#title", title);
        assertEquals(before, contents(page, id));
        assertFalse(page.locator("#both-other").isVisible());
    }

    /** The invented study of the tests, for the page to fetch. */
    private static void serveStudy(Page page) throws Exception {
        String study = Files.readString(Path.of("shared/studies/version-5.json"));
        page.route(
                "**/study-for-test.json",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(study)));
    }

    @Test
    void whatOneBrowserKeptBeforeThereWereStudiesBecomesOne() {
        Page page = openEmpty();
        page.evaluate("""
                async () => {
                    const { emptySheet } = await import('./sheet/sheet.js');
                    const { id, title, notes, created, archived, advices, ...former } = emptySheet();
                    former.plates[0].eluent = '11 : 2';
                    localStorage.clear();
                    localStorage.setItem('midplate-sheet', JSON.stringify({ sheet: former, before: [] }));
                }
                """);
        page.navigate("about:blank");
        page.navigate(server.address());
        ready(page);
        assertEquals("11 : 2", value(page, "eluent-p1"));
        kept(page, "saved");
        assertEquals(null, page.evaluate("localStorage.getItem('midplate-sheet')"));
        assertEquals("11 : 2", value(otherBrowser(page.url()), "eluent-p1"));
    }
}
