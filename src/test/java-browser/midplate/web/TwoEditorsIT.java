package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two browsers, two windows, and a server that comes and goes: who edits one study is told, and both versions are kept. */
class TwoEditorsIT extends OnStudies {
    private static final String TAKEN_OVER = "Changed in another window of this browser. Undo takes that back.";

    @Test
    void twoBrowsersThatEditOneStudyAreToldAndBothVersionsAreKept() {
        Page one = openEmpty();
        fillAndSave(one, "#title", "Shared");
        String shared = idOf(one);
        Page other = otherBrowser(one.url());
        fillAndSave(one, "#spot-s1", "of the first");
        other.fill("#eluent-p1", "6 : 1");
        other.waitForSelector("#both-other");
        kept(other, "saved");
        String second = idOf(other);
        assertNotEquals(shared, second);
        assertEquals("Shared (second version)", value(other, "title"));
        assertEquals("6 : 1", value(other, "eluent-p1"), "one's own work stays on the sheet");
        assertClean(other);
        other.click("#both-other");
        assertThat(other.locator("#spot-s1")).hasValue("of the first");
        assertEquals("", value(other, "eluent-p1"));
        other.click("#both-other");
        assertThat(other.locator("#eluent-p1")).hasValue("6 : 1");
        other.click("#both-seen");
        assertEquals(0, other.locator("#both-other").count());
        fillAndSave(one, "#spot-s1", "of the first, going on");
        Page third = otherBrowser(server.address() + "#" + shared);
        assertEquals("of the first, going on", value(third, "spot-s1"));
        third.evaluate("id => { location.hash = id; }", second);
        assertThat(third.locator("#eluent-p1")).hasValue("6 : 1");
    }

    @Test
    void anUndoAfterASecondVersionWasKeptStaysInIt() {
        Page one = openEmpty();
        fillAndSave(one, "#title", "Undone");
        String shared = idOf(one);
        Page other = otherBrowser(one.url());
        fillAndSave(one, "#spot-s1", "meanwhile");
        other.fill("#spot-s1", "a step");
        other.fill("#eluent-p1", "6 : 1");
        other.waitForSelector("#both-other");
        String second = idOf(other);
        other.click("#undo");
        assertEquals("", value(other, "eluent-p1"));
        other.click("#undo");
        assertEquals("A", value(other, "spot-s1"));
        kept(other, "saved");
        assertEquals(second, idOf(other));
        assertEquals("meanwhile", value(otherBrowser(server.address() + "#" + shared), "spot-s1"));
    }

    @Test
    void twoWindowsOfOneBrowserAreOneEditor() {
        Page one = openEmpty();
        fillAndSave(one, "#title", "Two windows");
        Page other = another();
        other.navigate(one.url());
        ready(other);
        for (int i = 1; i <= 3; i++) {
            one.fill("#spot-s1", "name " + i);
            assertThat(other.locator("#spot-s1")).hasValue("name " + i);
            assertThat(other.locator("#study-told")).hasText(TAKEN_OVER);
            assertThat(one.locator("#study-told")).isHidden();
            other.fill("#eluent-p1", i + " : 1");
            assertThat(one.locator("#eluent-p1")).hasValue(i + " : 1");
            assertThat(one.locator("#study-told")).hasText(TAKEN_OVER);
            assertThat(other.locator("#study-told")).isHidden();
        }
        assertThat(one.locator("#spoken")).containsText(TAKEN_OVER);
        kept(one, "saved");
        kept(other, "saved");
        one.click("#undo");
        assertThat(one.locator("#study-told")).isHidden();
        assertThat(other.locator("#eluent-p1")).hasValue("2 : 1");
        one.click("#redo");
        assertThat(other.locator("#eluent-p1")).hasValue("3 : 1");
        assertEquals(
                0,
                one.locator("#both-other").count()
                        + other.locator("#both-other").count());
        Page third = otherBrowser(one.url());
        assertEquals("name 3", value(third, "spot-s1"));
        assertEquals("3 : 1", value(third, "eluent-p1"));
    }

    @Test
    void whatIsTypedWhileTheServerIsGoneIsSavedByItselfWhenItIsBack(@TempDir Path place) {
        StudyFolder first = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        PageServer gone =
                PageServer.of(Exchange.builtIn(), first, 0, Path.of("web")).start();
        int port = URI.create(gone.address()).getPort();
        furtherServers.add(gone.address());
        Page page = open();
        page.navigate(gone.address());
        ready(page);
        page.click("#clear-example");
        fillAndSave(page, "#title", "Outlives its server");
        gone.stop();
        first.close();
        page.fill("#spot-s1", "typed meanwhile");
        kept(page, "gone");
        assertThat(page.locator("#kept")).containsText("kept in this browser");
        assertThat(page.locator("#kept strong")).hasText("Not in the folder yet.");
        assertThat(page.locator("#kept .caution-sign")).isVisible();
        page.click("#clear");
        page.fill("#title", "Begun meanwhile");
        kept(page, "gone");
        StudyFolder again = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        PageServer back =
                PageServer.of(Exchange.builtIn(), again, port, Path.of("web")).start();
        kept(page, "saved");
        Page other = otherBrowser(back.address());
        openStudies(other);
        listed(other, "Outlives its server", "Begun meanwhile");
        other.getByText("Outlives its server").click();
        assertThat(other.locator("#spot-s1")).hasValue("typed meanwhile");
        back.stop();
        again.close();
    }
}
