package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The list of studies: found, opened, renamed, copied, put away and taken out, with the keyboard alone. */
class StudiesIT extends OnStudies {
    /** Goes on with Tab until an element with such an id has the focus. */
    private static void tabTo(Page page, String id) {
        for (int i = 0; i < 60; i++) {
            if (focused(page).startsWith(id)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab never leads to " + id);
    }

    private static void press(Page page, String id) {
        tabTo(page, id);
        page.keyboard().press("Enter");
    }

    /** Goes to a study in the list and unfolds what can be done with it. */
    private static void unfold(Page page, String id) {
        tabTo(page, "open-" + id);
        page.keyboard().press("Tab");
        if (!(Boolean) page.evaluate("id => document.getElementById('with-' + id).open", id)) {
            page.keyboard().press("Enter");
        }
    }

    private static void unfoldBySight(Page page, String id) {
        page.evaluate("id => { document.getElementById('with-' + id).open = true; }", id);
    }

    /** Two studies of a name, one after the other; the second is on the sheet. */
    private Page withTwo(String name) {
        Page page = openEmpty();
        fillAndSave(page, "#title", name + " one");
        page.click("#clear");
        fillAndSave(page, "#title", name + " two");
        return page;
    }

    private static void find(Page page, String text) {
        page.focus("#studies-find");
        page.keyboard().press("Control+a");
        page.keyboard().type(text);
    }

    @Test
    void searchesOpensRenamesCopiesArchivesAndRestoresByKeyboardAlone() {
        Page page = withTwo("Keys");
        String two = idOf(page);
        page.focus("#title");
        press(page, "studies-open");
        page.waitForFunction("() => document.activeElement.id === 'studies-find'");
        page.keyboard().type("keys one");
        listed(page, "Keys one");
        page.keyboard().press("Enter");
        assertTrue(focused(page).startsWith("open-"), focused(page));
        String one = focused(page).substring("open-".length());
        unfold(page, one);
        press(page, "rename-" + one);
        page.waitForFunction("id => document.activeElement.id === 'name-' + id", one);
        page.keyboard().press("Control+a");
        page.keyboard().type("Keys renamed");
        page.keyboard().press("Enter");
        assertThat(page.locator("#studies-said")).containsText("Keys renamed");
        find(page, "keys");
        listed(page, "Keys renamed", "Keys two");
        unfold(page, one);
        press(page, "copy-" + one);
        listed(page, "Keys renamed", "Keys renamed (copy)", "Keys two");
        press(page, "archive-" + one);
        listed(page, "Keys renamed (copy)", "Keys two");
        assertThat(page.locator("#studies-said")).containsText("archived");
        assertNotEquals("", focused(page), "the focus has a place");
        page.focus("#studies-find");
        press(page, "which-archived");
        listed(page, "Keys renamed");
        unfold(page, one);
        press(page, "restore-" + one);
        listed(page);
        page.focus("#studies-find");
        press(page, "which-at-hand");
        listed(page, "Keys renamed", "Keys renamed (copy)", "Keys two");
        press(page, "open-" + one);
        assertThat(page.locator("#title")).hasValue("Keys renamed");
        assertEquals(one, idOf(page));
        assertEquals(0, page.locator("#studies-list").count());
        assertNotEquals(two, idOf(page));
        page.waitForFunction("() => document.activeElement.id === 'title'");
    }

    @Test
    void whereArchivingOrRestoringLeavesNoRowTheFocusGoesToTheSearchAndOnlyTheDeedIsTold() {
        Page page = openEmpty();
        fillAndSave(page, "#title", "Lonely row");
        String id = idOf(page);
        page.click("#clear");
        openStudies(page);
        for (String deed : new String[] {"archive", "restore"}) {
            find(page, "lonely row");
            listed(page, "Lonely row");
            unfold(page, id);
            press(page, deed + "-" + id);
            listed(page);
            page.waitForFunction("() => document.activeElement.id === 'studies-find'");
            assertThat(page.locator("#studies-said")).containsText("Lonely row");
            assertThat(page.locator("#studies-said")).not().containsText("Nothing");
            page.click("#which-archived");
        }
    }

    @Test
    void escapeClosesTheListAndGivesTheFocusBack() {
        Page page = open();
        openStudies(page);
        page.waitForFunction("() => document.activeElement.id === 'studies-find'");
        page.keyboard().press("Escape");
        assertEquals("studies-open", focused(page));
        assertTrue(page.locator("#studies").isHidden());
    }

    @Test
    void whatIsRenamedOrArchivedWhileOnTheSheetIsSeenThere() {
        Page page = withTwo("Shown");
        String id = idOf(page);
        openStudies(page);
        find(page, "shown two");
        listed(page, "Shown two");
        unfoldBySight(page, id);
        page.click("#rename-" + id);
        page.fill("#name-" + id, "Shown renamed");
        page.click("#name-keep-" + id);
        assertThat(page.locator("#title")).hasValue("Shown renamed");
        find(page, "shown renamed");
        listed(page, "Shown renamed");
        unfoldBySight(page, id);
        page.click("#archive-" + id);
        assertThat(page.locator("#study-told")).containsText("archived");
        fillAndSave(page, "#spot-s1", "changed while archived");
        page.click("#restore");
        kept(page, "saved");
        assertEquals(0, page.locator("#study-told").count());
        find(page, "shown renamed");
        listed(page, "Shown renamed");
    }

    @Test
    void aStudyTakenOutAndBroughtInAgainIsEqual(@org.junit.jupiter.api.io.TempDir Path place) {
        Page page = openEmpty();
        page.fill("#title", "Out and in");
        page.fill("#eluent-p1", "9 : 1");
        page.click("#add-l1");
        page.keyboard().type("0.25");
        page.keyboard().press("Enter");
        answered(page);
        page.click("#notes-fold > summary");
        fillAndSave(page, "#notes", "Look again.\nUnder the lamp.");
        String first = idOf(page);
        String before = contents(page, first);
        openStudies(page);
        find(page, "out and in");
        listed(page, "Out and in");
        unfoldBySight(page, first);
        Download taken = page.waitForDownload(() -> page.click("#json-" + first));
        Path file = place.resolve(taken.suggestedFilename());
        assertEquals("Out-and-in-" + first + ".json", taken.suggestedFilename());
        taken.saveAs(file);
        page.setInputFiles("#bring-file", file);
        page.waitForSelector("#preview-study");
        assertThat(page.locator("#preview-study")).containsText("Out and in");
        assertEquals("preview-title", focused(page));
        page.click("#bring-new");
        assertThat(page.locator("#title")).hasValue("Out and in");
        page.waitForFunction("id => location.hash.length > 1 && location.hash !== '#' + id", first);
        kept(page, "saved");
        assertEquals(before, contents(page, idOf(page)));
        assertEquals(before, contents(page, first), "the first is as it was");
    }
}
