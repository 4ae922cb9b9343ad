package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A class enters what it read and sees where it lies; all readings are invented. */
class ClassIT extends OnLesson {
    private static final String TOLD = "#class-findings[data-standing=current]";

    private Page openClass(ColorScheme scheme, int width) {
        Page page = openLesson(scheme, width, 900);
        part(page, "class");
        page.waitForSelector("#class-entry");
        return page;
    }

    private Page openClass() {
        return openClass(ColorScheme.LIGHT, 1280);
    }

    /** Twenty pairs by a law of the test's own: plates move all spots alike; the seventh divides from the edge. */
    private static String table() {
        Random random = new Random(11);
        StringBuilder table = new StringBuilder("Pair\tA\tB\tC\n");
        double[] truth = {0.7, 0.5, 0.3};
        for (int pair = 1; pair <= 20; pair++) {
            double factor = Math.exp(0.12 * random.nextGaussian());
            table.append("team ").append(pair);
            for (double each : truth) {
                double rf = 1 / (1 + (1 / each - 1) / factor) + 0.012 * random.nextGaussian();
                double written = pair == 7 ? 10.0 / 62 + rf * 52 / 62 : rf;
                table.append('\t')
                        .append(String.format(Locale.ROOT, "%.2f", written).replace('.', ','));
            }
            table.append('\n');
        }
        return table.toString();
    }

    private static void paste(Page page, String table) {
        if (!page.isVisible("#class-paste")) {
            page.click("#class-paste-summary");
        }
        page.fill("#class-paste", table);
        page.click("#class-paste-take");
    }

    @Test
    void twentyPairsArePastedAndUnderstood() {
        Page page = openClass();
        paste(page, table());
        page.waitForSelector(TOLD);
        assertEquals(20, page.locator("#class-rows .class-row:not(.class-head)").count());
        String said = page.innerText("#class-findings");
        assertTrue(said.contains("A: 20 readings on 20 plates"), said);
        assertEquals(
                2,
                Pattern.compile("±0\\.0\\d\\d \\(standard deviation")
                        .matcher(page.innerText("#class-findings > ul"))
                        .results()
                        .count());
        assertTrue(page.innerText("#class-slips").contains("team 7: chances are"), said);
        assertEquals(1, page.locator("#class-slips li").count());
        assertEquals(3, page.locator(".class-histogram").count());
        assertEquals(20, page.locator(".class-plate").count());
        Object bars = page.evaluate(
                "[...document.querySelectorAll('#class-spot-0 tbody td:last-child')].reduce((sum, each) => sum + Number(each.textContent), 0)");
        assertEquals(20, ((Number) bars).intValue());
        page.reload();
        ready(page);
        page.waitForSelector(TOLD);
        assertEquals(20, page.locator("#class-rows .class-row:not(.class-head)").count());
    }

    @Test
    void aBadCellIsToldWithItsPlaceAndTheRestCounts() {
        Page page = openClass();
        paste(page, table().replaceFirst("team 2\t[^\t]*", "team 2\t0,6x"));
        page.waitForSelector(TOLD);
        assertEquals(
                "Row 2, A: 0,6x is no Rf from 0 to 1. It is left out until it is mended.",
                page.innerText("#class-bad-0"));
        assertTrue(page.innerText("#class-findings").contains("A: 19 readings"), "the others are judged");
        assertEquals(
                "0,6x",
                page.locator(".class-row[role=group] >> nth=1")
                        .locator("input")
                        .nth(2)
                        .inputValue());
        page.locator(".class-row[role=group] >> nth=1").locator("input").nth(2).fill("0,6");
        page.waitForSelector(TOLD + ":has-text('A: 20 readings')");
        assertFalse(page.isVisible("#class-bad-0"));
    }

