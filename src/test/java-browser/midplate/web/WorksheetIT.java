package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A worksheet from its code to paper: chosen by keyboard, printed, measured by pixels. */
class WorksheetIT extends OnLesson {
    private static final double HALF_MM = 0.5;
    private static final int LANES = 3;

    private static Page onPaper(Page page) {
        part(page, "worksheet");
        current(page);
        return page;
    }

    private static void current(Page page) {
        page.waitForSelector("#worksheet-paper:not(.old) .worksheet-page");
    }

    private static PDDocument print(Page page, String paper) throws IOException {
        page.evaluate("paper => document.documentElement.classList.add(`on-${paper}`)", paper);
        byte[] made = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        page.evaluate("paper => document.documentElement.classList.remove(`on-${paper}`)", paper);
        return Loader.loadPDF(made);
    }

    private static JsonNode told(String code) throws IOException, InterruptedException {
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(server.address() + "api/lesson/worksheet"))
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString("{\"code\": \"" + code + "\"}"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertEquals(200, answer.statusCode(), answer.body());
        return new ObjectMapper().readTree(answer.body());
    }

    private static List<JsonNode> withPlates(JsonNode sheet) {
        List<JsonNode> found = new ArrayList<>();
        sheet.get("questions").forEach(question -> {
            if (question.has("plate")) {
                found.add(question);
            }
        });
        return found;
    }

    private static JsonNode keyOf(JsonNode answers, String kind) {
        for (JsonNode answer : answers.get("answers")) {
            if (answer.get("kind").asText().equals(kind)) {
                return answer;
            }
        }
        throw new AssertionError(kind);
    }

    /** Every plate of every sheet, measured on paper: lines and spots within half a millimetre, Rf within what the key accepts. */
    @ParameterizedTest
    @CsvSource({"a4, LIGHT, 1280, en", "letter, DARK, 390, de"})
    void platesMeasuredOnPaperGiveTheKey(String paper, ColorScheme scheme, int width, String language)
            throws IOException, InterruptedException {
        Page page = onPaper(openLesson(scheme, width, 900));
        page.selectOption("#language", language);
        page.waitForSelector("html[lang=" + language + "]");
        current(page);
        JsonNode told = told(page.inputValue("#worksheet-code"));
        int measured = 0;
        try (PDDocument printed = print(page, paper)) {
            int at = 0;
            for (int s = 0; s < told.get("sheets").size(); s++) {
                List<JsonNode> questions = withPlates(told.get("sheets").get(s));
                List<RasterPage.Plate> plates = new ArrayList<>();
                while (plates.size() < questions.size()) {
                    RasterPage raster = RasterPage.of(printed, at++);
                    assertEquals(50, raster.scale(), 0.3, "the line to measure on page " + at);
                    plates.addAll(raster.plates(LANES));
                }
                assertEquals(questions.size(), plates.size());
                for (int i = 0; i < questions.size(); i++) {
                    measured += assertMeasures(
                            questions.get(i), plates.get(i), told.get("answers").get(s));
                }
            }
        }
        assertEquals(
                2 * (3 + 3) + 4 + 3,
                measured,
                "three to measure, three to correct, sample and reference apart and as one");
    }

    /** How many spots were compared. */
    private static int assertMeasures(JsonNode question, RasterPage.Plate seen, JsonNode answers) {
        JsonNode plate = question.get("plate");
        assertEquals(plate.get("startMm").asDouble(), seen.start(), HALF_MM / 2);
        assertEquals(plate.get("frontMm").asDouble(), seen.front(), HALF_MM / 2);
        String kind = question.get("kind").asText();
        if (kind.equals("ratio")) { // its spots may lie on a line, and its key is a share
            return 0;
        }
        JsonNode figures = keyOf(answers, kind).get("figures");
        int compared = 0;
        for (int lane = 0; lane < LANES; lane++) {
            List<Double> centres = new ArrayList<>();
            List<JsonNode> keys = new ArrayList<>();
            for (int i = 0; i < plate.get("spots").size(); i++) {
                JsonNode spot = plate.get("spots").get(i);
                if (spot.get("lane").asInt() == lane) {
                    centres.add(spot.get("centreMm").asDouble());
                    keys.add(figures.get(i));
                }
            }
            assertEquals(centres.size(), seen.lanes().get(lane).size(), kind + ", spots in lane " + lane);
            List<Double> read = seen.lanes().get(lane).stream().sorted().toList();
            List<Integer> rising = IntStream.range(0, centres.size())
                    .boxed()
                    .sorted((one, other) -> Double.compare(centres.get(one), centres.get(other)))
                    .toList();
            for (int i = 0; i < read.size(); i++) {
                JsonNode key = keys.get(rising.get(i));
                assertEquals(centres.get(rising.get(i)), read.get(i), HALF_MM / 2, kind);
                double rf = seen.rf(read.get(i));
                assertTrue(
                        rf >= key.get("from").asDouble() && rf <= key.get("to").asDouble(), kind + " " + rf + key);
                compared++;
            }
        }
        return compared;
    }

