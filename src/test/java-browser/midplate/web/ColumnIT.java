package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the next jar to what to pour on a column and what to keep. */
class ColumnIT extends OnColumn {
    /** What is mixed is this much more than what runs through. */
    private static final double SPARE = 1.1;

    /** What stands on the sheet must hang together, whatever is advised. */
    private static void assertPlanned(Page page, String massMg) {
        assertTrue(page.textContent("#plan-pours .step-ratio").matches("\\d+ : \\d+"), page.textContent("#plan-pours"));
        List<Double> mix = numbers(page.textContent("#plan-pours .step-mix"));
        List<Double> run = numbers(page.textContent("#plan-pours .step-run"));
        assertEquals(mix.get(0) + mix.get(1), run.get(1), 0.6, "both parts are the mixture");
        assertTrue(run.get(1) >= SPARE * run.get(0) - 0.6, run + ": a tenth more than runs through");
        List<Double> keep = numbers(page.textContent("#plan-cut"));
        List<Double> collect = numbers(page.locator("#plan-column li").nth(3).textContent());
        assertTrue(keep.get(0) <= keep.get(1) && keep.get(1) <= collect.get(0), keep + " of " + collect);
        double chance = Double.parseDouble(page.getAttribute("#plan-keep meter", "value"));
        assertTrue(chance > 0.01 && chance < 1, "chance " + chance);
        assertTrue(page.textContent("#plan-column").contains(massMg + " mg"));
        assertTrue(page.textContent("#plan-cautions").contains("safety data sheets"));
        for (Locator row : page.locator("#plan-bands tbody tr").all()) {
            for (int column = 1; column <= 3; column++) {
                List<Double> band = numbers(row.locator("td").nth(column).textContent());
                assertTrue(band.get(1) < band.get(0) && band.get(0) < band.get(2), row.textContent());
            }
        }
        String drawn = page.getAttribute("#column-drawing", "aria-label");
        assertTrue(drawn.contains("A leaves from") && drawn.contains("B leaves from"), drawn);
    }

    @Test
    void byMouseInThreePressesAndTheMass() {
        Page page = open();
        answered(page);
        page.click("#column-open");
        page.waitForSelector("#column-title");
        assertEquals("column-target-s1", focused(page), "the first entry that is empty");
        assertTrue(page.textContent("#column-wanting").contains("which spot"), "it says what it waits for");
        page.click("#column-target-s2");
        assertTrue(page.textContent("#column-wanting").contains("mg"));
        page.click("#column-mass");
        page.keyboard().type("250");
        planned(page);
        assertPlanned(page, "250");
        System.out.println("to a plan by mouse: 3 presses and 3 keys");
    }

    @Test
    void byKeyboardAlone() {
        Page page = open();
        answered(page);
        page.focus("#column-open");
        page.keyboard().press("Enter");
        page.waitForSelector("#column-title");
        int keys = 1;
        for (; keys < 10 && !focused(page).equals("column-target-s2"); keys++) {
            page.keyboard().press("Tab");
        }
        page.keyboard().press("Enter");
        page.keyboard().press("Tab");
        assertEquals("column-mass", focused(page));
        page.keyboard().type("250");
        planned(page);
        keys += 5;
        assertPlanned(page, "250");
        assertTrue(keys <= 12, keys + " keys");
        System.out.printf("to a plan by keyboard, from the button on: %d keys%n", keys);
    }

    @Test
    void whenToStopStandsAtThePourAndALoadTooLargeIsPlannedForOneRunOfSeveral() {
        Page page = open();
        openColumn(page);
        page.click("#column-target-s2");
        page.fill("#column-mass", "250");
        planned(page);
        assertThat(page.locator("#plan-stop")).containsText("Stop at about ");
        assertThat(page.locator("#plan-load")).hasText(Pattern.compile("^Load 250 mg, dissolved in .* ml\\.$"));
        page.selectOption("#column-bed", "4");
        assertThat(page.locator("#plan-load")).containsText(Pattern.compile("Run 1 of \\d+: \\d+ mg in .* ml\\."));
        assertThat(page.locator("#plan-of")).containsText("from 250 mg");
    }

