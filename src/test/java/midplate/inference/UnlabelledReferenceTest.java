package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two labelled spots on one plate, one spot without a label on another: how likely each match is, by brute force over both
 * plates' errors and the traits of both spots. It shares the formulas with the program and no code. Ways to match differ in how
 * many readings they explain, so a weight without its norm would show.
 */
@DisplayName("One spot without a label, by brute force")
class UnlabelledReferenceTest {
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static final TDistribution STUDENT = new TDistribution(5);
    private static final double READING_ERROR = 0.015;
    private static final double SHARED_ERROR = 0.14;
    private static final double MISSED = 0.05;
    private static final double FOREIGN = 0.01;
    private static final double ALIKE = 0.04;
    private static final double STEP = 0.02;
    private static final int MARKS = 1601;
    private static final int ERRORS = 13;

    private static double rf(double eta) {
        return Math.max(0, Math.min(1, beyond(eta)));
    }

    private static double beyond(double eta) {
        return (1 + TRUTH.start() + TRUTH.front()) / (1 + Math.exp(-eta)) - TRUTH.start();
    }

    private static double eta(int share, double c, double s, double t) {
        return TRUTH.hold()[share] * c + s * TRUTH.strength()[share] + t * TRUTH.early()[share];
    }

    /** Even steps over a standard normal t, where it matters to one of the shares. */
    private static double[] ts(int... shares) {
        boolean matters = Arrays.stream(shares).anyMatch(share -> TRUTH.early()[share] > 0);
        return matters ? IntStream.rangeClosed(-8, 8).mapToDouble(i -> 0.5 * i).toArray() : new double[] {0};
    }

    private static double sigma(int share, double rf) {
        double left = TRUTH.leftAtLines();
        double scale = TRUTH.scales()[share];
        return Math.sqrt(scale * scale * (left + (1 - left) * 4 * rf * (1 - rf)) + READING_ERROR * READING_ERROR);
    }

    private static double[] onMarks(DoubleUnaryOperator quantity) {
        double[] marks = new double[MARKS];
        for (int i = 0; i < MARKS; i++) {
            marks[i] = quantity.applyAsDouble(-16 + i * STEP);
        }
        return marks;
    }

    private static double at(double[] marks, double eta) {
        return marks[(int) Math.max(0, Math.min(MARKS - 1, Math.round((eta + 16) / STEP)))];
    }

    private static double[] alone(int share, double read) {
        return onMarks(eta -> STUDENT.density((read - beyond(eta)) / sigma(share, rf(eta))) / sigma(share, rf(eta)));
    }

    private static double[] shared(int share, double read) {
        return onMarks(eta -> STUDENT.probability(
                        (read - ALIKE / 2 - rf(eta)) / sigma(share, rf(eta)),
                        (read + ALIKE / 2 - rf(eta)) / sigma(share, rf(eta)))
                / ALIKE);
    }

    private static double error(int k) {
        return SHARED_ERROR * (-3.6 + 7.2 * k / (ERRORS - 1));
    }

    private static double normal(int k) {
        double z = error(k) / SHARED_ERROR;
        return Math.exp(-0.5 * z * z);
    }

    /** The evidence of one spot under the error of the labelled plate, then that of the other: not there, alone, shared. */
    private static double[][][] spot(int first, double read, int second, double seen) {
        double[] labelled = alone(first, read);
        double[] alone = alone(second, seen);
        double[] shared = shared(second, seen);
        double[][][] sums = new double[ERRORS][ERRORS][3];
        for (double c = -8; c <= 9; c += 0.1) {
            double away = (c - TRUTH.meanC()) / TRUTH.deviationC();
            double centre = 1 + TRUTH.slopeS() * (c - TRUTH.meanC());
            for (double s = 0.3; s <= 2.0001; s += 0.05) {
                double far = (s - centre) / TRUTH.deviationS();
                for (double t : ts(first, second)) {
                    double prior = Math.exp(-0.5 * (away * away + far * far + t * t));
                    for (int i = 0; i < ERRORS; i++) {
                        double weight = prior * at(labelled, eta(first, c, s, t) + error(i));
                        for (int j = 0; j < ERRORS; j++) {
                            double eta = eta(second, c, s, t) + error(j);
                            sums[i][j][0] += weight;
                            sums[i][j][1] += weight * at(alone, eta);
                            sums[i][j][2] += weight * at(shared, eta);
                        }
                    }
                }
            }
        }
        return sums;
    }

    @ParameterizedTest
    @CsvSource({
        "3, 0.25, 0.4, 5, 0.62",
        "3, 0.25, 0.29, 4, 0.45",
        "4, 0.12, 0.7, 5, 0.9",
        "2, 0.1, 0.2, 7, 0.87",
        "3, 0.25, 0.4, 4, 0.75",
    })
    void eachMatchIsAsLikelyAsItIs(int first, double a, double b, int second, double seen) {
        double[][][] ofA = spot(first, a, second, seen);
        double[][][] ofB = spot(first, b, second, seen);
        double none = 0;
        double onlyA = 0;
        double onlyB = 0;
        double both = 0;
        for (int i = 0; i < ERRORS; i++) {
            for (int j = 0; j < ERRORS; j++) {
                double weight = normal(i) * normal(j);
                double[] spotA = ofA[i][j];
                double[] spotB = ofB[i][j];
                none += weight * MISSED * MISSED * FOREIGN * spotA[0] * spotB[0];
                onlyA += weight * MISSED * (1 - MISSED) * spotA[1] * spotB[0];
                onlyB += weight * MISSED * (1 - MISSED) * spotA[0] * spotB[1];
                both += weight * (1 - MISSED) * (1 - MISSED) * 2 * ALIKE * spotA[2] * spotB[2];
            }
        }
        double all = none + onlyA + onlyB + both;
        PlateRun labelled = Plates.run(Plates.ACETATE, TRUTH.percents()[first], Map.of("A", a, "B", b));
        PlateRun unlabelled = new PlateRun(
                Plates.ACETATE,
                TRUTH.percents()[second],
                Map.of(),
                1,
                List.of(new UnlabelledLane(1, Set.of(), List.of(new UnlabelledSpot(0, Reading.of(seen))))),
                Set.of());
        SpotGuess guess = TRUTH.models()
                .learn(Plates.ACETATE, Setting.BENCH, List.of("A", "B"), List.of(labelled, unlabelled))
                .guesses()
                .get(0);
        assertEquals(onlyA / all, said(guess, "A"), 0.02, "A alone");
        assertEquals(onlyB / all, said(guess, "B"), 0.02, "B alone");
        assertEquals(both / all, said(guess, "A", "B"), 0.02, "both");
        assertEquals(none / all, said(guess), 0.02, "none");
    }

    private static double said(SpotGuess guess, String... spots) {
        return guess.possibilities().stream()
                .filter(each -> each.spots().equals(List.of(spots)))
                .mapToDouble(SpotGuess.Possibility::probability)
                .sum();
    }
}
