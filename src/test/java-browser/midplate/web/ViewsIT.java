package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every view: clean by the accessibility rules, in both themes and languages, at every width. */
class ViewsIT extends OnPage {
    /** A finger needs this much [px]; the advice of most platforms for touch. */
    private static final double TOUCH = 44;

    /** Words of English that are no words of German. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|and|of|with|from|to|is|are|this|that|your|you|at|by|for|not|or|which|about|between|every|each|"
                    + "plate|plates|spot|spots|chance|ratio|hexane|ethyl|silica|page|read|memory|source|"
                    + "window|shelf|layer|line|lines|undo|redo|clear|card|jar|pour|what|where|why|how|next)\\b",
            Pattern.CASE_INSENSITIVE);

    static void unfold(Page page) {
        page.evaluate("document.querySelectorAll('details').forEach(each => { each.open = true; })");
    }

    static void assertNothingSpills(Page page) {
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue(), "nothing spills over the side");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanFoldedUnfoldedEmptyAndWithFaults(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        answered(page);
        String shown = String.format(Locale.ROOT, "%s-%d", scheme, width).toLowerCase(Locale.ROOT);
        shoot(page, "example-" + shown);
        assertClean(page);
        unfold(page);
        assertClean(page);
        assertNothingSpills(page);
        shoot(page, "unfolded-" + shown);
        page.fill("#eluent-p1", "101");
        page.waitForSelector("#eluent-p1-fault");
        assertClean(page);
        shoot(page, "fault-" + shown);
        page.click("#clear");
        answered(page);
        assertClean(page);
        shoot(page, "empty-" + shown);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 390"})
    void theAnswerToWhereFromIsCleanAndGivesTheFocusBack(ColorScheme scheme, int width) {
        Page page = open(scheme, width, 844);
        answered(page);
        Locator asked =
                page.locator("#chance-words button, #chance-words .asked").first();
        asked.focus();
        page.keyboard().press("Enter");
        page.locator("dialog[open]").waitFor();
        assertClean(page);
        shoot(page, "origin-" + scheme.toString().toLowerCase(Locale.ROOT) + "-" + width);
        page.keyboard().press("Escape");
        assertEquals(0, page.locator("dialog[open]").count());
        assertTrue((Boolean) asked.evaluate("each => each === document.activeElement"), "the focus returns");
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void nothingSpillsAtAnyWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        answered(page);
        assertNothingSpills(page);
        unfold(page);
        assertNothingSpills(page);
    }

    @Test
    void everythingThatIsPressedIsLargeEnoughForAFinger() {
        Page page = open(ColorScheme.LIGHT, 390, 844);
        answered(page);
        assertEquals(List.of(), tooSmall(page, ""));
    }

    /** What is pressed inside a part of the page and is lower than a finger needs. */
    static Object tooSmall(Page page, String inside) {
        return page.evaluate("""
                ([least, inside]) => ['button', 'select', 'input:not([type=checkbox])', 'summary', 'a[href]']
                    .flatMap(each => [...document.querySelectorAll(inside + each)])
                    .filter(each => each.checkVisibility() && !each.classList.contains('skip'))
                    .map(each => ({ each, box: each.getBoundingClientRect() }))
                    .filter(({ each, box }) => box.height > 0 && box.height < least - 0.5)
                    .map(({ each, box }) => `${each.id || each.className || each.tagName} ${box.height}`)
                """, List.of(TOUCH, inside));
    }

