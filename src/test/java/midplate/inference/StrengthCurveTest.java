package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The strength curve of a pair")
class StrengthCurveTest {
    private static final double[] PERCENTS = {0, 2, 5, 20, 60};
    private static final double[] STRENGTH = {-3, -1.5, -1.5, 0, 2};
    private static final PairModel.StrengthCurve CURVE = PairModel.measured(PERCENTS, STRENGTH);

    @Test
    void passesThroughItsPoints() {
        for (int i = 0; i < PERCENTS.length; i++) {
            assertEquals(STRENGTH[i], CURVE.at(PERCENTS[i]), 1e-12);
        }
    }

    // Law: a stronger eluent is not weaker, and between two points nothing lies outside of them.
    @Test
    void neverFallsAndStaysBetweenNeighbouringPoints() {
        for (int i = 1; i < PERCENTS.length; i++) {
            double before = STRENGTH[i - 1];
            for (double percent = PERCENTS[i - 1]; percent <= PERCENTS[i]; percent += 0.01) {
                double at = CURVE.at(percent);
                assertTrue(at >= before - 1e-12 && at <= STRENGTH[i] + 1e-12, percent + " %: " + at);
                before = at;
            }
        }
    }

    // Own algebra: above the last point one straight line in ln(p + 1), that through the last two points
    // (the limiting line of Soczewiński, Anal. Chem. 41 (1969) 179, in the variable of the curve).
    @Test
    void goesOnStraightBeyondTheLastPoint() {
        double slope = (2.0 - 0.0) / (Math.log(61) - Math.log(21));
        for (double percent : new double[] {60, 60.001, 70, 85, 100}) {
            assertEquals(2 + slope * (Math.log(percent + 1) - Math.log(61)), CURVE.at(percent), 1e-12);
        }
    }

    // Own algebra: the logit of (Rf + ε₀)/(1 + ε₀ + ε₁); ±∞ where every spot sits on the line.
    @Test
    void theEtaOfAnRfIsTheInverseOfWhatThePlateShows() {
        PairModel model = PairModel.of(SimulatedPair.USUAL.measured());
        double shown = (0.3 + 0.015) / (1 + 0.015 + 0.02);
        assertEquals(Math.log(shown / (1 - shown)), model.eta(0.3), 1e-12);
        assertEquals(0.3, model.rf()[LogitScale.mark(model.eta(0.3))], 0.0015, "0.005 in eta at a slope of 1/4");
        assertEquals(Double.NEGATIVE_INFINITY, model.eta(0));
        assertEquals(Double.POSITIVE_INFINITY, model.eta(1));
    }
}
