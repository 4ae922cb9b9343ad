package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plates from weak to strong, one of them pulled by hand. */
class SeriesIT extends OnLesson {
    private static Page series(Page page) {
        part(page, "series");
        page.waitForSelector("#series-hand");
        return page;
    }

    /** How far from the upper edge a spot lies on the plate that is pulled [mm]. */
    private static double depth(Page page, int spot) {
        return Double.parseDouble(page.getAttribute("#series-hand-spot-" + spot + " .lesson-body", "cy"));
    }

    @Test
    void pulledByKeyboardEverySpotClimbsAndTheRatioIsToldInWords() {
        Page page = series(openLesson());
        page.focus("#series-share");
        page.keyboard().press("Home");
        String weakest = page.getAttribute("#series-share", "aria-valuetext");
        assertTrue(weakest.contains("hexane"), weakest);
        double[] before = {depth(page, 0), depth(page, 1), depth(page, 2)};
        for (int step = 0; step < 6; step++) {
            page.keyboard().press("PageUp");
        }
        assertEquals("series-share", focused(page));
        assertNotEquals(weakest, page.getAttribute("#series-share", "aria-valuetext"));
        for (int spot = 0; spot < 3; spot++) {
            assertTrue(depth(page, spot) < before[spot], "spot " + spot + " climbs");
        }
        page.keyboard().press("End");
        assertTrue(page.getAttribute("#series-share", "aria-valuetext").contains("100"));
        page.waitForSelector("#spoken:has-text('ethyl acetate')");
    }

    @Test
    void theRowGoesFromWeakToStrongAndEndsShowsThree() {
        Page page = series(openLesson());
        int plates = page.locator("#series-row svg").count();
        assertTrue(plates >= 5 && plates <= 7, "plates " + plates);
        assertTrue(page.locator("#series-see li").count() >= 4);
        page.click("#series-kind-ends");
        page.waitForSelector("#series-row:has(#series-2):not(:has(#series-3))");
        assertEquals("true", page.getAttribute("#series-kind-ends", "aria-pressed"));
        page.reload();
        ready(page);
        page.waitForSelector("#series-row:has(#series-2):not(:has(#series-3))");
    }

    @Test
    void theCloudIsShownAndHiddenByKeyboard() {
        Page page = series(openLesson());
        assertEquals(0, page.locator("#series-hand .lesson-cloud").count());
        page.focus("#series-cloud");
        page.keyboard().press("Space");
        page.waitForSelector("#series-cloud-says");
        assertEquals(3 * 24, page.locator("#series-hand .lesson-cloud").count());
        page.keyboard().press("Space");
        page.waitForSelector("#series-hand:not(:has(.lesson-cloud))");
        assertEquals("series-cloud", focused(page));
    }

    @Test
    void theOtherLayerIsMarkedAsAnIllustrationAndClaimsNoBand() {
        Page page = series(openLesson());
        page.click("#series-kind-layers");
        page.waitForSelector("#series-layer");
        assertTrue(page.textContent("#series-layer-figure").contains("illustration"));
        assertTrue(page.textContent("#series-beside").contains("Illustration by theory"));
        page.click("#series-cloud");
        assertEquals(
                0,
                page.locator("#series-layer .lesson-band, #series-layer .lesson-cloud")
                        .count());
    }

