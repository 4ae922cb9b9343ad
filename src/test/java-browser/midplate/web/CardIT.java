package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pour card on paper, with the real advice: one page, nothing else of the sheet, and a guide in its true size. */
class CardIT extends OnPage {
    /** The card's own check: this line is measured before the guide is trusted. */
    private static final double CHECK_MM = 50;

    private Page openExample(ColorScheme scheme) {
        Page page = open(scheme, 1280, 900);
        answered(page);
        noDialogOfThePrinter(page);
        return page;
    }

    private static void noDialogOfThePrinter(Page page) {
        page.evaluate("window.print = () => { window.printedAs = document.documentElement.className; }");
    }

    private static PDDocument print(Page page, String paper) throws IOException {
        page.click("#print-" + paper);
        assertEquals("on-" + paper, page.evaluate("window.printedAs"));
        return Loader.loadPDF(page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)));
    }

    @ParameterizedTest
    @CsvSource({"a4, 210, 297, LIGHT", "letter, 215.9, 279.4, LIGHT", "a4, 210, 297, DARK"})
    void printsOnePageWithAGuideInTrueSize(String paper, double widthMm, double heightMm, ColorScheme scheme)
            throws IOException {
        Page page = openExample(scheme);
        try (PDDocument printed = print(page, paper)) {
            assertEquals(1, printed.getNumberOfPages());
            PDRectangle size = printed.getPage(0).getMediaBox();
            assertEquals(widthMm, size.getWidth() * 25.4 / 72, 0.5);
            assertEquals(heightMm, size.getHeight() * 25.4 / 72, 0.5);
            List<Double> lines = PrintedLines.lengthsOn(printed.getPage(0));
            List<Double> near =
                    lines.stream().filter(mm -> Math.abs(mm - CHECK_MM) < 5).toList();
            assertEquals(1, near.size(), "lines of about 50 mm: " + near);
            assertEquals(CHECK_MM, near.get(0), 0.2);
            assertTrue(lines.stream().anyMatch(mm -> Math.abs(mm - 70) < 0.2), "the side of the plate in " + lines);
            assertTrue(lines.stream().anyMatch(mm -> Math.abs(mm - 40) < 0.2), "the foot of the plate in " + lines);
        }
    }

    @Test
    void printsWhatIsPinnedToAHoodAndNothingElse() throws IOException {
        Page page = openExample(ColorScheme.LIGHT);
        String ratio = page.textContent("#ratio");
        String millilitres = page.textContent("#pour-card .volumes");
        try (PDDocument printed = print(page, "a4")) {
            String text = new PDFTextStripper().getText(printed).replaceAll("\\s+", " ");
            for (String part : List.of(
                    ratio,
                    millilitres,
                    "An invented example: no such plate was ever run.",
                    "50 mm: measure it before you trust this guide; print at 100 %.",
                    "safety data sheet",
                    "H225 Highly flammable liquid and vapour.",
                    "stop 62 mm",
                    "Plate 1, hexane : ethyl acetate, 9 : 1: A at Rf 0.07",
                    "Date",
                    "Name")) {
                assertTrue(text.contains(part), part + " in " + text);
            }
            for (String other : List.of("Add a spot", "Clear the sheet", "Print, A4", "To scale only on paper")) {
                assertFalse(text.contains(other), other + " in " + text);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"a4", "letter"})
    void aPlateOfTenByTenCentimetresStillFitsOnePage(String paper) throws IOException {
        Page page = openWith(100, 100, 3);
        try (PDDocument printed = print(page, paper)) {
            assertEquals(1, printed.getNumberOfPages());
            List<Double> lines = PrintedLines.lengthsOn(printed.getPage(0));
            assertTrue(lines.stream().anyMatch(mm -> Math.abs(mm - CHECK_MM) < 0.2), "in " + lines);
            assertTrue(lines.stream().filter(mm -> Math.abs(mm - 100) < 0.2).count() >= 4, "four sides in " + lines);
        }
    }

    @Test
    void aPlateLargerThanThePageIsSaidSo() {
        Page page = openWith(200, 200, 3);
        assertEquals(0, page.locator("#pour-card svg").count());
        assertTrue(page.textContent("#guide").contains("200 by 200 mm is larger than the page"));
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 2", "5, 5"})
    void theGuideHasALaneForEachOfThePlateAndAtLeastTwo(int lanes, int drawn) {
        Page page = openWith(70, 40, lanes);
        List<String> words = page.locator("#guide svg text").allTextContents();
        assertEquals(
                drawn, words.stream().filter(word -> word.matches("[0-9]")).count(), "numbers of lanes in " + words);
    }

    /** The example on another plate, as if it had been left so. */
    private Page openWith(int heightMm, int widthMm, int lanes) {
        Page page = open();
        page.evaluate("""
                async ([height, width, lanes]) => {
                  const { inventedExample } = await import("/sheet/sheet.js");
                  const sheet = inventedExample();
                  const plate = sheet.plates[0];
                  Object.assign(plate, { heightMm: `${height}`, widthMm: `${width}` });
                  const empty = Array.from({ length: lanes }, (_, i) => ({ id: `l${i + 10}`, readings: [] }));
                  plate.lanes = [plate.lanes[0], ...empty].slice(0, lanes);
                  localStorage.setItem("midplate-sheet", JSON.stringify({ sheet, before: [] }));
                }""", List.of(heightMm, widthMm, lanes));
        page.reload();
        ready(page);
        answered(page);
        noDialogOfThePrinter(page);
        return page;
    }
}
