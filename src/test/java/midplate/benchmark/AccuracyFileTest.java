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
        return new Accuracy(setting, contenders, Map.of("B − A", Map.of("one-trial.error", new Figure(1e-17, 0.5, 3))));
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
    void theTableHasAContenderARowInTheirOrder() {
        String[] lines = AccuracyTable.of(accuracy()).split("\n", -1);
        assertEquals(10, lines.length);
        assertTrue(lines[0].startsWith("| model | error, one trial |"), lines[0]);
        assertEquals("| B first | 0.053 ± 0.001 | – | – | – | – | – | – | – | −0.01 ± 0.01 |", lines[2]);
        assertTrue(lines[3].startsWith("| A second | – |"), lines[3]);
        assertEquals("", lines[4]);
        assertTrue(lines[5].startsWith("| model: mean chance said → share come true |"), lines[5]);
        assertEquals("| B first | – → – | – → – | – → – | – → – | – → – |", lines[7]);
        assertEquals("", lines[9]);
    }

    @Test
    void aThirdTableIsForThoseThatWereAskedAboutUnlabelledSpots() {
        Map<String, Map<String, Figure>> contenders =
                new LinkedHashMap<>(accuracy().contenders());
        contenders.put(
                "C third",
                Map.of(
                        "unlabelled.guess.said", new Figure(0.8421, 0.0139, 8487),
                        "unlabelled.guess.right", new Figure(0.8718, 0.0187, 8487),
                        "unlabelled.error.second-labelled", new Figure(0.03867, 0.00185, 59694),
                        "unlabelled.plates.said-less-came", new Figure(-0.01357, 0.01393, 4000)));
        String[] lines =
                AccuracyTable.of(new Accuracy(Map.of(), contenders, Map.of())).split("\n", -1);
        assertEquals(16, lines.length);
        assertTrue(lines[12].startsWith("| model: second plate without labels | mean probability said"), lines[12]);
        assertEquals(
                "| C third | 0.84 → 0.87 ± 0.02 | – → – | – → – | 0.039 ± 0.002 | – | – | −0.01 ± 0.01 |", lines[14]);
        assertEquals("", lines[15]);
    }

    @Test
    void theTableGoesBetweenTheMarksAndNowhereElse() {
        String document = "# Title\n" + AccuracyTable.BEGIN + "\nold\n" + AccuracyTable.END + "\nrest\n";
        String placed = AccuracyTable.placed(document, "| new |\n");
        assertEquals("# Title\n" + AccuracyTable.BEGIN + "\n| new |\n" + AccuracyTable.END + "\nrest\n", placed);
        assertEquals("| new |\n", AccuracyTable.found(placed));
        assertEquals(placed, AccuracyTable.placed(placed, "| new |\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no marks",
                AccuracyTable.BEGIN,
                AccuracyTable.END + AccuracyTable.BEGIN,
                AccuracyTable.BEGIN + AccuracyTable.BEGIN + AccuracyTable.END
            })
    void aDocumentWithoutItsMarksIsRefused(String document) {
        assertThrows(IllegalArgumentException.class, () -> AccuracyTable.placed(document, "| new |\n"));
    }
}
