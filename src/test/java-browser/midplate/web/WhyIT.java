package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The surface in the browser: the picture follows the slider, and numbers have their sources. */
class WhyIT extends OnLesson {
    private static final int SITES = 30;

    private static Page why(Page page) {
        part(page, "why");
        page.waitForSelector("#why-stage[data-current=yes]");
        return page;
    }

    /** θ as the server says it of hexane and ethyl acetate at a share. */
    private double coverage(double percent) {
        String asked =
                "{\"compounds\": [{\"name\": \"A\", \"compound\": \"biphenyl\"}], \"weak\": \"hexane\", \"strong\": \"ethyl-acetate\","
                        + " \"percentStrong\": " + percent + ", \"percents\": []}";
        APIResponse response = context.request()
                .post(
                        server.address() + "api/lesson/why",
                        RequestOptions.create()
                                .setHeader("Content-Type", "application/json")
                                .setData(asked));
        int place = percent == 0 ? 0 : 2 * percent <= 100 ? 0 : 1; // the share compared with stands beside it
        Matcher list = Pattern.compile("\"coverage\":\\[([^\\]]+)]").matcher(response.text());
        assertTrue(list.find());
        return Double.parseDouble(list.group(1).split(",")[place]);
    }

    @Test
    void thePictureFollowsTheSliderByKeyboard() {
        Page page = why(openLesson());
        page.focus("#why-percent");
        page.keyboard().press("Home");
        assertEquals(0, page.locator(".why-strong").count());
        int held = page.locator(".why-copy.held").count();
        for (int stop = 1; stop <= 6; stop++) {
            page.keyboard().press("ArrowRight");
            double percent = stop / 2.0; // halves of a per cent while there is little of it
            assertEquals(
                    Math.round(SITES * coverage(percent)),
                    page.locator(".why-strong").count(),
                    percent + " %");
        }
        assertEquals("\"3\"", kept(page, "percent"));
        page.keyboard().press("End");
        assertEquals(SITES, page.locator(".why-strong").count());
        assertTrue(page.locator(".why-copy.held").count() < held, "raising the share lets compounds go");
        assertEquals("why-percent", focused(page));
    }

    @Test
    void numbersHaveTheirSources() {
        Page page = why(openLesson());
        page.click("#why-source-surface > summary");
        assertTrue(page.textContent("#why-source-surface").contains("Sadek"));
        assertTrue(page.textContent("#why-caution").contains("Scott"));
        page.click("#why-source-2 > summary");
        assertTrue(page.textContent("#why-source-2").contains("Principles of Adsorption Chromatography"));
        assertTrue(page.textContent("#why-source-2").contains("5.60"));
    }

    // Published energies sum to more for benzil than for vanillin, and the model lets vanillin move last: both are
    // told.
    @Test
    void whereTheSumsGiveAnotherOrderThePageSaysSo() {
        Page page = openLesson();
        page.evaluate("""
                () => {
                    const compounds = ['vanillin', 'benzil'].map((compound, i) => ({ id: `c${i}`, name: 'AB'[i], compound }));
                    localStorage.setItem('midplate-lesson', JSON.stringify({ form: 1, lesson: { compounds, percent: '20' } }));
                }
                """);
        page.reload();
        ready(page);
        why(page);
        page.waitForSelector("#why-said:has-text('The published sums would let B move after A.')");
        double[] balances = new double[2];
        for (int row = 0; row < 2; row++) {
            balances[row] = Double.parseDouble(page.textContent("#why-row-" + row + " td:nth-of-type(3)"));
        }
        assertTrue(balances[1] > balances[0], "the sums alone");
        assertTrue(page.textContent("#why-parts-0").contains("phenol"));
        page.selectOption("#language", "de");
        page.waitForSelector("#why-said:has-text('Die veröffentlichten Summen ließen B nach A laufen.')");
    }

    @Test
    void theWordsOfThePictureAreAsLargeAsThePageAtEveryWidth() {
        for (int width : new int[] {360, 1280}) {
            Page page = why(openLesson(ColorScheme.LIGHT, width, 800));
            String size = "id => getComputedStyle(document.querySelector(id)).fontSize";
            assertEquals(page.evaluate(size, "#why-said li"), page.evaluate(size, "#why-names-0 p"));
            assertEquals(0, page.locator("#why-picture text").count());
            assertTrue(page.textContent("#why-names-0").contains("of 10 copies held"));
            context.close();
        }
    }

    // The share pulled in one part stands in the others, and its slider has the same stops.
    @Test
    void theSliderIsTheOneOfTheOtherParts() {
        Page page = openLesson();
        String[][] sliders = {{"series", "series-share"}, {"climb", "climb-percent"}, {"why", "why-percent"}};
        String words = "";
        for (String[] slider : sliders) {
            part(page, slider[0]);
            shown(page, slider[0]);
            String now = page.getAttribute("#" + slider[1], "aria-valuetext");
            assertTrue(words.isEmpty() || words.equals(now), words + " then " + now);
            page.focus("#" + slider[1]);
            page.keyboard().press("ArrowRight");
            words = page.getAttribute("#" + slider[1], "aria-valuetext");
            assertTrue(!words.equals(now), "pulled");
        }
        assertEquals("\"23\"", kept(page, "percent"));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 360", "DARK, 360"})
    void isCleanAndSpillsNowhere(ColorScheme scheme, int width) {
        Page page = why(openLesson(scheme, width, 800));
        page.click("#why-source-surface > summary");
        assertClean(page);
        ViewsIT.assertNothingSpills(page);
    }
}
