package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The page on a sheet of any kind, beside what the server itself says about the same question. */
abstract class OnAnswers extends OnPage {
    static final ObjectMapper JSON = new ObjectMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    /** The example as it is. */
    static final String EXAMPLE = "";
    /** A and B of the example are to come apart. */
    static final String APART = "sheet.apart = ['s1', 's2'];";
    /** Only A, seen once. */
    static final String ONE = "sheet.spots.pop(); plate.lanes = [plate.lanes[0]]; plate.lanes[0].readings.pop();";
    /** A pair whose measured curve ends long before the pure solvent. */
    static final String PARTLY_MEASURED = """
            for (const each of [sheet, plate]) { each.weak = 'dichloromethane'; each.strong = 'methanol'; }
            plate.eluent = '20 : 1';
            """;
    /** A second plate of the same pair on which nobody said which spot is which. */
    static final String UNLABELLED = """
            const second = addPlate(sheet, '3 : 1');
            second.lanes = [{ id: 'l9', readings: [
                { id: 'r8', spots: [], by: 'mm', typed: '24' }, { id: 'r9', spots: [], by: 'mm', typed: '33' }] }];
            """;

    /** What the page asked the server, the latest last. */
    final List<String> asked = new ArrayList<>();

    static Browser.NewContextOptions wide(ColorScheme scheme) {
        return new Browser.NewContextOptions().setColorScheme(scheme).setViewportSize(1280, 900);
    }

    /** The example with a change, as if it had been left so. */
    final Page openLeft(String change) {
        return openLeft(wide(ColorScheme.LIGHT), change);
    }

    final Page openLeft(Browser.NewContextOptions options, String change) {
        Page page = open(options);
        page.onRequest(request -> {
            if (request.url().endsWith("/api/advice")) {
                asked.add(request.postData());
            }
        });
        page.evaluate("""
                async () => {
                  const { addPlate, inventedExample } = await import("/sheet/sheet.js");
                  const sheet = inventedExample();
                  const plate = sheet.plates[0];
                """ + change + """
                  localStorage.setItem("midplate-sheet", JSON.stringify({ sheet, before: [] }));
                }""");
        page.reload();
        ready(page);
        answered(page);
        return page;
    }

    /** The server's own answer to what the page asked, with predictions at some shares. */
    final JsonNode answer(List<Double> percents) throws IOException, InterruptedException {
        ObjectNode request = (ObjectNode) JSON.readTree(asked.get(asked.size() - 1));
        ArrayNode at = request.putArray("predictAt");
        percents.forEach(at::add);
        HttpResponse<String> response = CLIENT.send(
                HttpRequest.newBuilder(URI.create(server.address()).resolve("/api/advice"))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(request.toString()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertEquals(200, response.statusCode(), response.body());
        return JSON.readTree(response.body());
    }

    /** The curve of a compound. */
    record Curve(String name, List<Double> rf, List<Double> low, List<Double> high) {}

    /**
     * The page with other curves than the server's, so that what it makes of them can be told beforehand.
     *
     * @param others the curves that are no compound's, by the name of their field
     */
    static void routeCurves(Page page, List<Double> shares, List<Curve> compounds, Map<String, List<Double>> others) {
        ObjectNode curves = JSON.createObjectNode();
        curves.set("percentStrong", JSON.valueToTree(shares));
        ObjectNode spots = curves.putObject("spots");
        for (Curve each : compounds) {
            ObjectNode spot = spots.putObject(each.name());
            spot.set("rf", JSON.valueToTree(each.rf()));
            spot.set("low", JSON.valueToTree(each.low()));
            spot.set("high", JSON.valueToTree(each.high()));
        }
        others.forEach((field, values) -> curves.set(field, JSON.valueToTree(values)));
        page.route("**/api/advice", route -> {
            try {
                ObjectNode answer = (ObjectNode) JSON.readTree(route.fetch().text());
                answer.set("curves", curves);
                route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(answer.toString()));
            } catch (JsonProcessingException broken) {
                throw new IllegalStateException(broken);
            }
        });
        page.reload();
        ready(page);
        answered(page);
    }

    /** What is told under a chart, sentence by sentence. */
    static List<String> words(Page page, String chart) {
        return page.locator("#" + chart + "-words li").allTextContents().stream()
                .map(each -> each.replace('\u00a0', ' '))
                .toList();
    }

    static List<Double> numbers(JsonNode array) {
        return IntStream.range(0, array.size())
                .mapToObj(i -> array.get(i).asDouble())
                .toList();
    }

    /** Where a chart's axes put a share [%] and a value, in units of the drawing, read off the marks of the axes. */
    record Axes(double left, double right, double zero, double top, double highest) {
        private static final double LOG_ALL = Math.log(101);

        static Axes of(Page page, String chart) {
            Object found = page.evaluate("""
                    id => {
                      const [across, upright] = document.querySelectorAll(`#${id}-drawing .chart-axis`);
                      const ticks = (axis, part) => [...axis.querySelectorAll(".tick")].map((tick) => [
                        Number(tick.textContent), Number(/\\(([-\\d.]+),([-\\d.]+)\\)/.exec(tick.getAttribute("transform"))[part])]);
                      const x = new Map(ticks(across, 1));
                      const y = ticks(upright, 2);
                      return [x.get(0), x.get(100), y[0][1], y.at(-1)[1], y.at(-1)[0]];
                    }""", chart);
            List<Double> at = ((List<?>) found)
                    .stream().map(each -> ((Number) each).doubleValue()).toList();
            return new Axes(at.get(0), at.get(1), at.get(2), at.get(3), at.get(4));
        }

        /** By own algebra: ln(% + 1), so that small shares have room. */
        double x(double percent) {
            return left + (right - left) * Math.log(percent + 1) / LOG_ALL;
        }

        double y(double value) {
            return zero + (top - zero) * value / highest;
        }
    }

    /** Points at a share on a chart. */
    static void pointAt(Page page, String chart, double percent) {
        page.locator("#" + chart + "-drawing").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("#" + chart + "-drawing").boundingBox();
        double pixels = box.width / 360;
        page.mouse().move(box.x + Axes.of(page, chart).x(percent) * pixels, box.y + box.height / 2);
    }
}
