package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import midplate.catalogue.PlatePair;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What was put into a simulated table comes out of its calibration. */
@DisplayName("A calibration on simulated plates")
class CalibrationTest {
    private static final int COMPOUNDS = 160;
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static List<SimulatedPair.Compound> compounds;
    private static double[][] table;
    private static PairFit fit;

    @BeforeAll
    static void calibrate() {
        Random random = new Random(20_261_125);
        compounds = TRUTH.compounds(COMPOUNDS, random);
        table = TRUTH.table(compounds, random);
        fit = fit(table);
    }

    private static PairFit fit(double[][] rf) {
        return Calibration.fit(TRUTH.percents(), rf, Form.THREE_TRAITS, SimulatedPair.kinds());
    }

    /**
     * Standard error of G when the traits are not given: that of the readings at this share and at the reference, that of the
     * mean of s, whose unit G carries, and where L or a is moved too, what these take from it: 0.08 in repeated simulations
     * (eleven seeds).
     */
    private static double error(int share, double[] strengthError) {
        double unit = TRUTH.strength()[share] * TRUTH.deviationS() / Math.sqrt(COMPOUNDS);
        double moved = SimulatedPair.kinds()[share] == ShareKind.PLAIN ? 0 : 0.08;
        return Math.sqrt(strengthError[share] * strengthError[share]
                + strengthError[4] * strengthError[4]
                + unit * unit
                + moved * moved);
    }

    @Test
    void findsTheStrengthsWithinThreeStandardErrors() {
        assertEquals(0, fit.climbs()[4].strength(), "0 at the reference");
        double squares = 0;
        for (int j = 0; j < TRUTH.percents().length; j++) {
            double slip = fit.climbs()[j].strength() - TRUTH.strength()[j];
            double error = error(j, fit.strengthError());
            assertTrue(Math.abs(slip) <= 3 * error, TRUTH.percents()[j] + " %: off by " + slip + ", error " + error);
            assertTrue(fit.strengthError()[j] > 0.003 && fit.strengthError()[j] < 0.1, "a sensible error");
            squares += slip * slip / (error * error);
        }
        assertTrue(squares > 0.5, "so good a fit would mean too wide errors: " + squares);
    }

    @Test
    void findsTheNoise() {
        for (int j = 0; j < TRUTH.percents().length; j++) {
            double ratio = fit.scales()[j] / TRUTH.scales()[j];
            assertTrue(ratio > 0.6 && ratio < 1.6, TRUTH.percents()[j] + " %: " + ratio);
        }
    }

    @Test
    void findsTheNoiseLeftAtTheLines() {
        double left = fit.shape().leftAtLines();
        assertTrue(left > 0.05 && left < 0.2, "0.1 was put in: " + left);
    }

    // L is the deviation of a hidden variable: over 160 compounds its standard error is L/√320 at best, 0.03, and with
    // readings
    // that scatter by 0.2 in η about 0.05; three of them. That of a is 0.06 in repeated simulations (five seeds).
    @Test
    void findsHowEarlyCompoundsClimbAndHowTheyAreHeldByTheBareSurface() {
        for (int j = 0; j < TRUTH.percents().length; j++) {
            Climb climb = fit.climbs()[j];
            assertEquals(TRUTH.early()[j], climb.early(), TRUTH.early()[j] > 0 ? 0.15 : 0, TRUTH.percents()[j] + " %");
            assertEquals(TRUTH.hold()[j], climb.hold(), TRUTH.hold()[j] > 1 ? 0.18 : 0, TRUTH.percents()[j] + " %");
        }
    }

    // A deviation is never negative, so where there is none a little is found: the fourth root of 2/160 of the noise in
    // η, 0.07,
    // and up to twice that.
    @Test
    void findsNextToNothingWhereNothingWasPutIn() {
        SimulatedPair plain = SimulatedPair.TWO_TRAITS;
        Random random = new Random(3);
        PairFit found = fit(plain.table(plain.compounds(COMPOUNDS, random), random));
        for (int j = 0; j < plain.percents().length; j++) {
            assertTrue(found.climbs()[j].early() < 0.2, plain.percents()[j] + " %: " + found.climbs()[j]);
            assertEquals(1, found.climbs()[j].hold(), j == 0 ? 0.18 : 0, plain.percents()[j] + " %");
        }
    }

    @Test
    void findsTheStretch() {
        Stretch stretch = fit.shape().stretch();
        assertTrue(stretch.start() > 0.005 && stretch.start() < 0.035, "0.015 was put in: " + stretch.start());
        assertTrue(stretch.front() > 0.007 && stretch.front() < 0.045, "0.02 was put in: " + stretch.front());
    }

    /** Mean of a trait under the spread that was fitted. */
    private static double mean(PlatePair.Traits traits, ToDoubleFunction<PlatePair.Bell> middle) {
        return traits.bells().stream()
                .mapToDouble(bell -> bell.weight() * middle.applyAsDouble(bell))
                .sum();
    }

