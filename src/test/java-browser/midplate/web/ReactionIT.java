package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A reaction followed by mouse: six plates, what is wrong with an entry, undo, reload, and the study's own spots. */
class ReactionIT extends OnReaction {
    private static final List<Integer> USUAL = List.of(0, 10, 30, 60, 120, 240);

    private int counted;

    private void press(Locator locator) {
        locator.click();
        counted++;
    }

    private void press(Page page, int plate, int species, int times) {
        for (int i = 0; i < times; i++) {
            press(cell(page, plate, species));
        }
    }

    /** The starting material fades to nothing over six plates and the product comes up; every time is one of the usual. */
    private void sixPlates(Page page) {
        for (int plate = 1; plate <= 6; plate++) {
            press(page.locator("#reaction-next"));
        }
    }

    @Test
    void sixPlatesTakeFewPressesByMouse() {
        Page page = openEmpty();
        openReaction(page);
        press(page.locator("#reaction-next"));
        press(page.locator("#reaction-next"));
        press(page, 2, 1, 1);
        press(page, 2, 2, 1);
        press(page.locator("#reaction-next"));
        press(page, 3, 1, 1);
        press(page, 3, 2, 1);
        press(page.locator("#reaction-next"));
        press(page, 4, 1, 1);
        press(page, 4, 2, 1);
        press(page.locator("#reaction-next"));
        press(page, 5, 2, 1);
        press(page.locator("#reaction-next"));
        press(page, 6, 1, 1);
        press(page.locator("#reaction-confirm"));
        assertEquals(
                0, page.locator("#reaction-confirm, #reaction-strip .assumed").count());
        assertEquals("P: as strong as its own lane, at 240 min", graded(page, 6, 2));
        assertEquals(6, plates(page));
        assertEquals(
                USUAL,
                IntStream.rangeClosed(1, 6)
                        .mapToObj(i -> Integer.valueOf(minutes(page, i)))
                        .toList());
        assertEquals("SM: as strong as its own lane, at 0 min", graded(page, 1, 1));
        assertEquals("P: not seen, at 0 min", graded(page, 1, 2));
        assertEquals("SM: a trace, at 120 min", graded(page, 5, 1));
        assertEquals("P: as strong as its own lane, at 120 min", graded(page, 5, 2));
        assertEquals("SM: not seen, at 240 min", graded(page, 6, 1));
        judged(page);
        assertThat(page.locator("#reaction-verdict .course-word")).not().isEmpty();
        assertTrue(counted <= 60, counted + " presses");
        System.out.printf("six plates of a reaction by mouse: %d presses%n", counted);
    }

    /** With every time typed instead of taken; a key counts as a press. */
    @Test
    void withTimesTypedItStaysBelowSixty() {
        Page page = openEmpty();
        openReaction(page);
        List<String> times = List.of("0", "12", "34", "65", "130", "250");
        for (int plate = 1; plate <= 6; plate++) {
            press(page.locator("#reaction-next"));
            if (plate > 1) {
                page.locator("#minutes-t" + plate).click(new Locator.ClickOptions().setClickCount(3));
                counted += 2;
                page.keyboard().type(times.get(plate - 1));
                counted += times.get(plate - 1).length();
                press(page, plate, plate % 2 == 0 ? 1 : 2, 1);
            }
        }
        press(page.locator("#reaction-confirm"));
        assertEquals(
                times,
                IntStream.rangeClosed(1, 6).mapToObj(i -> minutes(page, i)).toList());
        judged(page);
        assertTrue(counted <= 60, counted + " presses and keys");
        System.out.printf("six plates of a reaction by mouse, times typed: %d presses and keys%n", counted);
    }

    /** What a new plate shows faintly is no mark: it is not asked about, nor kept, until somebody looked. */
    @Test
    void whatIsAsOnThePlateBeforeCountsOnlyOnceConfirmed() {
        Page page = openEmpty();
        fourPlates(page);
        String four = page.getAttribute("#reaction-course-drawing", "aria-label");
        page.click("#reaction-next");
        assertEquals("SM: a trace, as on the plate before, not yet confirmed, at 120 min", graded(page, 5, 1));
        assertThat(cell(page, 5, 1)).hasClass(java.util.regex.Pattern.compile(".*\\bassumed\\b.*"));
        judged(page);
        assertEquals(
                four,
                page.getAttribute("#reaction-course-drawing", "aria-label").replace("5 plates", "4 plates"));
        page.keyboard().press("0");
        judged(page);
        assertEquals("SM: not seen, at 120 min", graded(page, 5, 1));
        assertEquals("P: clear, as on the plate before, not yet confirmed, at 120 min", graded(page, 5, 2));
        assertThat(page.locator("#reaction-verdict .course-sentence"))
                .containsText("P was not looked for on the latest");
        page.keyboard().press("ArrowDown");
        page.keyboard().press("Delete");
        assertEquals("P: not looked at, at 120 min", graded(page, 5, 2));
        page.keyboard().press("4");
        judged(page);
        assertThat(page.locator("#reaction-verdict .course-word")).hasText("Looks finished");
        page.keyboard().press("Enter");
        page.keyboard().press("=");
        assertEquals("P: as strong as its own lane, at 240 min", graded(page, 6, 2));
        assertEquals(0, page.locator("#reaction-strip .assumed").count());
    }

