package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.FilePayload;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From a picture of a plate to its readings and the advice that rests on them, by hand and by keys; nothing of it leaves the browser. */
class PhotoIT extends OnPhoto {
    /** What was drawn is found again to this [Rf]: about a standard error of two lines on a plate of 50 mm. */
    private static final double NEAR_RF = 0.02;
    /** Corners are found to this, in fractions of the picture: about a millimetre. */
    private static final double NEAR_CORNER = 0.015;

    private final List<Request> sent = new ArrayList<>();

    private Page openHearing() {
        Page page = open();
        page.onRequest(sent::add);
        return page;
    }

    private static List<Double> drawn() {
        return DrawnPlate.SPOTS.stream().map(DrawnPlate.Spot::rf).toList();
    }

    private static void assertRfs(List<Double> expected, List<Double> found) {
        assertEquals(expected.size(), found.size(), found.toString());
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i), found.get(i), NEAR_RF, found.toString());
        }
    }

    private static List<String> values(Page page, String selector) {
        return page.locator(selector).all().stream()
                .map(each -> each.inputValue())
                .toList();
    }

    @Test
    void aPictureBecomesReadingsThatTheAdviceRestsOn() {
        Page page = openHearing();
        answered(page);
        outlined(page, DrawnPlate.jpeg());
        assertEquals("true", page.getAttribute("#photo-light-uv-254", "aria-pressed"));
        for (int corner = 0; corner < 4; corner++) {
            Point2D truth = DrawnPlate.at(
                    corner == 0 || corner == 3 ? 0 : DrawnPlate.WIDTH_MM, corner < 2 ? 0 : DrawnPlate.HEIGHT_MM);
            String x = page.getAttribute("#photo-corner-" + corner + "-at", "x").replace("%", "");
            String y = page.getAttribute("#photo-corner-" + corner + "-at", "y").replace("%", "");
            assertEquals(truth.getX(), Double.parseDouble(x) / 100, NEAR_CORNER, "corner " + corner);
            assertEquals(truth.getY(), Double.parseDouble(y) / 100, NEAR_CORNER, "corner " + corner);
        }
        read(page);
        assertRfs(drawn(), rfs(page));
        assertTrue(page.textContent("#photo-replaces").contains("3 spots that plate 1 has"));
        assertEquals(3, page.locator("#layer-p1 .seen").count(), "not before it is said");
        taken(page);
        assertEquals("photo-p1", focused(page));
        assertRfs(
                drawn(),
                values(page, "input[id^=rf-r]").stream().map(Double::valueOf).toList());
        assertEquals(2, page.locator("#list-l1 > li").count(), "lanes as on the photo, from the left");
        assertEquals(1, page.locator("#list-l2 > li").count());
        answered(page);
        assertEquals(DrawnPlate.START_MM, Double.parseDouble(value(page, "start-p1")), 1, "mean height of the line");
        assertEquals(DrawnPlate.FRONT_MM, Double.parseDouble(value(page, "front-p1")), 1);
        kept(page, "saved");
        String study = String.valueOf(page.evaluate(
                "async id => JSON.stringify((await (await fetch('/api/studies/' + id)).json()).study.plates[0])",
                idOf(page)));
        assertTrue(study.contains("\"seen\":\"uv-254\""), study);
        assertTrue(study.contains("\"shape\":\"compact\""), study);
        assertTrue(study.contains("\"errorMm\":"), study);
        assertFalse(study.contains("\"photo\""), "nobody asked for the picture to be kept");
        assertTrue(
                sent.stream()
                        .anyMatch(request -> request.url().endsWith("/api/advice")
                                && request.postData() != null
                                && request.postData().contains("\"errorMm\":")),
                "the advice is asked for with the errors of the photo");
        page.click("#undo");
        assertEquals("13.5", value(page, "mm-r1"), "one step brings back what was there");
        assertEquals("62", value(page, "front-p1"));
        page.click("#redo");
        kept(page, "saved");
        page.reload();
        ready(page);
        assertRfs(
                drawn(),
                values(page, "input[id^=rf-r]").stream().map(Double::valueOf).toList());
        assertNoPictureWasSent();
    }

    private void assertNoPictureWasSent() {
        assertTrue(sent.stream().anyMatch(request -> request.method().equals("PUT")), "the study was saved");
        String begin = Base64.getEncoder().encodeToString(DrawnPlate.jpeg()).substring(0, 24);
        for (Request request : sent) {
            byte[] body = request.postDataBuffer();
            if (body == null) {
                continue;
            }
            String text = request.postData();
            assertFalse(request.url().contains("/photos"), request.url());
            assertFalse(body.length > 20_000 || text.contains(begin) || (body[0] == (byte) 0xff), request.url());
        }
    }

    @Test
    void byKeysAloneFromThePictureToTheReadings() {
        Page page = open();
        page.onFileChooser(chooser -> {}); // listened for before a key opens it
        answered(page);
        page.focus("#photo-p1");
        page.keyboard().press("Enter");
        page.waitForSelector("#photo-choose");
        assertEquals("photo-title", focused(page));
        for (int tab = 0; tab < 8 && !focused(page).equals("photo-choose"); tab++) {
            page.keyboard().press("Tab");
        }
        FileChooser chooser = page.waitForFileChooser(() -> page.keyboard().press("Enter"));
        chooser.setFiles(new FilePayload("plate.jpg", "image/jpeg", DrawnPlate.jpeg()));
        page.waitForSelector("#photo-straighten:focus");
        page.keyboard().press("Shift+Tab");
        assertEquals("photo-corner-3", focused(page));
        String before = page.getAttribute("#photo-corner-3-at", "x");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        assertNotEquals(before, page.getAttribute("#photo-corner-3-at", "x"));
        page.keyboard().press("ArrowLeft");
        page.keyboard().press("ArrowLeft");
        assertEquals(before, page.getAttribute("#photo-corner-3-at", "x"));
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        page.waitForSelector("#photo-take:focus");
        page.locator(".photo-spot").nth(1).focus();
        String named = focused(page);
        assertEquals("Spot 2 in lane 1", page.getAttribute("#" + named, "aria-label"));
        page.keyboard().press("Shift+ArrowUp");
        assertEquals(named, focused(page));
        page.keyboard().press("Shift+ArrowDown");
        page.locator(".photo-spot").nth(2).focus();
        page.keyboard().press("Delete");
        assertEquals(2, rfs(page).size());
        page.keyboard().press("Control+z");
        assertRfs(drawn(), rfs(page));
        assertEquals(3, page.locator("#layer-p1 .seen").count(), "a step of the photo is none of the sheet");
        page.focus("#photo-take");
        page.keyboard().press("Enter");
        answered(page);
        assertEquals("photo-p1", focused(page));
        assertRfs(
                drawn(),
                values(page, "input[id^=rf-r]").stream().map(Double::valueOf).toList());
    }

    @Test
    void whatLiesWrongIsDraggedAndTappedAndTakenBack() {
        Page page = openEmpty();
        outlined(page, DrawnPlate.jpeg());
        read(page);
        assertEquals(
                "With them go the start line and the front as they lie here.", page.textContent("#photo-replaces"));
        drag(page, "#photo-front-1", 0, 40);
        settled(page);
        assertTrue(
                rfs(page).stream().anyMatch(rf -> rf > 0.65), "a front that hangs lower makes Rf larger: " + rfs(page));
        drag(page, "#photo-front-1", 0, 3000);
        settled(page);
        assertEquals(0, page.locator("#photo-lines-fault").count(), "a front is held above the start line");
        page.click("#photo-undo");
        page.click("#photo-undo");
        settled(page);
        assertRfs(drawn(), rfs(page));
        double[] bare = middle(page, "#photo-marks");
        page.mouse().click(bare[0] + 60, bare[1] - 100);
        page.waitForSelector("#photo-spots-list li:nth-child(4)");
        assertTrue(page.getAttribute("#" + focused(page), "class").contains("photo-spot"));
        page.keyboard().press("Delete");
        assertEquals(3, spots(page).size());
        page.click("#photo-add-lane");
        settled(page);
        assertEquals(3, page.locator(".photo-number").count());
        page.keyboard().press("Delete");
        settled(page);
        assertEquals(2, page.locator(".photo-number").count());
        page.locator(".photo-spot").nth(0).focus();
        page.keyboard().press("Delete");
        page.click("#photo-propose");
        settled(page);
        assertRfs(drawn(), rfs(page));
        page.click("#photo-take");
        answered(page);
        assertEquals(List.of("A", "B"), values(page, "#spots input"), "as many compounds as a lane shows");
    }

    @Test
    void aPlateThatLaySidewaysIsTurnedAndOneThatTheCameraTurnedIsUpright() {
        Page page = open();
        outlined(page, DrawnPlate.written(DrawnPlate.turned(DrawnPlate.picture(), 1), "jpeg"));
        page.click("#photo-turn-left");
        read(page);
        assertRfs(drawn(), rfs(page));
        page.click("#photo-to-begin");
        choose(page, "phone.jpg", DrawnPlate.jpegOnItsSide());
        page.waitForSelector("#photo-picture[aria-label*='phone.jpg']");
        assertEquals(
                "900 1200",
                page.evaluate(
                        "(({ width, height }) => `${width} ${height}`)(document.getElementById('photo-picture'))"));
        read(page);
        assertRfs(drawn(), rfs(page));
    }

    @Test
    void aClosedPhotoIsFoundAgainItsWorkerEndsAndAnotherStudyForgetsIt() {
        Page page = open();
        outlined(page, DrawnPlate.jpeg());
        read(page);
        page.locator(".photo-spot").nth(0).focus();
        page.keyboard().press("Delete");
        assertEquals(1, page.workers().size());
        page.click("#photo-close");
        page.waitForCondition(() -> page.workers().isEmpty());
        assertEquals("photo-p1", focused(page));
        page.click("#photo-p1");
        assertEquals(2, spots(page).size());
        page.focus("#photo-start-0");
        page.keyboard().press("Shift+ArrowUp");
        settled(page);
        assertEquals(2, spots(page).size(), "the worker is begun anew, and what a hand took away stays away");
        page.click("#clear");
        assertTrue(page.isHidden("#photo"));
        page.click("#photo-p1");
        page.waitForSelector("#photo-choose");
    }

    @Test
    void theSizeOfThePlateIsThatOfItsForm() {
        Page page = open();
        outlined(page, DrawnPlate.jpeg());
        page.fill("#photo-height", "140");
        assertEquals("140", page.inputValue("#height-p1"));
        page.fill("#photo-width", "wide");
        assertEquals(
                "The plate’s width “wide” is none. Allowed: 5 to 1000 mm. Type what the ruler says; until then the usual size is taken.",
                page.textContent("#photo-width-fault"));
        page.fill("#photo-width", "80");
        read(page);
        assertRfs(drawn(), rfs(page));
        taken(page);
        assertEquals(2 * DrawnPlate.START_MM, Double.parseDouble(value(page, "start-p1")), 2, "in mm of this plate");
    }

    @Test
    void aPictureIsAlsoDroppedAndPasted() {
        Page page = open();
        for (String way : List.of("drop", "paste")) {
            openPhoto(page);
            page.evaluate("""
                    ([way, base64]) => {
                        const bytes = Uint8Array.from(atob(base64), sign => sign.charCodeAt(0));
                        const data = new DataTransfer();
                        data.items.add(new File([bytes], `${way}.jpg`, { type: 'image/jpeg' }));
                        const event = way === 'drop' ? new DragEvent(way, { dataTransfer: data, bubbles: true, cancelable: true })
                            : new ClipboardEvent(way, { clipboardData: data, bubbles: true, cancelable: true });
                        document.getElementById('photo-begin').dispatchEvent(event);
                    }
                    """, List.of(way, Base64.getEncoder().encodeToString(DrawnPlate.jpeg())));
            page.waitForSelector("#photo-picture[aria-label*='" + way + ".jpg']");
            page.click("#clear");
        }
    }
}
