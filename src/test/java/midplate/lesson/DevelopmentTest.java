package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import midplate.lesson.Development.Event;
import midplate.lesson.Development.Place;
import midplate.lesson.Development.Spot;
import midplate.words.Message;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A plate while it develops")
class DevelopmentTest {
    private static final DippedPlate USUAL = DippedPlate.USUAL;

    private static Development develop(double percent) {
        return Development.of(Surfaces.MODEL, Surfaces.sample("hexane", "ethyl acetate"), percent, USUAL);
    }

    // z² = κ·t, published (PlanarFlow); t in s, the answer in minutes.
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 100})
    void theSquareOfTheHeightIsStraightInTime(double percent) {
        Development seen = develop(percent);
        for (Development.Moment moment : seen.moments()) {
            double z = moment.frontMm() - USUAL.levelMm();
            assertEquals(seen.speed().middle() * 60 * moment.minutes(), z * z, 1e-9);
        }
        assertEquals(0, seen.moments().get(0).minutes());
        assertEquals(
                USUAL.stopMm(), seen.moments().get(seen.moments().size() - 1).frontMm());
    }

    // By hand: hexane 18.4 mN/m, 0.31 mPa s: κ = 2·0.0072·0.01·1000·18.4/0.31 = 8.547 mm²/s. From the surface at 5 mm
    // to the start line
    // 5²/8.547 = 2.925 s, to the stop 57²/8.547/60 = 6.336 min; 30 % of κ either way: 6.336/1.3 = 4.874, 6.336/0.7 =
    // 9.051.
    @Test
    void timesOfHexaneAloneAreThoseWorkedOutByHand() {
        List<Event> events = develop(0).events();
        assertEquals(2.925 / 60, events.get(0).minutes(), 1e-5);
        assertEquals(6.336, events.get(2).minutes(), 1e-3);
        assertEquals(4.874, events.get(2).lowMinutes(), 1e-3);
        assertEquals(9.051, events.get(2).highMinutes(), 2e-3);
    }

    // By hand: half of the run stands 31 mm above the surface: (31/57)² = 0.2958 of the time.
    @Test
    void halfOfTheRunTakesLessThanAThirdOfTheTime() {
        List<Event> events = develop(20).events();
        assertEquals(0.2958, events.get(1).minutes() / events.get(2).minutes(), 1e-4);
        Message slows = develop(20).sentences().get(1);
        assertEquals("lesson.climb-slows", slows.key());
        assertEquals(30, slows.args().get("percent"));
    }

    @Test
    void nothingMovesBeforeTheFrontHasPassedTheStartLine() {
        Development seen = develop(20);
        int before = 0;
        for (int i = 0; i < seen.moments().size(); i++) {
            if (seen.moments().get(i).frontMm() <= USUAL.startMm()) {
                before++;
                for (Spot spot : seen.spots()) {
                    Place place = spot.places().get(i);
                    assertEquals(new Place(USUAL.startMm(), SpotGrowth.START_MM, SpotGrowth.START_MM), place);
                }
            }
        }
        assertEquals(2, before, "the dip, and when the front passes the line");
    }

    @Test
    void theRfIsTheSameAtEveryMoment() {
        Development seen = develop(20);
        for (Spot spot : seen.spots()) {
            for (int i = 0; i < seen.moments().size(); i++) {
                double run = seen.moments().get(i).frontMm() - USUAL.startMm();
                if (run > 0) {
                    assertEquals(spot.rf(), (spot.places().get(i).centreMm() - USUAL.startMm()) / run, 1e-12);
                }
            }
            assertTrue(spot.low() < spot.rf() && spot.rf() < spot.high());
        }
    }

    // 4·√(0.5² + 0.05·20) = 4·√1.25 = 4.472 along, 4·√(0.25 + 0.25) = 2.828 across: own algebra.
    @Test
    void spotsGrowWithTheWayLongerThanBroad() {
        assertEquals(2, SpotGrowth.alongMm(0));
        assertEquals(2, SpotGrowth.acrossMm(0));
        assertEquals(4.472, SpotGrowth.alongMm(20), 1e-3);
        assertEquals(2.828, SpotGrowth.acrossMm(20), 1e-3);
        double along = 0;
        for (double way = 0; way <= 100; way += 5) {
            assertTrue(SpotGrowth.alongMm(way) > along, () -> "rising");
            along = SpotGrowth.alongMm(way);
            // mass transfer controls on conventional layers, spots elongate: Guiochon1979, read in the abstract
            assertTrue(way == 0 || along > SpotGrowth.acrossMm(way));
        }
        assertThrows(IllegalArgumentException.class, () -> SpotGrowth.alongMm(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SpotGrowth.alongMm(-1));
    }

    @Test
    void aSpotThatRunsFartherIsLongerAtTheEnd() {
        Development seen = develop(20);
        Place first = seen.spots().get(0).places().get(seen.moments().size() - 1);
        Place last = seen.spots().get(2).places().get(seen.moments().size() - 1);
        assertTrue(first.centreMm() > last.centreMm() && first.alongMm() > last.alongMm());
    }

    // Of acetone no surface tension is at hand: the time spreads over all that are known, which is said.
    @Test
    void whereNoSurfaceTensionIsKnownTheTimeIsLessSureAndSaid() {
        Development seen = Development.of(Surfaces.MODEL, Surfaces.sample("hexane", "acetone"), 100, USUAL);
        assertTrue(seen.sentences().stream().anyMatch(said -> said.key().equals("advice.front-tension-unknown")));
        double known = develop(100).speed().fast() / develop(100).speed().slow();
        assertTrue(seen.speed().fast() / seen.speed().slow() > known);
        assertEquals(List.of(), develop(50).notes());
    }

    @Test
    void impossiblePlatesAreRefusedByTheirField() {
        assertEquals(List.of("plate.levelMm"), fields(70, 10, 10, 62));
        assertEquals(List.of("plate.levelMm"), fields(70, 10, Double.NaN, 62));
        assertEquals(List.of("plate.levelMm"), fields(70, 10, -1, 62));
        assertEquals(List.of("plate.stopMm"), fields(70, 10, 5, 12));
        assertEquals(List.of("plate.stopMm"), fields(70, 10, 5, 71));
        assertEquals(List.of("plate.startMm", "plate.stopMm"), fields(70, -1, 5, 2000));
        assertEquals(List.of(), fields(70, 10, 0, 70));
        assertThrows(Refusal.class, () -> new DippedPlate(70, 10, 11, 62));
    }

    private static List<String> fields(double height, double start, double level, double stop) {
        return DippedPlate.faults(height, start, level, stop).stream()
                .map(Refusal::field)
                .toList();
    }
}
