package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Law: what is known does not depend on the order in which it was typed. */
@DisplayName("The order")
class OrderTest {
    private static final double NEAR = 1e-12;
    private static final List<String> SPOTS = List.of("A", "B", "C");
    private static final List<PlateRun> RUNS = List.of(
            Plates.run(Plates.ACETATE, 10, Map.of("A", 0.11, "B", 0.31, "C", 0.24)),
            Plates.run(Plates.ACETATE, 25, Map.of("A", 0.28, "C", 0.47)),
            Plates.run(Plates.ACETATE, 10, Map.of("B", 0.35, "A", 0.15)),
            Plates.run(Plates.ETHER, 40, Map.of("A", 0.22)),
            Plates.run(Plates.ACETATE, 0, Map.of("A", 0.0, "B", 0.03)));

    private static void assertSame(
            Outlook one, List<String> oneSpots, Outlook other, List<String> otherSpots, double near) {
        for (double percent : new double[] {0, 7, 20, 55}) {
            assertEquals(
                    one.chance(percent, List.of(0, 1, 2)),
                    other.chance(percent, List.of(0, 1, 2)),
                    near,
                    percent + " %");
            for (String spot : oneSpots) {
                Outlook.Spot here = one.spot(oneSpots.indexOf(spot), percent);
                Outlook.Spot there = other.spot(otherSpots.indexOf(spot), percent);
                assertEquals(here.rf(), there.rf(), near, spot + " at " + percent + " %");
                assertEquals(here.low(), there.low(), near);
                assertEquals(here.high(), there.high(), near);
                assertEquals(here.below(), there.below(), near);
                assertEquals(here.above(), there.above(), near);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofRunsDoesNotMatter(Setting setting) {
        Outlook first = Plates.outlook(Plates.ACETATE, setting, SPOTS, RUNS);
        Random random = new Random(4);
        for (int i = 0; i < 4; i++) {
            List<PlateRun> shuffled = new ArrayList<>(RUNS);
            Collections.shuffle(shuffled, random);
            assertSame(first, SPOTS, Plates.outlook(Plates.ACETATE, setting, SPOTS, shuffled), SPOTS, 0);
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofReadingsDoesNotMatter(Setting setting) {
        List<PlateRun> turned = RUNS.stream().map(OrderTest::turned).toList();
        assertSame(
                Plates.outlook(Plates.ACETATE, setting, SPOTS, RUNS),
                SPOTS,
                Plates.outlook(Plates.ACETATE, setting, SPOTS, turned),
                SPOTS,
                0);
    }

    private static PlateRun turned(PlateRun run) {
        List<String> spots = new ArrayList<>(run.readings().keySet());
        Collections.sort(spots, Collections.reverseOrder());
        Map<String, Reading> readings = new LinkedHashMap<>();
        spots.forEach(spot -> readings.put(spot, run.readings().get(spot)));
        return new PlateRun(run.pair(), run.percent(), readings);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofSpotsDoesNotMatter(Setting setting) {
        Outlook first = Plates.outlook(Plates.ACETATE, setting, SPOTS, RUNS);
        for (List<String> spots : List.of(List.of("C", "B", "A"), List.of("B", "C", "A"))) {
            assertSame(first, SPOTS, Plates.outlook(Plates.ACETATE, setting, spots, RUNS), spots, NEAR);
        }
    }

    // Plates at one percentage that A and B would sort differently.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofSpotsDoesNotMatterWhereTwoPlatesAreAlike(Setting setting) {
        List<PlateRun> runs = List.of(
                Plates.run(Plates.ACETATE, 10, Map.of("A", 0.15, "B", 0.31, "C", 0.2)),
                Plates.run(Plates.ACETATE, 10, Map.of("A", 0.11, "B", 0.35, "C", 0.2)));
        List<String> turned = List.of("B", "A", "C");
        assertSame(
                Plates.outlook(Plates.ACETATE, setting, SPOTS, runs),
                SPOTS,
                Plates.outlook(Plates.ACETATE, setting, turned, runs),
                turned,
                NEAR);
    }

    // Plates that read the same numbers, once as a number and once as a bound.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofRunsDoesNotMatterWhereABoundEqualsANumber(Setting setting) {
        PlateRun number = Plates.run(Plates.ACETATE, 10, Map.of("A", 0.05, "B", 0.3));
        PlateRun bound = new PlateRun(Plates.ACETATE, 10, Map.of("A", Reading.atStart(0.05), "B", Reading.of(0.3)));
        assertSame(
                Plates.outlook(Plates.ACETATE, setting, SPOTS, List.of(number, bound)),
                SPOTS,
                Plates.outlook(Plates.ACETATE, setting, SPOTS, List.of(bound, number)),
                SPOTS,
                0);
    }

    private static final List<PlateRun> UNLABELLED = List.of(
            Plates.run(Plates.ACETATE, 10, Map.of("A", 0.11, "B", 0.31, "C", 0.24)),
            run(
                    25,
                    1,
                    Map.of("A", Reading.of(0.28)),
                    Set.of(),
                    lane(1, Set.of("A"), 0.5),
                    lane(2, Set.of(), 0.42, 0.3)),
            run(25, 2, Map.of(), Set.of(), lane(1, Set.of(), 0.47, 0.26, 0.55)),
            run(25, 3, Map.of(), Set.of("C"), lane(1, Set.of(), 0.47, 0.26, 0.55)),
            run(40, 4, Map.of(), Set.of(), lane(1, Set.of(), 0.6, 0.66)));

    private static PlateRun run(
            double percent, int number, Map<String, Reading> readings, Set<String> notSeen, UnlabelledLane... lanes) {
        return new PlateRun(Plates.ACETATE, percent, readings, number, List.of(lanes), notSeen);
    }

    private static UnlabelledLane lane(int number, Set<String> labelled, double... rf) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        for (double each : rf) {
            spots.add(new UnlabelledSpot(spots.size(), Reading.of(each)));
        }
        return new UnlabelledLane(number, labelled, spots);
    }

    private static PlateRun shuffled(PlateRun run, Random random) {
        List<UnlabelledLane> lanes = new ArrayList<>();
        for (UnlabelledLane lane : run.unlabelled()) {
            List<UnlabelledSpot> spots = new ArrayList<>(lane.spots());
            Collections.shuffle(spots, random);
            lanes.add(new UnlabelledLane(lane.lane(), lane.labelled(), spots));
        }
        Collections.shuffle(lanes, random);
        return new PlateRun(run.pair(), run.percent(), run.readings(), run.number(), lanes, run.notSeen());
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofRunsLanesAndSpotsWithoutALabelDoesNotMatter(Setting setting) {
        Outlook first = Plates.outlook(Plates.ACETATE, setting, SPOTS, UNLABELLED);
        Random random = new Random(5);
        for (int i = 0; i < 4; i++) {
            List<PlateRun> turned = new ArrayList<>();
            UNLABELLED.forEach(run -> turned.add(shuffled(run, random)));
            Collections.shuffle(turned, random);
            Outlook again = Plates.outlook(Plates.ACETATE, setting, SPOTS, turned);
            assertSame(first, SPOTS, again, SPOTS, 0);
            assertEquals(first.knowledge().guesses(), again.knowledge().guesses());
        }
    }

    // Nothing is labelled, so the names follow the fullest lane; which spots are where stays the same.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofRunsDoesNotMatterWhereNothingIsLabelled(Setting setting) {
        List<PlateRun> runs = UNLABELLED.subList(2, 5);
        Outlook first = Plates.outlook(Plates.ACETATE, setting, SPOTS, runs);
        List<PlateRun> turned = new ArrayList<>(runs);
        Collections.reverse(turned);
        Outlook again = Plates.outlook(Plates.ACETATE, setting, SPOTS, turned);
        assertSame(first, SPOTS, again, SPOTS, 0);
        assertEquals(first.knowledge().guesses(), again.knowledge().guesses());
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofSpotsDoesNotMatterWithoutLabelsEither(Setting setting) {
        Outlook first = Plates.outlook(Plates.ACETATE, setting, SPOTS, UNLABELLED);
        List<String> spots = List.of("C", "A", "B");
        assertSame(first, SPOTS, Plates.outlook(Plates.ACETATE, setting, spots, UNLABELLED), spots, 1e-9);
    }
}
