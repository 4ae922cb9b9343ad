package midplate.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;

/** The page with the ladder of equal strength open, with the server's answer or with one whose picture can be told beforehand. */
abstract class OnLadder extends OnAnswers {
    /** Two spots that lie 1.5 mm apart on a run of 52 mm, on two plates: 0.03 in Rf, so that they may touch. */
    static final String TOUCHING = """
            plate.lanes.pop();
            plate.lanes[0].readings[0].typed = '20.4';
            plate.lanes[0].readings[1].typed = '21.9';
            const second = addPlate(sheet, '3 : 1');
            second.lanes = [{ id: 'l9', readings: [
                { id: 'r8', spots: ['s1'], by: 'mm', typed: '32' }, { id: 'r9', spots: ['s2'], by: 'mm', typed: '33.5' }] }];
            """;

    static final Pattern OTHERS = Pattern.compile(".*/api/other-eluents");

    /** Rungs of an invented pair: the middle at Rf 0.1, 0.3, 0.5, 0.7 for 0, 10, 20 and 50 %. */
    private static final double[][] RUNGS = {{0, 0.1}, {10, 0.3}, {20, 0.5}, {50, 0.7}};

    final Page openLadder(Browser.NewContextOptions options) {
        Page page = openLeft(options, TOUCHING);
        page.click("#swap-open");
        page.waitForSelector("#ladder-rows");
        return page;
    }

    final Page openLadder() {
        return openLadder(wide(ColorScheme.LIGHT));
    }

    /** Shows what does not stand on the shelf as well, and every row. */
    static void showAll(Page page) {
        page.check("#swap-all");
        current(page);
        unfoldRows(page);
    }

    static void unfoldRows(Page page) {
        page.evaluate("document.querySelectorAll('#swap-further').forEach(each => { each.open = true; })");
    }

    /** Once the ladder answers the sheet and the wishes as they are. */
    static void current(Page page) {
        page.waitForFunction(
                "() => document.querySelector('#swap-said') && !document.querySelector('#swap-said.old') && !document.querySelector('#swap-counting')");
    }

    /** Answers with other pairs than the server's. */
    static void routeInvented(Page page, ObjectNode answer) {
        page.route(
                OTHERS,
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(answer.toString())));
    }

    /** Invented pairs: one that does not reach, then three that do, each of another basis. */
    static ObjectNode invented() {
        ObjectNode answer = JSON.createObjectNode().put("rank", "apart");
        ObjectNode of = pair(answer.putObject("of"), "hexane", "ethyl acetate", "measured");
        of.put("percentStrong", 20)
                .put("ratio", "4:1")
                .put("rf", 0.5)
                .put("chance", 0.8)
                .put("goal", 0.15);
        apart(of, 0.2, 0.06);
        ArrayNode others = answer.putArray("others");
        other(others, "hexane", "dichloromethane", "theory")
                .putObject("nearest")
                .put("percentStrong", 50)
                .put("rf", 0.7)
                .put("side", "stronger");
        equal(other(others, "hexane", "diethyl ether", "measured"));
        equal(other(others, "hexane", "acetone", "theory"));
        equal(other(others, "hexane", "2-propanol", "guess"));
        rungs(answer);
        answer.putArray("notes");
        return answer;
    }

    private static ObjectNode pair(ObjectNode into, String weak, String strong, String basis) {
        into.putObject("weak").put("id", weak.replace(' ', '-')).put("name", weak);
        into.putObject("strong").put("id", strong.replace(' ', '-')).put("name", strong);
        return into.put("basis", basis);
    }

    private static ObjectNode other(ArrayNode others, String weak, String strong, String basis) {
        ObjectNode other = pair(others.addObject(), weak, strong, basis);
        other.put("class", "other").put("chance", 0.6).put("goal", 0.5).put("boilingPoint", 68.7);
        apart(other, 0.55, 0.14);
        rungs(other);
        other.putArray("flags").add("nerves");
        other.putArray("reasons");
        other.putObject("spots");
        return other;
    }

    private static void apart(ObjectNode into, double chance, double gap) {
        ObjectNode apart = into.putObject("apart").put("chance", chance).put("gap", gap);
        apart.putArray("spots").add("A").add("B");
    }

    private static void equal(ObjectNode other) {
        ObjectNode equal = other.putObject("equal");
        equal.put("percentStrong", 20).put("low", 10).put("high", 50).put("ratio", "4:1");
        equal.put("weakMl", 8).put("strongMl", 2);
    }

    private static void rungs(ObjectNode into) {
        ArrayNode rungs = into.putArray("rungs");
        for (double[] rung : RUNGS) {
            rungs.addObject().put("percentStrong", rung[0]).put("rf", rung[1]);
        }
    }

    /** Middles of drawn things in a row, across the window [px]. */
    static List<Double> across(Page page, String drawn) {
        List<?> found = (List<?>) page.evaluate("""
                drawn => [...document.querySelectorAll(drawn)].map(each => {
                    const box = each.getBoundingClientRect();
                    return box.left + box.width / 2;
                })""", drawn);
        return found.stream().map(each -> ((Number) each).doubleValue()).toList();
    }
}
