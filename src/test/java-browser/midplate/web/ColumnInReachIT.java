package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What one reads first at the column is what one pours: on a phone, on paper, while another plan is on its way. */
class ColumnInReachIT extends OnColumn {
    private Page onPhone() {
        return open(ColorScheme.LIGHT, 390, 844);
    }

    private static double topOf(Page page, String selector) {
        return page.locator(selector).first().boundingBox().y;
    }

    @Test
    void aPlanThatIsWorkedOutAnewKeepsTheNamesItWasMadeFor() {
        Page page = open();
        plan(page, "50");
        String before = page.textContent("#plan-do");
        List<Route> held = new ArrayList<>();
        page.route("**/api/column/plan", held::add);
        page.click("#column-target-s1");
        page.waitForCondition(() -> !held.isEmpty());
        assertEquals(before, page.textContent("#plan-do"), "the plan of B is no plan of A");
        assertTrue(page.textContent("#plan-of").startsWith("B from 50 mg"));
        page.unroute("**/api/column/plan");
        held.forEach(Route::resume);
        planned(page);
        assertTrue(page.textContent("#plan-of").startsWith("A from 50 mg"));
    }

    @Test
    void aPlanThatNobodyAsksForAnyMoreSaysThatItIsOld() {
        Page page = open();
        plan(page, "50");
        assertEquals(0, page.locator("#plan-old").count());
        page.fill("#column-mass", "");
        assertThat(page.locator("#plan-old")).isVisible();
        assertEquals(null, page.getAttribute("#column-plan", "aria-busy"));
        page.fill("#column-mass", "50");
        planned(page);
        assertEquals(0, page.locator("#plan-old").count());
    }

    @Test
    void theBarOfAPhoneShowsTheColumnsEluentAtTheColumnAndThePlatesElsewhere() {
        Page page = onPhone();
        answered(page);
        String plate = page.textContent("#in-reach");
        openColumn(page);
        assertThat(page.locator("#in-reach")).hasText("Next plate: " + plate);
        page.click("#column-target-s2");
        page.fill("#column-mass", "50");
        planned(page);
        page.locator("#plan-keep").scrollIntoViewIfNeeded();
        String ratio = page.textContent("#plan-pours .step-ratio");
        assertThat(page.locator("#in-reach")).containsText("Column: " + ratio);
        assertEquals("#plan-do", page.getAttribute("#in-reach", "href"));
        page.evaluate("window.scrollTo(0, 0)");
        assertThat(page.locator("#in-reach")).hasText(plate);
        assertEquals("#jar", page.getAttribute("#in-reach", "href"));
    }

    private static String printed(Page page) throws IOException {
        page.evaluate("window.dispatchEvent(new Event('beforeprint'))");
        try (PDDocument made = Loader.loadPDF(page.pdf())) {
            return new PDFTextStripper().getText(made).replaceAll("\\s+", " ");
        } finally {
            page.evaluate("window.dispatchEvent(new Event('afterprint'))");
        }
    }

    @Test
    void printedFromTheMenuOfTheBrowserWhatIsInViewComesOut() throws IOException {
        Page page = open();
        plan(page, "50");
        page.locator("#plan-do").scrollIntoViewIfNeeded();
        page.evaluate("document.getElementById('plan-do').scrollIntoView({ block: 'center' })");
        assertFalse(page.isVisible(".step-really"), "to be filled in on paper only");
        String column = printed(page);
        assertTrue(column.contains("B from 50 mg") && column.contains("Batch"), column);
        assertTrue(column.contains("Poured in fact:"), column);
        assertFalse(column.contains("Pour card"), column);
        assertEquals("", page.evaluate("document.documentElement.className"), "as before");
        page.evaluate("window.scrollTo(0, 0)");
        String card = printed(page);
        assertFalse(card.contains("B from 50 mg"), card);
        assertTrue(card.contains("Pour card"), card);
    }

    @Test
    void onAPhoneWhatToPourAndKeepComesBeforeWhatMayFail() {
        Page page = onPhone();
        plan(page, "2000");
        page.selectOption("#column-bed", "4");
        planned(page);
        assertTrue(topOf(page, "#plan-pours") < topOf(page, "#plan-keep"));
        assertTrue(topOf(page, "#plan-keep") < topOf(page, "#plan-warnings"), "too much for 4 g is told below");
        assertTrue(topOf(page, "#plan-warnings") < topOf(page, "#plan-column"));
    }

    @Test
    void onAWideScreenAPlanThatMostlyFailsSaysSoFirst() {
        Page page = open();
        plan(page, "2000");
        page.selectOption("#column-bed", "4");
        planned(page);
        double chance = Double.parseDouble(page.getAttribute("#plan-keep meter", "value"));
        boolean first = topOf(page, "#plan-warnings") < topOf(page, "#plan-pours");
        assertEquals(chance < 0.5, first, "chance " + chance);
        page.click("#column-further > summary");
        page.selectOption("#column-elution", "own");
        page.fill("#eluent-column-0", "0 : 1");
        page.fill("#amount-column-0", "100");
        planned(page);
        assertTrue(Double.parseDouble(page.getAttribute("#plan-keep meter", "value")) < 0.5, "all at the front");
        assertTrue(topOf(page, "#plan-warnings") < topOf(page, "#plan-pours"));
    }

    @Test
    void itBeginsAtTheFirstEntryThatIsEmpty() {
        Page page = open();
        openColumn(page);
        assertEquals("column-target-s1", focused(page));
        page.click("#column-target-s2");
        page.click("#column-close");
        page.click("#column-open");
        assertEquals("column-mass", focused(page));
        page.keyboard().type("250");
        planned(page);
        page.click("#column-close");
        page.click("#column-open");
        assertEquals("column-title", focused(page), "all is said");
    }

    @Test
    void aMassWithItsUnitIsToldHowToWriteIt() {
        Page page = open();
        openColumn(page);
        page.click("#column-target-s2");
        page.fill("#column-mass", "5 g");
        assertThat(page.locator("#column-mass-fault")).containsText("5000 for 5 g");
        assertEquals("5 g", page.inputValue("#column-mass"));
    }

    @Test
    void noBarGoesPastTheAxis() {
        Page page = open();
        plan(page, "50");
        page.click("#column-further > summary");
        page.selectOption("#column-elution", "own");
        page.fill("#eluent-column-0", "19 : 1");
        page.fill("#amount-column-0", "80");
        planned(page);
        double axis = ((Number) page.evaluate("document.querySelector('.column-row').x2.baseVal.value")).doubleValue();
        for (Locator bar : page.locator(".column-bar").all()) {
            double end = Double.parseDouble(bar.getAttribute("x")) + Double.parseDouble(bar.getAttribute("width"));
            assertTrue(end <= axis + 1.01, end + " of " + axis);
        }
        assertTrue(page.locator(".column-beyond").count() > 0, "an arrow where a band ends beyond it");
    }
}