    @Test
    void byKeyboardFromTheFirstCellToTheSentences() {
        Page page = openClass();
        page.focus("#pair-class-r1");
        page.keyboard().type("Ada and Bo");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().type("0.35");
        page.keyboard().press("Enter");
        assertEquals("rf-class-r2-c1", focused(page));
        page.keyboard().type("0,37");
        page.keyboard().press("Enter");
        assertTrue(focused(page).endsWith("-c1"), "a further row is there: " + focused(page));
        assertEquals(3, page.locator(".class-row[role=group]").count());
        page.keyboard().type("0.36");
        page.waitForSelector(TOLD + ":has-text('A: 3 readings on 3 plates')");
        assertTrue(page.innerText("#class-findings").contains("Nothing here tells the error of reading"));
        page.focus("#class-example");
        page.keyboard().press("Enter");
        page.waitForSelector("#class-invented");
        page.waitForSelector(TOLD + ":has-text('on 20 plates')");
        page.focus("#class-undo");
        page.keyboard().press("Space");
        page.waitForSelector(TOLD + ":has-text('A: 3 readings on 3 plates')");
        assertEquals("Ada and Bo", page.inputValue("#pair-class-r1"));
    }

    @Test
    void theSameCodeGivesTheSameClassInAnotherBrowser() {
        Page page = openClass();
        page.click("#class-example");
        page.waitForSelector("#class-invented");
        String code = page.innerText("#class-invented").replaceAll("(?s).*the code (\\S+):.*", "$1");
        Object first =
                page.evaluate("[...document.querySelectorAll('.class-row input')].map(each => each.value).join()");
        context.close();
        Page other = openClass();
        other.fill("#class-code", code.toLowerCase(Locale.ROOT).replace("-", " "));
        other.keyboard().press("Enter");
        other.waitForSelector("#class-invented");
        assertEquals(
                first,
                other.evaluate("[...document.querySelectorAll('.class-row input')].map(each => each.value).join()"));
        other.fill("#class-code", "nothing");
        other.click("#class-example");
        other.waitForSelector("#class-example-fault");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 360", "DARK, 360"})
    void isCleanInBothThemesAndSpillsNowhere(ColorScheme scheme, int width) {
        Page page = openClass(scheme, width);
        paste(page, table().replaceFirst("team 2\t[^\t]*", "team 2\t0,6x"));
        page.waitForSelector(TOLD);
        page.evaluate("document.querySelectorAll('#lesson-part details').forEach(each => { each.open = true; })");
        assertClean(page);
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue());
        Object small = page.evaluate("""
                () => [...document.querySelectorAll('#lesson-part button, #lesson-part select, #lesson-part input:not([type=checkbox]), #lesson-part summary')]
                    .map(each => ({ each, box: each.getBoundingClientRect() }))
                    .filter(({ box }) => box.height > 0 && (box.height < 43.5 || box.width < 43.5))
                    .map(({ each, box }) => `${each.id} ${box.width} x ${box.height}`)
                """);
        assertEquals(List.of(), small);
    }

    @Test
    void whatWasHiddenIsSaidInWords() {
        Page page = openClass();
        page.fill("#class-code", "A0MH-QAE8");
        page.click("#class-example");
        page.click("#class-hidden-summary");
        String hidden = page.innerText("#class-hidden-text");
        assertTrue(hidden.matches("Pair \\d+ divided .*\\."), hidden);
        assertFalse(page.innerText("#lesson-part").contains("[object"), hidden);
    }

    @Test
    void anEmptyShareSaysWhatToEnter() {
        Page page = openClass();
        paste(page, table());
        page.waitForSelector(TOLD);
        page.fill("#class-percent", "");
        page.waitForSelector("#class-percent-fault");
        assertTrue(page.innerText("#class-percent-fault")
                .endsWith("Enter it in % v/v, for example 20, or as a ratio such as 4 : 1."));
    }

