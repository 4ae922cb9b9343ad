package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.WaitForSelectorOptions;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;

/** The page with its folder of studies; some tests have a second browser, which keeps nothing of the first. */
abstract class OnStudies extends OnPage {
    private final List<BrowserContext> others = new ArrayList<>();

    @AfterEach
    void closeTheOtherBrowsers() {
        others.forEach(BrowserContext::close);
    }

    /** That a study is not there, is a newer program's or too large, or that the disk is full, is no mistake of the page. */
    @Override
    boolean isOnPurpose(String message) {
        return super.isOnPurpose(message) || message.matches("(?s).*status of (404|409|413|507).*");
    }

    /** Another browser at an address, as if on another machine. */
    final Page otherBrowser(String address) {
        Page page = otherBrowser();
        page.navigate(address);
        ready(page);
        return page;
    }

    /** Another browser with nothing in it yet. */
    final Page otherBrowser() {
        BrowserContext other = browser.newContext(new Browser.NewContextOptions().setLocale("en-GB"));
        others.add(other);
        Page page = other.newPage();
        page.onPageError(complaints::add);
        return page;
    }

    /** Once the line that says what is saved says this: saved, saving, gone, refused, untouched. */
    static void kept(Page page, String how) {
        page.waitForSelector("#kept[data-kept=" + how + "]");
    }

    /** Changes an entry, and waits until the folder has it. */
    static void fillAndSave(Page page, String selector, String text) {
        Response saved = page.waitForResponse(
                response -> response.request().method().equals("PUT") && response.ok(),
                () -> page.fill(selector, text));
        saved.finished();
        kept(page, "saved");
    }

    /** The id in the address. */
    static String idOf(Page page) {
        return String.valueOf(page.evaluate("location.hash.slice(1)"));
    }

    static String value(Page page, String id) {
        return page.locator("#" + id).inputValue();
    }

    /** A study as the folder has it, as text that is the same for the same contents; its id does not count. */
    static String contents(Page page, String id) {
        return String.valueOf(page.evaluate("""
                async id => {
                    const { contentsOf } = await import('./study/study.js');
                    const { study } = await (await fetch(`/api/studies/${id}`)).json();
                    return contentsOf({ ...study, id: '20260101-aaaaaaaaaa' });
                }
                """, id));
    }

    /** Puts a study into the folder past the page. */
    static void put(Page page, String id, String change) {
        Object status = page.evaluate("""
                async ([id, change]) => {
                    const study = { ...(await (await fetch('/study-for-test.json')).json()), ...JSON.parse(change), id };
                    const headers = { 'Content-Type': 'application/json', 'If-None-Match': '*' };
                    const answer = await fetch(`/api/studies/${id}`, { method: 'PUT', headers, body: JSON.stringify(study) });
                    return `${answer.status} ${answer.ok ? '' : await answer.text()}`.trim();
                }
                """, List.of(id, change));
        if (!"201".equals(status)) {
            throw new AssertionError(status);
        }
    }

    static void openStudies(Page page) {
        page.click("#studies-open");
        page.waitForSelector("#studies-list", new WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
    }

    /** The list once exactly these titles are in it, in any order. */
    static void listed(Page page, String... titles) {
        page.waitForFunction("""
                titles => {
                    const shown = [...document.querySelectorAll('#studies-list .study-name')].map(each => each.textContent);
                    return JSON.stringify(shown.sort()) === JSON.stringify([...titles].sort());
                }
                """, List.of(titles));
    }
}
