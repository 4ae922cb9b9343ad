package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The curves sent to a page")
class CurvesTest {
    private static final double BOUND = 0.005;
    /** Chances are tabulated by 0.01 in η; where each spot is known to a few hundredths this leaves steps as high. */
    private static final double STEPS = 0.01;

    static Stream<Asking> questions() {
        return Stream.of(
                Asking.acetate().spots("A", "B").in(Setting.BENCH).run(10, Map.of("A", 0.12, "B", 0.31)),
                Asking.acetate().spots("A", "B", "C"),
                Asking.acetate()
                        .spots("A", "B")
                        .run(5, Map.of("A", 0.4, "B", 0.55))
                        .run(2, Map.of("A", 0.25, "B", 0.4)),
                Asking.about("hexane", "ether")
                        .spots("A", "B")
                        .in(Setting.CLASS)
                        .run(40, Map.of("A", 0.3, "B", 0.6)),
                Asking.about("dichloromethane", "methanol")
                        .spots("A", "B")
                        .in(Setting.BENCH)
                        .run(3, Map.of("A", 0.3, "B", 0.5)),
                Asking.about("dichloromethane", "methanol")
                        .spots("A", "B", "C")
                        .run(4, Map.of("A", 0.23, "B", 0.65, "C", 0.8))
                        .run(5, Map.of("A", 0.28, "B", 0.7, "C", 0.85)),
                Asking.about("dichloromethane", "methanol")
                        .spots("A", "B", "C")
                        .run(1, Map.of("A", 0.18, "B", 0.32, "C", 0.75)),
                Asking.acetate()
                        .spots("A", "B", "C")
                        .run(15, Map.of("A", 0.19, "B", 0.22, "C", 0.55))
                        .run(35, Map.of("A", 0.39, "B", 0.42, "C", 0.75)),
                Asking.acetate()
                        .spots("A", "B", "C")
                        .in(Setting.BENCH)
                        .apart("A", "B")
                        .run(15, Map.of("A", 0.16, "B", 0.27, "C", 0.4)),
                Asking.about("dichloromethane", "methanol")
                        .spots("A", "B", "C")
                        .apart("A", "B")
                        .apart("B", "C")
                        .run(3, Map.of("A", 0.2, "B", 0.3, "C", 0.5)));
    }

    private static Curves curves(Asking asking) {
        return Asking.ADVISER.curves(asking.question());
    }

    private static List<List<Double>> lists(Curves curves) {
        List<List<Double>> all = new ArrayList<>();
        curves.spots().values().forEach(spot -> all.addAll(List.of(spot.rf(), spot.low(), spot.high())));
        all.add(curves.chance());
        all.add(curves.smallestGap());
        if (!curves.goal().isEmpty()) {
            all.add(curves.goal());
        }
        return all;
    }

    // By 0.1 % to 10, 0.5 % to 20 and 1 % after: 100, 20, 80 points and the last; between them where a chance bends.
    @ParameterizedTest
    @MethodSource("questions")
    void areFinestWhereTheStrengthClimbsMost(Asking asking) {
        Curves curves = curves(asking);
        List<Double> percents = curves.percentStrong();
        for (int i = 0; i <= 200; i++) {
            double percent = i < 100 ? i * 0.1 : i < 120 ? 10 + (i - 100) * 0.5 : i - 100;
            assertTrue(percents.stream().anyMatch(each -> Math.abs(each - percent) < 1e-9), percent + " is missing");
        }
        assertTrue(percents.size() <= 300, "so many points: " + percents.size());
        for (int i = 1; i < percents.size(); i++) {
            assertTrue(percents.get(i) > percents.get(i - 1), "rising at " + percents.get(i));
        }
        assertEquals(percents.size(), curves.smallestResolution().size());
        assertTrue(curves.smallestResolution().stream().allMatch(value -> value >= 0));
        for (List<Double> list : lists(curves)) {
            assertEquals(percents.size(), list.size());
            assertTrue(list.stream().allMatch(value -> value >= 0 && value <= 1), list.toString());
        }
        assertEquals(List.copyOf(curves.spots().keySet()), asking.question().spots());
    }