    /** Covariance of two traits: within the curves and between their middles. */
    private static double covariance(
            PlatePair.Traits traits,
            ToDoubleFunction<PlatePair.Bell> one,
            ToDoubleFunction<PlatePair.Bell> other,
            ToDoubleFunction<PlatePair.Bell> within) {
        return mean(traits, bell -> one.applyAsDouble(bell) * other.applyAsDouble(bell) + within.applyAsDouble(bell))
                - mean(traits, one) * mean(traits, other);
    }

    /** Mean of a trait over the compounds that were drawn. */
    private static double drawn(ToDoubleFunction<SimulatedPair.Compound> trait) {
        return compounds.stream().mapToDouble(trait).average().orElseThrow();
    }

    // Own algebra: what is not known of each compound is spread around what is, so that together they are spread as the
    // compounds were drawn; a kernel of at most 160^(−1/7) deviations and one part in a hundred that is twice as wide
    // add 13 in
    // 100 to the deviation at most, and nothing to covariances.
    @Test
    void findsTheSpreadOfTraits() {
        PlatePair.Traits traits = fit.traits();
        assertEquals(1, mean(traits, bell -> 1), 1e-9);
        double meanC = drawn(SimulatedPair.Compound::c);
        double squareC = drawn(each -> (each.c() - meanC) * (each.c() - meanC));
        assertEquals(meanC, mean(traits, PlatePair.Bell::c), 0.15);
        double varianceC = covariance(traits, PlatePair.Bell::c, PlatePair.Bell::c, PlatePair.Bell::varianceC);
        assertBetween(0.97, 1.15, Math.sqrt(varianceC / squareC));
        assertEquals(1, mean(traits, PlatePair.Bell::s), 0.02);
        double meanS = drawn(SimulatedPair.Compound::s);
        double squareS = drawn(each -> (each.s() - meanS) * (each.s() - meanS));
        assertBetween(0.9, 1.25, deviationS(fit) / Math.sqrt(squareS));
        double slope =
                covariance(traits, PlatePair.Bell::c, PlatePair.Bell::s, PlatePair.Bell::covarianceCS) / varianceC;
        assertEquals(drawn(each -> (each.c() - meanC) * each.s()) / squareC, slope, 0.02);
        assertEquals(0, mean(traits, PlatePair.Bell::t), 0.2);
        double varianceT = covariance(traits, PlatePair.Bell::t, PlatePair.Bell::t, PlatePair.Bell::varianceT);
        assertBetween(0.9, 1.25, Math.sqrt(varianceT));
    }

    private static void assertBetween(double low, double high, double value) {
        assertTrue(value >= low && value <= high, value + " in [" + low + ", " + high + "]");
    }

    // The mean of |t| with five degrees of freedom is 0.949; spots near a line scatter less, and the traits
    // take up some.
    @Test
    void theResidualIsOfTheSizeOfTheNoise() {
        assertEquals(COMPOUNDS * TRUTH.percents().length, fit.readings());
        assertTrue(fit.residual() > 0.008 && fit.residual() < 0.03, "residual " + fit.residual());
    }

    // Law of expectation and maximization, kept but for the small steps of shape and recentring.
    @Test
    void theReadingsBecomeLikelierUntilNothingMoves() {
        int last = fit.logLikelihood().size() - 1;
        assertTrue(fit.logLikelihood().get(last) > fit.logLikelihood().get(0) + 100);
        assertEquals(fit.logLikelihood().get(last - 10), fit.logLikelihood().get(last), 0.5);
    }

    private static double deviationS(PairFit fit) {
        return Math.sqrt(covariance(fit.traits(), PlatePair.Bell::s, PlatePair.Bell::s, PlatePair.Bell::varianceS));
    }

    @Test
    void aGrosslyMisreadRowHardlyMovesIt() {
        double[][] misread = table.clone();
        int row = 0;
        for (int i = 0; i < table.length; i++) {
            if (Math.abs(table[i][4] - 0.5) < Math.abs(table[row][4] - 0.5)) {
                row = i;
            }
        }
        misread[row] = new double[table[row].length];
        for (int j = 0; j < misread[row].length; j++) {
            misread[row][j] = 1 - table[row][j];
        }
        PairFit moved = fit(misread);
        for (int j = 0; j < TRUTH.percents().length; j++) {
            assertEquals(fit.climbs()[j].strength(), moved.climbs()[j].strength(), 0.06, TRUTH.percents()[j] + " %");
        }
        assertEquals(deviationS(fit), deviationS(moved), 0.03);
    }

    @Test
    void sameReadingsGiveTheSameNumbers() {
        double[][] few = java.util.Arrays.copyOf(table, 25);
        PairFit one = fit(few);
        PairFit other = fit(few);
        assertArrayEquals(one.climbs(), other.climbs());
        assertArrayEquals(one.scales(), other.scales());
        assertEquals(one.traits(), other.traits());
    }
}