    @Test
    void timesThatGoBackAreToldAtTheirEntryAndCanBePutInOrder() {
        Page page = openEmpty();
        fourPlates(page);
        page.fill("#minutes-t4", "20");
        page.waitForSelector("#minutes-t4-fault");
        assertTrue(page.textContent("#minutes-t4-fault").contains("20"), page.textContent("#minutes-t4-fault"));
        assertTrue(page.textContent("#minutes-t4-fault").contains("30"), page.textContent("#minutes-t4-fault"));
        assertThat(page.locator("#reaction-verdict")).hasClass("course-verdict dated");
        assertEquals("20", minutes(page, 4));
        page.click("#reaction-order");
        judged(page);
        assertEquals(0, page.locator("#minutes-t4-fault, #reaction-order").count());
        List<String> order = page.locator("#reaction-strip .time-entry input").all().stream()
                .map(Locator::inputValue)
                .toList();
        assertEquals(List.of("0", "10", "20", "30"), order);
        page.click("#undo");
        page.waitForSelector("#minutes-t4-fault");
    }

    @Test
    void aTimeThatIsNoNumberIsToldAndNothingIsLost() {
        Page page = openEmpty();
        fourPlates(page);
        page.fill("#minutes-t3", "half past");
        page.waitForSelector("#minutes-t3-fault");
        assertEquals(
                "\"half past\" is no time. Give minutes, such as 30, or hours, such as 2 h.",
                page.textContent("#minutes-t3-fault"));
        assertEquals("half past", minutes(page, 3));
        assertEquals("SM: weak, at half past", graded(page, 3, 1));
        page.fill("#minutes-t3", "0,5 h");
        judged(page);
        page.fill("#rf-x1", "1.4");
        page.waitForSelector("#rf-x1-fault");
        page.fill("#rf-x1", "0.4");
        judged(page);
    }

    @Test
    void plateIsInsertedRemovedAndUndone() {
        Page page = openEmpty();
        fourPlates(page);
        cell(page, 4, 1).focus();
        page.click("#reaction-insert");
        assertEquals("minutes-t5", focused(page), "the time between is to be looked over");
        assertEquals("45", minutes(page, 5));
        assertEquals(
                "SM: weak, as on the plate before, not yet confirmed, at 45 min",
                graded(page, 5, 1),
                "it begins as the one before it");
        assertEquals(5, plates(page));
        page.keyboard().press("Enter");
        assertEquals("grade-t5-x1", focused(page));
        page.click("#reaction-remove");
        assertEquals(4, plates(page));
        assertEquals("grade-t3-x1", focused(page));
        page.click("#undo");
        assertEquals(5, plates(page));
        page.click("#undo");
        assertEquals(4, plates(page));
        page.click("#undo");
        assertEquals(
                "P: weak, as on the plate before, not yet confirmed, at 60 min",
                graded(page, 4, 2),
                "each grade is a step");
    }

    @Test
    void aSpotIsDrawnToItsRfOnEveryPlateAndTyped() {
        Page page = openEmpty();
        fourPlates(page);
        page.fill("#rf-x1", "0.50");
        page.fill("#rf-x2", "0.3");
        Locator drawing = page.locator("#time-drawing-t2");
        BoundingBox box = drawing.boundingBox();
        double millimetre = box.width / 44;
        double from = box.y + (56 - 9 - 0.5 * 42) * millimetre;
        page.mouse().move(box.x + 27.5 * millimetre, from);
        page.mouse().down();
        page.mouse()
                .move(
                        box.x + 27.5 * millimetre,
                        from - 0.1 * 42 * millimetre,
                        new com.microsoft.playwright.Mouse.MoveOptions().setSteps(6));
        page.mouse().up();
        double rf = Double.parseDouble(page.inputValue("#rf-x1"));
        assertEquals(0.6, rf, 0.02);
        String shown = drawing.getAttribute("aria-label");
        assertTrue(shown.contains("SM: clear, Rf " + page.inputValue("#rf-x1")), shown);
        assertTrue(page.locator("#time-drawing-t4")
                .getAttribute("aria-label")
                .contains("Rf " + page.inputValue("#rf-x1")));
        page.click("#undo");
        assertEquals("0.50", page.inputValue("#rf-x1"), "the way of a drag is one step");
    }

