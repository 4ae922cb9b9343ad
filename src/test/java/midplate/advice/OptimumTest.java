package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** The rules of the batch contract for the optimum, held against forecasts on a grid of a half percent. */
@DisplayName("The optimum")
class OptimumTest {
    static Stream<Asking> questions() {
        return Stream.of(
                Asking.acetate(),
                Asking.acetate().spots("A", "B", "C"),
                Asking.acetate().run(10, Map.of("A", 0.31)),
                Asking.acetate().in(Setting.BENCH).run(10, Map.of("A", 0.05)),
                Asking.acetate().spots("A", "B").run(10, Map.of("A", 0.05, "B", 0.31)),
                Asking.acetate().spots("A", "B").in(Setting.BENCH).run(10, Map.of("A", 0.05, "B", 0.12)),
                Asking.acetate().spots("A", "B").in(Setting.CLASS).run(50, Map.of("A", 0.75, "B", 0.93)),
                Asking.about("hexane", "ether").run(50, Map.of("A", 0.7)),
                Asking.about("dichloromethane", "methanol").run(5, Map.of("A", 0.6)),
                Asking.acetate().spots("A", "B").run(20, Map.of("A", 0.02, "B", 0.95)));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void isWithinTwoOfAHundredOfTheBestChance(Asking asking) {
        Advice advice = asking.advice();
        double reach = asking.question().strong().id().equals("methanol") ? 9.09 : 100;
        double most = 0;
        for (Forecast forecast : asking.forecasts(Asking.halves())) {
            if (forecast.percentStrong() <= reach) {
                most = Math.max(most, forecast.chance());
            }
        }
        assertTrue(advice.bestChance() >= most - 0.02 - 1e-9, advice.bestChance() + " against " + most);
        assertEquals(
                advice.bestChance(),
                asking.forecast(advice.bestPercentStrong()).chance(),
                1e-12,
                "the chance said is the chance there");
    }

    @ParameterizedTest
    @MethodSource("questions")
    void thePercentageIsThatOfTheRatio(Asking asking) {
        Advice advice = asking.advice();
        String[] parts = advice.ratio().toString().split(":", -1);
        double weak = Integer.parseInt(parts[0]);
        double strong = Integer.parseInt(parts[1]);
        assertEquals(100 * strong / (weak + strong), advice.forecast().percentStrong(), 1e-12);
        assertEquals(
                asking.forecast(advice.forecast().percentStrong()),
                advice.forecast(),
                "what is said of the ratio is what is foretold of it");
    }

    // Contract: for one spot, of the shares as good as the best, the one nearest Rf 0.4.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void oneSpotComesNearestToFourTenths(Setting setting) {
        Asking asking = Asking.acetate().in(setting).run(10, Map.of("A", 0.25)).run(20, Map.of("A", 0.42));
        Advice advice = asking.advice();
        List<Forecast> grid = asking.forecasts(Asking.halves());
        double most = grid.stream().mapToDouble(Forecast::chance).max().orElseThrow();
        double nearest = grid.stream()
                .filter(forecast -> forecast.chance() >= most - 0.02 + 1e-6)
                .mapToDouble(forecast -> Math.abs(forecast.spots().get(0).rf() - 0.4))
                .min()
                .orElseThrow();
        double chosen =
                asking.forecast(advice.bestPercentStrong()).spots().get(0).rf();
        assertTrue(Math.abs(chosen - 0.4) <= nearest + 1e-9, chosen + " against " + nearest);
        assertEquals(0.4, chosen, 0.02, "here 0.4 is within reach");
    }