    // What is drawn is the median of readings. It lies between marks 1/512 apart, and readings scatter differently at
    // each
    // ratio, so it may waver by less than is shown; that the mean never falls is held exactly elsewhere.
    @ParameterizedTest
    @MethodSource("questions")
    void theExpectedRfNeverFallsVisibly(Asking asking) {
        Curves curves = curves(asking);
        curves.spots().forEach((spot, curve) -> {
            for (int i = 1; i < curve.rf().size(); i++) {
                double fallen = curve.rf().get(i - 1) - curve.rf().get(i);
                double percent = curves.percentStrong().get(i);
                assertTrue(fallen <= 1e-4, spot + " at " + percent + " %: falls by " + fallen);
                assertTrue(curve.low().get(i) <= curve.high().get(i));
            }
        });
    }

    @Test
    void oneSpotHasNoGapAndNoResolution() {
        assertEquals(List.of(), curves(Asking.acetate()).smallestGap());
        assertEquals(List.of(), curves(Asking.acetate()).smallestResolution());
    }

    /** Places of the curves with the forecast midway in ln(% + 1) between each two points. */
    private static List<Forecast> midway(Asking asking, List<Double> percents) {
        List<Double> between = new ArrayList<>();
        for (int i = 1; i < percents.size(); i++) {
            between.add(Math.sqrt((percents.get(i - 1) + 1) * (percents.get(i) + 1)) - 1);
        }
        return asking.forecasts(between);
    }

    private static double slip(List<Double> curve, int before, double exact) {
        return Math.abs((curve.get(before) + curve.get(before + 1)) / 2 - exact);
    }

    // Decided once: the page draws straight lines in ln(% + 1), which are right to 0.005. Own algebra: midway in
    // ln(% + 1) lies √((p + 1)(q + 1)) − 1, where a straight line has the mean.
    @ParameterizedTest
    @MethodSource("questions")
    void straightLinesBetweenThePointsOfRfAreNearTheTruth(Asking asking) {
        Curves curves = curves(asking);
        List<Forecast> exact = midway(asking, curves.percentStrong());
        for (int i = 0; i < exact.size(); i++) {
            for (SpotForecast spot : exact.get(i).spots()) {
                Curves.SpotCurve curve = curves.spots().get(spot.spot());
                String at = spot.spot() + " at " + exact.get(i).percentStrong() + " %";
                assertTrue(slip(curve.rf(), i, spot.rf()) <= BOUND, at + ": Rf " + slip(curve.rf(), i, spot.rf()));
                assertTrue(slip(curve.low(), i, spot.low()) <= BOUND, at + ": low " + slip(curve.low(), i, spot.low()));
                assertTrue(
                        slip(curve.high(), i, spot.high()) <= BOUND,
                        at + ": high " + slip(curve.high(), i, spot.high()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void straightLinesBetweenThePointsOfTheChanceAreNearTheTruth(Asking asking) {
        Curves curves = curves(asking);
        List<Forecast> exact = midway(asking, curves.percentStrong());
        for (int i = 0; i < exact.size(); i++) {
            double slip = slip(curves.chance(), i, exact.get(i).chance());
            assertTrue(slip <= STEPS, "at " + exact.get(i).percentStrong() + " %: " + slip);
        }
    }

    /** The curves at places midway in ln(% + 1) between each two points. */
    private static Curves curvesMidway(Asking asking, List<Double> percents) {
        List<Double> between = new ArrayList<>();
        for (int i = 1; i < percents.size(); i++) {
            between.add(Math.sqrt((percents.get(i - 1) + 1) * (percents.get(i) + 1)) - 1);
        }
        return Asking.ADVISER.learned(asking.question()).curves(between);
    }

    private static void near(String what, List<Double> curve, List<Double> exact, double bound) {
        for (int i = 0; i < exact.size(); i++) {
            double slip = slip(curve, i, exact.get(i));
            assertTrue(slip <= bound, what + " after point " + i + ": " + slip);
        }
    }

    // The resolution has no fixed scale, so its bound is that part of the most it reaches.
    @ParameterizedTest
    @MethodSource("questions")
    void straightLinesBetweenThePointsOfGapResolutionAndGoalAreNearTheTruth(Asking asking) {
        Curves curves = curves(asking);
        Curves exact = curvesMidway(asking, curves.percentStrong());
        near("gap", curves.smallestGap(), exact.smallestGap(), BOUND);
        double most = curves.smallestResolution().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        assertTrue(most > 0.05, "a scale: " + most);
        near("resolution", curves.smallestResolution(), exact.smallestResolution(), BOUND * most);
        near("goal", curves.goal(), exact.goal(), BOUND);
        assertEquals(asking.question().wishes().apart().isEmpty(), curves.goal().isEmpty());
    }
}
