package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import midplate.plate.Setting;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is poured")
class PourTest {
    private static Asking asking(double rf) {
        return Asking.acetate().in(Setting.BENCH).run(15, Map.of("A", rf));
    }

    private static boolean isStep(double ml, double step) {
        return Math.abs(ml / step - Math.rint(ml / step)) < 1e-6;
    }

    @ParameterizedTest
    @CsvSource({
        "10, 0.1, 0.3",
        "10, 0.5, 0.3",
        "5, 0.1, 0.5",
        "8, 0.2, 0.05",
        "10, 1, 0.12",
        "100, 1, 0.2",
        "7.3, 0.1, 0.4",
        "10, 0.1, 0.9",
        "20, 0.25, 0.7",
        "3, 0.05, 0.35"
    })
    void isWholeStepsThatMakeThePercentageSaid(double amount, double step, double rf) {
        Asking asking = asking(rf).poured(amount, step);
        Advice advice = asking.advice();
        Pour pour = advice.pour();
        assertTrue(isStep(pour.weakMl(), step) && isStep(pour.strongMl(), step), pour.toString());
        assertEquals(amount, pour.weakMl() + pour.strongMl(), step, "the amount, to a step");
        assertEquals(100 * pour.strongMl() / (pour.weakMl() + pour.strongMl()), pour.percentStrong(), 1e-9);
        assertTrue(
                Math.abs(pour.strongMl() - amount * advice.ratio().percentStrong() / 100) <= step / 2 + 1e-9,
                "the nearest step: " + pour);
        assertTrue(pour.lowPercent() <= pour.percentStrong() && pour.percentStrong() <= pour.highPercent());
        double poured = asking.forecast(pour.percentStrong()).chance();
        assertTrue(pour.lowChance() <= poured + 1e-12 && poured <= pour.highChance() + 1e-12, pour.toString());
        assertTrue(pour.lowChance() >= 0 && pour.highChance() <= 1);
    }

    // Own algebra: half a step less of the one and half a step more of the other.
    @Test
    void halfAStepOnEachVolumeMakesTheRange() {
        Pour pour = asking(0.3).poured(10, 0.5).advice().pour();
        assertEquals(100 * (pour.strongMl() - 0.25) / (pour.weakMl() + pour.strongMl()), pour.lowPercent(), 1e-9);
        assertEquals(100 * (pour.strongMl() + 0.25) / (pour.weakMl() + pour.strongMl()), pour.highPercent(), 1e-9);
    }

    @Test
    void finerGlasswareNarrowsTheRange() {
        Pour fine = asking(0.3).poured(10, 0.1).advice().pour();
        Pour rough = asking(0.3).poured(10, 0.5).advice().pour();
        assertTrue(fine.highPercent() - fine.lowPercent() < rough.highPercent() - rough.lowPercent());
        assertTrue(fine.highChance() - fine.lowChance() <= rough.highChance() - rough.lowChance() + 1e-9);
    }

    @Test
    void aPureSolventHasNoRange() {
        Pour pour = Asking.acetate()
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6))
                .advice()
                .pour();
        assertEquals(new Pour(10, 0, 0, 0, 0, pour.lowChance(), pour.lowChance()), pour);
    }

    // Own algebra: 1 ml steps cannot measure 4.8 % of 10 ml: 0 or 1 ml make 0 or 10 %.
    @Test
    void aGraduationTooCoarseIsSaidAndWhatItMeasuresIsAdvised() {
        Asking asking = Asking.acetate().run(5, Map.of("A", 0.42)).poured(10, 1);
        Advice advice = asking.advice();
        assertTrue(
                advice.bestPercentStrong() > 0 && advice.bestPercentStrong() < 8, "the optimum is too little to pour");
        assertTrue(
                advice.pour().strongMl() == 0 || advice.pour().strongMl() >= 1,
                advice.pour().toString());
        assertEquals(
                1.0, Asking.find(advice.notes(), "graduation-coarse").args().get("graduationMl"));
        assertFalse(Asking.codes(asking.poured(10, 0.05).advice().notes()).contains("graduation-coarse"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.1, amountMl",
        "-1, 0.1, amountMl",
        "10001, 0.1, amountMl",
        "NaN, 0.1, amountMl",
        "10, 0, graduationMl",
        "10, 5.1, graduationMl",
        "10, NaN, graduationMl"
    })
    void whatCannotBePouredIsRefused(double amount, double step, String field) {
        assertEquals(
                field,
                assertThrows(Refusal.class, () -> new Glassware(amount, step)).field());
    }

    @ParameterizedTest
    @CsvSource({"0.8, 0.2", "-0.1, 0.5", "0.2, 1.1", "0.3, 0.31", "NaN, 0.8", "0.2, NaN"})
    void aWindowThatHoldsNothingIsRefused(double low, double high) {
        assertEquals(
                "window",
                assertThrows(Refusal.class, () -> new Window(low, high)).field());
    }

    @Test
    void aWindowHoldsItsEdges() {
        assertTrue(Window.USUAL.holds(0.2) && Window.USUAL.holds(0.8));
        assertFalse(Window.USUAL.holds(0.1999) || Window.USUAL.holds(0.8001) || Window.USUAL.holds(Double.NaN));
    }

    @Test
    void partsThatAreNoMixtureAreASlip() {
        assertThrows(IllegalArgumentException.class, () -> new Ratio(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Ratio(-1, 2));
    }

    // Own: each once, from weak to strong, in lowest terms.
    @Test
    void theRatiosRiseAndAreInLowestTerms() {
        double before = -1;
        for (Ratio ratio : PourableRatios.between(0, 100)) {
            assertTrue(ratio.percentStrong() > before, ratio.toString());
            before = ratio.percentStrong();
            assertEquals(
                    1,
                    java.math.BigInteger.valueOf(ratio.weak())
                            .gcd(java.math.BigInteger.valueOf(ratio.strong()))
                            .intValue(),
                    ratio.toString());
        }
        assertEquals(100, before);
        assertTrue(PourableRatios.between(0, 9.09).stream().allMatch(ratio -> ratio.percentStrong() <= 9.1));
        assertTrue(PourableRatios.between(0, 9.09).contains(new Ratio(10, 1)), "9.09 % as printed is 10 : 1");
    }
}