    @Test
    void aPressTiesTheSpeciesToTheStudysSpotsAndTakesTheirRf() {
        Page page = open();
        answered(page);
        openReaction(page);
        page.click("#link-x1-s1");
        page.click("#link-x2-s2");
        page.click("#reaction-next");
        // the invented example: start 10 mm, front 62 mm, A last read at 13 mm, B at 17.5 mm
        assertEquals((13.5 - 10) / 52, Double.parseDouble(page.inputValue("#rf-x1")), 0.006);
        assertEquals((17.5 - 10) / 52, Double.parseDouble(page.inputValue("#rf-x2")), 0.006);
        assertThat(page.locator("#link-x1-s1")).hasAttribute("aria-pressed", "true");
        assertEquals("9 : 1", page.inputValue("#eluent-reaction"));
        page.click("#link-x1-s2");
        assertThat(page.locator("#link-x2-s2")).hasAttribute("aria-pressed", "false");
        page.locator("#spots button[aria-label='Remove B']").click();
        assertEquals(0, page.locator("#link-x1-s2").count());
        judged(page);
    }

    @Test
    void anotherSpotAndTheStartLineAreFollowedToo() {
        Page page = openEmpty();
        fourPlates(page);
        page.click("#reaction-add");
        assertEquals("species-x3", focused(page));
        page.keyboard().type("by-product");
        assertEquals("by-product: a trace, at 60 min", graded(page, 4, 3));
        assertEquals("by-product: not seen, at 30 min", graded(page, 3, 3));
        page.click("#reaction-baseline");
        page.click("#grade-t4-baseline");
        assertEquals("start line: a trace, at 60 min", page.getAttribute("#grade-t4-baseline", "aria-label"));
        page.click("#reaction-next");
        assertEquals("by-product: a trace, as on the plate before, not yet confirmed, at 120 min", graded(page, 5, 3));
        judged(page);
        page.click("#species-remove-x3");
        assertEquals("reaction-add", focused(page));
        judged(page);
        assertFalse(page.isVisible("#grade-t4-x3"));
    }

    @Test
    void aReloadAndAnotherWindowHaveThePlates() {
        Page page = openEmpty();
        fourPlates(page);
        page.fill("#rf-x1", "0.55");
        page.fill("#title", "Invented reaction");
        kept(page, "saved");
        String word = page.textContent("#reaction-verdict .course-word");
        page.reload();
        ready(page);
        page.waitForSelector("#reaction-next");
        assertEquals(4, plates(page));
        assertEquals("P: weak, at 30 min", graded(page, 3, 2));
        assertEquals("0.55", page.inputValue("#rf-x1"));
        judged(page);
        assertEquals(word, page.textContent("#reaction-verdict .course-word"));
        Page other = another();
        other.navigate(page.url());
        ready(other);
        other.waitForSelector("#reaction-next");
        cell(other, 4, 1).click();
        assertThat(cell(page, 4, 1)).hasAttribute("aria-label", "SM: not seen, at 60 min");
    }

    @Test
    void withoutPlatesNothingIsAskedAndTheNextStepIsSaid() {
        Page page = openEmpty();
        openReaction(page);
        assertThat(page.locator("#reaction-next")).containsText("First plate");
        assertThat(page.locator("#reaction-how")).isVisible();
        assertEquals(0, page.locator("#reaction-verdict .course-word").count());
        sixPlates(page);
        judged(page);
        for (int plate = 6; plate >= 1; plate--) {
            cell(page, plate, 1).focus();
            page.click("#reaction-remove");
        }
        assertEquals("reaction-next", focused(page));
        assertEquals(0, page.locator("#reaction-verdict .course-word").count());
    }

    @Test
    void theCurveSaysWhatItShows() {
        Page page = openEmpty();
        fourPlates(page);
        String told = page.getAttribute("#reaction-course-drawing", "aria-label");
        assertTrue(told.contains("SM: as strong as its own lane, at 0 min"), told);
        assertTrue(told.contains("P: clear, at 60 min"), told);
        List<String> texts =
                page.locator("#reaction-course-drawing .chart-axis-title").allTextContents();
        assertEquals(List.of("Time, min", "Strength by eye, 0\u20134"), texts);
        assertEquals(
                List.of("SM", "P"),
                page.locator("#reaction-course-drawing .course-name").allTextContents());
        double sum = 0;
        for (String count : page.locator("#reaction-chances .chance-number").allTextContents()) {
            sum += Double.parseDouble(count.replaceAll("\\D*(\\d+) in 100", "$1"));
        }
        assertEquals(100, sum, 3.01, "chances of all that can be, rounded");
    }
}
