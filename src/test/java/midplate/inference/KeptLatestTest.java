package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is kept between questions")
class KeptLatestTest {
    @Test
    void theOneNotAskedForTheLongestMakesRoom() {
        KeptLatest<String, String> kept = new KeptLatest<>(2);
        List<String> made = new ArrayList<>();
        for (String key : List.of("a", "b", "a", "c", "a", "b")) {
            String value = kept.get(key, () -> {
                made.add(key);
                return key + key;
            });
            assertEquals(key + key, value);
        }
        assertEquals(List.of("a", "b", "c", "b"), made);
    }

    @Test
    void aWindowJustAskedForOutlivesManyOthers() {
        KeptWindows windows = new KeptWindows();
        PairModel model = Plates.BUILT_IN.find(Plates.ACETATE).orElseThrow();
        WindowChances usual = windows.get(window(0.2), model);
        WindowChances odd = windows.get(window(0.3), model);
        for (int i = 0; i < 20; i++) {
            WindowChances other = windows.get(window(0.4 + i / 100.0), model);
            for (int share = 0; share < 400; share++) {
                other.at(share / 4.0);
            }
            assertSame(usual, windows.get(window(0.2), model));
        }
        assertNotSame(odd, windows.get(window(0.3), model));
    }

    private static WindowChances.Window window(double low) {
        return new WindowChances.Window(Plates.ACETATE, Setting.AUTOMATED, low, 0.8);
    }

    // Own algebra: an odd number has an inverse modulo a power of two.
    @Test
    void differentSharesHaveDifferentKeysThatFallOnManyPlaces() {
        Set<Long> keys = new HashSet<>();
        Set<Integer> places = new HashSet<>();
        for (int i = 0; i <= 400; i++) {
            Long key = ShareKey.of(i / 4.0);
            keys.add(key);
            places.add((key.hashCode() ^ (key.hashCode() >>> 16)) & 1023);
        }
        assertEquals(401, keys.size());
        assertTrue(places.size() > 250, places.size() + " places");
        assertNotEquals(ShareKey.of(10), ShareKey.of(Math.nextUp(10)));
    }

    @Test
    void theSameReadingsSayTheSameWhetherKeptOrNot() {
        List<PlateRun> runs = List.of(
                Plates.run(Plates.ACETATE, 10, Map.of("A", 0.2, "B", 0.4)),
                Plates.run(Plates.ACETATE, 20, Map.of("A", 0.35, "B", 0.55)));
        PlateModels fresh = PlateModels.of(Plates.CURVES, midplate.catalogue.FunctionalGroups.builtIn());
        for (String pair : List.of(Plates.ACETATE, Plates.ETHER)) {
            double first = chance(fresh, pair, List.of("A", "B"), runs);
            assertEquals(first, chance(fresh, pair, List.of("A", "B"), runs));
            assertEquals(first, chance(fresh, pair, List.of("B", "A"), List.of(runs.get(1), runs.get(0))), 1e-15);
        }
    }

    private static double chance(PlateModels models, String pair, List<String> spots, List<PlateRun> runs) {
        return Plates.outlook(models, pair, Setting.AUTOMATED, spots, runs, 0.2, 0.8)
                .chance(25, List.of(0, 1));
    }
}