    /** |Δ ln k|·√Rf·(1 − Rf) with Rf midway in ln k, of the closest two, from expected Rf. */
    private static double resolution(Forecast forecast) {
        double[] sorted =
                forecast.spots().stream().mapToDouble(SpotForecast::rf).sorted().toArray();
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double lower = Math.log(sorted[i - 1] / (1 - sorted[i - 1]));
            double upper = Math.log(sorted[i] / (1 - sorted[i]));
            double midway = 1 / (1 + Math.exp(-(lower + upper) / 2));
            smallest = Math.min(smallest, (upper - lower) * Math.sqrt(midway) * (1 - midway));
        }
        return smallest;
    }

    // Contract: for several spots, of the shares as good as the best, the one with the largest smallest resolution.
    // Spots that are well known, so that the expected resolution is nearly that of the expected Rf.
    @Test
    void severalSpotsAreBestParted() {
        Asking asking = Asking.acetate().spots("A", "B", "C");
        for (int i = 0; i < 4; i++) {
            asking.run(20, Map.of("A", 0.33, "B", 0.45, "C", 0.6)).run(35, Map.of("A", 0.5, "B", 0.58, "C", 0.68));
        }
        Advice advice = asking.advice();
        List<Forecast> grid = asking.forecasts(Asking.halves());
        double most = grid.stream().mapToDouble(Forecast::chance).max().orElseThrow();
        List<Forecast> asGood = grid.stream()
                .filter(forecast -> forecast.chance() >= most - 0.02 + 1e-6)
                .toList();
        double best = asGood.stream().mapToDouble(OptimumTest::resolution).max().orElseThrow();
        double worst =
                asGood.stream().mapToDouble(OptimumTest::resolution).min().orElseThrow();
        double chosen = resolution(asking.forecast(advice.bestPercentStrong()));
        assertTrue(worst < 0.8 * best, "a choice that matters: " + worst + " to " + best);
        assertTrue(chosen >= 0.97 * best, chosen + " of " + best);
    }

    // Own: where the best chance is itself small, 0.02 less would be most of it.
    @Test
    void aSmallChanceIsNotGivenAwayForResolution() {
        Asking asking =
                Asking.acetate().spots("A", "B", "C").in(Setting.CLASS).run(20, Map.of("A", 0.1, "B", 0.15, "C", 0.7));
        Advice advice = asking.advice();
        double most = asking.forecasts(Asking.halves()).stream()
                .mapToDouble(Forecast::chance)
                .max()
                .orElseThrow();
        assertTrue(most > 0.02 && most < 0.1, "a set with little hope: " + most);
        assertTrue(advice.bestChance() >= 0.9 * most - 1e-12, advice.bestChance() + " of " + most);
    }

    // Own: where nothing works, the most spots inside are the best that is left.
    @Test
    void withoutAnyHopeTheNumberOfSpotsInsideDecides() {
        Asking asking = Asking.acetate().spots("A", "B").run(20, Map.of("A", 0.02, "B", 0.97));
        Advice advice = asking.advice();
        double inside = inside(advice.forecast());
        assertTrue(
                advice.forecast().chance() < 0.02,
                "no hope: " + advice.forecast().chance());
        double most = asking.forecasts(Asking.halves()).stream()
                .mapToDouble(OptimumTest::inside)
                .max()
                .orElseThrow();
        assertTrue(inside >= 0.9 * most, inside + " of " + most);
    }

    /** Spots to expect inside the window. */
    private static double inside(Forecast forecast) {
        return forecast.spots().stream()
                .mapToDouble(spot -> 1 - spot.below() - spot.above())
                .sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.7})
    void aLowerReadingNeverAsksForAWeakerEluent(double read) {
        double lower = Asking.acetate().run(15, Map.of("A", read)).advice().bestPercentStrong();
        double higher = Asking.acetate()
                .run(15, Map.of("A", Math.min(1, read + 0.1)))
                .advice()
                .bestPercentStrong();
        assertTrue(higher < lower, read + ": " + lower + " and " + higher);
    }

    @Test
    void anyWindowCanBeAsked() {
        Asking asking =
                Asking.acetate().window(0.2, 0.35).run(10, Map.of("A", 0.5)).run(4.8, Map.of("A", 0.4));
        Advice advice = asking.advice();
        double rf = asking.forecast(advice.bestPercentStrong()).spots().get(0).rf();
        assertTrue(rf > 0.2 && rf < 0.35, "Rf " + rf);
        assertTrue(advice.forecast().chance()
                < Asking.acetate()
                        .run(10, Map.of("A", 0.5))
                        .run(4.8, Map.of("A", 0.4))
                        .advice()
                        .forecast()
                        .chance());
    }

    @Test
    void fiftySpotsAreAnswered() {
        String[] names = new String[50];
        Map<String, Double> rf = new java.util.HashMap<>();
        for (int i = 0; i < names.length; i++) {
            names[i] = "S" + i;
            rf.put(names[i], 0.3 + 0.004 * i);
        }
        Advice advice =
                Asking.acetate().spots(names).in(Setting.BENCH).run(20, rf).advice();
        assertEquals(50, advice.forecast().spots().size());
        assertTrue(advice.forecast().chance() >= 0 && advice.forecast().chance() <= 1);
        assertTrue(Double.isFinite(advice.bestPercentStrong()));
    }
}
