package midplate.web;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.List;

/** The photo of a plate, with the real worker and the real answers behind it. */
abstract class OnPhoto extends OnStudies {
    static void openPhoto(Page page) {
        page.click("#photo-p1");
        page.waitForSelector("#photo-choose");
    }

    static void choose(Page page, String name, byte[] bytes) {
        String type = name.endsWith(".png") ? "image/png" : "image/jpeg";
        page.setInputFiles("#photo-choose-file", new FilePayload(name, type, bytes));
    }

    /** Opens a picture of a plate, as far as its corners. */
    static void outlined(Page page, byte[] bytes) {
        openPhoto(page);
        choose(page, "plate.jpg", bytes);
        page.waitForSelector("#photo-straighten");
    }

    /** As far as its spots. */
    static void read(Page page) {
        page.click("#photo-straighten");
        settled(page);
    }

    /** Once nothing is read any more. */
    static void settled(Page page) {
        page.waitForSelector(
                "#photo-stage-marks[data-waiting=no]",
                new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
    }

    static void taken(Page page) {
        page.click("#photo-take");
        page.waitForSelector("#photo", new Page.WaitForSelectorOptions().setState(WaitForSelectorState.HIDDEN));
    }

    /** What the list of spots says, line by line. */
    static List<String> spots(Page page) {
        return page.locator("#photo-spots-list li").allTextContents();
    }

    /** The Rf of each spot in the list. */
    static List<Double> rfs(Page page) {
        return page.locator("#photo-spots-list .photo-find").allTextContents().stream()
                .map(text -> Double.valueOf(text.replaceAll("^Rf (\\S+) .*$", "$1")))
                .toList();
    }

    /** The middle of an element on the screen. */
    static double[] middle(Page page, String selector) {
        BoundingBox box = page.locator(selector).boundingBox();
        return new double[] {box.x + box.width / 2, box.y + box.height / 2};
    }

    static void drag(Page page, String selector, double right, double down) {
        page.locator(selector).scrollIntoViewIfNeeded();
        double[] from = middle(page, selector);
        page.mouse().move(from[0], from[1]);
        page.mouse().down();
        page.mouse().move(from[0] + right / 2, from[1] + down / 2);
        page.mouse().move(from[0] + right, from[1] + down);
        page.mouse().up();
    }
}
