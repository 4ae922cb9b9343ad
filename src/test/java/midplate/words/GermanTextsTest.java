package midplate.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The German texts beside the English ones: the same keys with the same values, and nothing left in English. */
class GermanTextsTest {
    private static final Path ENGLISH = Path.of("shared", "texts", "en.json");
    private static final Path GERMAN = Path.of("shared", "texts", "de.json");
    private static final Path PHRASES = Path.of("shared", "texts", "phrases.de.json");

    private static final Pattern PLACE = Pattern.compile("\\{[^}]*}");
    /** Texts that read alike in both: formulas, mere arrangements of values, words of both languages. */
    private static final Set<String> ALIKE = Set.of(
            "allowed.list",
            "allowed.mm",
            "allowed.pairs",
            "allowed.words",
            "column.pool-and",
            "column.ratio",
            "column.ratio-share",
            "column.share",
            "import.percent",
            "import.share-in",
            "later.checks-candidate-name",
            "later.checks-candidate-smiles",
            "later.checks-eluent-words",
            "later.checks-hrf-option",
            "later.checks-hrf-system",
            "later.checks-lane-is-reference",
            "later.checks-origin-gap-formula",
            "later.checks-paper-spot",
            "later.checks-reaction-lane-reaction",
            "later.checks-reaction-minutes",
            "later.checks-reaction-name-product",
            "later.checks-reaction-origin-formula",
            "later.checks-see-answer",
            "later.elution-bands-rf",
            "later.elution-tried-share",
            "later.fractions-mass",
            "later.fractions-seen",
            "later.fractions-volume",
            "later.lesson-class-axis",
            "later.lesson-class-bin",
            "later.lesson-class-cells-rf",
            "later.lesson-class-front",
            "later.lesson-class-start",
            "later.lesson-climb-column-rf",
            "later.lesson-climb-mm",
            "later.lesson-climb-rf-value",
            "later.lesson-exercise-eluent",
            "later.lesson-exercise-key-mean",
            "later.lesson-exercise-plate-share",
            "later.lesson-exercise-spot-read",
            "later.lesson-exercise-unknown",
            "later.lesson-note",
            "later.lesson-series-epsilon",
            "later.lesson-series-plate-label",
            "later.lesson-series-pulled",
            "later.lesson-series-spoken",
            "later.lesson-series-value",
            "later.lesson-slips-division",
            "later.lesson-slips-in-mm",
            "later.lesson-slips-in-percent",
            "later.lesson-slips-rf",
            "later.lesson-slips-share",
            "later.lesson-why-column-rf",
            "later.lesson-why-input",
            "later.lesson-why-number",
            "later.lesson-why-part",
            "later.lesson-why-part-once",
            "later.lesson-why-rf",
            "later.lesson-worksheet-foot",
            "later.lesson-worksheet-name",
            "later.origin-factor-formula",
            "later.origin-level-formula",
            "later.photo-light-uv-254",
            "later.photo-light-uv-366",
            "later.photo-mm",
            "later.photo-rf",
            "later.photo-rf-error",
            "later.photo-spot-value",
            "later.swap-zero",
            "lesson.class-beside-usual",
            "lesson.class-value",
            "lesson.exercise-eluent",
            "lesson.exercise-group-times",
            "lesson.exercise-pair",
            "lesson.series-ratio",
            "lesson.series-rf-at",
            "lesson.series-share",
            "lesson.why-balance",
            "lesson.worksheet-column-ml",
            "lesson.worksheet-column-rf",
            "lesson.worksheet-group",
            "lesson.worksheet-groups",
            "lesson.worksheet-letter",
            "lesson.worksheet-lettered",
            "lesson.worksheet-mm",
            "lesson.worksheet-place",
            "lesson.worksheet-rf",
            "page.additive-plus",
            "page.additive-pour",
            "page.card-name",
            "page.card-volume",
            "page.chart-percent",
            "page.chart-rf-axis",
            "page.curve-percent",
            "page.curve-strength",
            "page.eluent-share",
            "page.equation",
            "page.front",
            "page.guide-rf",
            "page.in-reach",
            "page.length-shown",
            "page.mm",
            "page.pair-option",
            "page.pair-rests",
            "page.pour",
            "page.pour-pure",
            "page.published-value",
            "page.rf",
            "page.seen-value",
            "page.whatif-column",
            "page.whatif-ml",
            "page.whatif-share-now",
            "pure.next-mixture",
            "same.at-rf",
            "seeing.order-two",
            "seeing.words",
            "terminal.way");
    /** Texts that hold words of a request, which no language changes. */
    private static final Set<String> WITH_FIELDS = Set.of(
            "allowed.rf-or-plate",
            "allowed.unlabelled-or-plate",
            "came.rf-and-plate",
            "came.unlabelled-and-plate",
            "todo.say-part");

