package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import midplate.catalogue.MeasuredPair;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What was put into a simulated table comes out of its calibration. */
@DisplayName("A calibration on simulated plates")
class CalibrationTest {
    private static final int COMPOUNDS = 160;
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static double[][] table;
    private static PairFit fit;

    @BeforeAll
    static void calibrate() {
        table = TRUTH.table(COMPOUNDS, new Random(20_261_125), SimulatedPair.Lines.HELD);
        fit = Calibration.fit(TRUTH.percents(), table, TraitGrid.FIT);
    }

    /**
     * Standard error of G when the traits are not given: that of the readings at this share and at the reference, and that
     * of the mean of s, whose unit G carries.
     */
    private static double error(int share, double[] strengthError) {
        double unit = TRUTH.strength()[share] * TRUTH.deviationS() / Math.sqrt(COMPOUNDS);
        return Math.sqrt(
                strengthError[share] * strengthError[share] + strengthError[4] * strengthError[4] + unit * unit);
    }

    @Test
    void findsTheStrengthsWithinThreeStandardErrors() {
        assertEquals(0, fit.strength()[4], "0 at the reference");
        double squares = 0;
        for (int j = 0; j < TRUTH.percents().length; j++) {
            double slip = fit.strength()[j] - TRUTH.strength()[j];
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

    // Readings beyond a line are left there: put on it, as a plate shows them, they pile up where no noise seems left.
    @Test
    void findsTheNoiseLeftAtTheLines() {
        double[][] beyond = TRUTH.table(COMPOUNDS, new Random(5), SimulatedPair.Lines.CROSSED);
        double left =
                Calibration.fit(TRUTH.percents(), beyond, TraitGrid.FIT).shape().leftAtLines();
        assertTrue(left > 0.05 && left < 0.2, "0.1 was put in: " + left);
    }

    @Test
    void findsTheStretch() {
        Stretch stretch = fit.shape().stretch();
        assertTrue(stretch.start() > 0.005 && stretch.start() < 0.035, "0.015 was put in: " + stretch.start());
        assertTrue(stretch.front() > 0.007 && stretch.front() < 0.045, "0.02 was put in: " + stretch.front());
    }

    // Standard errors: 1.8/√160 = 0.14 of the mean of c, 0.10 of its deviation; the kernel widens it by a tenth.
    @Test
    void findsTheSpreadOfTraits() {
        MeasuredPair.Traits traits = fit.traits();
        double mean = 0;
        double square = 0;
        double sum = 0;
        for (int i = 0; i < traits.cDensity().size(); i++) {
            double c = traits.cFrom() + i * traits.cStep();
            sum += traits.cDensity().get(i);
            mean += traits.cDensity().get(i) * c;
            square += traits.cDensity().get(i) * c * c;
        }
        assertEquals(1, sum, 1e-9);
        assertEquals(TRUTH.meanC(), mean, 0.45);
        assertEquals(TRUTH.deviationC(), Math.sqrt(square - mean * mean), 0.45);
        assertEquals(1, traits.sMean(), 0.05);
        assertEquals(TRUTH.deviationS(), traits.sDeviation(), 0.06);
        assertEquals(TRUTH.slopeS(), traits.sSlope(), 0.04);
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
        PairFit moved = Calibration.fit(TRUTH.percents(), misread, TraitGrid.FIT);
        for (int j = 0; j < TRUTH.percents().length; j++) {
            assertEquals(fit.strength()[j], moved.strength()[j], 0.06, TRUTH.percents()[j] + " %");
        }
        assertEquals(fit.traits().sDeviation(), moved.traits().sDeviation(), 0.03);
    }

    @Test
    void sameReadingsGiveTheSameNumbers() {
        double[][] few = java.util.Arrays.copyOf(table, 25);
        PairFit one = Calibration.fit(TRUTH.percents(), few, TraitGrid.FIT);
        PairFit other = Calibration.fit(TRUTH.percents(), few, TraitGrid.FIT);
        for (int j = 0; j < one.strength().length; j++) {
            assertEquals(one.strength()[j], other.strength()[j]);
            assertEquals(one.scales()[j], other.scales()[j]);
        }
        assertEquals(one.traits(), other.traits());
    }
}
