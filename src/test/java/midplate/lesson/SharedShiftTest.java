package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scatter of plates told by what they do to all their spots. */
class SharedShiftTest {
    private static ClassTable table(double[][] rf) {
        List<ClassReading> readings = new ArrayList<>();
        for (int i = 0; i < rf.length; i++) {
            for (int s = 0; s < rf[i].length; s++) {
                if (!Double.isNaN(rf[i][s])) {
                    readings.add(
                            new ClassReading("p" + i, ClassPlate.ofPair("p" + i, 1), 1, s, rf[i][s], HowRead.UNTOLD));
                }
            }
        }
        return ClassTable.of(rf[0].length, readings);
    }

    // two spots placed symmetrically about 0.5 have one and the same g; then it is the two-way analysis of variance
    // without repeats:
    // (MSP − MSR)/2 with the mean squares of plates and of the rest, written out here
    @Test
    void withEverySpotOnEveryPlateItIsTheTwoWayAnalysis() {
        double[] shifts = {0.3, -0.2, 0.1, -0.4, 0.2, 0};
        double[] own = {0.05, -0.02, 0.08, 0.01, -0.09, -0.03};
        double[][] eta = new double[6][2];
        double[][] rf = new double[6][2];
        for (int i = 0; i < 6; i++) {
            eta[i][0] = -0.5 + shifts[i] + own[i];
            eta[i][1] = 0.5 + shifts[i] - own[5 - i];
            rf[i][0] = 1 / (1 + Math.exp(-eta[i][0]));
            rf[i][1] = 1 / (1 + Math.exp(-eta[i][1]));
        }
        double plates = 0;
        double rest = 0;
        double[] column = {mean(eta, 0), mean(eta, 1)};
        double grand = (column[0] + column[1]) / 2;
        for (double[] plate : eta) {
            double row = (plate[0] + plate[1]) / 2;
            plates += 2 * (row - grand) * (row - grand) / 5;
            for (int s = 0; s < 2; s++) {
                rest += Math.pow(plate[s] - row - column[s] + grand, 2) / 5;
            }
        }
        SharedShift shift = SharedShift.of(table(rf)).orElseThrow();
        assertEquals((plates - rest) / 2, shift.shift(), 1e-9);
        double g = SharedShift.slope((rf[0][0] + rf[1][0] + rf[2][0] + rf[3][0] + rf[4][0] + rf[5][0]) / 6);
        assertEquals(rest * g * g, shift.own(), 0.03 * rest * g * g, "the slopes of the two spots are nearly alike");
    }

    private static double mean(double[][] eta, int s) {
        double sum = 0;
        for (double[] plate : eta) {
            sum += plate[s] / eta.length;
        }
        return sum;
    }

    @Test
    void oneSpotOrFewPlatesTellNothing() {
        assertEquals(Optional.empty(), SharedShift.of(table(new double[][] {{0.3}, {0.4}, {0.5}, {0.6}, {0.2}})));
        assertEquals(Optional.empty(), SharedShift.of(table(new double[][] {{0.3, 0.5}, {0.4, 0.6}, {0.35, 0.5}})));
        double none = Double.NaN;
        assertEquals(Optional.empty(), SharedShift.of(table(new double[][] {
            {0.3, none}, {none, 0.6}, {0.3, none}, {none, 0.5}, {0.2, 0.4}
        })));
    }

    // 400 classes of 20 pairs by a law of the test's own; what is put in must come out: the ruler's error over the run,
    // and the shift
    @ParameterizedTest
    @CsvSource({"0.10, 0.8", "0.20, 0.8", "0.20, 1.5", "0.30, 0.5"})
    void recoversWhatWasPutIn(double factor, double rulerMm) {
        double[] truth = {0.25, 0.4, 0.6};
        int classes = 400;
        double own = 0;
        double shift = 0;
        double ownSquares = 0;
        double shiftSquares = 0;
        int held = 0;
        for (int i = 0; i < classes; i++) {
            PretendClass pretend = new PretendClass(1000 + i, truth, factor, rulerMm);
            List<ClassReading> read = pretend.pairs(20, 1, PretendClass.Divides.RIGHTLY, HowRead.UNTOLD);
            SharedShift found = SharedShift.of(ClassTable.of(3, read)).orElseThrow();
            own += found.own() / classes;
            shift += found.shift() / classes;
            ownSquares += found.own() * found.own() / classes;
            shiftSquares += found.shift() * found.shift() / classes;
            Spread between = found.anova().betweenPlates();
            double g = Math.sqrt((square(0.25 * 0.75) + square(0.4 * 0.6) + square(0.6 * 0.4)) / 3);
            held += between.low() <= g * factor && g * factor <= between.high() ? 1 : 0;
        }
        double rounding = square(0.01) / 12;
        double wanted = square(rulerMm / PretendClass.RUN_MM) + rounding;
        double ownError = Math.sqrt((ownSquares - own * own) / classes);
        double shiftError = Math.sqrt((shiftSquares - shift * shift) / classes);
        // besides chance 3 % for what the straight line from η to Rf leaves out
        assertEquals(wanted, own, 3 * ownError + 0.03 * wanted);
        assertEquals(factor * factor, shift, 3 * shiftError + 0.03 * factor * factor);
        assertTrue(held > 0.84 * classes && held < 0.96 * classes, "intervals hold " + held + " of " + classes);
    }

    private static double square(double value) {
        return value * value;
    }
}