    /** Other solvents, with all there are, each row unfolded. */
    private static void openSwap(Page page) {
        answered(page);
        page.click("#swap-open");
        page.waitForSelector("#ladder-rows");
        page.check("#swap-all");
        page.waitForSelector(
                "#swap-hexane-acetone", new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
        page.waitForSelector("#swap-said:not(.old)");
        unfold(page);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void otherSolventsAreCleanAndLargeEnough(ColorScheme scheme, int width) {
        Page page = open(scheme, width, width > 1000 ? 900 : 844);
        openSwap(page);
        assertClean(page);
        assertNothingSpills(page);
        assertEquals(List.of(), tooSmall(page, "#swap "));
        shoot(page, String.format(Locale.ROOT, "swap-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void otherSolventsSpillAtNoWidth(int width) {
        Page page = open(ColorScheme.LIGHT, width, 900);
        openSwap(page);
        assertNothingSpills(page);
    }

    @Test
    void inGermanNoEnglishWordIsLeftOnAnyView() {
        Page page = open();
        answered(page);
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        answered(page);
        Set<String> seen = new TreeSet<>();
        unfold(page);
        seen.addAll(english(page));
        shoot(page, "german-example");
        page.locator("#chance-words .asked").first().click();
        seen.addAll(english(page));
        page.keyboard().press("Escape");
        page.fill("#rf-r1", "x");
        page.fill("#eluent-p1", "101");
        page.fill("#amount", "0");
        page.waitForSelector("#amount-fault");
        seen.addAll(english(page));
        page.fill("#rf-r1", "0");
        page.fill("#eluent-p1", "50");
        page.fill("#amount", "5");
        answered(page);
        unfold(page);
        seen.addAll(english(page));
        openSwap(page);
        for (String rank : List.of("safety", "drying", "measured", "apart")) {
            page.click("#swap-rank-" + rank);
            page.waitForSelector("#swap-rank-" + rank + "[aria-pressed=true]");
            page.waitForSelector("#swap-said:not(.old)");
            seen.addAll(english(page));
        }
        page.locator("#swap-hexane-acetone .row-basis .asked").click();
        page.locator("#origin .basis").first().waitFor();
        seen.addAll(english(page));
        page.keyboard().press("Escape");
        page.click("#swap-use-hexane-acetone");
        answered(page);
        unfold(page);
        seen.addAll(english(page));
        page.selectOption("#pair", "dichloromethane methanol");
        page.selectOption("#setting", "class");
        answered(page);
        unfold(page);
        seen.addAll(english(page));
        page.click("#clear");
        answered(page);
        seen.addAll(english(page));
        assertEquals(Set.of(), seen);
        page.reload();
        ready(page);
        assertEquals("de", page.getAttribute("html", "lang"), "the language is kept");
    }

    /** What is shown or read out, but for what is quoted in its own language, with an English word in it. */
    @SuppressWarnings("unchecked")
    static Set<String> english(Page page) {
        List<String> texts = (List<String>) page.evaluate("""
                () => {
                    const texts = [];
                    const quoted = each => each.closest('[lang=en], .address, script, style, noscript, #spots input') !== null;
                    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
                    while (walker.nextNode()) {
                        if (!quoted(walker.currentNode.parentElement)) texts.push(walker.currentNode.nodeValue);
                    }
                    for (const each of document.querySelectorAll('*')) {
                        for (const name of ['aria-label', 'aria-valuetext', 'title', 'placeholder', 'aria-description']) {
                            if (each.hasAttribute(name) && !quoted(each)) texts.push(each.getAttribute(name));
                        }
                    }
                    return texts;
                }
                """);
        Set<String> found = new TreeSet<>();
        for (String text : texts) {
            Matcher word = ENGLISH.matcher(text);
            if (word.find()) {
                found.add(word.group() + " in: " + text.strip());
            }
        }
        return found;
    }

    @Test
    void aBrowserThatSpeaksGermanSeesGerman() {
        context = browser.newContext(new Browser.NewContextOptions().setLocale("de-DE"));
        Page page = another();
        page.navigate(server.address());
        ready(page);
        assertEquals("de", page.getAttribute("html", "lang"));
        assertTrue(page.textContent("#jar").contains("Kieselgel")
                || page.textContent("#sample").contains("Kieselgel"));
    }

    @Test
    void whoWantsNoMovementSeesNone() {
        Page page =
                open(new Browser.NewContextOptions().setViewportSize(1280, 900).setReducedMotion(ReducedMotion.REDUCE));
        answered(page);
        Object moving = page.evaluate("""
                () => [...document.querySelectorAll('*')]
                    .filter(each => getComputedStyle(each).transitionDuration.split(', ').some(s => parseFloat(s) > 0.01))
                    .map(each => each.id || each.tagName)
                """);
        assertEquals(List.of(), moving);
    }

    /** What the first visit transfers, packed as it comes over the line, besides the script that draws the charts. */
    @Test
    void theFirstLoadIsUnder200Kilobytes() {
        List<Integer> sizes = new ArrayList<>();
        context = browser.newContext();
        Page page = another();
        page.onRequestFinished(request -> {
            if (!request.url().endsWith("/d3.min.js")) {
                sizes.add(request.sizes().responseBodySize + request.sizes().responseHeadersSize);
            }
        });
        page.navigate(server.address());
        ready(page);
        answered(page);
        int sum = sizes.stream().mapToInt(Integer::intValue).sum();
        assertTrue(sizes.size() > 20, "the modules are counted: " + sizes.size());
        assertTrue(sum < 200_000, sum + " bytes");
    }
}