    @Test
    void faultsStandAtTheirFieldsAndWhatWasTypedStays() {
        Page page = open();
        openColumn(page);
        page.click("#column-target-s2");
        page.fill("#column-mass", "0");
        page.waitForSelector("#column-mass-fault");
        page.fill("#column-mass", "viel");
        assertThat(page.locator("#column-mass-fault")).containsText("viel");
        page.selectOption("#column-bed", "glass");
        page.fill("#column-diameter", "3");
        page.waitForSelector("#column-diameter-fault");
        page.click("#column-further summary");
        page.selectOption("#column-elution", "own");
        page.fill("#eluent-column-0", "101 %");
        page.fill("#amount-column-0", "0");
        page.fill("#column-flow", "-1");
        page.click("#column-further summary");
        page.fill("#column-length", "9");
        page.waitForSelector("#amount-column-0-fault");
        for (String field :
                List.of("column-mass", "column-diameter", "column-length", "eluent-column-0", "column-flow")) {
            assertTrue(page.isVisible("#" + field + "-fault"), field + " has its fault in sight");
        }
        page.fill("#column-mass", "50");
        page.fill("#column-diameter", "20");
        page.fill("#column-length", "150");
        page.fill("#eluent-column-0", "6 : 1");
        page.fill("#amount-column-0", "200");
        page.fill("#column-flow", "");
        planned(page);
        assertEquals(0, page.locator("#column .fault").count());
        assertEquals("6 : 1", page.textContent("#plan-pours .step-ratio"));
        assertTrue(page.textContent("#plan-column").contains("20 mm wide"), page.textContent("#plan-column"));
    }

    private Page withEverythingSaid() {
        Page page = open();
        page.fill("#title", "Invented column");
        plan(page, "120,5");
        page.selectOption("#column-bed", "25");
        page.click("#column-loading-dry");
        page.click("#column-further summary");
        page.fill("#column-fraction", "15");
        page.selectOption("#column-elution", "own");
        page.waitForSelector("#eluent-column-0");
        page.fill("#eluent-column-0", "5 %");
        page.fill("#amount-column-0", "200");
        page.click("#add-step-column");
        assertEquals("eluent-column-1", focused(page));
        page.keyboard().type("4:1");
        page.keyboard().press("Tab");
        page.keyboard().type("30o");
        page.waitForSelector("#amount-column-1-fault");
        return page;
    }

    @Test
    void aReloadKeepsAllThatWasTypedAndTheFolderHasIt() {
        Page page = withEverythingSaid();
        kept(page, "saved");
        page.reload();
        ready(page);
        page.waitForSelector("#amount-column-1-fault");
        assertEquals("120,5".replace(",", "."), page.inputValue("#column-mass").replace(",", "."));
        assertEquals("25", page.inputValue("#column-bed"));
        assertEquals("true", page.getAttribute("#column-loading-dry", "aria-pressed"));
        assertEquals("15", page.inputValue("#column-fraction"));
        assertEquals("30o", page.inputValue("#amount-column-1"));
        Page other = otherBrowser(page.url());
        other.waitForSelector("#amount-column-1-fault");
        assertEquals("5 %", other.inputValue("#eluent-column-0"));
        assertEquals("30o", other.inputValue("#amount-column-1"));
        assertEquals("true", other.getAttribute("#column-target-s2", "aria-pressed"));
        page.fill("#amount-column-1", "300");
        planned(page);
        assertEquals(2, page.locator("#plan-pours li").count());
        assertTrue(page.textContent("#plan-column").contains("dried onto"));
        assertEquals(1, page.locator(".column-step").count(), "where the second eluent goes on");
    }

    @Test
    void everyStepCanBeUndone() {
        Page page = open();
        plan(page, "50");
        page.selectOption("#column-bed", "40");
        planned(page);
        assertTrue(page.textContent("#plan-column").contains("40 g cartridge"));
        page.click("#undo");
        assertEquals("advised", page.inputValue("#column-bed"));
        page.click("#undo");
        assertEquals("", page.inputValue("#column-mass"), "the letters of a number are one step");
        page.click("#redo");
        page.click("#redo");
        planned(page);
        assertEquals("40", page.inputValue("#column-bed"));
    }

    @Test
    void itClosesAndANewStudyHasNone() {
        Page page = open();
        plan(page, "50");
        page.click("#column-close");
        assertEquals("column-open", focused(page));
        assertFalse(page.isVisible("#column"));
        page.click("#column-open");
        assertEquals("50", page.inputValue("#column-mass"));
        page.click("#clear");
        answered(page);
        assertFalse(page.isVisible("#column"));
    }

