package midplate.web;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;

/** The sheet of same, pure and done, with the real answers behind it. */
abstract class OnChecks extends OnStudies {
    /** A plate that many cut, as the sheet begins with it [mm]. */
    private static final double HEIGHT_MM = 70;

    static final double START_MM = 10;
    static final double RUN_MM = 52;

    /** Goes there from the head of the study. */
    static void openChecks(Page page) {
        page.click("#checks-open");
        page.waitForSelector("#layer-i1");
    }

    /** Taps a plate at a height in a lane, as one of so many lanes. */
    static void tap(Page page, String plate, int lane, int lanes, double mm) {
        BoundingBox box = page.locator("#layer-" + plate + " .backing").boundingBox();
        page.mouse().click(box.x + box.width * (lane - 0.5) / lanes, box.y + box.height * (1 - mm / HEIGHT_MM));
    }

    /** The three usual lanes with one spot each, by their heights [mm]. */
    static void threeLanes(Page page, double unknown, double both, double reference) {
        tap(page, "i1", 1, 3, unknown);
        tap(page, "i1", 2, 3, both);
        tap(page, "i1", 3, 3, reference);
    }

    /** Once the verdicts answer what stands on the plates. */
    static Locator told(Page page) {
        page.waitForSelector("#verdicts:not(.old)");
        return page.locator("#verdicts");
    }

    /** What is said of the first reference. */
    static String verdict(Page page) {
        told(page);
        return page.getAttribute("#verdict-0", "data-verdict");
    }

    /** Opens a part that is folded. */
    static void unfold(Page page, String part) {
        if (page.getAttribute("#check-" + part, "open") == null) {
            page.click("#check-" + part + " > summary");
        }
    }
}
