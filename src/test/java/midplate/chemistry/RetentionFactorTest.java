package midplate.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import midplate.words.English;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What an Rf says in other words")
class RetentionFactorTest {
    private static final double EXACT = 1e-12;

    // Own algebra: R_M = log10((1 − Rf)/Rf), worked out by hand to four digits.
    @ParameterizedTest
    @CsvSource({
        "0.05, 1.2788", "0.10, 0.9542", "0.20, 0.6021", "0.25, 0.4771", "0.30, 0.3680", "0.35, 0.2688",
        "0.40, 0.1761", "0.50, 0", "0.60, -0.1761", "0.70, -0.3680", "0.80, -0.6021", "0.90, -0.9542"
    })
    void rMFollowsItsTable(double rf, double rM) {
        assertEquals(rM, RetentionFactor.rM(rf), 0.5e-4);
    }

    // Own algebra; the form √Rf·(1 − Rf) is that of Geiss 1987 (memory).
    @Test
    void resolutionOnThePlateIsLargestAtOneThird() {
        double best = RetentionFactor.plateResolution(1.0 / 3);
        assertEquals(0.3849, best, 0.5e-4);
        for (int i = 0; i <= 1000; i++) {
            assertTrue(RetentionFactor.plateResolution(i / 1000.0) <= best, "at " + i / 1000.0);
        }
        assertEquals(0.93, RetentionFactor.plateResolution(0.2) / best, 0.005);
        assertEquals(0.46, RetentionFactor.plateResolution(0.8) / best, 0.005);
        assertEquals(0, RetentionFactor.plateResolution(0), 0);
        assertEquals(0, RetentionFactor.plateResolution(1), 0);
    }

    // Own algebra: 1 − 0.8² = 0.36, 1 − 0.8³ = 0.488, 1 − 0.5⁴ = 0.9375.
    @ParameterizedTest
    @CsvSource({"0.2, 1, 0.2", "0.2, 2, 0.36", "0.2, 3, 0.488", "0.5, 4, 0.9375", "0, 5, 0", "1, 2, 1"})
    void repeatedDevelopmentCarriesSpotsFurther(double rf, int developments, double after) {
        assertEquals(after, RetentionFactor.afterDevelopments(rf, developments), EXACT);
    }

    // Own algebra: CV = 1/Rf; equal steps in Rf are unequal in column volumes.
    @Test
    void columnVolumesAreOneOverRf() {
        assertEquals(2.857, RetentionFactor.columnVolumes(0.35), 0.5e-3);
        assertEquals(1.667, RetentionFactor.columnVolumes(0.20) - RetentionFactor.columnVolumes(0.30), 0.5e-3);
        assertEquals(0.404, RetentionFactor.columnVolumes(0.45) - RetentionFactor.columnVolumes(0.55), 0.5e-3);
    }

    @ParameterizedTest
    @MethodSource("seededRf")
    void rfComesBackFromCapacityAndFromLogit(double rf) {
        assertEquals(rf, RetentionFactor.fromCapacity(RetentionFactor.capacity(rf)), EXACT);
        assertEquals(rf, RetentionFactor.fromLogit(RetentionFactor.logit(rf)), EXACT);
        assertEquals(Math.log(RetentionFactor.capacity(rf)), -RetentionFactor.logit(rf), 1e-9);
        assertEquals(Math.log10(RetentionFactor.capacity(rf)), RetentionFactor.rM(rf), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("seededRf")
    void twoDevelopmentsInTwoStepsAreTwoDevelopments(double rf) {
        double once = RetentionFactor.afterDevelopments(rf, 2);
        assertEquals(RetentionFactor.afterDevelopments(rf, 6), RetentionFactor.afterDevelopments(once, 3), EXACT);
        assertTrue(once > rf);
    }

    @Test
    void infiniteHoldIsTheStartLineAndNoHoldIsTheFront() {
        assertEquals(0, RetentionFactor.fromCapacity(Double.POSITIVE_INFINITY), 0);
        assertEquals(1, RetentionFactor.fromCapacity(0), 0);
        assertEquals(0, RetentionFactor.capacity(1), 0);
        assertEquals(0, RetentionFactor.fromLogit(Double.NEGATIVE_INFINITY), 0);
        assertEquals(1, RetentionFactor.fromLogit(Double.POSITIVE_INFINITY), 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 1.01, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void everyFunctionOfRfRefusesWhatIsNoRf(double rf) {
        List<DoubleUnaryOperator> functions = List.of(
                RetentionFactor::capacity,
                RetentionFactor::rM,
                RetentionFactor::logit,
                RetentionFactor::plateResolution,
                RetentionFactor::columnVolumes,
                value -> RetentionFactor.afterDevelopments(value, 2));
        for (DoubleUnaryOperator function : functions) {
            Refusal refusal = assertThrows(Refusal.class, () -> function.applyAsDouble(rf));
            assertEquals("rf", refusal.field());
            assertEquals(Double.toString(rf), refusal.came());
            assertEquals("out-of-range", refusal.code());
        }
    }

    @Test
    void theRefusalNamesTheIntervalWithItsEnds() {
        assertEquals(
                "(0, 1]",
                English.said(refusalOf(() -> RetentionFactor.capacity(0)).allowed()));
        assertEquals(
                "(0, 1)", English.said(refusalOf(() -> RetentionFactor.logit(0)).allowed()));
        assertEquals(
                "(0, 1)", English.said(refusalOf(() -> RetentionFactor.rM(1)).allowed()));
        assertEquals(
                "[0, ∞]",
                English.said(refusalOf(() -> RetentionFactor.fromCapacity(-1)).allowed()));
        assertEquals(
                "[1, ∞)",
                English.said(refusalOf(() -> RetentionFactor.afterDevelopments(0.5, 0))
                        .allowed()));
        assertThrows(Refusal.class, () -> RetentionFactor.fromCapacity(Double.NaN));
        assertThrows(Refusal.class, () -> RetentionFactor.fromLogit(Double.NaN));
    }

    @Test
    void theRefusalReadsAsASentence() {
        Refusal refusal = refusalOf(() -> RetentionFactor.capacity(1.5));
        assertEquals("rf is 1.5; allowed is (0, 1].", Texts.english().render(refusal.reason()));
    }

    private static Refusal refusalOf(org.junit.jupiter.api.function.Executable call) {
        return assertThrows(Refusal.class, call);
    }

    static DoubleStream seededRf() {
        Random random = new Random(20);
        return DoubleStream.generate(() -> 0.001 + 0.998 * random.nextDouble()).limit(50);
    }
}