    /** Six sheets of all questions: two pages each and one of answers, the answers all after the questions, the code on every page. */
    @ParameterizedTest
    @CsvSource({"a4, en", "letter, en", "a4, de", "letter, de"})
    void answersBeginOnAPageOfTheirOwn(String paper, String language) throws IOException {
        Page page = onPaper(openLesson());
        page.selectOption("#language", language);
        page.waitForSelector("html[lang=" + language + "]");
        page.selectOption("#worksheet-variants", "6");
        page.waitForSelector("#worksheet-paper:not(.old) #answers-F", attached());
        String code = page.inputValue("#worksheet-code");
        String answers = language.equals("en") ? "Answers, sheet " : "Antworten, Blatt ";
        String key = language.equals("en") ? "A ruler reads to half a millimetre" : "Mit einem Lineal liest man auf";
        try (PDDocument printed = print(page, paper)) {
            int asked = page.locator(".worksheet-page.of-questions").count();
            assertEquals(asked + 6, printed.getNumberOfPages());
            assertEquals(12, asked);
            for (int at = 0; at < printed.getNumberOfPages(); at++) {
                String text = text(printed, at);
                assertEquals(at >= asked, text.contains(code), "the code opens the answers, page " + at + ": " + text);
                assertEquals(at >= asked, text.contains(answers) && text.contains(key), "page " + at + ": " + text);
                assertEquals(at < asked, text.contains("50 mm"), "page " + at);
            }
            assertTrue(
                    text(printed, 1).contains(language.equals("en") ? "Silica is harmful" : "Kieselgel ist als Staub"),
                    "cautions");
        }
        page.selectOption("#worksheet-code-place", "all");
        page.selectOption("#worksheet-parts", "questions");
        try (PDDocument printed = print(page, paper)) {
            assertEquals(12, printed.getNumberOfPages());
            assertTrue(text(printed, 0).contains(code), "wished for on every page");
        }
        page.selectOption("#worksheet-code-place", "none");
        page.selectOption("#worksheet-parts", "answers");
        try (PDDocument printed = print(page, paper)) {
            assertEquals(6, printed.getNumberOfPages());
            assertTrue(text(printed, 0).contains(key));
            assertFalse(text(printed, 0).contains(code));
        }
    }

    /** No number goes over two lines, and no word is split: each stands in the text of the paper as often as in the tables. */
    @ParameterizedTest
    @CsvSource({"a4, en", "letter, en", "a4, de", "letter, de"})
    void tablesStandWholeOnPaper(String paper, String language) throws IOException {
        Page page = onPaper(openLesson());
        page.selectOption("#language", language);
        page.waitForSelector("html[lang=" + language + "]");
        page.selectOption("#worksheet-pair", "hexane/acetone");
        page.waitForSelector(
                "#worksheet-paper:not(.old) :text('" + (language.equals("en") ? "acetone" : "Aceton") + "') >> nth=0",
                attached());
        current(page);
        List<String> cells =
                page.locator("#worksheet-paper :is(th, td:not(:has(.unseen)))").allTextContents();
        assertTrue(cells.size() > 100, "tables of two sheets and their answers");
        try (PDDocument printed = print(page, paper)) {
            String lines = new PDFTextStripper().getText(printed);
            List<String> words = List.of(lines.split("\\s+"));
            for (String cell : new TreeSet<>(cells)) {
                if (cell.matches("[\\d.,]+( \\S+ [\\d.,]+)?")) {
                    assertTrue(lines.contains(cell), cell + " on one line");
                }
                for (String word : cell.split("\\s+")) {
                    long wanted = cells.stream()
                            .flatMap(each -> List.of(each.split("\\s+")).stream())
                            .filter(word::equals)
                            .count();
                    long there = words.stream().filter(word::equals).count();
                    assertTrue(there >= wanted, word + ": " + there + " of " + wanted);
                }
            }
        }
    }

