package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The entry of what a compound is, opened on an empty sheet. Acetophenone is an aryl methyl ketone, C8H8O: one ketone on a ring
 * of six aromatic carbons, and one saturated carbon; molar mass 120.15 g/mol by the standard atomic weights (own sum).
 */
abstract class OnIdentity extends OnPage {
    static final String ACETOPHENONE = "CC(=O)c1ccccc1";
    static final Pattern ADVICE = Pattern.compile(".*/api/advice");

    /** What the page asked, the latest last. */
    final List<String> asked = new ArrayList<>();

    Page openWhat(Browser.NewContextOptions options) {
        Page page = open(options);
        page.onRequest(request -> {
            if (ADVICE.matcher(request.url()).matches()) {
                asked.add(request.postData());
            }
        });
        page.click("#clear-example");
        answered(page);
        page.click("#what-s1");
        page.waitForSelector("#what-title");
        return page;
    }

    Page openWhat() {
        return openWhat(wide(1280));
    }

    static Browser.NewContextOptions wide(int width) {
        return new Browser.NewContextOptions().setViewportSize(width, 900);
    }

    static void choose(Page page, String way) {
        page.check("#way-" + way + "-s1");
    }

    static void recognised(Page page, String group) {
        page.waitForSelector("#found-row-s1-" + group);
        page.waitForFunction("() => document.documentElement.dataset.standing === 'current'");
    }

    String latest() {
        return asked.get(asked.size() - 1);
    }

    static Page.WaitForSelectorOptions attached() {
        return new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED);
    }
}
