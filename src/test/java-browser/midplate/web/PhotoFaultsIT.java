package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.awt.Color;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What cannot be read is told at its entry, with what came, what is allowed and what to do; what was entered stays. Pictures are kept only if one says so. */
class PhotoFaultsIT extends OnPhoto {
    /** Files that are no photo of a plate, and what is said of them. */
    enum Bad {
        TEXT("notes.jpg", "no picture that can be read", "choose the photo itself"),
        HEIC("phone.jpg", "HEIC", "JPEG, PNG and WebP can be read"),
        HUGE("huge.png", "has 60 megapixels", "At most 50"),
        BLACK("dark.png", "black all over", "more light"),
        WHITE("flash.png", "white all over", "without flash"),
        SMALL("preview.png", "has 40 × 30 pixels", "not its preview");

        final String file;
        final List<String> told;

        Bad(String file, String... told) {
            this.file = file;
            this.told = List.of(told);
        }

        byte[] bytes() {
            return switch (this) {
                case TEXT -> "Rf 0.3, Rf 0.6".getBytes(StandardCharsets.UTF_8);
                case HEIC -> DrawnPlate.heic();
                case HUGE -> DrawnPlate.hugePng();
                case BLACK -> DrawnPlate.written(DrawnPlate.plain(Color.BLACK), "png");
                case WHITE -> DrawnPlate.written(DrawnPlate.plain(Color.WHITE), "png");
                case SMALL -> DrawnPlate.written(DrawnPlate.picture().getSubimage(400, 500, 40, 30), "png");
            };
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFileThatIsNoPhotoIsToldAndWhatWasThereStays(Bad bad) {
        Page page = open();
        openPhoto(page);
        choose(page, bad.file, bad.bytes());
        page.waitForSelector("#photo-file-fault");
        assertTold(page, bad);
        assertEquals("photo-file-fault", page.getAttribute("#photo-choose", "aria-describedby"));
        choose(page, "plate.jpg", DrawnPlate.jpeg());
        page.waitForSelector("#photo-straighten");
        assertEquals(0, page.locator("#photo-file-fault").count());
        read(page);
        List<String> before = spots(page);
        page.click("#photo-to-begin");
        choose(page, bad.file, bad.bytes());
        page.waitForSelector("#photo-file-fault");
        page.click("#photo-to-marks");
        assertTold(page, bad);
        assertEquals(before, spots(page));
        page.focus("#photo-start-0");
        page.keyboard().press("Shift+ArrowUp");
        page.keyboard().press("Shift+ArrowDown");
        settled(page);
        assertEquals(before.size(), spots(page).size(), "the picture before is read on");
        assertEquals(0, page.locator("#photo-lines-fault").count());
    }

    private static void assertTold(Page page, Bad bad) {
        String told = page.textContent("#photo-file-fault");
        assertTrue(told.contains(bad.file), told);
        bad.told.forEach(each -> assertTrue(told.contains(each), told));
        assertEquals(told, page.textContent("#photo-spoken"), "whoever does not see it hears it");
    }

    @Test
    void whereNoPlateIsFoundTheCornersLieInTheMiddle() {
        Page page = open();
        openPhoto(page);
        choose(page, "bench.png", DrawnPlate.written(DrawnPlate.plain(new Color(120, 110, 100)), "png"));
        page.waitForSelector("#photo-straighten");
        assertTrue(
                page.textContent("#photo-found").startsWith("No plate was found in this picture"),
                page.textContent("#photo-found"));
        String left = page.getAttribute("#photo-corner-0-at", "x");
        String right = page.getAttribute("#photo-corner-1-at", "x");
        double width = Double.parseDouble(right.replace("%", "")) - Double.parseDouble(left.replace("%", ""));
        assertTrue(width > 30 && width < 80, left + " to " + right);
    }

    @Test
    void anOutlineThatCrossesItselfIsTold() {
        Page page = open();
        outlined(page, DrawnPlate.jpeg());
        double[] from = middle(page, "#photo-corner-0");
        double[] to = middle(page, "#photo-corner-1");
        drag(page, "#photo-corner-0", to[0] - from[0] + 60, 0);
        page.click("#photo-straighten");
        page.waitForSelector("#photo-corners-fault");
        assertTrue(page.textContent("#photo-corners-fault").contains("crosses itself"));
        assertEquals("photo-corners-fault", page.getAttribute("#photo-straighten", "aria-describedby"));
        page.click("#photo-undo");
        assertEquals(0, page.locator("#photo-corners-fault").count());
        read(page);
        assertEquals(DrawnPlate.SPOTS.size(), spots(page).size());
    }

    @Test
    void anOutlineOfNothingIsTold() {
        Page page = open();
        outlined(page, DrawnPlate.jpeg());
        double[] to = middle(page, "#photo-picture");
        for (int corner = 0; corner < 4; corner++) {
            double[] from = middle(page, "#photo-corner-" + corner);
            double right = corner == 1 || corner == 2 ? 2 : -2;
            drag(page, "#photo-corner-" + corner, to[0] - from[0] + right, to[1] - from[1] + (corner < 2 ? 2 : -2));
        }
        page.click("#photo-straighten");
        page.waitForSelector("#photo-corners-fault");
        assertTrue(page.textContent("#photo-corners-fault").contains("too small"));
        assertTrue(page.isVisible("#photo-picture"), "what was outlined stays");
    }

    @Test
    void aPictureIsKeptIfOneSaysSoIsSeenAgainAndTakenOut() {
        Page page = open();
        List<Request> kept = new ArrayList<>();
        page.onRequest(request -> {
            if (request.url().contains("/photos") && request.method().equals("POST")) {
                kept.add(request);
            }
        });
        outlined(page, DrawnPlate.jpeg());
        read(page);
        assertFalse(page.isChecked("#photo-keep"), "off at first");
        page.check("#photo-keep");
        taken(page);
        kept(page, "saved");
        assertEquals(1, kept.size());
        page.reload();
        ready(page);
        page.click("#picture-p1");
        page.waitForSelector("#photo-kept img");
        assertEquals("photo-kept-open", focused(page));
        assertTrue(
                (Boolean)
                        page.evaluate(
                                "async () => { const image = document.querySelector('#photo-kept img'); await image.decode(); return image.naturalHeight > 300; }"));
        String address = page.getAttribute("#photo-kept-open", "href");
        page.click("#photo-kept-drop");
        page.waitForSelector("#photo:not(:has(#photo-kept))");
        assertEquals(0, page.locator("#picture-p1").count());
        assertEquals(404, page.evaluate("async address => (await fetch(address)).status", address));
    }

    @Test
    void whereAPictureCannotBeKeptTheReadingsAreTakenOverAllTheSame() {
        Page page = open();
        page.route("**/photos", Route::abort);
        outlined(page, DrawnPlate.jpeg());
        read(page);
        page.check("#photo-keep");
        page.click("#photo-take");
        page.waitForSelector("#photo-keep-fault");
        assertEquals("photo-keep-again", focused(page));
        assertEquals(DrawnPlate.SPOTS.size(), page.locator("#layer-p1 .seen").count());
        assertEquals("Plate 1 has these spots.", page.textContent("#photo-replaces"));
        page.unroute("**/photos");
        page.click("#photo-keep-again");
        page.waitForSelector("#picture-p1");
        assertEquals(0, page.locator("#photo-keep-fault").count());
    }
}
