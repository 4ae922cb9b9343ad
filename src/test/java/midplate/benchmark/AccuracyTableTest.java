package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Results as tables")
class AccuracyTableTest {
    private static final String ERROR = "one-trial-informative.error";
    private static final String HIT = "plates.possible.hit";

    private static Map<String, Map<String, Figure>> contenders() {
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        contenders.put(
                "Midplate",
                Map.of(
                        ERROR,
                        new Figure(0.0534567, 0.00123456, 6399),
                        "two-trials.interval-score",
                        new Figure(0.2, 0.01, 99),
                        "plates.all.said-less-came",
                        new Figure(-0.0149, 0.0051, 20000)));
        contenders.put("Other", Map.of(HIT, new Figure(0.92345, Double.NaN, 15000)));
        contenders.put(Contenders.BEFORE, Map.of(ERROR, new Figure(0.06, 0.002, 6399)));
        return contenders;
    }

    private static Accuracy with(
            Map<String, Map<String, Figure>> contenders,
            Map<String, Map<String, Figure>> neighbours,
            Map<String, Map<String, Figure>> moved) {
        Map<String, Map<String, Figure>> ceilings = new LinkedHashMap<>();
        ceilings.put("Midplate", Map.of(HIT, new Figure(0.985, 0.004, 15000)));
        ceilings.put(
                Accuracy.REPEAT,
                Map.of(
                        "repeat.hexane-ethyl-acetate.error", new Figure(0.031, 0.004, 200),
                        "repeat.dichloromethane-methanol.error", new Figure(0.044, Double.NaN, 150),
                        "repeat.hexane-ethyl-acetate.structures", new Figure(9, Double.NaN, 200),
                        "repeat.dichloromethane-methanol.structures", new Figure(1, Double.NaN, 150)));
        Map<String, Map<String, Figure>> differences = new LinkedHashMap<>();
        differences.put(
                "Midplate − Two-trait model",
                Map.of(
                        ERROR,
                        new Figure(-0.00654, 0.0008, 6399),
                        HIT,
                        new Figure(0.0161, 0.0052, 15000),
                        "two-trials.interval-score",
                        new Figure(-0.0123, 0.0045, 99)));
        differences.put("Midplate, neighbours left out − Midplate", Map.of(ERROR, new Figure(0.00234, 0.00061, 6399)));
        Map<String, Object> setting =
                Map.of("structuresToLearnFrom", "20, 21", "structuresWithoutNeighbours", "12, 13");
        return new Accuracy(
                setting, contenders, ceilings, neighbours, moved, Map.of(), Map.of(), Map.of(), differences);
    }

    private static List<String> tables(Accuracy accuracy) {
        return List.of(AccuracyTable.of(accuracy).split("\n\n", -1));
    }

    @Test
    void theModelBeforeStandsBesideTheProgramThenTheCeilingsThenTheOthers() {
        List<String> lines =
                tables(with(contenders(), Map.of(), Map.of())).get(0).lines().toList();
        assertEquals(
                "| figure | Midplate | Two-trait model | difference | all else told | a second series | Other |",
                lines.get(0));
        assertEquals("| --- | ---: | ---: | ---: | ---: | ---: | ---: |", lines.get(1));
        assertEquals(
                "| error, one trial | 0.053 ± 0.001 | 0.060 ± 0.002 | −0.0065 ± 0.0008 | – | 0.031 ± 0.004 (n = 9) | – |",
                lines.get(2));
        assertEquals("| error, one trial with methanol | – | – | – | – | 0.044 (n = 1) | – |", lines.get(4));
        assertEquals("| possible plates hit | – | – | +1.6 ± 0.5 % | 98.5 ± 0.4 % | – | 92.3 % |", lines.get(5));
        assertEquals("| chance said less came true | −0.015 ± 0.005 | – | – | – | – | – |", lines.get(9));
        assertEquals(10, lines.size());
    }

    @Test
    void withoutTheModelBeforeNothingIsSaidOfIt() {
        Map<String, Map<String, Figure>> contenders = contenders();
        contenders.remove(Contenders.BEFORE);
        List<String> tables = tables(with(contenders, Map.of(), Map.of()));
        assertTrue(
                tables.get(0).startsWith("| figure | Midplate | all else told | a second series | Other |"),
                tables.get(0));
        assertFalse(String.join("", tables).contains("difference"), "nothing to take it from");
        assertEquals(3, tables.size());
    }

    @Test
    void bandsOfTheProgramAreHeldAgainstThoseOfTheModelBefore() {
        List<String> lines =
                tables(with(contenders(), Map.of(), Map.of())).get(1).lines().toList();
        assertEquals("| two trials, Midplate | – | – | – | – | – | – | 0.200 ± 0.010 |", lines.get(5));
        assertTrue(lines.get(6).startsWith("| two trials, Two-trait model | – |"), lines.get(6));
        assertEquals(
                "| two trials, difference of the first two | – |  |  |  | – | – | −0.0123 ± 0.0045 |", lines.get(7));
        assertEquals(2 + 3 * 3, lines.size());
    }

