package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A chance of which a part is enough")
class NeededChanceTest {
    // Own algebra: all spots inside is never likelier than one of them; a bound says on which side of it a chance lies.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void isTheWholeChanceOrABoundBelowWhatIsNeeded(Setting setting) {
        List<PlateRun> runs = List.of(
                Plates.run(Plates.ACETATE, 10, Map.of("A", 0.1, "B", 0.3, "C", 0.4)),
                Plates.run(Plates.ACETATE, 25, Map.of("A", 0.25, "B", 0.6, "C", 0.65)));
        List<String> names = List.of("A", "B", "C");
        List<Integer> spots = List.of(0, 1, 2);
        Outlook whole = Plates.outlook(Plates.ACETATE, setting, names, runs);
        int bounds = 0;
        for (double needed : new double[] {0, 0.1, 0.5, 0.9}) {
            Outlook part = Plates.outlook(Plates.ACETATE, setting, names, runs);
            for (double percent = 0; percent <= 100; percent += 2.5) {
                double chance = whole.chance(percent, spots);
                double told = part.chance(percent, spots, needed);
                if (told < needed) {
                    assertTrue(chance <= told + 1e-12, percent + " %: " + chance + " above " + told);
                    bounds += told > chance ? 1 : 0;
                } else {
                    assertEquals(chance, told, percent + " %");
                }
                assertEquals(chance, part.chance(percent, spots), "afterwards, " + percent + " %");
            }
        }
        assertTrue(bounds > 10, bounds + " bounds");
    }
}
