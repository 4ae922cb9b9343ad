package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page with its slider over the ratios, and what it shows read as numbers. */
abstract class OnSlider extends OnAnswers {
    static final String SLIDER = "#what-if-share";

    /** Half of the last digit shown, and what the server's curves and the way between their points may add. */
    static final double SHOWN = 0.005 + 0.001;

    static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    static List<Double> numbersIn(String text) {
        Matcher matcher = NUMBER.matcher(text);
        List<Double> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(Double.parseDouble(matcher.group()));
        }
        return found;
    }

    /** The share the slider stands at [%]. */
    static double share(Page page) {
        return numbersIn(page.getAttribute(SLIDER, "aria-valuetext")).get(0);
    }

    static void press(Page page, String... keys) {
        page.focus(SLIDER);
        for (String key : keys) {
            page.keyboard().press(key);
        }
    }

    static String line(Page page, String id, String beginning) {
        return page.locator("#" + id + " li, #" + id + " p").allTextContents().stream()
                .filter(each -> each.startsWith(beginning))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line of #" + id + " begins with " + beginning));
    }

    static void assertSpot(JsonNode foretold, String shown) {
        List<Double> numbers = numbersIn(shown);
        assertEquals(foretold.get("rf").asDouble(), numbers.get(0), SHOWN, shown);
        assertEquals(foretold.get("low").asDouble(), numbers.get(numbers.size() - 2), SHOWN, shown);
        assertEquals(foretold.get("high").asDouble(), numbers.get(numbers.size() - 1), SHOWN, shown);
    }

    /** In whole plates of a hundred, neither none nor all being claimed. */
    static void assertChance(JsonNode foretold, String shown) {
        double chance = foretold.get("probabilityAllInWindow").asDouble();
        String told = shown.replaceAll(".*?Chance (.*) of 100.*", "$1");
        switch (told) {
            case "fewer than 1" -> assertTrue(chance < 0.01, shown + " for " + chance);
            case "more than 99" -> assertTrue(chance > 0.99, shown + " for " + chance);
            default -> assertEquals(chance, Double.parseDouble(told) / 100, 0.01, shown);
        }
    }
}
