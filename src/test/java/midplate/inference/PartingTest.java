package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chances with pairs to be kept apart, held against the full sum over everything the spots may be; readings are invented. */
@DisplayName("Keeping spots apart")
class PartingTest {
    private static final List<String> SPOTS = List.of("A", "B", "C");
    private static final List<Integer> ALL = List.of(0, 1, 2);
    private static final SpotPair AB = new SpotPair(0, 1);
    private static final SpotPair BC = new SpotPair(1, 2);
    private static final SpotPair AC = new SpotPair(0, 2);
    private static final double[] PERCENTS = {8, 14, 22, 35};

    static Stream<Outlook> outlooks() {
        List<Outlook> outlooks = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            outlooks.add(outlook(setting, Plates.run(Plates.ACETATE, 10, Map.of("A", 0.12, "B", 0.2, "C", 0.33))));
            outlooks.add(outlook(
                    setting,
                    Plates.run(Plates.ACETATE, 20, Map.of("A", 0.3, "B", 0.42, "C", 0.55)),
                    Plates.run(Plates.ACETATE, 30, Map.of("A", 0.41, "B", 0.5, "C", 0.6))));
        }
        return outlooks.stream();
    }

    private static Outlook outlook(Setting setting, PlateRun... runs) {
        return Plates.outlook(Plates.ACETATE, setting, SPOTS, List.of(runs));
    }

    /** The full sum over the points of both clouds, in each scenario and for each error of the next plate. */
    private static double fullSum(Outlook outlook, double percent, SpotPair pair, int developments) {
        Knowledge knowledge = outlook.knowledge();
        PairModel model = knowledge.model();
        Climb climb = model.climb(percent);
        double sum = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            for (int h = 0; h < knowledge.nextShifts().length; h++) {
                double[] one = rf(
                        model,
                        scenario.spots().get(pair.one()),
                        climb,
                        knowledge.nextShifts()[h]);
                double[] other = rf(
                        model,
                        scenario.spots().get(pair.other()),
                        climb,
                        knowledge.nextShifts()[h]);
                double apart = 0;
                for (int i = 0; i < one.length; i++) {
                    for (int j = 0; j < other.length; j++) {
                        double distance =
                                Math.abs(Math.pow(1 - one[i], developments) - Math.pow(1 - other[j], developments));
                        if (distance >= 0.1) {
                            apart += scenario.spots().get(pair.one()).weight(i)
                                    * scenario.spots().get(pair.other()).weight(j);
                        }
                    }
                }
                sum += scenario.weight() * knowledge.nextShiftWeights()[h] * apart;
            }
        }
        return sum;
    }

    private static double[] rf(PairModel model, TraitCloud cloud, Climb climb, double shift) {
        double[] rf = new double[cloud.size()];
        for (int i = 0; i < rf.length; i++) {
            rf[i] = model.rf()[LogitScale.mark(climb.eta(cloud.c(i), cloud.s(i), cloud.t(i)) + shift)];
        }
        return rf;
    }

    @ParameterizedTest
    @MethodSource("outlooks")
    void theChanceOfAPairIsThatOfTheFullSum(Outlook outlook) {
        for (double percent : PERCENTS) {
            for (int developments : new int[] {1, 2}) {
                double full = fullSum(outlook, percent, AB, developments);
                double said = outlook.chance(percent, List.of(), new Parting(List.of(AB), developments));
                assertEquals(full, said, 0.01, percent + " %, developed " + developments + " times");
            }
        }
    }

    // Own algebra: in a window that holds every Rf, "inside and apart" is "apart". It is counted on drawn plates, which
    // leaves
    // steps of up to about 0.015.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void insideTheWidestWindowOnlyThePairCounts(Setting setting) {
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, 10, Map.of("A", 0.12, "B", 0.2, "C", 0.33)));
        Outlook outlook = Plates.outlook(Plates.BUILT_IN, Plates.ACETATE, setting, SPOTS, runs, 0, 1);
        for (double percent : PERCENTS) {
            assertEquals(
                    fullSum(outlook, percent, BC, 1), outlook.chance(percent, ALL, Parting.of(List.of(BC))), 0.015);
        }
    }

    @ParameterizedTest
    @MethodSource("outlooks")
    void withoutPairsItIsTheChanceOfTheWindowExactly(Outlook outlook) {
        for (double percent : PERCENTS) {
            assertEquals(outlook.chance(percent, ALL), outlook.chance(percent, ALL, Parting.NONE));
        }
    }

    @ParameterizedTest
    @MethodSource("outlooks")
    void eachFurtherPairCanOnlyLowerIt(Outlook outlook) {
        double lowered = 0;
        for (double percent : PERCENTS) {
            double none = outlook.chance(percent, ALL);
            double one = outlook.chance(percent, ALL, Parting.of(List.of(AB)));
            double two = outlook.chance(percent, ALL, Parting.of(List.of(AB, BC)));
            double three = outlook.chance(percent, ALL, Parting.of(List.of(AB, BC, AC)));
            assertTrue(none >= one - 1e-12, none + " and " + one);
            assertTrue(one >= two - 1e-12, one + " and " + two);
            assertTrue(two >= three - 1e-12, two + " and " + three);
            lowered += none - two;
        }
        assertTrue(lowered > 0.1, "pairs that matter: " + lowered);
    }

    @Test
    void theOrderInAPairAndOfPairsDoesNotMatter() {
        Outlook outlook =
                outlook(Setting.BENCH, Plates.run(Plates.ACETATE, 10, Map.of("A", 0.12, "B", 0.2, "C", 0.33)));
        assertEquals(
                outlook.chance(14, ALL, Parting.of(List.of(AB, BC))),
                outlook.chance(14, ALL, Parting.of(List.of(new SpotPair(2, 1), new SpotPair(1, 0)))),
                1e-12);
    }

    // Own algebra: a spot far up and one far down are apart on every plate.
    @Test
    void farApartIsSure() {
        Outlook outlook = Plates.outlook(
                Plates.ACETATE,
                Setting.BENCH,
                List.of("A", "B"),
                List.of(Plates.run(Plates.ACETATE, 20, Map.of("A", 0.1, "B", 0.85))));
        assertEquals(1, outlook.chance(20, List.of(), Parting.of(List.of(AB))), 0.002);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void aPlateIsDevelopedAtLeastOnce(int times) {
        assertThrows(IllegalArgumentException.class, () -> Parting.NONE.after(times));
        assertThrows(IllegalArgumentException.class, () -> new SpotPair(1, 1));
    }
}
