package midplate.web;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.WaitForSelectorOptions;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The column's sheet, with the real plan and the real pooling behind it. */
abstract class OnColumn extends OnStudies {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** Goes to the column from the answer. */
    static void openColumn(Page page) {
        answered(page);
        page.click("#column-open");
        page.waitForSelector("#column-title");
    }

    /** The plan for B of the sample shown. */
    static void plan(Page page, String massMg) {
        openColumn(page);
        page.click("#column-target-s2");
        page.fill("#column-mass", massMg);
        planned(page);
    }

    /** Once the plan answers what stands on the sheet. */
    static void planned(Page page) {
        page.waitForSelector("#column-told", new WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
    }

    /** A plan with so many tubes that the tests have enough, whatever volume is advised. */
    static void planForRun(Page page) {
        plan(page, "50");
        page.click("#column-further > summary");
        page.fill("#column-fraction", "6");
        planned(page);
        page.click("#column-further > summary");
    }

    /** A plan, and a run of it with its first tube chosen. */
    static void run(Page page) {
        planForRun(page);
        page.click("#column-run");
        page.waitForSelector("#strip-c1");
    }

    /** Once the pools answer what stands in the tubes. */
    static void pooled(Page page) {
        page.waitForSelector("#pools-c1:not(.old) #pool-list-c1");
    }

    static Locator tube(Page page, int number) {
        return page.locator("#strip-c1 .tube").nth(number - 1);
    }

    static String said(Page page, int tube) {
        return tube(page, tube).getAttribute("aria-label");
    }

    /** What is said of each pool, without its reason. */
    static List<String> pools(Page page) {
        pooled(page);
        List<String> told = new ArrayList<>();
        for (Locator pool : page.locator("#pool-list-c1 > li").all()) {
            String reason = pool.locator(".pool-reason").textContent();
            told.add(pool.textContent()
                    .replace(reason, "")
                    .replace('\u00a0', ' ')
                    .strip());
        }
        return told;
    }

    /** The numbers in a text, in their order. */
    static List<Double> numbers(String text) {
        List<Double> found = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            found.add(Double.parseDouble(number.group()));
        }
        return found;
    }
}
