package midplate.web;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.WaitForSelectorOptions;
import com.microsoft.playwright.options.WaitForSelectorState;

/** The part of the page that follows a reaction, with the real verdict behind it. */
abstract class OnReaction extends OnStudies {
    /** Goes to the reaction of the sheet shown. */
    static void openReaction(Page page) {
        page.click("#checks-open");
        page.waitForSelector("#check-done");
        if (!page.isVisible("#reaction-next")) {
            page.click("#check-done > summary");
        }
        page.waitForSelector("#reaction-next");
    }

    /** Four plates on which the starting material fades while the product comes up, the short way. */
    static void fourPlates(Page page) {
        openReaction(page);
        page.click("#reaction-next");
        keys(page, "Enter 3 ArrowDown 1 Enter 2 ArrowDown 2 Enter 1 ArrowDown 3");
        judged(page);
    }

    static void keys(Page page, String names) {
        for (String name : names.split(" ")) {
            page.keyboard().press(name);
        }
    }

    /** Once the verdict is one on the plates as they are. */
    static void judged(Page page) {
        page.waitForSelector(
                "#reaction-verdict:not(.dated) #reaction-spoken:not(:empty)",
                new WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
    }

    static Locator cell(Page page, int plate, int species) {
        return page.locator("#grade-t" + plate + "-x" + species);
    }

    /** What a cell says, by the ids of its plate and its compound. */
    static String graded(Page page, int plate, int species) {
        return cell(page, plate, species).getAttribute("aria-label");
    }

    static String minutes(Page page, int plate) {
        return page.inputValue("#minutes-t" + plate);
    }

    static int plates(Page page) {
        return page.locator("#reaction-strip .time-plate").count();
    }
}
