package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Laws of readings")
class ReadingLawsTest {
    private static final double[] GRID = {0, 1, 2, 4, 8, 12, 20, 30, 50, 75, 100};

    private static Outlook after(String pair, Setting setting, PlateRun... runs) {
        return Plates.outlook(pair, setting, List.of("A"), List.of(runs));
    }

    static Stream<Arguments> pairsAndSettings() {
        return Stream.of(Plates.ACETATE, Plates.ETHER, Plates.METHANOL)
                .flatMap(pair -> Stream.of(Setting.values()).map(setting -> Arguments.of(pair, setting)));
    }

    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void aSecondEqualReadingNarrowsTheBand(String pair, Setting setting) {
        double at = pair.equals(Plates.METHANOL) ? 3 : 35;
        PlateRun run = Plates.run(pair, at, Map.of("A", 0.4));
        Outlook one = after(pair, setting, run);
        Outlook two = after(pair, setting, run, run);
        assertTrue(
                Plates.width(two, at) < Plates.width(one, at),
                Plates.width(two, at) + " against " + Plates.width(one, at));
        assertTrue(
                Plates.width(one, at) < Plates.width(Plates.outlook(pair, setting, List.of("A"), List.of()), at) / 2,
                "the first one tells most");
    }

    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void aSpotOnTheStartLineIsNeverExpectedHigherForIt(String pair, Setting setting) {
        for (double bound : new double[] {0, 0.03, 0.08}) {
            Outlook before = after(pair, setting);
            Outlook bounded = after(pair, setting, Plates.bound(pair, 5, "A", Reading.atStart(bound)));
            double least = 0;
            for (double percent : GRID) {
                assertTrue(bounded.rf(0, percent) <= before.rf(0, percent) + 1e-9, bound + " at " + percent + " %");
                least = Math.max(least, before.rf(0, percent) - bounded.rf(0, percent));
            }
            assertTrue(least > 0.1, "and lower somewhere: " + least);
        }
    }

    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void aSpotAtTheFrontIsNeverExpectedLowerForIt(String pair, Setting setting) {
        for (double bound : new double[] {1, 0.97, 0.92}) {
            Outlook before = after(pair, setting);
            Outlook bounded = after(pair, setting, Plates.bound(pair, 20, "A", Reading.atFront(bound)));
            double most = 0;
            for (double percent : GRID) {
                assertTrue(bounded.rf(0, percent) >= before.rf(0, percent) - 1e-9, bound + " at " + percent + " %");
                most = Math.max(most, bounded.rf(0, percent) - before.rf(0, percent));
            }
            assertTrue(most > 0.05, "and higher somewhere: " + most);
        }
    }