    @Test
    void itsNumbersTellWhereTheyComeFrom() {
        Page page = open();
        plan(page, "50");
        List<Locator> asked = page.locator("#column [data-asked]").all();
        assertTrue(asked.size() > 8, asked.size() + " numbers");
        for (Locator number : asked) {
            number.click();
            page.locator("#origin .basis").first().waitFor();
            String told = page.textContent("#origin");
            assertFalse(told.contains("undefined") || told.contains("{"), told);
            page.keyboard().press("Escape");
        }
    }

    private static PDDocument print(Page page, String paper) throws IOException {
        // the class goes again once the printer has its page; here it must stay until the page is made
        page.evaluate("window.print = () => { window.printedAs = document.documentElement.className; }");
        page.click("#column-print-" + paper);
        String printed = String.valueOf(page.evaluate("window.printedAs"));
        assertEquals("on-" + paper + " of-column", printed);
        assertEquals("on-" + paper, page.evaluate("document.documentElement.className"), "the card prints as before");
        page.evaluate("name => { document.documentElement.className = name; }", printed);
        byte[] made = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        page.evaluate("document.documentElement.classList.remove('of-column')");
        return Loader.loadPDF(made);
    }

    @ParameterizedTest
    @CsvSource({"a4, LIGHT, 1280", "letter, DARK, 1280", "a4, LIGHT, 390"})
    void printsOnePage(String paper, ColorScheme scheme, int width) throws IOException {
        Page page = open(scheme, width, 900);
        plan(page, "50");
        String ratio = page.textContent("#plan-pours .step-ratio");
        String mix = page.textContent("#plan-pours .step-mix");
        String keep = page.textContent("#plan-cut");
        try (PDDocument printed = print(page, paper)) {
            assertEquals(1, printed.getNumberOfPages());
            String text = new PDFTextStripper().getText(printed).replaceAll("\\s+", " ");
            for (String part : List.of(
                    ratio,
                    mix,
                    keep,
                    "B from 50 mg",
                    "safety data sheets",
                    "invented example",
                    "Date",
                    "by hand",
                    "keep ")) {
                assertTrue(text.contains(part), part + " in " + text);
            }
            for (String other : List.of("Add a spot", "Print, A4", "Which spot do you want", "Why this", "Close")) {
                assertFalse(text.contains(other), other + " in " + text);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"a4", "letter"})
    void sixSpotsAndThreeEluentsStillFitOnePage(String paper) throws IOException {
        Page page = open();
        page.evaluate("""
                async () => {
                  const { inventedExample, addSpot } = await import("/sheet/sheet.js");
                  const { columnOf } = await import("/column/sheet.js");
                  const sheet = inventedExample();
                  for (let i = 2; i < 6; i++) addSpot(sheet);
                  const [plate] = sheet.plates;
                  plate.lanes[0].readings = [6, 16, 27, 36, 43, 47].map((mm, i) =>
                      ({ id: `r${i + 1}`, spots: [`s${i + 1}`], by: "mm", typed: `${mm + 5}` }));
                  plate.lanes.pop();
                  sheet.column = { ...columnOf(sheet), target: "s3", massMg: "200", elution: "own", fractionMl: "20",
                      steps: [["19:1", "500"], ["9:1", "500"], ["3:1", "500"]].map(([eluent, volumeMl]) => ({ eluent, volumeMl })) };
                  localStorage.setItem("midplate-sheet", JSON.stringify({ sheet, before: [] }));
                }""");
        page.reload();
        ready(page);
        planned(page);
        assertEquals(6, page.locator("#plan-bands tbody tr").count());
        try (PDDocument printed = print(page, paper)) {
            assertEquals(1, printed.getNumberOfPages());
        }
    }

    @Test
    void thePlanFollowsThePlates() {
        Page page = open();
        plan(page, "50");
        String before = page.textContent("#plan-bands");
        page.fill("#mm-r2", "25");
        answered(page);
        planned(page);
        assertFalse(before.equals(page.textContent("#plan-bands")));
        page.fill("#eluent-p1", "101");
        page.waitForSelector("#eluent-p1-fault");
        assertTrue(page.textContent("#column-standing").contains("cannot be taken"));
        assertTrue(page.isDisabled("#column-print-a4"), "what is no longer so is not printed");
        page.fill("#eluent-p1", "9 : 1");
        planned(page);
    }
}
