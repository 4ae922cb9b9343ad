package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The table of what structures add")
class StructureTableTest {
    @Test
    void setsThePeersBesideTheProgramWithTheirDifferences() {
        Map<String, Map<String, Figure>> structures = new LinkedHashMap<>();
        structures.put("Told", Map.of("first.possible.hit", new Figure(0.9, 0.02, 10)));
        structures.put("Other", Map.of("first.possible.hit", new Figure(0.7, 0.05, 10)));
        structures.put(
                StructureContenders.neighboursLeftOut("Told"),
                Map.of("first.possible.hit", new Figure(0.88, 0.02, 10)));
        Map<String, Map<String, Figure>> differences =
                Map.of("Told − Other", Map.of("first.possible.hit", new Figure(0.2, 0.04, 10)));
        List<String> lines = StructureTable.of(new Accuracy(
                        Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), structures, Map.of(), Map.of(), differences))
                .lines()
                .toList();
        assertEquals("| structures | Told | Other | difference | Told, neighbours left out |", lines.get(0));
        assertEquals(
                "| first plate: possible plates hit | 90.0 ± 2.0 % | 70.0 ± 5.0 % | +20.0 ± 4.0 % | 88.0 ± 2.0 % |",
                lines.get(2));
        assertTrue(lines.get(3).endsWith("| – | – | – | – |"), lines.get(3));
    }
}
