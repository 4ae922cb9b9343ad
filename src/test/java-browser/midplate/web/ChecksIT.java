package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Is it the same? The lanes of a plate, by mouse and by keyboard, and what they say. */
class ChecksIT extends OnChecks {
    /** The textbook layout: unknown, both, reference, all at one height, tapped where they were seen. */
    @Test
    void threeTapsAfterOneClickTellAnUnknownFromNoReferenceAtOneHeight() {
        Page page = openEmpty();
        openChecks(page);
        threeLanes(page, 35.5, 35.5, 35.5);
        assertEquals("not-told-apart", verdict(page));
        String words = page.textContent("#verdict-0 .verdict-words");
        assertEquals("Not told apart in this eluent", words);
    }

    /** Where both were spotted two spots stand, as far apart as those of the other lanes. */
    @Test
    void twoSpotsWhereBothWereSpottedAreDifferentCompounds() {
        Page page = openEmpty();
        openChecks(page);
        threeLanes(page, 41, 41, 34);
        tap(page, "i1", 2, 3, 34);
        assertEquals("different", verdict(page));
        assertTrue(page.locator("#verdict-0 .gap-bar svg").isVisible());
        double gap = (41 - 34) / RUN_MM;
        assertTrue(
                page.textContent("#verdict-0 figcaption").contains(String.format(java.util.Locale.ROOT, "%.2f", gap)));
    }

    /** From the button in the head to the verdict without a mouse; the name takes as many keys as it has letters. */
    @Test
    void keysAloneDoTheSame() {
        Page page = openEmpty();
        page.focus("#checks-open");
        int pressed = 0;
        page.keyboard().press("Enter");
        page.waitForSelector("#reference-k1:focus");
        for (String key : List.of("c", "a", "f", "Enter", "4", "1", "Enter", "4", "1", "Enter", "3", "4", "Enter")) {
            page.keyboard().press(key);
            pressed++;
        }
        assertEquals("add-check-l3", focused(page), "no lane is empty: one stays at the last");
        assertTrue(pressed <= 13, "keys after the name: " + pressed);
        told(page);
        assertEquals("caf", page.textContent("#verdict-0 h4"));
        assertEquals(
                List.of("41", "41", "34"), List.of(value(page, "mm-e1"), value(page, "mm-e2"), value(page, "mm-e3")));
    }

    @Test
    void aSpotIsDraggedToTheHalfMillimetreAndNudgedByKeys() {
        Page page = openEmpty();
        openChecks(page);
        tap(page, "i1", 1, 3, 30);
        assertEquals("30", value(page, "mm-e1"));
        BoundingBox spot = page.locator("#seen-e1 .spot").boundingBox();
        BoundingBox plate = page.locator("#layer-i1 .backing").boundingBox();
        double pixels = plate.height / 70;
        page.mouse().move(spot.x + spot.width / 2, spot.y + spot.height / 2);
        page.mouse().down();
        page.mouse().move(spot.x + spot.width / 2, spot.y + spot.height / 2 - 7.2 * pixels);
        page.mouse().up();
        assertEquals("37", value(page, "mm-e1"));
        for (String key : List.of("ArrowUp", "ArrowUp", "Shift+ArrowDown", "+", "s")) {
            page.keyboard().press(key);
        }
        assertEquals("37.9", value(page, "mm-e1"));
        assertEquals("3.5", value(page, "size-e1"));
        assertEquals("true", page.getAttribute("#streak-e1", "aria-pressed"));
        double rf = (37.9 - START_MM) / RUN_MM;
        assertEquals(rf, Double.parseDouble(value(page, "rf-e1")), 0.005, "worked out from the lines");
        page.keyboard().press("Delete");
        assertEquals(0, page.locator("#seen-e1").count());
        assertEquals("add-check-l1", focused(page));
        page.keyboard().press("Control+z");
        assertEquals("37.9", value(page, "mm-e1"), "an undo brings it back");
    }