    /** What to mind is that of the pair chosen, in the same words below the pages and on paper; a theory is named where it is asked by. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void cautionsAreThoseOfThePairAndTheTheoryIsNamed(String language) {
        Page page = onPaper(openLesson());
        page.selectOption("#language", language);
        page.waitForSelector("html[lang=" + language + "]");
        current(page);
        page.selectOption("#worksheet-pair", "cyclohexane/ethyl-acetate");
        String named = language.equals("en") ? "by theory" : "Es gilt die Theorie";
        page.waitForSelector("#worksheet-paper:not(.old) #sheet-A-1 .worksheet-note:has-text('" + named + "')");
        String told = page.textContent("#lesson-cautions");
        List<String> onPaper =
                page.locator("#worksheet-paper .worksheet-care li").allTextContents();
        assertTrue(onPaper.size() >= 9, onPaper.toString());
        onPaper.forEach(each -> assertTrue(told.contains(each), each));
        assertFalse(told.contains("n-Hexan"), told);
        assertTrue(
                (Boolean)
                        page.evaluate("() => document.querySelector('#worksheet-paper').getBoundingClientRect().bottom"
                                + " <= document.querySelector('#lesson-cautions').getBoundingClientRect().top"),
                "after the preview");
    }

    private static Page.WaitForSelectorOptions attached() {
        return new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED);
    }

    private static String text(PDDocument printed, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(printed).replaceAll("\\s+", " ");
    }

    /** From the row of parts to another code and back to the first, without a mouse; a reload keeps it, another browser makes the same. */
    @Test
    void wholeFlowByKeyboard() {
        Page page = openLesson();
        page.focus("#lesson-go-worksheet");
        page.keyboard().press("Enter");
        page.waitForSelector("html[data-part=worksheet]");
        current(page);
        String first = page.inputValue("#worksheet-code");
        String sheet = page.textContent("#worksheet-paper");
        tabTo(page, "worksheet-new");
        page.keyboard().press("Enter");
        page.waitForFunction("before => document.querySelector('#worksheet-code').value !== before", first);
        current(page);
        assertNotEquals(sheet, page.textContent("#worksheet-paper"));
        tabTo(page, "worksheet-ask-order");
        page.keyboard().press("Space");
        page.waitForSelector(
                "#worksheet-paper:not(.old) #sheet-A-1-order",
                new Page.WaitForSelectorOptions().setState(WaitForSelectorState.DETACHED));
        page.focus("#worksheet-code");
        page.keyboard().press("Control+a");
        page.keyboard().type(first.toLowerCase(Locale.ROOT));
        page.keyboard().press("Enter");
        page.waitForSelector("#worksheet-paper:not(.old) #sheet-A-1-order");
        current(page);
        assertEquals(sheet, page.textContent("#worksheet-paper"));
        assertFalse(page.isVisible("#answers-A"), "answers stay off the screen until somebody asks");
        tabTo(page, "worksheet-show");
        page.keyboard().press("Space");
        page.waitForSelector("#answers-A");
        page.fill("#worksheet-title", "Class 10b");
        page.reload();
        ready(page);
        current(page);
        assertEquals("Class 10b", page.inputValue("#worksheet-title"));
        assertTrue(page.textContent("#sheet-A-1").contains("Class 10b"));
        assertEquals(first.toLowerCase(Locale.ROOT), page.inputValue("#worksheet-code"));
    }

    @Test
    void aSlipInACodeIsToldAtItsEntryAndNothingIsLost() {
        Page page = onPaper(openLesson());
        String code = page.inputValue("#worksheet-code");
        String slip = code.substring(0, 8) + (code.endsWith("2") ? "3" : "2");
        page.fill("#worksheet-code", slip);
        page.keyboard().press("Enter");
        page.waitForSelector("#worksheet-code-fault");
        assertTrue(page.textContent("#worksheet-code-fault").contains("mistyped"));
        assertEquals(slip, page.inputValue("#worksheet-code"));
        assertTrue(page.isDisabled("#worksheet-print-a4"));
        for (String kind : List.of("rf", "order", "co-spot", "ratio", "edge")) {
            page.uncheck("#worksheet-ask-" + kind);
        }
        assertTrue(page.textContent("#worksheet-standing").contains("at least one"));
        page.check("#worksheet-ask-edge");
        current(page);
        page.waitForSelector("#sheet-A-1-edge");
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void isCleanAndLargeEnough(ColorScheme scheme, int width) {
        Page page = onPaper(openLesson(scheme, width, 844));
        assertClean(page);
        page.check("#worksheet-show");
        page.waitForSelector("#answers-A");
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, "#lesson-part "));
        shoot(page, String.format(Locale.ROOT, "worksheet-%s-%d", scheme, width).toLowerCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 599, 768, 900, 1920})
    void spillsAtNoWidth(int width) {
        Page page = onPaper(openLesson(ColorScheme.LIGHT, width, 900));
        page.check("#worksheet-show");
        ViewsIT.assertNothingSpills(page);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = onPaper(openLesson());
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.waitForSelector("#worksheet-paper:not(.old) :text('Kieselgelplatte')");
        page.check("#worksheet-show");
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        assertEquals(Set.of(), seen);
    }
}
