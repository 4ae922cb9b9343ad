package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.lesson.ExerciseCode;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The exercise on the page: placed, run, compared by keyboard alone, handed out and brought in as a file, its key behind a press. */
class ExerciseIT extends OnLesson {
    private static final String CODE =
            new ExerciseCode(ExerciseLevel.GROUPS_TOLD, ExercisePair.HEXANE_ETHYL_ACETATE, 1).text();

    private static void opened(Page page, String code) {
        page.fill("#exercise-code", code);
        page.press("#exercise-code", "Enter");
        page.waitForSelector("#exercise-code-shown");
    }

    private Page openExercise() {
        Page page = openLesson();
        part(page, "exercise");
        page.waitForSelector("#exercise-code");
        return page;
    }

    private static void run(Page page, String share) {
        int before = page.locator("#exercise-plates figure").count();
        page.fill("#exercise-share", share);
        page.press("#exercise-share", "Enter");
        page.waitForSelector("#exercise-plate-" + (before + 1));
    }

    @Test
    void aWholeExerciseByKeyboardFromTheCodeToTheWindow() {
        Page page = openExercise();
        page.focus("#lesson-part");
        tabTo(page, "exercise-code");
        page.keyboard().type(CODE.toLowerCase(Locale.ROOT).replace("-", " "));
        page.keyboard().press("Enter");
        page.waitForSelector("#exercise-code-shown");
        assertEquals(CODE, page.innerText("#exercise-code-shown"));
        tabTo(page, "exercise-ring-0");
        for (int ring = 0; ring < 3; ring++) {
            tabTo(page, "exercise-ring-" + ring);
            for (int step = 0; step < 2 + 2 * ring; step++) {
                page.keyboard().press("PageUp");
            }
            page.keyboard().press("ArrowUp");
        }
        assertEquals("0.41", page.inputValue("#exercise-rf-1"));
        assertEquals("0.61", page.getAttribute("#exercise-ring-2", "aria-valuenow"));
        tabTo(page, "exercise-place-run");
        page.keyboard().press("Enter");
        page.waitForSelector("#exercise-placed");
        assertEquals(
                3, page.locator("#exercise-known-plate .lesson-spot.computed").count());
        tabTo(page, "exercise-share");
        page.keyboard().type("100");
        page.keyboard().press("Enter");
        page.waitForSelector("#exercise-plate-1");
        tabTo(page, "exercise-hint");
        for (int hint = 1; hint <= 4; hint++) {
            page.keyboard().press("Enter");
            page.waitForSelector("#exercise-hints-list li:nth-child(" + hint + ")");
        }
        String advice = page.innerText("#exercise-hints-list li:nth-child(4)");
        Matcher ratio = Pattern.compile("(\\d+) : (\\d+) \\(").matcher(advice);
        assertTrue(ratio.find(), advice);
        for (int plate = 2; plate <= 6 && page.locator("#exercise-compare").count() == 0; plate++) {
            page.focus("#exercise-share");
            page.keyboard().press("Control+a");
            page.keyboard().type(ratio.group(1) + ":" + ratio.group(2));
            page.keyboard().press("Enter");
            page.waitForSelector("#exercise-plate-" + plate);
        }
        tabTo(page, "exercise-compare");
        page.keyboard().press("Enter");
        page.waitForSelector("#exercise-program-text");
        assertTrue(page.locator("#exercise-program-plates figure").count() >= 1);
        assertTrue(page.innerText("#exercise-count").contains("Done with plate"), page.innerText("#exercise-count"));
    }