    @Test
    void aRefusalStandsBelowTheTableWithRowAndColumn() {
        Page page = openClass();
        page.fill("#pair-class-r1", "Ada");
        page.locator(".class-row[role=group] >> nth=0").locator("input").nth(1).fill("9");
        page.locator(".class-row[role=group] >> nth=0").locator("input").nth(2).fill("0.4");
        page.waitForSelector("#class-fault-0");
        assertTrue(page.innerText("#class-fault-0").startsWith("Row 1, Plate: "), page.innerText("#class-fault-0"));
        Object below = page.evaluate(
                "document.querySelector('#class-fault-0').getBoundingClientRect().top >= document.querySelector('#class-rows').getBoundingClientRect().bottom");
        assertEquals(true, below);
    }

    @Test
    void theFieldOfTheCodeAndItsButtonStandOnOneLine() {
        Page page = openClass();
        Object apart = page.evaluate(
                "Math.abs(document.querySelector('#class-code').getBoundingClientRect().bottom - document.querySelector('#class-example').getBoundingClientRect().bottom)");
        assertTrue(((Number) apart).doubleValue() < 1.5, "apart " + apart);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = openClass();
        page.click("#class-example");
        page.waitForSelector("#class-invented");
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.waitForSelector(TOLD + ":has-text('Ablesungen')");
        page.waitForSelector("#class-invented:has-text('Erfunden')");
        String seen =
                page.innerText("#class-told") + page.innerText("#class-invented") + page.innerText("#class-examples");
        Pattern english = Pattern.compile("(?i)\\b(the|and|of|with|is|are|readings|plates|expects|mean)\\b");
        assertFalse(english.matcher(seen).find(), seen);
    }

    // whatever stands in the cells comes out in its place: tables of random cells, in each form that spreadsheets write
    @ParameterizedTest
    @ValueSource(strings = {"\t", ";", ","})
    void anyTableKeepsItsCells(String delimiter) {
        Page page = openClass();
        Random random = new Random(5);
        String[] odd = {
            "0.35",
            "0,35",
            ".4",
            "1",
            "",
            "-",
            "0,3x",
            "a \"b\"",
            "x\ty",
            "p;q",
            "1,5",
            "zwei\nZeilen",
            "ä€😀",
            "'",
            "NaN"
        };
        List<List<Object>> tables = new ArrayList<>();
        for (int t = 0; t < 400; t++) {
            int rows = 1 + random.nextInt(6);
            int width = 4;
            List<List<String>> cells = new ArrayList<>();
            StringBuilder text = new StringBuilder();
            for (int r = 0; r < rows; r++) {
                List<String> row = new ArrayList<>();
                for (int c = 0; c < width; c++) {
                    String cell = c == 0 ? "p" + r : odd[random.nextInt(odd.length)];
                    cell = delimiter.equals("\t") ? cell : cell.replace("\t", " ");
                    cell = delimiter.equals(",") ? cell.replace(";", " ") : cell;
                    row.add(cell);
                    boolean quoted = random.nextInt(4) == 0 || cell.contains(delimiter) || cell.contains("\n");
                    text.append(c == 0 ? "" : delimiter).append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
                }
                text.append(random.nextBoolean() ? "\r\n" : "\n");
                cells.add(row);
            }
            tables.add(List.of(text.toString(), cells));
        }
        Object wrong = page.evaluate("""
                async (tables) => {
                  const { cellsOf, tableOf } = await import("/lesson/class/paste.js");
                  const wrong = [];
                  for (const [text, cells] of tables) {
                    if (JSON.stringify(cellsOf(text)) !== JSON.stringify(cells)) wrong.push(text);
                    const { rows, names } = tableOf(text, 3);
                    const kept = rows.flatMap(({ pair, spots }) => [pair, ...spots]);
                    const all = [...kept, ...names.filter((name) => name !== undefined)];
                    for (const cell of cells.flat()) if (cell !== "" && !all.includes(cell) && cell !== "p0") wrong.push(cell);
                  }
                  return wrong.slice(0, 3);
                }
                """, tables);
        assertEquals(List.of(), wrong);
    }
}
