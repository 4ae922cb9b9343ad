package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;

/** A browser on this program's own server, for what only its scripts are needed of. */
public final class ReadingPage implements AutoCloseable {
    private final StudyFolder folder;
    private final PageServer server;
    private final Playwright playwright;
    private final Browser browser;

    private ReadingPage(Path place) {
        this.folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        this.server =
                PageServer.of(Exchange.builtIn(), folder, 0, Path.of("web")).start();
        this.playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        this.browser = Chromium.launch(playwright);
    }

    /** Starts server and browser. */
    public static ReadingPage open() throws IOException {
        return new ReadingPage(Files.createTempDirectory("midplate-photos"));
    }

    /** A page of the server's address without any script of its own. */
    public Page empty() {
        Page page = browser.newPage();
        page.navigate(server.address() + "/nothing-here");
        return page;
    }

    /** The page itself, once it is ready. */
    public Page ready() {
        Page page = browser.newPage();
        page.navigate(server.address());
        page.waitForSelector("html[data-standing=current]");
        return page;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        server.stop();
        folder.close();
    }
}
