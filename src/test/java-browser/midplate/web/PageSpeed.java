package midplate.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;

/** Measures first paint, the wait for an answer, and the frames of the slider in a real browser; no test, its numbers are to compare. */
public final class PageSpeed {
    private static final int VISITS = 15;
    private static final int MOVES = 120;

    private PageSpeed() {}

    /** Prints the medians [ms]. */
    public static void main(String[] args) throws IOException {
        Path place = Files.createTempDirectory("midplate-speed");
        StudyFolder folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        PageServer server =
                PageServer.of(Exchange.builtIn(), folder, 0, Path.of("web")).start();
        try (Playwright playwright = Playwright.create();
                Browser browser = Chromium.launch(playwright)) {
            List<Double> paints = new ArrayList<>();
            List<Double> answers = new ArrayList<>();
            List<Double> frames = new ArrayList<>();
            for (int visit = 0; visit < VISITS; visit++) {
                try (BrowserContext context = browser.newContext()) {
                    Page page = context.newPage();
                    page.navigate(server.address());
                    page.waitForSelector("html[data-standing=current]");
                    answers.add(number(page.evaluate("performance.now()")));
                    paints.add(number(
                            page.evaluate("performance.getEntriesByName('first-contentful-paint')[0].startTime")));
                    frames.addAll(slide(page));
                }
            }
            PrintStream out = System.out;
            print(out, "first contentful paint", paints);
            print(out, "answer to the example shown, at the latest", answers);
            print(out, "work of a slider step, from the event to the frame's end", frames);
        } finally {
            server.stop();
            folder.close();
        }
    }

    /** Moves the slider by mouse; for each step the time from the input event until the next frame could be drawn [ms]. */
    private static List<Double> slide(Page page) {
        page.evaluate("""
                () => {
                    globalThis.steps = [];
                    document.addEventListener('input', () => {
                        const begun = performance.now();
                        const channel = new MessageChannel();
                        channel.port1.onmessage = () => globalThis.steps.push(performance.now() - begun);
                        requestAnimationFrame(() => channel.port2.postMessage(undefined));
                    }, true);
                }
                """);
        page.locator("input[type=range]").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("input[type=range]").boundingBox();
        page.mouse().move(box.x + 4, box.y + box.height / 2);
        page.mouse().down();
        for (int i = 0; i <= MOVES; i++) {
            page.mouse().move(box.x + 4 + (box.width - 8) * i / MOVES, box.y + box.height / 2);
        }
        page.mouse().up();
        List<Double> steps = new ArrayList<>();
        for (Object step : (List<?>) page.evaluate("globalThis.steps")) {
            steps.add(number(step));
        }
        return steps;
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static void print(PrintStream out, String what, List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 9 of 10 below %.1f ms (%d)%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 9 / 10),
                sorted.size());
    }
}
