package midplate.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import midplate.words.English;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold whatever the numbers: own algebra on the equation of Snyder 1968. */
@DisplayName("Snyder's law for two solvents")
class EluentStrengthTest {
    private static final double EXACT = 1e-12;
    private static final EluentComponent WEAK = new EluentComponent(0.01, 130.5, 5.9);
    private static final EluentComponent STRONG = new EluentComponent(0.48, 97.9, 5.2);

    @ParameterizedTest
    @MethodSource("seededPairs")
    void theEndPointsAreThePureSolvents(Pair pair) {
        assertEquals(pair.weak.strength(), pair.strengthAt(0), EXACT);
        assertEquals(pair.strong.strength(), pair.strengthAt(1), EXACT);
        assertEquals(0, EluentStrength.coverage(pair.weak, pair.strong, 0, pair.activity), 0);
        assertEquals(1, EluentStrength.coverage(pair.weak, pair.strong, 1, pair.activity), 0);
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void moreOfTheStrongSolventIsNeverWeaker(Pair pair) {
        double before = -1;
        double coveredBefore = -1;
        for (int i = 0; i <= 200; i++) {
            double strength = pair.strengthAt(i / 200.0);
            double covered = EluentStrength.coverage(pair.weak, pair.strong, i / 200.0, pair.activity);
            assertTrue(strength > before, "at " + i / 2.0 + " %");
            assertTrue(covered > coveredBefore, "at " + i / 2.0 + " %");
            before = strength;
            coveredBefore = covered;
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void percentForStrengthUndoesTheLaw(Pair pair) {
        for (int percent = 0; percent <= 100; percent += 5) {
            double strength = pair.strengthAt(percent / 100.0);
            double inside = Math.min(pair.strong.strength(), Math.max(pair.weak.strength(), strength));
            assertEquals(
                    percent, EluentStrength.percentForStrength(pair.weak, pair.strong, inside, pair.activity), 1e-6);
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void volumeFractionUndoesMoleFraction(Pair pair) {
        for (int percent = 0; percent <= 100; percent += 5) {
            double moles = EluentStrength.moleFraction(percent / 100.0, pair.weak, pair.strong);
            assertEquals(percent / 100.0, EluentStrength.volumeFraction(moles, pair.weak, pair.strong), EXACT);
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void aMixtureOfASolventWithItselfIsThatSolvent(Pair pair) {
        for (int percent = 0; percent <= 100; percent += 10) {
            double strength = EluentStrength.binary(pair.strong, pair.strong, percent / 100.0, pair.activity);
            assertEquals(pair.strong.strength(), strength, EXACT);
            double moles = EluentStrength.moleFraction(percent / 100.0, pair.strong, pair.strong);
            assertEquals(percent / 100.0, moles, EXACT);
            double covered = EluentStrength.coverage(pair.strong, pair.strong, percent / 100.0, pair.activity);
            assertEquals(percent / 100.0, covered, EXACT);
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void coverageIsWhatTheStrengthSaysItIs(Pair pair) {
        for (int percent = 5; percent < 100; percent += 10) {
            double fraction = percent / 100.0;
            double left = pair.strong.strength() - pair.strengthAt(fraction);
            double exponent = pair.activity * pair.strong.molecularArea() * left;
            double moles = EluentStrength.moleFraction(fraction, pair.weak, pair.strong);
            double covered = EluentStrength.coverage(pair.weak, pair.strong, fraction, pair.activity);
            assertEquals(moles * Math.pow(10, exponent), covered, 1e-9);
        }
    }

    @Test
    void theSlopeTendsToMinusSoluteAreaOverSolventArea() {
        EluentComponent veryStrong = new EluentComponent(1.5, 97.9, 8);
        double area = 9.3;
        double activity = 0.8;
        double low = EluentStrength.binary(WEAK, veryStrong, 0.90, activity);
        double high = EluentStrength.binary(WEAK, veryStrong, 0.91, activity);
        double logMoles = Math.log(EluentStrength.moleFraction(0.91, WEAK, veryStrong)
                / EluentStrength.moleFraction(0.90, WEAK, veryStrong));
        double slope = EluentStrength.logCapacityRatio(activity, area, high, low) / logMoles;
        assertEquals(-9.3 / 8, slope, 1e-6);
        assertEquals(-9.3 / 8, EluentStrength.limitingSlope(area, veryStrong), EXACT);
    }

    // Own algebra: log10(k1/k2) = α'·A_s·(ε2 − ε1) = 0.5·10·0.2 = 1, a factor of 10.
    @Test
    void aStrongerEluentHoldsLessByAreaTimesActivity() {
        assertEquals(Math.log(10), EluentStrength.logCapacityRatio(0.5, 10, 0.1, 0.3), EXACT);
        assertEquals(-Math.log(10), EluentStrength.logCapacityRatio(0.5, 10, 0.3, 0.1), EXACT);
    }

    // Own arithmetic: 0.2/97.9 over 0.2/97.9 + 0.8/130.5 is 0.2500; the equation then gives 0.3213 at α' 0.7.
    @Test
    void twentyPercentByVolumeIsAQuarterByMoles() {
        assertEquals(0.2500, EluentStrength.moleFraction(0.2, WEAK, STRONG), 0.5e-4);
        assertEquals(0.3213, EluentStrength.binary(WEAK, STRONG, 0.2, 0.7), 0.5e-4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 1.01})
    void aFractionOutsideZeroToOneIsRefused(double fraction) {
        Refusal refusal = assertThrows(Refusal.class, () -> EluentStrength.binary(WEAK, STRONG, fraction, 0.7));
        assertEquals("volumeFraction", refusal.field());
        assertEquals("[0, 1]", English.said(refusal.allowed()));
        assertThrows(Refusal.class, () -> EluentStrength.coverage(WEAK, STRONG, fraction, 0.7));
        assertThrows(Refusal.class, () -> EluentStrength.volumeFraction(fraction, WEAK, STRONG));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -0.1, 1.01})
    void anActivityOutsideItsRangeIsRefused(double activity) {
        Refusal refusal = assertThrows(Refusal.class, () -> EluentStrength.binary(WEAK, STRONG, 0.5, activity));
        assertEquals("activity", refusal.field());
        assertEquals("(0, 1]", English.said(refusal.allowed()));
        assertThrows(Refusal.class, () -> EluentStrength.percentForStrength(WEAK, STRONG, 0.2, activity));
        assertThrows(Refusal.class, () -> EluentStrength.logCapacityRatio(activity, 6, 0.1, 0.2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0.009, 0.481, Double.POSITIVE_INFINITY})
    void aStrengthThatThePairCannotReachIsRefused(double strength) {
        Refusal refusal =
                assertThrows(Refusal.class, () -> EluentStrength.percentForStrength(WEAK, STRONG, strength, 0.7));
        assertEquals("strength-not-reached", refusal.code());
        assertEquals("[0.01, 0.48]", English.said(refusal.allowed()));
        assertTrue(Texts.english().render(refusal.reason()).contains("[0.01, 0.48]"));
    }

    @Test
    void noPercentageOfASolventInItselfMakesItStronger() {
        assertThrows(Refusal.class, () -> EluentStrength.percentForStrength(STRONG, STRONG, STRONG.strength(), 0.7));
    }

    @Test
    void swappedSolventsAreRefused() {
        Refusal refusal = assertThrows(Refusal.class, () -> EluentStrength.binary(STRONG, WEAK, 0.5, 0.7));
        assertEquals("weak-is-stronger", refusal.code());
        assertEquals("Swap the two solvents.", English.said(refusal.todo()));
        assertTrue(Texts.english().render(refusal.reason()).contains("0.48"));
    }

    @Test
    void impossibleComponentsAreRefused() {
        assertThrows(Refusal.class, () -> new EluentComponent(Double.NaN, 100, 5));
        assertThrows(Refusal.class, () -> new EluentComponent(-0.1, 100, 5));
        assertThrows(Refusal.class, () -> new EluentComponent(0.3, 0, 5));
        assertThrows(Refusal.class, () -> new EluentComponent(0.3, 100, 0));
        assertThrows(Refusal.class, () -> EluentComponent.of(0.3, 84.93, 0, 4.1));
        assertThrows(Refusal.class, () -> EluentComponent.of(0.3, Double.NaN, 1.3, 4.1));
    }

    /** A pair of solvents on a sorbent, drawn at random. */
    record Pair(EluentComponent weak, EluentComponent strong, double activity) {
        double strengthAt(double volumeFraction) {
            return EluentStrength.binary(weak, strong, volumeFraction, activity);
        }
    }

    static Stream<Pair> seededPairs() {
        Random random = new Random(7);
        return Stream.generate(() -> {
                    double low = 0.3 * random.nextDouble();
                    double high = low + 0.02 + 0.6 * random.nextDouble();
                    return new Pair(component(random, low), component(random, high), 0.5 + 0.5 * random.nextDouble());
                })
                .limit(40);
    }

    private static EluentComponent component(Random random, double strength) {
        return new EluentComponent(strength, 40 + 110 * random.nextDouble(), 3 + 5 * random.nextDouble());
    }
}
