package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All checks of a study on one page of paper; what of a sample is pure, and how to see it. */
class ChecksPrintIT extends OnChecks {
    /** As the button does, for a window that prints cannot be tested. */
    private static PDDocument print(Page page, String paper) throws IOException {
        page.evaluate("paper => document.documentElement.classList.add('of-checks', `on-${paper}`)", paper);
        byte[] made = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        page.evaluate("paper => document.documentElement.classList.remove('of-checks', `on-${paper}`)", paper);
        return Loader.loadPDF(made);
    }

    private static void fill(Page page) {
        openChecks(page);
        page.fill("#reference-k1", "caffeine");
        threeLanes(page, 41, 41, 34);
        tap(page, "i1", 2, 3, 34);
        unfold(page, "pure");
        page.click("#pure-spot-s2");
        page.waitForSelector("#pure-answer:not(.old)");
        unfold(page, "seeing");
        page.waitForSelector("#see-answer:not(.old)");
        told(page);
    }

    @ParameterizedTest
    @CsvSource({"a4, LIGHT, 1280", "letter, DARK, 1280", "a4, LIGHT, 390", "letter, LIGHT, 390"})
    void printsOnePageWithEveryPartAndItsCautions(String paper, ColorScheme scheme, int width) throws IOException {
        Page page = open(scheme, width, 900);
        fill(page);
        String seen = page.textContent("#pure-answer .pure-seen");
        String caution = page.locator("#see-cautions li").first().textContent();
        try (PDDocument printed = print(page, paper)) {
            assertEquals(1, printed.getNumberOfPages());
            String text = new PDFTextStripper().getText(printed).replaceAll("\\s+", " ");
            for (String part : List.of(
                    "caffeine",
                    "Different",
                    "Is it the same?",
                    "Is it pure?",
                    "How to see it",
                    seen,
                    caution,
                    "41.0 mm")) {
                assertTrue(text.contains(part), part + " in " + text);
            }
            assertFalse(text.contains("Another reference"), "entries stay on the screen");
        }
    }

    /** Letters shrink before anything is left out, and what is left out is said. */
    @Test
    void muchOfItStillFitsOnOnePage() throws IOException {
        Page page = open();
        fill(page);
        for (int i = 2; i <= 6; i++) {
            page.click("#add-reference");
            page.keyboard().type("reference " + i);
        }
        page.click("#add-lane-plate");
        page.click("#check-candidates > summary");
        for (int i = 1; i <= 24; i++) {
            page.click("#add-candidate");
            page.keyboard().type("candidate " + i);
            page.fill("#rf-n" + i, "0." + (10 + i));
        }
        page.waitForSelector("#verdicts:not(.old) .same-candidates tbody tr:nth-child(24)");
        try (PDDocument printed = print(page, "letter")) {
            assertEquals(1, printed.getNumberOfPages());
            String text = new PDFTextStripper().getText(printed).replaceAll("\\s+", " ");
            assertTrue(text.contains("caffeine") && text.contains("candidate 1 ") && text.contains("Shortened"), text);
        }
    }

    /** What was read of a compound last on the plates of the study is what its purity is asked at. */
    @Test
    void aCompoundOfTheSampleBringsItsRfAndItsEluent() {
        Page page = open();
        openChecks(page);
        unfold(page, "pure");
        page.waitForSelector("#pure-wanting");
        page.click("#pure-spot-s2");
        page.waitForSelector("#pure-answer:not(.old)");
        double rf = (17.5 - 10) / 52;
        assertEquals(rf, Double.parseDouble(value(page, "rf-pure")), 0.005);
        assertTrue(page.textContent("#pure-eluent").contains("9 : 1"));
        assertTrue(page.locator("#pure-hide li[data-kind=coinciding]").count() > 0);
        page.fill("#amount-volumeUl", "0");
        page.waitForSelector("#amount-volumeUl-fault");
        page.fill("#amount-volumeUl", "2");
        page.waitForSelector("#pure-answer:not(.old)");
        kept(page, "saved");
        page.reload();
        ready(page);
        page.waitForSelector("#pure-answer:not(.old)");
        assertEquals("2", value(page, "amount-volumeUl"));
    }

    /** What is known of a compound changes how it is seen: an aromatic one under UV, an alkane not (common practice). */
    @Test
    void whatACompoundIsSaysHowItIsSeen() {
        Page page = openEmpty();
        openChecks(page);
        unfold(page, "seeing");
        page.waitForSelector("#see-answer:not(.old)");
        page.click("#see-what-s1");
        page.waitForSelector("#smiles-s1");
        page.fill("#smiles-s1", "CC(=O)c1ccccc1");
        page.waitForSelector("#see-answer:not(.old) #see-ways #way-of-uv-254 li[data-answer=shows]");
        page.fill("#smiles-s1", "CCCCCCCC");
        page.waitForSelector(
                "#see-answer:not(.old) #see-rest #way-of-uv-254 li[data-answer=blind]",
                new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
        assertTrue(page.locator("#way-of-uv-254").isHidden(), "what says nothing here is folded away");
    }
}