    @Test
    void aReloadKeepsAllAndAnotherStudyHasNone() {
        Page page = openEmpty();
        openChecks(page);
        page.fill("#reference-k1", "caffeine");
        threeLanes(page, 35.5, 35.5, 34);
        told(page);
        kept(page, "saved");
        page.reload();
        ready(page);
        told(page);
        assertEquals("caffeine", value(page, "reference-k1"));
        assertEquals(
                List.of("35.5", "35.5", "34"),
                List.of(value(page, "mm-e1"), value(page, "mm-e2"), value(page, "mm-e3")));
        Page elsewhere = otherBrowser(page.url());
        told(elsewhere);
        assertEquals("34", value(elsewhere, "mm-e3"), "the folder has it");
        page.click("#clear");
        page.waitForSelector(
                "#checks[hidden]",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED));
    }

    @Test
    void anotherReferenceHasItsOwnTwoLanesAndItsOwnVerdict() {
        Page page = openEmpty();
        openChecks(page);
        page.fill("#reference-k1", "caffeine");
        page.click("#add-reference");
        assertEquals("reference-k2", focused(page));
        page.keyboard().type("theobromine");
        tap(page, "i1", 1, 5, 40);
        tap(page, "i1", 2, 5, 40);
        tap(page, "i1", 3, 5, 40);
        tap(page, "i1", 4, 5, 40);
        tap(page, "i1", 4, 5, 31);
        tap(page, "i1", 5, 5, 31);
        told(page);
        page.waitForSelector("#verdict-1");
        assertEquals("not-told-apart", page.getAttribute("#verdict-0", "data-verdict"));
        assertEquals("different", page.getAttribute("#verdict-1", "data-verdict"));
        page.click("#unreference-k2");
        page.waitForSelector("#verdicts:not(.old):not(:has(#verdict-1))");
        assertEquals(3, page.locator("#lists-of-i1 > div").count());
    }

    /** What was typed stays, and what is wrong stands beside it. */
    @Test
    void badInputIsToldAtItsEntryAndStays() {
        Page page = openEmpty();
        openChecks(page);
        threeLanes(page, 35.5, 35.5, 35.5);
        told(page);
        page.fill("#mm-e1", "high");
        assertTrue(page.textContent("#mm-e1-fault").contains("high"));
        assertEquals("high", value(page, "mm-e1"));
        page.fill("#mm-e1", "35.5");
        told(page);
        page.click("#run-of-i1 > summary");
        page.fill("#front-i1", "5");
        page.waitForSelector("#front-i1-fault");
        page.fill("#front-i1", "62");
        told(page);
        assertEquals(0, page.locator("#checks .fault").count());
    }

    /** Nobody is told anything by a plate that says nothing yet: the next step stands there in one line. */
    @Test
    void whatIsMissingIsSaidAsTheNextStep() {
        Page page = openEmpty();
        openChecks(page);
        assertTrue(page.textContent("#same-wanting").contains("lane 1"));
        tap(page, "i1", 1, 3, 40);
        page.waitForSelector("#same-wanting:has-text('lane 2')");
        tap(page, "i1", 3, 3, 40);
        told(page);
        assertTrue(page.textContent("#same-wanting").contains("lane 2"), "without the co-spot it says so");
    }

    /** Candidates with a printed Rf near and far: the far one is not within the error of reading another plate. */
    @Test
    void ofTheCandidatesItIsSaidHowManyLieWithinTheError() {
        Page page = openEmpty();
        openChecks(page);
        threeLanes(page, 36, 36, 36);
        page.click("#check-candidates > summary");
        page.click("#add-candidate");
        page.keyboard().type("near");
        page.fill("#rf-n1", "0.5");
        page.click("#add-candidate");
        page.keyboard().type("far");
        page.fill("#rf-n2", "0.95");
        page.waitForSelector("#verdicts:not(.old) .same-candidates tbody tr:nth-child(2)");
        String told = page.textContent(".same-candidates > p");
        assertTrue(told.contains("1") && told.contains("2"), told);
    }

    /** Reference spots that ran as published correct nothing; halfway between two shifted ones lies halfway (own algebra). */
    @Test
    void anHrfIsCorrectedAlongStraightLinesBetweenReferenceSpots() {
        Page page = openEmpty();
        openChecks(page);
        page.click("#check-hrf > summary");
        page.selectOption("#hrf-system", "TC");
        page.fill("#standard-physostigmine", "30");
        page.fill("#standard-trimipramine", "50");
        page.fill("#hrf-h1", "40");
        page.waitForSelector("#hrf-answer:not(.old)");
        double halfway = (36 + 54) / 2.0;
        assertTrue(
                page.textContent("#hrf-answer strong").contains("hRf " + Math.round(halfway)),
                page.textContent("#hrf-answer"));
        assertEquals(2, page.locator(".hrf-standard").count());
        page.fill("#standard-physostigmine", "36");
        page.fill("#standard-trimipramine", "54");
        page.waitForSelector("#hrf-answer:not(.old) strong:has-text('hRf 40 ')");
        page.fill("#standard-trimipramine", "20");
        page.waitForSelector("#hrf-told .fault, #hrf-entry .fault");
    }
}
