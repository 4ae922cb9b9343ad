package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are brought in: seen before they are kept, corrected where the program was wrong, refused in plain words. */
class BringInIT extends OnStudies {
    /** Runs as a German spreadsheet writes them; the second column of numbers is the Rf, whatever the first is called. */
    private static final String RUNS = """
            Platte;Laufmittel;Fleck;Rf;Rf (abgelesen)
            1;9 : 1;A;7,5;0,12
            1;9 : 1;B;8,5;0,2
            2;4 : 1;A;9,5;0,35
            2;4 : 1;B;9,9;unlesbar
            """;

    private static void bring(Page page, String name, String text) {
        page.setInputFiles("#bring-file", new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aTableWithADecimalCommaAndAWrongColumnIsCorrectedAndPutOnTheSheet() {
        Page page = openEmpty();
        page.fill("#eluent-p1", "19 : 1");
        page.click("#add-l1");
        page.keyboard().type("0.05");
        fillAndSave(page, "#title", "Gets runs");
        openStudies(page);
        bring(page, "runs.csv", RUNS);
        page.waitForSelector("#preview-title");
        assertEquals("comma", value(page, "bring-decimal"));
        assertEquals("rf", value(page, "column-3"));
        assertThat(page.locator("#bring-rejected")).containsText("7,5");
        assertEquals(0, page.locator("#bring-onto").count(), "an Rf of 7.5 is none: nothing can be taken");
        assertThat(page.locator("#bring-count")).containsText("Nothing");
        page.selectOption("#column-4", "rf");
        assertThat(page.locator("#preview-runs li")).hasCount(2);
        assertThat(page.locator("#bring-rejected")).containsText("unlesbar");
        assertThat(page.locator("#preview-runs li").last())
                .containsText("20 % ethyl acetate in hexane (the file says: 4 : 1)");
        assertEquals("", value(page, "column-3"), "one column for one meaning");
        assertClean(page);
        page.click("#bring-onto");
        assertThat(page.locator("#bring-said")).containsText("2 plates");
        assertThat(page.locator(".one-plate")).hasCount(3);
        assertEquals("19 : 1", value(page, "eluent-p1"), "what stood there stays");
        assertEquals("9 : 1", value(page, "eluent-p2"));
        assertEquals("4 : 1", value(page, "eluent-p3"));
        assertEquals(2, page.locator("#spots li").count(), "A was there already");
        assertThat(page.locator("#plate-p3 .rf input").first()).hasValue("0.35");
        kept(page, "saved");
        page.click("#undo");
        assertThat(page.locator(".one-plate")).hasCount(1);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void onAnUntouchedExampleOrEmptySheetRunsBeginAStudyAndAreNeverMixedWithWhatIsInvented(boolean example) {
        Page page = example ? open() : openEmpty();
        openStudies(page);
        bring(page, "real runs.csv", RUNS.replace("Rf;Rf (abgelesen)", "cm;Rf"));
        page.waitForSelector("#preview-title");
        page.click("#bring-onto");
        assertThat(page.locator("#title")).hasValue("real runs");
        assertThat(page.locator(".one-plate")).hasCount(2);
        assertTrue(page.isHidden("#example-bar"), "nothing invented is on the sheet");
        kept(page, "saved");
        assertEquals("own", page.evaluate("""
                async id => (await (await fetch(`/api/studies/${id}`)).json()).study.origin
                """, idOf(page)));
        page.click("#undo");
        assertEquals(example, page.isVisible("#example-bar"), "what stood there before is one step back");
        assertThat(page.locator(".one-plate")).hasCount(1);
    }

    @Test
    void runsCanBecomeAStudyOfTheirOwn() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Stays as it is");
        String before = idOf(page);
        openStudies(page);
        bring(page, "from the balance.csv", RUNS.replace("Rf;Rf (abgelesen)", "cm;Rf"));
        page.waitForSelector("#preview-title");
        page.click("#bring-new");
        assertThat(page.locator("#title")).hasValue("from the balance");
        assertThat(page.locator(".one-plate")).hasCount(2);
        kept(page, "saved");
        page.evaluate("id => { location.hash = id; }", before);
        assertThat(page.locator("#title")).hasValue("Stays as it is");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PK\u0003\u0004 packed", "{\"format\": \"midplate-study\", \"version\": 99}"})
    void whatCannotBeReadIsRefusedInWordsWithTheNameOfTheFile(String content) {
        Page page = openEmpty();
        openStudies(page);
        bring(page, "../../odd <b>name</b>.csv", content);
        assertThat(page.locator("#bring-said.fault")).containsText("odd <b>name</b>.csv");
        assertTrue(page.textContent("#bring-said").length() > 60, page.textContent("#bring-said"));
        assertEquals(0, page.locator("#bring-preview > *").count());
        assertClean(page);
    }

    @Test
    void runsTakenOutAndBroughtInAgainGiveTheSamePlates() {
        Page page = openEmpty();
        page.fill("#eluent-p1", "9 : 1");
        page.click("#add-l1");
        page.keyboard().type("0.25");
        fillAndSave(page, "#title", "Runs out and in");
        String plates = page.evaluate("""
                async id => JSON.stringify((await (await fetch(`/api/studies/${id}`)).json()).study.plates)
                """, idOf(page)).toString();
        String id = idOf(page);
        openStudies(page);
        page.waitForSelector("#with-" + id);
        page.click("#with-" + id + " > summary");
        var taken = page.waitForDownload(() -> page.click("#csv-" + id));
        page.setInputFiles("#bring-file", taken.path());
        page.waitForSelector("#preview-title");
        page.click("#bring-new");
        page.waitForFunction("id => location.hash.length > 1 && location.hash !== '#' + id", id);
        kept(page, "saved");
        assertEquals(plates, page.evaluate("""
                async id => JSON.stringify((await (await fetch(`/api/studies/${id}`)).json()).study.plates)
                """, idOf(page)).toString());
    }
}
