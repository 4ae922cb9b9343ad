package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The study on the page, the list of all, a file that is brought in, and what came of advice: at every width, in both languages. */
class StudyViewsIT extends OnStudies {
    private static final String LONG = "Rearrangement of the crude 4-methoxybenzyl-ester-and-more-"
            + "withoutanyplacetobreakthelineinawordaslongasthis";

    private static final String RUNS = """
            Platte;Laufmittel;Fleck;Rf;Notiz
            1;9 : 1;A;0,12;x
            1;9 : 1;B;1,9;y
            """;

    /** All of it at once: a named study with notes and a scored advice, the list unfolded, a table looked at. */
    private Page withAll(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        page.click("#clear-example");
        page.fill("#title", LONG);
        page.fill("#eluent-p1", "19 : 1");
        page.click("#add-l1");
        page.keyboard().type("0.12");
        page.keyboard().press("Enter");
        answered(page);
        kept(page, "saved");
        page.click("#run-this");
        page.keyboard().type("0.5");
        page.keyboard().press("Enter");
        answered(page);
        page.click("#notes-fold > summary");
        fillAndSave(page, "#notes", LONG);
        page.click("#advised > summary");
        page.waitForSelector("#laboratory");
        openStudies(page);
        page.waitForSelector("#open-" + idOf(page));
        bringIn(page);
        ViewsIT.unfold(page);
        return page;
    }

    private static void bringIn(Page page) {
        page.setInputFiles(
                "#bring-file", new FilePayload("runs.csv", "text/csv", RUNS.getBytes(StandardCharsets.UTF_8)));
        page.waitForSelector("#bring-rejected");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnoughForAFinger(ColorScheme scheme, int width) {
        Page page = withAll(scheme, width);
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
        for (String part : List.of("#study ", "#studies ", "#advised ")) {
            assertEquals(List.of(), ViewsIT.tooSmall(page, part), part);
        }
        shoot(page, String.format(Locale.ROOT, "studies-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 599, 600, 699, 700, 768, 899, 900, 1024, 1440, 1920})
    void nothingSpillsAtAnyWidth(int width) {
        Page page = withAll(ColorScheme.LIGHT, width);
        ViewsIT.assertNothingSpills(page);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = withAll(ColorScheme.LIGHT, 1280);
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        answered(page);
        page.fill("#title", "Ganz deutsch");
        page.fill("#notes", "Auf Deutsch");
        kept(page, "saved");
        page.fill("#studies-find", "ganz");
        listed(page, "Ganz deutsch");
        bringIn(page);
        ViewsIT.unfold(page);
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        for (String about : List.of(".advised-row .asked", "#laboratory .asked")) {
            page.locator(about).first().click();
            page.locator("#origin .basis").first().waitFor();
            seen.addAll(ViewsIT.english(page));
            page.keyboard().press("Escape");
        }
        page.fill("#studies-find", "nichts davon");
        listed(page);
        seen.addAll(ViewsIT.english(page));
        page.click("#which-archived");
        assertThat(page.locator("#studies-said")).containsText("gefunden");
        page.click("#bring-leave");
        page.setInputFiles("#bring-file", new FilePayload("x.zip", "application/zip", new byte[] {'P', 'K', 3, 4, 0}));
        page.waitForSelector("#bring-said.fault");
        page.evaluate("location.hash = '20260101-aaaaaaaaaa'");
        page.waitForSelector("#study-told");
        seen.addAll(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
        assertTrue(page.textContent("#kept").contains("Gespeichert"), page.textContent("#kept"));
    }
}