    private static Map<String, String> texts(Path file) throws IOException {
        return FlatJson.read(file.toString(), Files.readString(file));
    }

    private static List<String> places(String text) {
        List<String> places = new ArrayList<>();
        Matcher place = PLACE.matcher(text);
        while (place.find()) {
            places.add(place.group());
        }
        places.sort(null);
        return List.copyOf(new TreeSet<>(places));
    }

    @Test
    void hasEveryKeyOfTheEnglishTextsAndNoOther() throws IOException {
        TreeSet<String> lacking = new TreeSet<>(texts(ENGLISH).keySet());
        lacking.removeAll(texts(GERMAN).keySet());
        TreeSet<String> idle = new TreeSet<>(texts(GERMAN).keySet());
        idle.removeAll(texts(ENGLISH).keySet());
        assertEquals(List.of(), List.copyOf(lacking), "keys that German lacks");
        assertEquals(List.of(), List.copyOf(idle), "keys that only German has");
    }

    @Test
    void showsTheSameValues() throws IOException {
        Map<String, String> german = texts(GERMAN);
        texts(ENGLISH).forEach((key, text) -> assertEquals(places(text), places(german.getOrDefault(key, "")), key));
    }

    @ParameterizedTest
    @ValueSource(strings = {"de.json", "phrases.de.json"})
    void holdsOneTextALineSorted(String name) throws IOException {
        Path file = Path.of("shared", "texts", name);
        List<String> keys = List.copyOf(texts(file).keySet());
        assertFalse(keys.isEmpty());
        assertEquals(List.copyOf(new TreeSet<>(keys)), keys);
        assertEquals(keys.size() + 2, Files.readAllLines(file).size());
        texts(file).forEach((key, text) -> assertTrue(!text.isBlank() && text.equals(text.strip()), key));
    }

    @Test
    void noTextIsTheEnglishOneUnlessItHoldsNoWord() throws IOException {
        Map<String, String> english = texts(ENGLISH);
        Set<String> same = new TreeSet<>();
        texts(GERMAN).forEach((key, text) -> {
            if (text.equals(english.get(key))) {
                same.add(key);
            }
        });
        assertEquals(new TreeSet<>(ALIKE), same);
        texts(PHRASES).forEach((phrase, text) -> assertFalse(phrase.equals(text), phrase));
    }

    @Test
    void noEnglishWordIsLeft() throws IOException {
        Map<String, String> all = new TreeMap<>(texts(GERMAN));
        all.putAll(texts(PHRASES));
        all.keySet().removeAll(WITH_FIELDS);
        Map<String, String> left = new TreeMap<>();
        all.forEach((key, text) -> EnglishWords.in(text).ifPresent(word -> left.put(key, word)));
        assertEquals(Map.of(), left);
    }

    @Test
    void theSearchFindsEnglishAndTakesGerman() {
        assertEquals(Optional.of("the"), EnglishWords.in("Die Front, The top"));
        assertEquals(Optional.of("with"), EnglishWords.in("Hexan with Ethylacetat"));
        assertEquals(Optional.empty(), EnglishWords.in("Was war so am Rand, in {of} und an {name:2} die Theorie"));
    }

    @Test
    void numbersWrittenIntoGermanTextsHaveACommaUnlessTheyAreJsonOrTheNumberOfAFigure() throws IOException {
        Pattern point = Pattern.compile("\\d\\.\\d");
        Set<String> pointed = new TreeSet<>();
        texts(GERMAN).forEach((key, text) -> {
            if (point.matcher(text).find()) {
                pointed.add(key);
            }
        });
        texts(PHRASES).forEach((phrase, text) -> {
            if (point.matcher(text).find()) {
                pointed.add(phrase);
            }
        });
        assertEquals(Set.of("kind.two-numbers", "same.next-sourced", "Fig. 8.15, p. 386"), pointed);
    }

    @Test
    void saysAnRfWithAComma() {
        assertEquals(
                "A: Rf etwa 0,33, auf 9 von 10 Platten zwischen 0,20 und 0,46.",
                Texts.of(Language.GERMAN)
                        .render(Message.of("terminal.spot", "spot", "A", "rf", 0.333, "low", 0.2, "high", 0.456)));
    }
}
