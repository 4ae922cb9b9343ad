package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What no ratio can do")
class ImpossibleTest {
    private static void assertRanked(Advice advice) {
        double before = 1;
        for (Alternative alternative : advice.alternatives()) {
            assertTrue(alternative.chance() <= before, advice.alternatives().toString());
            assertTrue(alternative.chance() > advice.forecast().chance() + 0.02, alternative.toString());
            before = alternative.chance();
        }
    }

    // Rf 0.03 and 0.95 on one plate are about 6.4 apart in ln k; a window of 0.2 to 0.8 holds 2.8.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void spotsTooFarApartAreSaidToHaveNoRatio(Setting setting) {
        Advice advice = Asking.acetate()
                .spots("A", "B")
                .in(setting)
                .run(20, Map.of("A", 0.03, "B", 0.95))
                .run(40, Map.of("A", 0.1, "B", 0.98))
                .advice();
        assertTrue(
                advice.forecast().chance() < 0.1, "chance " + advice.forecast().chance());
        assertTrue(advice.chanceNoRatioWorks() > 0.8, "no ratio " + advice.chanceNoRatioWorks());
        // drawn samples never tell that none at all has a ratio
        int times = Math.min(99, Reasons.times(advice.chanceNoRatioWorks()));
        String code = times > 85 ? "no-ratio" : "no-ratio-probably";
        assertEquals(times, Asking.find(advice.notes(), code).args().get("times"));
        assertFalse(advice.alternatives().isEmpty());
        assertRanked(advice);
        Alternative first = advice.alternatives().get(0);
        assertEquals("instead-two-plates", first.what().code(), "each spot has a ratio of its own");
        assertEquals("A", first.what().args().get("held"));
        assertEquals("B", first.what().args().get("loose"));
        assertTrue((double) first.what().args().get("heldPercent")
                > (double) first.what().args().get("loosePercent"));
    }

    // The wider apart, the surer: the words follow the number.
    @ParameterizedTest
    @CsvSource({
        "0.105, 0.69, no-ratio-perhaps, 51, 64",
        "0.1, 0.71, no-ratio-probably, 65, 85",
        "0.03, 0.95, no-ratio, 86, 100"
    })
    void howLikelyNoRatioIsIsSaidInWordsAsStrongAsTheNumber(double a, double b, String code, int from, int to) {
        Advice advice = Asking.acetate()
                .spots("A", "B")
                .in(Setting.BENCH)
                .run(20, Map.of("A", a, "B", b))
                .advice();
        int times = (int) Asking.find(advice.notes(), code).args().get("times");
        assertTrue(times >= from && times <= to, times + " of 100");
    }

    // The pair with plates gives the ratio and the chance that it has when asked about.
    @Test
    void aPairWithPlatesIsGoneBackToAsIfItWereAskedAbout() {
        Asking ether = Asking.about("hexane", "ether");
        Asking acetate = Asking.acetate();
        for (Asking asking : List.of(ether, acetate)) {
            asking.spots("A", "B")
                    .in(Setting.CLASS)
                    .run(Asking.silica("hexane", "ethyl acetate", 20), Map.of("A", 0.3, "B", 0.42))
                    .apart("A", "B");
        }
        Alternative back = ether.advice().alternatives().stream()
                .filter(alternative -> alternative.what().code().equals("instead-pair-run"))
                .findFirst()
                .orElseThrow();
        Advice there = acetate.advice();
        assertEquals(there.goal().chance(), back.chance(), 1e-12);
        assertEquals(
                there.forecast().percentStrong(),
                (double) back.what().args().get("percent"),
                0.5,
                "to a whole percent");
        assertTrue(there.alternatives().stream()
                .noneMatch(alternative -> alternative.what().code().equals("instead-pair-run")));
    }

    // A plate in pure hexane is one of both pairs; nobody ran the other.
    @Test
    void aPlateInASolventOfBothPairsIsNoneOfTheOther() {
        Advice advice = Asking.about("hexane", "ether")
                .spots("A", "B")
                .in(Setting.BENCH)
                .run(0, Map.of("A", 0.02, "B", 0.5))
                .advice();
        assertFalse(advice.alternatives().isEmpty());
        assertTrue(advice.alternatives().stream()
                .noneMatch(alternative -> alternative.what().code().equals("instead-pair-run")));
    }

    @Test
    void anEasyPlateHasNoAlternativesAndNoWarning() {
        Advice advice = Asking.acetate()
                .spots("A", "B")
                .run(20, Map.of("A", 0.33, "B", 0.5))
                .advice();
        assertTrue(advice.forecast().chance() > 0.9);
        assertEquals(List.of(), advice.alternatives());
        assertTrue(advice.chanceNoRatioWorks() < 0.02);
        assertTrue(Asking.codes(advice.notes()).stream().noneMatch(code -> code.startsWith("no-ratio")));
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void aCompoundAtTheFrontInPureHexaneIsNotHeldBySilica(Setting setting) {
        Advice advice = Asking.acetate().in(setting).run(0, Map.of("A", 0.97)).advice();
        assertEquals(
                "A", Asking.find(advice.notes(), "silica-cannot-hold").args().get("spot"));
        assertEquals(
                Message.of("solvent.hexane"),
                Asking.find(advice.notes(), "silica-cannot-hold").args().get("weak"));
        assertTrue(Asking.codes(advice.notes()).contains("only-front"));
        assertRanked(advice);
    }

    @Test
    void inDichloromethaneAWeakerPairIsNamedInstead() {
        Advice advice = Asking.about("dichloromethane", "methanol")
                .run(0, Map.of("A", 0.97))
                .advice();
        assertTrue(
                Asking.codes(advice.notes()).contains("runs-in-weak"),
                advice.notes().toString());
        assertFalse(Asking.codes(advice.notes()).contains("silica-cannot-hold"));
    }

    @Test
    void aCompoundInTheMiddleInPureHexaneIsHeld() {
        Advice advice = Asking.acetate().run(0, Map.of("A", 0.5)).advice();
        assertFalse(Asking.codes(advice.notes()).contains("silica-cannot-hold"));
        assertFalse(Asking.codes(advice.notes()).contains("only-front"));
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void aCompoundThatStaysInPureEthylAcetateIsTooPolar(Setting setting) {
        Advice advice = Asking.acetate().in(setting).run(100, Map.of("A", 0.02)).advice();
        assertEquals("A", Asking.find(advice.notes(), "too-polar").args().get("spot"));
        assertEquals(100.0, Asking.find(advice.notes(), "too-polar").args().get("percent"));
        assertRanked(advice);
    }

    // The line between two pairs was fitted in the middle of the compounds; beyond it no chance in the other
    // pair is told.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void noOtherPairIsPromisedForACompoundBeyondThoseMeasuredInBoth(Setting setting) {
        Advice advice = Asking.acetate().in(setting).run(100, Map.of("A", 0.02)).advice();
        assertTrue(
                advice.alternatives().stream()
                        .noneMatch(alternative -> alternative.what().code().equals("instead-pair")),
                advice.alternatives().toString());
    }

    @Test
    void inTheStrongestPairTooPolarNamesNoPair() {
        Advice advice = Asking.about("dichloromethane", "methanol")
                .run(9, Map.of("A", 0.02))
                .advice();
        assertTrue(Asking.codes(advice.notes()).contains("too-polar-strongest"));
        assertFalse(Asking.codes(advice.notes()).contains("too-polar"));
        assertEquals("10:1", advice.ratio().toString(), "9.09 %, the most that was measured");
    }

    @Test
    void aCompoundThatMovesInPureEthylAcetateIsNotTooPolar() {
        Advice advice = Asking.acetate().run(100, Map.of("A", 0.4)).advice();
        assertFalse(Asking.codes(advice.notes()).contains("too-polar"));
    }

    // Own algebra: after n runs Rf is 1 − (1 − Rf)ⁿ; 0.08 becomes 0.15 and 0.22, so three runs reach where one
    // does not.
    @Test
    void aSpotJustTooLowClimbsWhenThePlateIsRunAgain() {
        Advice advice = Asking.acetate()
                .run(100, Map.of("A", 0.11))
                .run(100, Map.of("A", 0.11))
                .advice();
        List<Alternative> repeats = advice.alternatives().stream()
                .filter(alternative -> alternative.what().code().equals("instead-repeat"))
                .toList();
        assertFalse(repeats.isEmpty(), advice.alternatives().toString());
        assertEquals(3, repeats.get(0).what().args().get("count"));
        assertTrue(repeats.get(0).chance() > 0.8, repeats.toString());
    }
}
