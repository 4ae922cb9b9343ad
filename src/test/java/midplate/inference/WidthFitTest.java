package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import midplate.catalogue.JointTraits.Width;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compounds drawn around a link as a law says: the law is found again. */
@DisplayName("How far compounds lie around a link")
class WidthFitTest {
    private static final double KNOWN = 0.02;
    private static final LinkedPair LINK =
            new LinkedPair(new double[][] {{0.9}}, new double[] {0.3}, new double[][] {{0.2}});

    private static Moments at(double c) {
        return new Moments(new double[] {c}, new double[][] {{KNOWN}});
    }

    private static Width found(double factor, double slope, double mean, int count) {
        WidthFit fit = new WidthFit();
        Random random = new Random(7);
        for (int i = 0; i < count; i++) {
            double here = 1.5 * random.nextGaussian();
            double foretold = 0.9 * here + 0.3;
            double own = 0.2 * factor * Math.exp(slope * (foretold - mean));
            double there = foretold + Math.sqrt(own + KNOWN + 0.9 * 0.9 * KNOWN) * random.nextGaussian();
            fit.add(LINK, at(mean), at(here), at(there));
        }
        return fit.likeliest();
    }

    // The likeliest of 20 000 compounds lies within five standard errors of the truth: of ln(factor) about 0.011, of
    // the slope 0.009.
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "0.8, -0.2, 0.5", "1.5, 0.3, -1", "0.5, -0.5, 0"})
    void isFoundAgain(double factor, double slope, double mean) {
        Width found = found(factor, slope, mean, 20_000);
        assertEquals(Math.log(factor), Math.log(found.factor()), 0.055);
        assertEquals(slope, found.slope(), 0.045);
    }

    // Own algebra: a compound where it was foretold, at the mean, moves ln factor x only: x/0.5² + ½·Rₓ/(Rₓ + V) = 0
    // with Rₓ = 0.2·eˣ, V = 0.0362.
    @Test
    void isHardlyMovedByOneCompound() {
        WidthFit fit = new WidthFit();
        fit.add(LINK, at(0.3), at(0), at(0.3));
        Width found = fit.likeliest();
        double x = Math.log(found.factor());
        double around = 0.2 * found.factor();
        assertEquals(0, x / 0.25 + 0.5 * around / (around + KNOWN + 0.81 * KNOWN), 1e-4);
        assertEquals(0, found.slope(), 1e-4);
    }

    @Test
    void isThatOfTheCurveWithoutCompounds() {
        assertEquals(1, new WidthFit().likeliest().factor(), 1e-4);
        assertEquals(0, new WidthFit().likeliest().slope(), 1e-4);
    }
}
