package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;

/** The lesson in a real browser, with the real model behind it. */
abstract class OnLesson extends OnPage {
    /** The lesson as first visited. */
    final Page openLesson() {
        return openLesson(ColorScheme.LIGHT, 1280, 900);
    }

    final Page openLesson(ColorScheme scheme, int width, int height) {
        context = browser.newContext(new Browser.NewContextOptions()
                .setColorScheme(scheme)
                .setViewportSize(width, height)
                .setLocale("en-GB"));
        Page page = another();
        page.navigate(server.address() + "lesson.html");
        ready(page);
        return page;
    }

    /** Goes to a part by its name in the row of parts. */
    static void part(Page page, String id) {
        page.click("#lesson-go-" + id);
        page.waitForSelector("html[data-part=" + id + "]");
    }
}
