package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The table of another pair")
class TheoryTableTest {
    @Test
    void setsWhatWasNotMeasuredBesideWhatWas() {
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        contenders.put("Program", switches(0.05));
        contenders.put(Contenders.BEFORE, switches(0.055));
        contenders.put("Law", switches(0.12));
        contenders.put("Line", Map.of("one-trial.error", new Figure(0.1, 0.01, 9)));
        List<String> lines = TheoryTable.of(new Accuracy(
                        Map.of(),
                        contenders,
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        Map.of(StructureContenders.PROGRAM, switches(0.04)),
                        Map.of(),
                        Map.of("Program", switches(0.08)),
                        Map.of(Accuracy.notMeasured("Program"), switches(0.03))))
                .lines()
                .toList();
        assertEquals(
                "| another pair | Program | Structures told | as if not measured | difference | Law |", lines.get(0));
        assertEquals(
                "| error, ether 33 and 50 % from ethyl acetate | 0.050 ± 0.002 | 0.040 ± 0.002 | 0.080 ± 0.002"
                        + " | +0.0300 ± 0.0020 | 0.120 ± 0.002 |",
                lines.get(2));
        assertEquals(
                "| – 90 % bands hold | 90.0 ± 1.0 % | 90.0 ± 1.0 % | 90.0 ± 1.0 % | +90.0 ± 1.0 % | 90.0 ± 1.0 % |",
                lines.get(3));
        assertEquals("| error, ethyl acetate from ether | – | – | – | – | – |", lines.get(6));
    }

    private static Map<String, Figure> switches(double error) {
        return Map.of(
                "switch-to-ether.error", new Figure(error, 0.002, 468),
                "switch-to-ether.cover90", new Figure(0.9, 0.01, 468));
    }
}
