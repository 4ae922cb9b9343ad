package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A photo of a plate: clean by the accessibility rules, at every width, in both themes and languages. */
class PhotoViewsIT extends OnPhoto {
    private static final double TOUCH = 44;

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnoughAtEachStageAndWithFaults(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        String shown = String.format(Locale.ROOT, "-%s-%d", scheme, width).toLowerCase(Locale.ROOT);
        openPhoto(page);
        assertCleanAndLarge(page);
        shoot(page, "photo-begin" + shown);
        choose(page, "notes.jpg", "text".getBytes(StandardCharsets.UTF_8));
        page.waitForSelector("#photo-file-fault");
        assertCleanAndLarge(page);
        choose(page, "plate.jpg", DrawnPlate.jpeg());
        page.waitForSelector("#photo-straighten");
        page.fill("#photo-height", "?");
        page.waitForSelector("#photo-height-fault");
        assertCleanAndLarge(page);
        shoot(page, "photo-corners" + shown);
        page.fill("#photo-height", "70");
        assertHandlesAreLarge(page, ".photo-handle");
        read(page);
        page.locator(".photo-spot").nth(0).focus();
        assertCleanAndLarge(page);
        assertHandlesAreLarge(page, ".photo-handle, .photo-spot");
        shoot(page, "photo-marks" + shown);
    }

    private static void assertCleanAndLarge(Page page) {
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#photo "));
        ViewsIT.assertNothingSpills(page);
    }

    private static void assertHandlesAreLarge(Page page, String selector) {
        page.locator(selector).all().forEach(each -> {
            BoundingBox box = each.boundingBox();
            assertEquals(
                    true,
                    box.width >= TOUCH && box.height >= TOUCH,
                    each.getAttribute("id") + " " + box.width + " " + box.height);
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void spillsAtNoWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        openPhoto(page);
        ViewsIT.assertNothingSpills(page);
        choose(page, "plate.jpg", DrawnPlate.jpeg());
        page.waitForSelector("#photo-straighten");
        ViewsIT.assertNothingSpills(page);
        read(page);
        ViewsIT.assertNothingSpills(page);
        Object cut = page.evaluate("""
                () => [...document.querySelectorAll('#photo :is(button, input, p, li, canvas, g)')]
                    .filter(each => each.checkVisibility() && !each.classList.contains('unseen'))
                    .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                    .map(each => each.id || each.className || each.tagName)
                """);
        assertEquals(List.of(), cut);
        BoundingBox plate = page.locator("#photo-flat").boundingBox();
        assertEquals(true, plate.width > (width < 600 ? 170 : 200), "large enough for fingers: " + plate.width);
        BoundingBox profile = page.locator("#photo-profile-drawn").boundingBox();
        assertEquals(plate.height, profile.height, 1, "the profile has the plate's scale");
        assertEquals(plate.y, profile.y, 1);
    }

    @Test
    void aFingerMovesACornerUnderTheMagnifiedCircleAndScrollsThePageElsewhere() {
        Page page = open(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        openPhoto(page);
        assertEquals(true, page.isVisible("#photo-take-picture"), "where there is a finger there is a camera");
        assertEquals("environment", page.getAttribute("#photo-take-picture-file", "capture"));
        choose(page, "plate.jpg", DrawnPlate.jpeg());
        page.waitForSelector("#photo-straighten");
        page.evaluate("document.getElementById('photo').scrollIntoView()");
        assertEquals(true, touchIsTaken(page, middle(page, "#photo-corner-1"), "photo-outline"));
        assertEquals(false, touchIsTaken(page, middle(page, "#photo-picture"), "photo-outline"));
        double[] from = middle(page, "#photo-corner-1");
        page.mouse().move(from[0], from[1]);
        page.mouse().down();
        page.mouse().move(from[0] - 10, from[1] - 10);
        BoundingBox loupe = page.locator("#photo-loupe").boundingBox();
        double[] at = middle(page, "#photo-corner-1");
        double away = Math.hypot(loupe.x + loupe.width / 2 - at[0], loupe.y + loupe.height / 2 - at[1]);
        assertEquals(true, away > loupe.width / 2 + 10 && away < 160, "beside the finger: " + away);
        page.mouse().up();
        assertEquals(0, page.locator("#photo-loupe").count());
    }

    /** Whether a touch is kept from scrolling the page. */
    private static Object touchIsTaken(Page page, double[] place, String drawing) {
        return page.evaluate("""
                ([x, y, id]) => {
                    const under = document.elementFromPoint(x, y);
                    const event = { bubbles: true, cancelable: true, clientX: x, clientY: y, pointerId: 1, isPrimary: true };
                    const svg = document.getElementById(id);
                    svg.setPointerCapture = () => undefined;
                    under.dispatchEvent(new PointerEvent('pointerdown', { ...event, pointerType: 'touch' }));
                    const touch = new Touch({ identifier: 1, target: under, clientX: x, clientY: y });
                    const free = under.dispatchEvent(new TouchEvent('touchstart', { ...event, touches: [touch] }));
                    under.dispatchEvent(new PointerEvent('pointercancel', { ...event, pointerType: 'touch' }));
                    delete svg.setPointerCapture;
                    return !free;
                }
                """, List.of(place[0], place[1], drawing));
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = open();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        answered(page);
        openPhoto(page);
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        choose(page, "bild.jpg", "text".getBytes(StandardCharsets.UTF_8));
        page.waitForSelector("#photo-file-fault");
        seen.addAll(ViewsIT.english(page));
        choose(page, "bild.jpg", DrawnPlate.jpeg());
        page.waitForSelector("#photo-straighten");
        page.fill("#photo-width", "?");
        page.waitForSelector("#photo-width-fault");
        seen.addAll(ViewsIT.english(page));
        page.fill("#photo-width", "40");
        read(page);
        seen.addAll(ViewsIT.english(page));
        page.selectOption("#language", "en");
        page.waitForSelector("html[lang=en]");
        assertEquals("Photo of plate 1", page.textContent("#photo-title"));
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        answered(page);
        seen.addAll(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
    }
}
