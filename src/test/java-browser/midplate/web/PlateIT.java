package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plate is the form: spots and lines are put and moved by keys, by a mouse and by a finger. */
class PlateIT extends OnPage {
    private static final int WIDTH_MM = 40;
    private static final int HEIGHT_MM = 70;

    private static String value(Page page, String id) {
        return page.locator("#" + id).inputValue();
    }

    /** A place on the first plate, in pixels of the screen. */
    private record Place(double x, double y) {}

    private static Place place(Page page, double fromLeftMm, double fromBelowMm) {
        BoundingBox layer = page.locator("#layer-p1 .backing").boundingBox();
        double pixelsPerMm = layer.width / WIDTH_MM;
        return new Place(layer.x + fromLeftMm * pixelsPerMm, layer.y + (HEIGHT_MM - fromBelowMm) * pixelsPerMm);
    }

    private static void drag(Page page, Place from, Place to) {
        page.mouse().move(from.x(), from.y());
        page.mouse().down();
        page.mouse().move((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        page.mouse().move(to.x(), to.y());
        page.mouse().up();
    }

    private static void click(Page page, Place place) {
        page.mouse().click(place.x(), place.y());
    }

    private static int seen(Page page) {
        return page.locator("#layer-p1 .seen").count();
    }

    /** The example, changed in another place first: what stands above the plates goes with the first change. */
    private Page openChanged() {
        Page page = open();
        page.fill("#eluent-p1", "8 : 2");
        return page;
    }

    @Test
    void aPlateIsEnteredByKeysAlone() {
        Page page = openEmpty();
        page.keyboard().type("9 : 1");
        page.keyboard().press("Enter");
        assertEquals("add-l1", focused(page));
        page.keyboard().type(".06");
        assertEquals("rf-r1", focused(page));
        page.keyboard().press("Enter");
        assertEquals("add-l1", focused(page));
        page.keyboard().type(",14");
        page.keyboard().press("Enter");
        answered(page);
        assertEquals(".06", value(page, "rf-r1"));
        assertEquals("13.1", value(page, "mm-r1"), "10 mm + 0.06 of 52 mm");
        assertEquals(",14", value(page, "rf-r2"));
        assertEquals(
                List.of("A", "B"),
                page.locator("#spots input").all().stream()
                        .map(each -> each.inputValue())
                        .toList());
        page.keyboard().press("Control+z");
        assertEquals(1, seen(page), "a typed spot is one step");
    }

    @ParameterizedTest
    @CsvSource({
        "ArrowUp, 14",
        "ArrowDown, 13",
        "Shift+ArrowUp, 13.6",
        "PageUp, 15.5",
        "PageDown, 11.5",
        "Home, 10",
        "End, 62"
    })
    void keysMoveASpotBetweenTheLines(String key, String mm) {
        Page page = open();
        page.focus("#seen-r1");
        page.keyboard().press(key);
        assertEquals(mm, value(page, "mm-r1"));
        assertEquals("seen-r1", focused(page));
        page.keyboard().press("End");
        page.keyboard().press("ArrowUp");
        assertEquals("62", value(page, "mm-r1"), "no spot beyond the front");
    }

    @Test
    void aSpotSaysWhatItIsAndWhere() {
        Page page = open();
        assertEquals("slider", page.getAttribute("#seen-r2", "role"));
        assertEquals("B in lane 1 of plate 1", page.getAttribute("#seen-r2", "aria-label"));
        assertEquals("B, Rf 0.14, 17.5 mm", page.getAttribute("#seen-r2", "aria-valuetext"));
        assertEquals("0.14", page.getAttribute("#seen-r2", "aria-valuenow"));
        page.fill("#mm-r2", "high");
        assertEquals("B, no number yet", page.getAttribute("#seen-r2", "aria-valuetext"));
        assertEquals("high", value(page, "mm-r2"));
        assertEquals("", value(page, "rf-r2"));
    }

    @Test
    void aDragMovesASpotAndIsOneStep() {
        Page page = openChanged();
        drag(page, place(page, 10, 13.5), place(page, 10, 30.1));
        assertEquals("30", value(page, "mm-r1"), "to the half millimetre");
        assertEquals("0.38", value(page, "rf-r1"), "20 of 52 mm");
        assertEquals("seen-r1", focused(page));
        assertEquals(3, seen(page));
        page.click("#undo");
        assertEquals("13.5", value(page, "mm-r1"));
    }

    @Test
    void aTapAddsASpotInTheNearestLaneUnlessOneIsNear() {
        Page page = openChanged();
        click(page, place(page, 33, 40.2));
        assertEquals(1, page.locator("#list-l2 #mm-r4").count());
        assertEquals("40", value(page, "mm-r4"));
        click(page, place(page, 31, 41));
        assertEquals(4, seen(page), "a press near a spot takes that one");
        assertTrue(page.getAttribute("#reading-r4", "class").contains("open"));
        page.keyboard().press("Delete");
        assertEquals(3, seen(page));
        assertEquals("add-l2", focused(page));
    }

    @Test
    void theLinesAreDraggedAndSpotsKeepWhatWasMeasured() {
        Page page = openChanged();
        page.fill("#rf-r3", "0.5");
        drag(page, place(page, 41, 62), place(page, 41, 52));
        assertEquals("52", page.evaluate("document.getElementById('front-p1').value"));
        assertEquals("13.5", value(page, "mm-r1"), "given in mm");
        assertEquals("0.5", value(page, "rf-r3"), "given as Rf");
        assertEquals("31", value(page, "mm-r3"), "midway between 10 and 52 mm");
        drag(page, place(page, 41, 52), place(page, 41, 2));
        assertEquals("11", page.evaluate("document.getElementById('front-p1').value"), "1 mm above the start line");
    }

    @Test
    void aFingerMovesSpotsAndScrollsThePageElsewhere() {
        Page page = open(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        page.evaluate("document.getElementById('layer-p1').scrollIntoView({block: 'center'})");
        assertEquals(true, touchIsTaken(page, place(page, 10, 13.5)), "on a spot");
        assertEquals(false, touchIsTaken(page, place(page, 20, 45)), "on the bare layer");
        assertEquals(true, touchIsTaken(page, place(page, 41, 62)), "on the grip of the front");
        Place bare = place(page, 30, 45);
        page.touchscreen().tap(bare.x(), bare.y());
        assertEquals("45", value(page, "mm-r4"));
        assertEquals(0, page.evaluate("document.documentElement.scrollWidth - innerWidth"));
    }

    /** Whether a touch is kept from scrolling the page. */
    private static Object touchIsTaken(Page page, Place place) {
        return page.evaluate("""
                ([x, y]) => {
                    const under = document.elementFromPoint(x, y);
                    const event = { bubbles: true, cancelable: true, clientX: x, clientY: y, pointerId: 1, isPrimary: true };
                    const svg = document.getElementById('layer-p1');
                    svg.setPointerCapture = () => undefined;
                    under.dispatchEvent(new PointerEvent('pointerdown', { ...event, pointerType: 'touch' }));
                    const touch = new Touch({ identifier: 1, target: under, clientX: x, clientY: y });
                    const free = under.dispatchEvent(new TouchEvent('touchstart', { ...event, touches: [touch] }));
                    under.dispatchEvent(new PointerEvent('pointercancel', { ...event, pointerType: 'touch' }));
                    delete svg.setPointerCapture;
                    return !free;
                }
                """, List.of(place.x(), place.y()));
    }

    @Test
    void aCompoundIsMarkedOnEveryPlateAndOnTheExpectedOne() {
        Page page = open();
        answered(page);
        page.hover("#reading-r1");
        page.locator("#seen-r3.fellow").waitFor();
        page.locator("#ghost-cloud-s1.fellow").waitFor();
        assertEquals(0, page.locator("#seen-r2.fellow").count());
    }

    @Test
    void aSpotCanHideTwoCompoundsOrBeUnsure() {
        Page page = open();
        page.locator("#which-r3").selectOption("s1 s2");
        assertEquals(2, page.locator("#seen-r3 .spot").count(), "of two colours");
        assertEquals("A B", page.locator("#seen-r3 .letter").textContent());
        page.locator("#which-r3").selectOption("");
        assertEquals("?", page.locator("#seen-r3 .letter").textContent());
        assertEquals(1, page.locator("#seen-r3 .spot.unknown").count());
    }

    @Test
    void whatWasLookedForAndNotSeenIsNotOfferedOnceItIsRead() {
        Page page = open();
        page.click("#size-p1");
        assertEquals(0, page.locator("#not-seen-p1").count(), "both were read");
        page.click("#remove-r2");
        page.check("#not-seen-p1-s2");
        assertTrue(page.textContent("#not-seen-p1").contains("Not seen is not absent"));
        page.locator("#which-r3").selectOption("s2");
        assertFalse(page.isVisible("#not-seen-p1-s2"));
    }

    @Test
    void lanesAndPlatesComeAndGo() {
        Page page = open();
        page.click("#add-lane-p1");
        assertEquals("add-l3", focused(page));
        page.click("#remove-lane-p1");
        assertEquals(0, page.locator("#add-l3").count());
        page.click("#add-plate");
        assertEquals("eluent-p2", focused(page));
        button(page, "4 : 1").click();
        assertEquals("4 : 1", value(page, "eluent-p2"));
        assertEquals("add-l3", focused(page));
        button(page, "Remove plate 1").click();
        button(page, "Remove plate 1").click();
        assertEquals(0, page.locator("fieldset").count());
        page.click("#add-plate");
        // not p1 where something was advised after it: an id is never given twice
        assertEquals(page.locator("fieldset input[id^=eluent-]").getAttribute("id"), focused(page));
    }

    @ParameterizedTest
    @CsvSource({"100, 8", "20, 1", "200, 3"})
    void platesOfAnySizeFitAndCanBeRead(String widthMm, int lanes) {
        Page page = open();
        page.click("#size-p1");
        page.fill("#width-p1", widthMm);
        for (int lane = 2; lane < lanes; lane++) {
            page.click("#add-lane-p1");
        }
        for (int width : List.of(360, 390, 768, 1280, 1920)) {
            page.setViewportSize(width, 900);
            assertEquals(0, page.evaluate("document.documentElement.scrollWidth - innerWidth"), width + " px");
            BoundingBox letter = page.locator("#seen-r1 .letter").boundingBox();
            assertTrue(letter.height > 12, "letters of " + letter.height + " px at " + width + " px");
        }
        assertClean(page);
    }
}