    @Test
    void aRingIsDraggedAndARunWithoutPlacesIsRefusedInWords() {
        Page page = openExercise();
        opened(page, CODE);
        page.click("#exercise-place-run");
        page.waitForSelector("#exercise-place-fault");
        assertEquals("exercise-rf-0", focused(page));
        Locator ring = page.locator("#exercise-ring-1 .body");
        double x = ring.boundingBox().x + ring.boundingBox().width / 2;
        double y = ring.boundingBox().y + ring.boundingBox().height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x, y - 100);
        page.mouse().up();
        double placed = Double.parseDouble(page.inputValue("#exercise-rf-1"));
        double height = page.locator("#exercise-known-plate").boundingBox().height;
        assertEquals(100 / height * 70 / 52, placed, 0.02); // 70 mm high, 52 mm from line to front
        page.mouse().move(x, y);
        assertEquals(placed, Double.parseDouble(page.inputValue("#exercise-rf-1")), 0, "let go");
    }

    @Test
    void anExerciseIsHandedOutAsAFileAndBroughtInElsewhere() throws IOException {
        Page page = openExercise();
        page.selectOption("#exercise-level", "number-told");
        page.selectOption("#exercise-pair", "1");
        page.click("#exercise-make");
        page.waitForSelector("#exercise-code-shown");
        String code = page.innerText("#exercise-code-shown");
        page.click("#exercise-teacher-open");
        page.fill("#exercise-title", "Friday, group 2");
        page.fill("#exercise-note", "Begin weak.\nWork in pairs.");
        Download file = page.waitForDownload(() -> page.click("#exercise-save"));
        byte[] written = Files.readAllBytes(file.path());
        assertFalse(new String(written, StandardCharsets.UTF_8).contains("smiles"));
        context.close();

        Page elsewhere = openExercise();
        elsewhere.setInputFiles("#exercise-file", new FilePayload("handed.json", "application/json", written));
        elsewhere.waitForSelector("#exercise-code-shown");
        assertEquals(code, elsewhere.innerText("#exercise-code-shown"));
        assertTrue(elsewhere.innerText("#exercise-head").contains("Friday, group 2"));
        assertEquals("Begin weak.\nWork in pairs.", elsewhere.innerText("#exercise-note-shown"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            not json | not JSON
            {"format": "other", "version": 1, "code": "8000-001F"} | its format is not
            {"format": "midplate-exercise", "version": 2, "code": "8000-001F"} | newer program
            {"format": "midplate-exercise", "version": 1, "code": 7} | missing, too long or no text
            {"format": "midplate-exercise", "version": 1, "title": "x"} | missing, too long or no text
            {"format": "midplate-exercise", "version": 1, "code": "8000-001C"} | mistyped
            null | its format is not
            """)
    void anyOtherFileIsRefusedWithTheReasonAndNothingIsLost(String content, String reason) {
        Page page = openExercise();
        opened(page, CODE);
        run(page, "10");
        page.click("#exercise-another-open");
        page.setInputFiles(
                "#exercise-file",
                new FilePayload("x.json", "application/json", content.getBytes(StandardCharsets.UTF_8)));
        page.waitForSelector("#exercise-begin .fault");
        assertTrue(page.innerText("#exercise-begin .fault").contains(reason), page.innerText("#exercise-begin .fault"));
        assertEquals(CODE, page.innerText("#exercise-code-shown"));
        assertEquals(1, page.locator("#exercise-plates figure").count());
    }

    @Test
    void theKeyIsBehindAPressAndHiddenAgainByLeavingAndByAReload() {
        Page page = openExercise();
        opened(page, CODE);
        assertEquals(0, page.locator("#exercise-key").count());
        page.click("#exercise-teacher-open");
        assertEquals(0, page.locator("#exercise-key").count());
        page.click("#exercise-key-press");
        page.waitForSelector("#exercise-key table");
        page.evaluate("window.print = () => { window.printed = document.getElementById('lesson-paper').textContent; }");
        page.click("#exercise-key-print");
        assertTrue(String.valueOf(page.evaluate("window.printed")).contains("Key of exercise " + CODE));
        part(page, "series");
        part(page, "exercise");
        page.waitForSelector("#exercise-code-shown");
        assertEquals(0, page.locator("#exercise-key").count());
        page.reload();
        page.waitForSelector("#exercise-code-shown");
        assertEquals(0, page.locator("#exercise-key").count());
    }

    @Test
    void whatWasDoneStaysOverAReloadAndForEachCode() {
        Page page = openExercise();
        opened(page, CODE);
        run(page, "9:1");
        run(page, "30");
        String read = page.innerText("#exercise-plate-2 ul");
        page.reload();
        page.waitForSelector("#exercise-plate-2");
        assertEquals(read, page.innerText("#exercise-plate-2 ul"));
        page.click("#exercise-another-open");
        opened(page, new ExerciseCode(ExerciseLevel.HARD_TO_PART, ExercisePair.HEXANE_ETHYL_ACETATE, 5).text());
        page.waitForSelector(
                "#exercise-plates:not(:has(figure))",
                new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
        page.click("#exercise-another-open");
        page.fill("#exercise-code", CODE);
        page.press("#exercise-code", "Enter");
        page.waitForSelector("#exercise-plate-2");
        assertEquals(read, page.innerText("#exercise-plate-2 ul"));
    }

    @Test
    void aShareThatIsNoneIsToldAtItsEntry() {
        Page page = openExercise();
        opened(page, CODE);
        for (String share : List.of("120", "much")) {
            page.fill("#exercise-share", share);
            page.click("#exercise-run");
            page.waitForSelector("#exercise-share-fault");
            assertEquals("exercise-share", focused(page));
            assertEquals(share, page.inputValue("#exercise-share"));
        }
        assertEquals(0, page.locator("#exercise-plates figure").count());
    }

    @Test
    void cautionsNameTheSolventsThatArePoured() {
        Page page = openExercise();
        assertTold(page, "Ethyl acetate", "Methanol");
        page.selectOption("#exercise-pair", "2");
        page.waitForFunction("() => document.querySelector('#lesson-cautions').textContent.match(/methanol:/i)");
        assertTold(page, "Methanol", "Ethyl acetate");
        opened(page, new ExerciseCode(ExerciseLevel.NUMBER_TOLD, ExercisePair.HEXANE_DIETHYL_ETHER, 3).text());
        shown(page, "exercise");
        assertTold(page, "Diethyl ether", "Methanol");
        part(page, "worksheet");
        page.selectOption("#worksheet-pair", "hexane/acetone");
        shown(page, "worksheet");
        assertTold(page, "Acetone", "Ethyl acetate");
    }

    private static void assertTold(Page page, String named, String other) {
        List<String> solvents = page.locator("#lesson-cautions .statements b").allTextContents().stream()
                .map(each -> each.toLowerCase(Locale.ROOT).replaceAll("[: ]+$", ""))
                .toList();
        assertTrue(solvents.contains(named.toLowerCase(Locale.ROOT)), solvents.toString());
        assertFalse(solvents.contains(other.toLowerCase(Locale.ROOT)), solvents.toString());
    }

    private static void filled(Page page) {
        opened(page, CODE);
        for (int ring = 0; ring < 3; ring++) {
            page.fill("#exercise-rf-" + ring, "0." + (3 + ring));
        }
        page.click("#exercise-place-run");
        page.waitForSelector("#exercise-placed");
        run(page, "3");
        run(page, "12");
        page.click("#exercise-hint");
        page.waitForSelector("#exercise-hints-list");
        page.click("#exercise-teacher-open");
        page.click("#exercise-key-press");
        page.waitForSelector("#exercise-key table");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void itIsCleanByTheRulesOfAccessibility(ColorScheme scheme, int width) {
        Page page = openLesson(scheme, width, 900);
        part(page, "exercise");
        page.waitForSelector("#exercise-code");
        assertClean(page);
        filled(page);
        assertClean(page);
        shoot(page, "exercise-" + scheme.name().toLowerCase(Locale.ROOT) + "-" + width);
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 768, 1280})
    void nothingSpillsOverTheSide(int width) {
        Page page = openLesson(ColorScheme.LIGHT, width, 800);
        part(page, "exercise");
        page.waitForSelector("#exercise-code");
        filled(page);
        page.click("#exercise-another-open");
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue());
        Object small = page.evaluate("""
                () => [...document.querySelectorAll('#lesson-part :is(button, select, summary, input:not([type=file]))')]
                    .map(each => ({ each, box: each.getBoundingClientRect() }))
                    .filter(({ box }) => box.height > 0 && box.height < 43.5)
                    .map(({ each, box }) => `${each.id} ${box.width} x ${box.height}`)
                """);
        assertEquals(List.of(), small);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = openExercise();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        filled(page);
        String text = page.innerText("#lesson-part");
        Pattern english =
                Pattern.compile("(?i)\\b(the|and|of|with|is|are|plate|plates|start|front line|above|below|key)\\b");
        assertFalse(english.matcher(text).find(), text);
    }
}
