package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** The page in a real browser with the real advice behind it; whatever the console complains of fails the test. */
abstract class OnPage {
    static final Path SHOTS = Path.of("target", "screenshots");

    static Playwright playwright;
    static Browser browser;
    static PageServer server;

    @TempDir
    static Path place;

    static StudyFolder folder;

    final List<String> complaints = new ArrayList<>();
    final List<String> outside = new ArrayList<>();
    /** Addresses of servers that the test itself started. */
    final List<String> furtherServers = new ArrayList<>();

    BrowserContext context;

    @BeforeAll
    static void start() {
        folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(Exchange.builtIn(), folder, 0, Path.of("web")).start();
        playwright = Playwright.create();
        browser = Chromium.launch(playwright);
    }

    @AfterAll
    static void stop() {
        browser.close();
        playwright.close();
        server.stop();
        folder.close();
    }

    @AfterEach
    void nothingWasComplainedAboutAndNothingLeftTheMachine() {
        context.close();
        assertEquals(List.of(), complaints, "errors in the browser's console");
        assertEquals(List.of(), outside, "requests to elsewhere");
    }

    /** A page as first visited: with the invented example on it. */
    final Page open() {
        return open(ColorScheme.LIGHT, 1280, 900);
    }

    final Page open(ColorScheme scheme, int width, int height) {
        return open(new Browser.NewContextOptions().setColorScheme(scheme).setViewportSize(width, height));
    }

    final Page open(Browser.NewContextOptions options) {
        context = browser.newContext(options.setLocale("en-GB"));
        Page page = another();
        page.navigate(server.address());
        ready(page);
        return page;
    }

    /** Another window of the same browser, listened to. */
    final Page another() {
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            boolean complains = message.type().equals("error") || message.type().equals("warning");
            if (complains && !isOnPurpose(message.text()) && !isOwnSaveFound(message)) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onRequest(request -> {
            String url = request.url();
            if (!url.startsWith(server.address())
                    && !url.startsWith("blob:")
                    && furtherServers.stream().noneMatch(url::startsWith)) {
                outside.add(url);
            }
        });
        return page;
    }

    /** A page left while it saved finds its own save in the folder when it is back; at any other address 412 is a mistake. */
    private static boolean isOwnSaveFound(ConsoleMessage message) {
        return message.text().contains("status of 412") && message.location().contains("/api/studies/");
    }

    /** Whether the browser complains of what the test did to the page: a refusal, a server that is gone. */
    boolean isOnPurpose(String message) {
        return message.contains("status of 422") || message.contains("ERR_");
    }

    static void ready(Page page) {
        page.waitForSelector("html[data-ready=yes]");
    }

    /** An empty sheet, as the one click on a first visit gives it. */
    final Page openEmpty() {
        Page page = open();
        page.click("#clear-example");
        return page;
    }

    /** Once the answer to the sheet as it stands is shown. */
    static void answered(Page page) {
        page.waitForSelector("html[data-standing=current]");
    }

    static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    static String focused(Page page) {
        return String.valueOf(page.evaluate("document.activeElement ? document.activeElement.id : ''"));
    }

    static void assertClean(Page page) {
        List<String> found = new AxeBuilder(page)
                .analyze().getViolations().stream().map(OnPage::told).toList();
        assertEquals(List.of(), found);
    }

    private static String told(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().get(0).getHtml();
    }

    static void shoot(Page page, String name) {
        page.evaluate("window.scrollTo(0, 0)");
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(SHOTS.resolve(name + ".png"))
                .setFullPage(true));
        page.screenshot(new Page.ScreenshotOptions().setPath(SHOTS.resolve(name + "-first-view.png")));
    }
}
