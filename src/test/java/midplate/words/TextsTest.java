package midplate.words;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextsTest {
    private static final Texts POINT = Texts.of("a.json", "{}");
    private static final Texts COMMA =
            Texts.of("b.json", "{\"number.decimal-mark\": \",\", \"solvent.odd\": \"Seltsamol {part:1}\"}");

    private static String filled(String text, Object... nameThenValue) {
        return filled(POINT, text, nameThenValue);
    }

    private static String filled(Texts texts, String text, Object... nameThenValue) {
        return Template.of("test.text", text).fill(Message.of("test.text", nameThenValue), texts);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rf etwa {x:2} | 0.333  | Rf etwa 0,33",
                "{x} ml         | 7.5    | 7,5 ml",
                "{x} ml         | 8      | 8 ml",
                "{x:0} %        | 12.4   | 12 %",
                "{x:1}          | -0.04  | 0,0",
            })
    void writesNumbersWithTheDecimalMarkOfTheLanguage(String text, double x, String expected) {
        assertEquals(expected, filled(COMMA, text, "x", x));
    }

    @Test
    void leavesThePointInWordsAlone() {
        assertEquals("Fleck 1.5 bei 9 : 1", filled(COMMA, "Fleck {spot} bei {ratio}", "spot", "1.5", "ratio", "9 : 1"));
    }

    @Test
    void putsAnInnerMessageIntoTheSameLanguage() {
        Message inner = Message.of("solvent.odd", "part", 0.25);
        assertEquals("mit Seltsamol 0,3", filled(COMMA, "mit {solvent}", "solvent", inner));
        assertThrows(IllegalStateException.class, () -> filled(POINT, "with {solvent}", "solvent", inner));
    }

    @ParameterizedTest
    @CsvSource({
        "{x}, 10, 10",
        "{x}, 2.50, 2.5",
        "{x}, 0.00001, 0.00001",
        "{x}, -0.0, 0",
        "{x}, 1e21, 1000000000000000000000",
        "{x:0}, 2.6, 3",
        "{x:1}, 2, 2.0",
        "{x:2}, -1.5, -1.50",
        "{x:1}, -0.04, 0.0",
        "{x:3}, 1234567.0004, 1234567.000",
        "{x:1}, NaN, NaN",
    })
    void writesANumberAsItsPlaceSays(String text, double x, String expected) {
        assertEquals(expected, filled(text, "x", x));
    }

    @Test
    void writesWordsAndWholeNumbersPlainlyAndAnyPlaceMoreThanOnce() {
        assertEquals(
                "A beats B, A wins 3 times, 3.0",
                filled("{a} beats {b}, {a} wins {n} times, {n:1}", "a", "A", "b", "B", "n", 3));
        assertEquals("$1 \\ stays", filled("{a} stays", "a", "$1 \\"));
    }

    @Test
    void writesNumbersTheSameWhateverTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals("-1234.50", filled("{x:2}", "x", -1234.5));
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "}", "a {x b", "{x:}", "{x:10}", "{x:a}", "{X}", "{}", "{{x}}", "{x }"})
    void refusesABraceThatOpensNoPlace(String text) {
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> Template.of("test.text", text));
        assertTrue(e.getMessage().contains("test.text"), e.getMessage());
    }

    @Test
    void namesTheKeyThatHasNoText() {
        Texts texts = Texts.of("a.json", "{\"a.b\": \"text\"}");
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> texts.render(Message.of("a.missing")));
        assertTrue(e.getMessage().contains("a.missing") && e.getMessage().contains("a.json"), e.getMessage());
    }

    @Test
    void namesTheKeyAndTheValueThatIsMissing() {
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> filled("{front}", "start", 1));
        assertTrue(e.getMessage().contains("test.text") && e.getMessage().contains("{front}"), e.getMessage());
        assertThrows(IllegalStateException.class, () -> filled("{front:1}", "front", "high"));
    }

    @Test
    void rendersAMessageWithTheEnglishTexts() {
        assertEquals(
                "The front at 9.0 mm is not above the start line at 10.5 mm.",
                Texts.english().render(Message.of("plate.front-not-above-start", "frontMm", 9, "startMm", 10.5)));
        assertTrue(Texts.english().keys().contains("plate.front-not-above-start"));
    }

    @Test
    void readsEscapesAndSigns() {
        Texts texts = Texts.of("a.json", "{\"a.b\": \"\\\"±\\u00e9\\n\\\\\\/\\t\\\"\"}");
        assertEquals("\"±é\n\\/\t\"", texts.render(Message.of("a.b")));
        assertTrue(Texts.of("a.json", " {} \n").keys().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{\"a.b\": 1}",
                "{\"a.b\": {\"c\": \"d\"}}",
                "{\"a.b\": \"x\",}",
                "{\"a.b\": \"x\" \"c.d\": \"y\"}",
                "{\"a.b\": \"x\", \"a.b\": \"y\"}",
                "{\"a.b\": \"x\"} more",
                "{\"a.b\": \"x",
                "{\"a.b\": \"line\nbreak\"}",
                "{\"a.b\": \"\\x\"}",
                "{\"a.b\": \"\\u12g4\"}",
                "{\"a.b\": \"{open\"}",
            })
    void refusesAFileThatIsNoFlatObjectOfTexts(String json) {
        assertThrows(IllegalStateException.class, () -> Texts.of("a.json", json));
    }

    @Test
    void saysInWhichLineAFileIsBroken() {
        IllegalStateException e = assertThrows(
                IllegalStateException.class, () -> Texts.of("a.json", "{\n\"a.b\": \"x\",\n\"c.d\": 7\n}"));
        assertEquals("a.json, line 3: expected \" and found 7.", e.getMessage());
    }

    @Test
    void theTextsCannotBeChangedFromOutside() {
        Texts texts = Texts.of("a.json", "{\"a.b\": \"x\"}");
        assertThrows(UnsupportedOperationException.class, () -> texts.keys().remove("a.b"));
        assertDoesNotThrow(() -> texts.render(Message.of("a.b")));
        assertFalse(texts.keys().contains("b"));
    }
}
