package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spots labelled at the same Rf, then as many seen close together without a label; all readings are invented. */
@DisplayName("Spots that nothing tells apart")
class AlikeSpotsTest {
    private static List<String> names(int spots) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            names.add("S" + i);
        }
        return names;
    }

    private static PlateRun seen(double percent, int count) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            spots.add(new UnlabelledSpot(i, Reading.of(0.3 + 0.01 * i)));
        }
        List<UnlabelledLane> lanes = List.of(new UnlabelledLane(1, Set.of(), spots));
        return new PlateRun(Plates.ACETATE, percent, Map.of(), (int) percent, lanes, Set.of());
    }

    private static Knowledge after(int spots, PlateRun... unlabelled) {
        Map<String, Double> alike = new LinkedHashMap<>();
        names(spots).forEach(name -> alike.put(name, 0.2));
        List<PlateRun> runs = new ArrayList<>(List.of(Plates.run(Plates.ACETATE, 10, alike)));
        runs.addAll(List.of(unlabelled));
        return Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, names(spots), runs)
                .knowledge();
    }

    private static void assertNoNameIsSurerThanAnother(Knowledge knowledge, int spots) {
        for (SpotGuess guess : knowledge.guesses()) {
            for (SpotGuess.Possibility each : guess.possibilities()) {
                if (!each.spots().isEmpty()) {
                    assertTrue(each.probability() <= 1.0 / spots + 1e-3, spots + " spots: " + guess);
                }
            }
        }
    }

    // Own algebra: exchanging names changes nothing, so each of n has the same chance of lying at a place, at most 1/n.
    @ParameterizedTest
    @CsvSource({"2, 2", "3, 3", "4, 4", "5, 5", "6, 6", "7, 7", "10, 10", "12, 12", "14, 12"})
    void noneIsLikelierThanAnyOther(int spots, int readings) {
        assertNoNameIsSurerThanAnother(after(spots, seen(20, readings)), spots);
        assertNoNameIsSurerThanAnother(after(spots, seen(20, readings), seen(30, readings)), spots);
    }

    // Own algebra: n spots lie at n readings in n! ways of the same weight, of which at most 48 are kept.
    @ParameterizedTest
    @CsvSource({"5, 120", "6, 720", "7, 5040", "10, 3628800", "12, 479001600"})
    void theShareCountedIsThatOfTheWaysKeptAmongAllExchanges(int spots, double exchanges) {
        double counted = after(spots, seen(20, spots)).matched();
        assertTrue(counted > 0 && counted <= 48 / exchanges + 1e-9, spots + " spots: " + counted);
    }

    @ParameterizedTest
    @CsvSource({"2", "3"})
    void fewSpotsCountInAllWays(int spots) {
        assertEquals(1, after(spots, seen(20, spots)).matched(), 0.02);
    }
}
