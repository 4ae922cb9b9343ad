package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The browser of this machine: {@code CHROMIUM} where that is set, else the one on the path. */
final class Chromium {
    private static final List<String> QUIET = List.of(
            "--disable-gpu",
            "--disable-quic",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private Chromium() {}

    static Browser launch(Playwright playwright) {
        List<String> options = new ArrayList<>(QUIET);
        if (System.getProperty("user.name").equals("root")) {
            options.add("--no-sandbox"); // as root the sandbox refuses to start
        }
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(path())
                        .setArgs(options));
    }

    private static Path path() {
        String named = System.getenv("CHROMIUM");
        if (named != null) {
            return Path.of(named);
        }
        for (String folder : System.getenv("PATH").split(File.pathSeparator, -1)) {
            Path found = Path.of(folder, "chromium");
            if (Files.isExecutable(found)) {
                return found;
            }
        }
        throw new IllegalStateException("No chromium on the path: install it, or name it in CHROMIUM.");
    }
}
