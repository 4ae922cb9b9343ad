package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** The lesson of five minutes, played from its start to its end. */
class GuideIT extends OnLesson {
    private static void at(Page page, int step, String part) {
        assertThat(page.locator("#guide-at")).hasText("Step " + step + " of 8");
        assertEquals("guide-title", focused(page), "what is to be done is read first");
        shown(page, part);
        assertThat(page.locator("#lesson-part-title")).isVisible();
        assertTrue(page.textContent("#guide-ask").endsWith("?"), page.textContent("#guide-ask"));
    }

    private static void next(Page page) {
        tabTo(page, "guide-next");
        page.keyboard().press("Enter");
    }

    @Test
    void isPlayedFromStartToEndByKeyboardAlone() {
        Page page = openLesson();
        tabTo(page, "guide-start");
        page.keyboard().press("Enter");
        assertThat(page.locator("#guide-title"))
                .containsText("A (methyl benzoate), B (acetophenone), C (benzyl alcohol)");
        assertEquals("guide-title", focused(page));
        assertThat(page.locator("#lesson-part")).isHidden();
        tabTo(page, "guide-expect-spread");
        page.keyboard().press("Space");
        assertEquals("true", page.getAttribute("#guide-expect-spread", "aria-pressed"));
        next(page);
        at(page, 2, "series");
        assertThat(page.locator("#guide-title")).hasText("See the plate in hexane alone.");
        assertThat(page.locator("#guide-expected")).hasText("What you expected: spread over the plate.");
        assertEquals("\"0\"", kept(page, "percent"));
        onePlateAlone(page, "pure hexane");
        next(page);
        at(page, 3, "series");
        assertThat(page.locator("#guide-title")).containsText("ethyl acetate alone");
        assertEquals("\"100\"", kept(page, "percent"));
        onePlateAlone(page, "pure ethyl acetate");
        next(page);
        at(page, 4, "series");
        pullIntoTheWindow(page);
        next(page);
        at(page, 5, "climb");
        next(page);
        at(page, 6, "why");
        next(page);
        at(page, 7, "slips");
        assertEquals("\"from-edge\"", kept(page, "parts.slips.slip"));
        next(page);
        at(page, 8, "exercise");
        assertThat(page.locator("#guide-next")).hasCount(0);
        assertThat(page.locator("#lesson-cautions")).isVisible();
        tabTo(page, "guide-leave");
        page.keyboard().press("Enter");
        assertEquals("guide-start", focused(page));
        assertEquals("null", kept(page, "parts.guide"));
        assertEquals("exercise", page.getAttribute("html", "data-part"), "one goes on where one is");
    }

    /** The plate that is asked about, and nothing that answers a later step. */
    private static void onePlateAlone(Page page, String eluent) {
        assertThat(page.locator("#lesson-part figure")).hasCount(1);
        assertThat(page.locator("#series-hand-figure")).containsText(eluent);
        assertThat(page.locator("#lesson-part input[type=range], #series-see, #series-numbers"))
                .hasCount(0);
    }

    @Test
    void theLaterStepsBeginWithSpotsInTheWindow() {
        Page page = openLesson();
        toStepFour(page);
        page.click("#guide-next");
        at(page, 5, "climb");
        double advised = percent(page);
        assertTrue(advised > 5 && advised < 50, "not the 2 % one began to pull at: " + advised);
        page.click("#guide-previous");
        shown(page, "series");
        page.evaluate("""
                () => {
                    const kept = JSON.parse(localStorage.getItem('midplate-lesson'));
                    kept.lesson.percent = '21';
                    localStorage.setItem('midplate-lesson', JSON.stringify(kept));
                }
                """);
        page.reload();
        ready(page);
        shown(page, "series");
        page.click("#guide-next");
        at(page, 5, "climb");
        assertEquals(21, percent(page), 0, "what was pulled has its spots in the window and stays");
    }

