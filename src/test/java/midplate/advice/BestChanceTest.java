package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.plate.Setting;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sentence on the very best chance, held against the curve that is shown beside it; the readings are invented. */
@DisplayName("The best chance")
class BestChanceTest {
    static Stream<Asking> questions() {
        return Stream.of(
                Asking.acetate(),
                Asking.acetate().spots("A", "B").in(Setting.BENCH),
                Asking.acetate().spots("A", "B", "C").in(Setting.BENCH),
                Asking.acetate().in(Setting.CLASS).run(20, Map.of("A", 0.1)),
                Asking.acetate().spots("A", "B").in(Setting.BENCH).run(50, Map.of("A", 0.35, "B", 0.47)),
                Asking.acetate().spots("A", "B").in(Setting.CLASS).run(15, Map.of("A", 0.1, "B", 0.3)),
                Asking.acetate().spots("A", "B").in(Setting.BENCH).run(20, Map.of("A", 0.02, "B", 0.95)),
                Asking.acetate()
                        .spots("A", "B")
                        .in(Setting.BENCH)
                        .run(20, Map.of("A", 0.3, "B", 0.4))
                        .apart("A", "B"),
                Asking.about("hexane", "ether")
                        .spots("A", "B")
                        .in(Setting.BENCH)
                        .run(Asking.silica("hexane", "ethyl acetate", 20), Map.of("A", 0.3, "B", 0.42))
                        .apart("A", "B"));
    }

    private static Optional<Message> said(Advice advice) {
        return advice.why().stream()
                .filter(message -> message.code().equals("why-rounding"))
                .findFirst();
    }

    private static double number(Message message, String name) {
        return ((Number) message.args().get(name)).doubleValue();
    }

    // What is told is the highest point of the curve at its regular steps; told it is where the advised ratio has a
    // chance lower by 0.01.
    @ParameterizedTest
    @MethodSource("questions")
    void isTheHighestOfTheCurveShown(Asking asking) {
        Advice advice = asking.advice();
        Curves curves = Asking.ADVISER.learned(asking.question()).curves(CurvePoints.regular());
        List<Double> chances = curves.goal().isEmpty() ? curves.chance() : curves.goal();
        double most = chances.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        Optional<Message> said = said(advice);
        boolean lower = most - advice.goal().chance() >= 0.01
                && Reasons.times(most) > Reasons.times(advice.goal().chance());
        assertEquals(lower && most >= 0.02, said.isPresent(), advice.why() + ", at most " + most);
        said.ifPresent(message -> {
            assertEquals(Reasons.times(most), message.args().get("times"));
            int at = curves.percentStrong().indexOf(number(message, "best"));
            assertEquals(most, chances.get(at), 1e-12, "the share named has that chance");
        });
    }

    // Among the ratios to pour, placing decides within 0.005 of the best chance only; so nothing worth saying is given
    // up for it, and a chance that is lower by 0.01 comes from the ratios that can be poured.
    @ParameterizedTest
    @MethodSource("questions")
    void isMissedOnlyForRatiosThatCanBePoured(Asking asking) {
        Advice advice = asking.advice();
        said(advice).ifPresent(message -> {
            assertEquals(
                    number(message, "times") - Reasons.times(advice.goal().chance()), number(message, "cost"), 1e-12);
        });
        for (Ratio ratio : PourableRatios.between(0, 100)) {
            if (asking.question().glassware().measures(ratio)) {
                Curves there = Asking.ADVISER.learned(asking.question()).curves(List.of(ratio.percentStrong()));
                double chance = (there.goal().isEmpty() ? there.chance() : there.goal()).get(0);
                assertTrue(chance < advice.goal().chance() + 0.01, ratio + ": " + chance);
            }
        }
    }
}