    @Test
    void chancesHaveAContenderARow() {
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        contenders.put(
                "B",
                Map.of(
                        "plates.all.fifth-2.said", new Figure(0.312, 0.01, 90),
                        "plates.all.fifth-2.came", new Figure(0.287, 0.021, 90)));
        List<String> lines =
                tables(with(contenders, Map.of(), Map.of())).get(2).lines().toList();
        assertEquals("| B | – → – | 0.31 → 0.29 ± 0.02 | – → – | – → – | – → – |", lines.get(2));
    }

    @Test
    void aTrainingWithoutNeighboursStandsBesideTheUsualOne() {
        Map<String, Map<String, Figure>> strangers =
                Map.of("Midplate", Map.of(ERROR, new Figure(0.0558, 0.0013, 6399)));
        List<String> lines =
                tables(with(contenders(), strangers, Map.of())).get(3).lines().toList();
        assertEquals("| neighbours of those asked about | Midplate | neighbours left out | difference |", lines.get(0));
        assertEquals("| structures to learn from, by fold | 20, 21 | 12, 13 |  |", lines.get(2));
        assertEquals("| error, one trial | 0.053 ± 0.001 | 0.056 ± 0.001 | +0.0023 ± 0.0006 |", lines.get(3));
    }

    @Test
    void twoThatWereTrainedWithoutNeighboursAreAlsoPaired() {
        Map<String, Map<String, Figure>> strangers = new LinkedHashMap<>();
        strangers.put("Midplate", Map.of());
        strangers.put(Contenders.BEFORE, Map.of());
        String table = tables(with(contenders(), strangers, Map.of())).get(3);
        String head = table.lines().findFirst().orElseThrow();
        assertTrue(head.endsWith("| difference | both left out: Midplate − Two-trait model |"), head);
        long cells = head.chars().filter(c -> c == '|').count();
        assertTrue(
                table.lines()
                        .allMatch(line -> line.chars().filter(c -> c == '|').count() == cells),
                table);
    }

    @Test
    void platesThatAnErrorMovesStandBySizeAndSetting() {
        Map<String, Map<String, Figure>> moved = Map.of(
                "Midplate, bench, 0.03",
                Map.of(
                        HIT,
                        new Figure(0.9012, 0.0111, 900),
                        "plates.all.said",
                        new Figure(0.70, 0.02, 1200),
                        "plates.all.hit",
                        new Figure(0.72, 0.021, 1200)));
        List<String> lines =
                tables(with(contenders(), Map.of(), moved)).get(3).lines().toList();
        assertEquals(5, lines.size());
        assertTrue(lines.get(0).contains("| `automated`: ") && lines.get(0).contains("| `class`: "), lines.get(0));
        assertEquals("| 0.03 | –; – → – | 90.1 ± 1.1 %; 0.70 → 0.72 ± 0.02 | –; – → – |", lines.get(3));
    }

    @Test
    void secondPlatesWithoutLabelsAreForThoseThatWereAsked() {
        Map<String, Map<String, Figure>> contenders = contenders();
        contenders.put(
                "C third",
                Map.of(
                        "unlabelled.guess.said", new Figure(0.8421, 0.0139, 8487),
                        "unlabelled.guess.right", new Figure(0.8718, 0.0187, 8487),
                        "unlabelled.error.second-labelled", new Figure(0.03867, 0.00185, 59694),
                        "unlabelled.plates.said-less-came", new Figure(-0.01357, 0.01393, 4000)));
        List<String> lines =
                tables(with(contenders, Map.of(), Map.of())).get(3).lines().toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(0).startsWith("| second plate without labels | mean probability said"), lines.get(0));
        assertEquals(
                "| C third | 0.84 → 0.87 ± 0.02 | – → – | – → – | 0.039 ± 0.002 | – | – | −0.014 ± 0.014 |",
                lines.get(2));
    }

    @Test
    void whatIsKnownOfTheLimitsHasItsColumnAndItsTable() {
        Accuracy accuracy = with(contenders(), Map.of(), Map.of())
                .withCeiling(Accuracy.IF_TRUE, Map.of(HIT, new Figure(0.9057, 0.0123, 7000)))
                .withCeiling(
                        Accuracy.SHARED_SCATTER,
                        Map.of(
                                "hexane/ethyl-acetate.below-10.neighbours", new Figure(0.471, 0.152, 406),
                                "hexane/ethyl-acetate.below-10.neighbours-pairs", new Figure(406, Double.NaN, 406),
                                "hexane/ethyl-acetate.below-10.alike", new Figure(-0.063, 0.104, 443),
                                "hexane/ethyl-acetate.below-10.shared", new Figure(0.0501, 0.0082, 406)));
        List<String> tables = tables(accuracy);
        List<String> lines = tables.get(0).lines().toList();
        assertTrue(lines.get(0).contains("| a second series | if the model were true | Other |"), lines.get(0));
        assertEquals(
                "| possible plates hit | – | – | +1.6 ± 0.5 % | 98.5 ± 0.4 % | – | 90.6 ± 1.2 % | 92.3 % |",
                lines.get(5));
        List<String> shared = tables.get(3).lines().toList();
        assertTrue(shared.get(0).startsWith("| what is left of a reading, "), shared.get(0));
        assertEquals(
                "| hexane/ethyl acetate, 2 and 5 % | +0.47 ± 0.15 (n = 406) | −0.06 ± 0.10 | – | 0.050 ± 0.008 |",
                shared.get(3));
    }
}