    @Test
    void anotherPairOfEqualStrengthStandsBesideUntilItReachesItsEnd() {
        Page page = series(openLesson());
        page.click("#series-kind-solvents");
        page.waitForSelector("#series-other");
        assertEquals(3, page.locator("#series-partings li").count(), "three compounds are three pairs");
        page.selectOption("#series-against", "hexane diethyl-ether");
        page.waitForSelector("#series-beside:has-text('diethyl ether')");
        page.focus("#series-share");
        page.keyboard().press("End");
        page.waitForSelector("#series-other-none");
        assertFalse(page.isVisible("#series-partings"));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 360", "DARK, 360"})
    void isCleanAndLargeEnough(ColorScheme scheme, int width) {
        Page page = series(openLesson(scheme, width, 900));
        page.click("#series-cloud");
        page.click("#series-numbers > summary");
        for (String kind : List.of("series", "ends", "solvents", "layers")) {
            page.click("#series-kind-" + kind);
            page.waitForSelector(
                    kind.equals("layers")
                            ? "#series-layer"
                            : kind.equals("solvents") ? "#series-other" : "#series-hand");
            assertClean(page);
            ViewsIT.assertNothingSpills(page);
        }
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#lesson-part "));
        shoot(page, String.format(Locale.ROOT, "series-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 600, 900, 1440})
    void spillsAtNoWidth(int width) {
        Page page = series(openLesson(ColorScheme.LIGHT, width, 900));
        page.click("#series-kind-solvents");
        page.waitForSelector("#series-other");
        ViewsIT.assertNothingSpills(page);
    }

    /** The lanes of the plate that is pulled, from its left side [mm]. */
    private static List<Double> lanes(Page page) {
        return page.locator("#series-hand .lesson-body").all().stream()
                .map(body -> Double.parseDouble(body.getAttribute("cx")))
                .toList();
    }

    @Test
    void sixLanesKeepTheRoomThatIsAskedOfEveryPlate() {
        Page page = openLesson();
        page.click("#sample-fold > summary");
        page.click("#ready-ladder");
        part(page, "series");
        page.waitForSelector("#series-hand-spot-5");
        List<Double> lanes = lanes(page);
        double width =
                Double.parseDouble(page.getAttribute("#series-hand", "viewBox").split(" ")[2]);
        // at least 5 mm from the sides, about 8 mm apart; common practice, no source
        assertTrue(lanes.get(0) >= 5 && width - lanes.get(5) >= 5, lanes + " of " + width);
        for (int lane = 1; lane < lanes.size(); lane++) {
            assertTrue(lanes.get(lane) - lanes.get(lane - 1) >= 8, lanes.toString());
        }
        page.click("#series-kind-solvents");
        page.waitForSelector("#series-partings-more");
        assertEquals(3, page.locator("#series-partings > ul > li").count());
        assertEquals(12, page.locator("#series-partings-more li").count(), "six compounds are fifteen pairs");
    }

    @ParameterizedTest
    @CsvSource({"en, before your last change", "de, vor Ihrer letzten Änderung"})
    void thePlatesBeforeStayWholeAndAreMarkedWhileWhatIsEnteredIsRefused(String language, String words) {
        Page page = series(openLesson());
        page.selectOption("#language", language);
        page.waitForSelector("html[lang=" + language + "]");
        shown(page, "series");
        page.click("#sample-fold > summary");
        page.selectOption("#lesson-what-c1", "by smiles");
        page.fill("#lesson-name-c2", "");
        page.fill("#lesson-name-c3", "a name that is long, as some are");
        page.waitForSelector("#series-shown.old #series-before:has-text('" + words + "')");
        assertWhole(page, 3);
        page.click("#lesson-remove-c1");
        page.click("#lesson-remove-c2");
        page.waitForSelector("#series-shown:not(.old):not(:has(#series-hand-spot-1))");
        assertEquals("", page.textContent("#series-before"));
        assertWhole(page, 1);
    }

    /** The layer, both lines and the spots of the plate that is pulled are there and take room. */
    private static void assertWhole(Page page, int spots) {
        assertTrue(page.isVisible("#series-hand .bare path.layer"));
        assertEquals(
                2,
                page.locator("#series-hand > g:not(.bare):has(> path.pencil.faint)")
                        .count(),
                "start line and front");
        assertEquals(spots, page.locator("#series-hand .lesson-spot").count());
    }

    @Test
    void isGermanInGerman() {
        Page page = series(openLesson());
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.waitForSelector("#series-see:has-text('liegen die Flecken')");
        assertTrue(page.textContent("#series-kinds").contains("Zwei Schichten"));
    }
}