    @Test
    void whoLeavesSeesTheWholeSeriesAgain() {
        Page page = openLesson();
        page.click("#guide-start");
        page.click("#guide-next");
        at(page, 2, "series");
        page.click("#guide-leave");
        assertThat(page.locator("#series-kinds")).isVisible();
        page.click("#guide-back");
        onePlateAlone(page, "pure hexane");
    }

    private static void toStepFour(Page page) {
        page.click("#guide-start");
        for (int step = 1; step < 4; step++) {
            page.click("#guide-next");
        }
        at(page, 4, "series");
    }

    private static double percent(Page page) {
        return Double.parseDouble(kept(page, "percent").replace("\"", ""));
    }

    /** By the keys of the slider: as soon as the plate shows all spots between the ticks. */
    private static void pullIntoTheWindow(Page page) {
        page.keyboard().press("Tab");
        String slider = String.valueOf(
                page.evaluate("() => document.querySelector('#lesson-part input[type=range]')?.id ?? 'none'"));
        tabTo(page, slider);
        String before = kept(page, "percent");
        for (int i = 0; i < 3; i++) {
            page.keyboard().press("ArrowRight");
        }
        double now = Double.parseDouble(kept(page, "percent").replace("\"", ""));
        assertTrue(now > Double.parseDouble(before.replace("\"", "")), before + " to " + now);
        page.focus("#guide-title");
    }

    @Test
    void goesBackStepByStep() {
        Page page = openLesson();
        page.click("#guide-start");
        page.click("#guide-next");
        page.click("#guide-next");
        page.click("#guide-previous");
        at(page, 2, "series");
        page.click("#guide-previous");
        assertThat(page.locator("#guide-at")).hasText("Step 1 of 8");
        assertTrue(page.isDisabled("#guide-previous"));
    }

    @Test
    void whoLeavesComesBackToTheSameStepAlsoAfterAReload() {
        Page page = openLesson();
        page.click("#guide-start");
        for (int i = 0; i < 4; i++) {
            page.click("#guide-next");
        }
        at(page, 5, "climb");
        page.click("#guide-leave");
        assertEquals("guide-back", focused(page));
        part(page, "series");
        page.reload();
        ready(page);
        assertThat(page.locator("#guide-back")).hasText("Go on with step 5 of 8");
        page.click("#guide-back");
        at(page, 5, "climb");
        page.click("#guide-leave");
        page.click("#guide-anew");
        assertThat(page.locator("#guide-at")).hasText("Step 1 of 8");
    }

    @Test
    void whoGoesToAnotherPartIsShownTheWayBack() {
        Page page = openLesson();
        page.click("#guide-start");
        page.click("#guide-next");
        part(page, "why");
        page.click("#guide-there");
        at(page, 2, "series");
    }

    @Test
    void beforeAnythingIsSeenAPartMayBeChosenAllTheSame() {
        Page page = openLesson();
        page.click("#guide-start");
        part(page, "series");
        shown(page, "series");
        assertThat(page.locator("#guide-back")).hasText("Go on with step 1 of 8");
    }

    @Test
    void speaksOfTheSampleThatRuns() {
        Page page = openLesson();
        page.click("#sample-line");
        page.click("#ready-polar");
        page.click("#guide-start");
        assertThat(page.locator("#guide-title")).containsText("A (caffeine)");
        page.click("#guide-next");
        assertThat(page.locator("#guide-title")).containsText("dichloromethane alone");
        page.click("#guide-next");
        assertThat(page.locator("#guide-title")).containsText("strongest eluent of dichloromethane and methanol");
    }

    @Test
    void eachStepHasANoteForTheTeacher() {
        Page page = openLesson();
        page.click("#guide-start");
        for (int step = 1; step <= 8; step++) {
            page.click("#guide-open summary");
            assertThat(page.locator("#guide-open details[open] p")).isVisible();
            if (step < 8) {
                page.click("#guide-next");
            }
        }
    }
}