    // A bound that allows every Rf tells nothing; where plates have an error of their own, 32 of them are tried.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void aBoundThatAllowsEverythingTellsNothing(Setting setting) {
        Outlook before = after(Plates.ACETATE, setting);
        for (Reading all : new Reading[] {Reading.atFront(0), Reading.atStart(1)}) {
            Outlook bounded = after(Plates.ACETATE, setting, Plates.bound(Plates.ACETATE, 20, "A", all));
            for (double percent : GRID) {
                assertEquals(before.rf(0, percent), bounded.rf(0, percent), 0.005, percent + " %");
            }
        }
    }

    // A ruler shows half a hundredth at best: 0.00 says that the spot did not leave the line, and no more.
    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void aNumberAtALineTellsWhatTheBoundTells(String pair, Setting setting) {
        Outlook start = after(pair, setting, Plates.bound(pair, 4, "A", Reading.atStart(0.005)));
        Outlook front = after(pair, setting, Plates.bound(pair, 30, "A", Reading.atFront(0.995)));
        for (double percent : GRID) {
            for (double read : new double[] {0, 0.004}) {
                Outlook low = after(pair, setting, Plates.run(pair, 4, Map.of("A", read)));
                Outlook high = after(pair, setting, Plates.run(pair, 30, Map.of("A", 1 - read)));
                assertEquals(start.rf(0, percent), low.rf(0, percent), 0.005, "start at " + percent + " %");
                assertEquals(front.rf(0, percent), high.rf(0, percent), 0.005, "front at " + percent + " %");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void aStrongerEluentCarriesNoSpotLessFar(String pair, Setting setting) {
        for (double read : new double[] {0, 0.1, 0.5, 0.97}) {
            Outlook outlook = after(pair, setting, Plates.run(pair, 8, Map.of("A", read)));
            double before = 0;
            for (double percent = 0; percent <= 100; percent += 0.5) {
                double rf = outlook.rf(0, percent);
                assertTrue(rf >= before - 1e-12, read + " at " + percent + " %: " + rf + " after " + before);
                before = rf;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pairsAndSettings")
    void theBandHoldsTheExpectationAndTheChancesArePossible(String pair, Setting setting) {
        for (double read : new double[] {0.05, 0.3, 0.6, 0.9}) {
            Outlook outlook = after(pair, setting, Plates.run(pair, 8, Map.of("A", read)));
            for (double percent : GRID) {
                Outlook.Spot spot = outlook.spot(0, percent);
                String at = read + " at " + percent + " %: " + spot;
                assertTrue(spot.low() >= 0 && spot.low() <= spot.rf() + 1e-3, at);
                assertTrue(spot.high() <= 1 && spot.high() >= spot.rf() - 1e-3, at);
                assertTrue(spot.below() >= 0 && spot.above() >= 0 && spot.below() + spot.above() <= 1 + 1e-9, at);
                double chance = outlook.chance(percent, List.of(0));
                assertEquals(1 - spot.below() - spot.above(), chance, 1e-9, at);
                assertTrue(chance >= 0 && chance <= 1, at);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void aWiderWindowHasNoSmallerChance(Setting setting) {
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, 15, Map.of("A", 0.3, "B", 0.5)));
        double[][] windows = {{0.4, 0.5}, {0.3, 0.6}, {0.2, 0.6}, {0.2, 0.8}, {0, 0.8}, {0, 1}};
        for (double percent : GRID) {
            double before = 0;
            for (double[] window : windows) {
                Outlook outlook = Plates.outlook(
                        Plates.BUILT_IN, Plates.ACETATE, setting, List.of("A", "B"), runs, window[0], window[1]);
                double chance = outlook.chance(percent, List.of(0, 1));
                assertTrue(chance >= before - 1e-12, window[0] + " to " + window[1] + " at " + percent + " %");
                before = chance;
            }
            assertEquals(1, before, 1e-9, "every spot lies between the lines");
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void moreSpotsHaveNoGreaterChance(Setting setting) {
        Outlook outlook = Plates.outlook(
                Plates.ACETATE,
                setting,
                List.of("A", "B", "C"),
                List.of(Plates.run(Plates.ACETATE, 15, Map.of("A", 0.2, "B", 0.35))));
        for (double percent : GRID) {
            double one = outlook.chance(percent, List.of(0));
            double two = outlook.chance(percent, List.of(0, 1));
            assertTrue(two <= one + 1e-12);
            assertTrue(outlook.chance(percent, List.of(0, 1, 2)) <= two + 1e-12);
        }
    }

    // The extreme: as many plates as a request may hold, each contradicting the one before.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void fiftyContradictingPlatesStillGiveNumbers(Setting setting) {
        List<PlateRun> runs = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            runs.add(Plates.run(Plates.ACETATE, i % 2 == 0 ? 100 : 0, Map.of("A", i % 2 == 0 ? 0.0 : 1.0)));
        }
        Outlook outlook = Plates.outlook(Plates.ACETATE, setting, List.of("A"), runs);
        for (double percent : GRID) {
            Outlook.Spot spot = outlook.spot(0, percent);
            assertTrue(spot.rf() >= 0 && spot.rf() <= 1 && spot.low() <= spot.high(), percent + " %: " + spot);
            double chance = outlook.chance(percent, List.of(0));
            assertTrue(chance >= 0 && chance <= 1, percent + " %: " + chance);
        }
    }

    @Test
    void aReadingWithAWiderRulerErrorTellsLess() {
        Reading fine = new Reading(0.4, midplate.plate.Limit.NONE, java.util.OptionalDouble.of(0.005));
        Reading rough = new Reading(0.4, midplate.plate.Limit.NONE, java.util.OptionalDouble.of(0.08));
        assertTrue(Plates.width(after(Plates.ACETATE, Setting.BENCH, Plates.bound(Plates.ACETATE, 20, "A", fine)), 20)
                < Plates.width(after(Plates.ACETATE, Setting.BENCH, Plates.bound(Plates.ACETATE, 20, "A", rough)), 20));
    }
}
