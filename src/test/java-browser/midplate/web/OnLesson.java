package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;

/** The lesson in a real browser, with the real model behind it. */
abstract class OnLesson extends OnPage {
    /** More than there are things to reach in a part with everything unfolded. */
    private static final int MOST_TABS = 80;

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

    /** Once a part is there and nothing is being asked any more. */
    static void shown(Page page, String id) {
        page.waitForSelector("html[data-shown=" + id + "][data-asking=no]");
    }

    /** Goes on by the Tab key until something has the focus; fails where it is not reached. */
    static void tabTo(Page page, String id) {
        for (int i = 0; i < MOST_TABS && !focused(page).equals(id); i++) {
            page.keyboard().press("Tab");
        }
        assertEquals(id, focused(page), "reached by Tab");
    }

    /** What the browser keeps of the lesson, or of a field of it such as {@code parts.guide.step}. */
    static String kept(Page page, String field) {
        return String.valueOf(page.evaluate("""
                field => {
                    const { lesson } = JSON.parse(localStorage.getItem('midplate-lesson') ?? '{"lesson": {}}');
                    return JSON.stringify(field.split('.').reduce((at, name) => at?.[name], lesson) ?? null);
                }
                """, field));
    }
}
