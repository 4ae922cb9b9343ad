package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Results as a file and as a table")
class AccuracyFileTest {
    private static Accuracy accuracy() {
        Map<String, Object> setting = new LinkedHashMap<>();
        setting.put("sha256", "00ff");
        setting.put("rows", 2887);
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        contenders.put(
                "B first",
                Map.of(
                        "one-trial-informative.error", new Figure(0.0534567, 0.00123456, 6399),
                        "plates.all.said-less-came", new Figure(-0.0149, 0.0051, 20000)));
        contenders.put("A second", Map.of("plates.possible.hit", new Figure(0.92345, Double.NaN, 15000)));
        return new Accuracy(
                setting,
                contenders,
                Map.of(Accuracy.REPEAT, Map.of("repeat.error", new Figure(0.04, 0.01, 90))),
                Map.of("N", Map.of("two-trials.error", new Figure(0.05, 0.01, 90))),
                Map.of("B first, bench, 0.03", Map.of("plates.all.hit", new Figure(0.6, 0.02, 90))),
                Map.of("Structures told", Map.of("first.possible.hit", new Figure(0.88, 0.02, 90))),
                Map.of("two jars", Map.of("rounds.all.came", new Figure(0.8, 0.02, 90))),
                Map.of("B first", Map.of("switch-to-ether.error", new Figure(0.08, 0.01, 90))),
                Map.of("B − A", Map.of("one-trial.error", new Figure(1e-17, 0.5, 3))));
    }

    @Test
    void figuresHaveFourDigitsAndALineEach() {
        String text = AccuracyFile.write(accuracy());
        assertTrue(
                text.contains("\n      \"one-trial-informative.error\":"
                        + " {\"value\": 0.05346, \"standardError\": 0.001235, \"count\": 6399}"),
                text);
        assertTrue(text.contains("{\"value\": 0.9234, \"standardError\": null, \"count\": 15000}"), text);
        assertTrue(text.contains("{\"value\": 0, \"standardError\": 0.5, \"count\": 3}"), text);
        assertTrue(text.endsWith("}\n"));
    }

    @Test
    void readAndWrittenAgainItIsTheSame() {
        String text = AccuracyFile.write(accuracy());
        assertEquals(text, AccuracyFile.write(AccuracyFile.read(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{}", "{\"setting\": {}", "{\"setting\": 1, \"contenders\": {}}"})
    void whatIsNoResultIsRefused(String text) {
        Exception refusal = assertThrows(IllegalArgumentException.class, () -> AccuracyFile.read(text));
        assertTrue(refusal.getMessage().startsWith("No results of a benchmark: "), refusal.getMessage());
    }

    @Test
    void theTableGoesBetweenTheMarksAndNowhereElse() {
        String document = "# Title\n" + MarkedPlace.BEGIN + "\nold\n" + MarkedPlace.END + "\nrest\n";
        String placed = MarkedPlace.placed(document, "| new |\n");
        assertEquals("# Title\n" + MarkedPlace.BEGIN + "\n| new |\n" + MarkedPlace.END + "\nrest\n", placed);
        assertEquals("| new |\n", MarkedPlace.found(placed));
        assertEquals(placed, MarkedPlace.placed(placed, "| new |\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no marks",
                MarkedPlace.BEGIN,
                MarkedPlace.END + MarkedPlace.BEGIN,
                MarkedPlace.BEGIN + MarkedPlace.BEGIN + MarkedPlace.END
            })
    void aDocumentWithoutItsMarksIsRefused(String document) {
        assertThrows(IllegalArgumentException.class, () -> MarkedPlace.placed(document, "| new |\n"));
    }
}
