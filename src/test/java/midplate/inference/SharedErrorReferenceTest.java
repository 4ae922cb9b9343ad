package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One plate with two spots, worked out by brute force: sums by even steps over the error of the plate, the traits of each
 * spot and the error of the next plate. It shares the formulas with the program and no code; the program tries 32 errors.
 */
@DisplayName("The error shared by a plate, by brute force")
class SharedErrorReferenceTest {
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static final TDistribution STUDENT = new TDistribution(5);
    private static final double READING_ERROR = 0.015;
    private static final double SHARED_ERROR = 0.14;
    private static final double STEP = 0.02;
    private static final int MARKS = 1601;
    private static final double[] SHOWN = onMarks(SharedErrorReferenceTest::rf);

    /** What a spot does on the next plate, before the error of either plate is summed over. */
    private record Sums(double evidence, double[] rf, double[] inside) {}

    private static double rf(double eta) {
        return Math.max(0, Math.min(1, beyond(eta)));
    }

    private static double beyond(double eta) {
        return (1 + TRUTH.start() + TRUTH.front()) / (1 + Math.exp(-eta)) - TRUTH.start();
    }

    private static double sigma(int share, double rf) {
        double left = TRUTH.leftAtLines();
        double scale = TRUTH.scales()[share];
        return Math.sqrt(scale * scale * (left + (1 - left) * 4 * rf * (1 - rf)) + READING_ERROR * READING_ERROR);
    }

    private static int mark(double eta) {
        return (int) Math.max(0, Math.min(MARKS - 1, Math.round((eta + 16) / STEP)));
    }

    private static double[] onMarks(java.util.function.DoubleUnaryOperator quantity) {
        double[] marks = new double[MARKS];
        for (int i = 0; i < MARKS; i++) {
            marks[i] = quantity.applyAsDouble(-16 + i * STEP);
        }
        return marks;
    }

    private static double eta(int share, double c, double s, double t) {
        return TRUTH.hold()[share] * c + s * TRUTH.strength()[share] + t * TRUTH.early()[share];
    }

    private static double insideAt(int share, double eta) {
        double rf = rf(eta);
        double sigma = sigma(share, rf);
        return STUDENT.cumulativeProbability((0.8 - rf) / sigma) - STUDENT.cumulativeProbability((0.2 - rf) / sigma);
    }

    private static double likelihoodAt(int share, double read, double eta) {
        double sigma = sigma(share, rf(eta));
        return STUDENT.density((read - beyond(eta)) / sigma) / sigma;
    }

    /** Even steps over a standard normal t, where it matters to one of the shares. */
    private static double[] ts(int... shares) {
        boolean matters = Arrays.stream(shares).anyMatch(share -> TRUTH.early()[share] > 0);
        return matters ? IntStream.rangeClosed(-8, 8).mapToDouble(i -> 0.5 * i).toArray() : new double[] {0};
    }

    private static Sums spot(int share, double[] likelihood, double error, int next, double[] nextErrors, double[] in) {
        double[] rf = new double[nextErrors.length];
        double[] inside = new double[nextErrors.length];
        double evidence = 0;
        for (double c = -8; c <= 9; c += 0.05) {
            double away = (c - TRUTH.meanC()) / TRUTH.deviationC();
            double centre = 1 + TRUTH.slopeS() * (c - TRUTH.meanC());
            for (double s = 0.3; s <= 2.0001; s += 0.05) {
                double far = (s - centre) / TRUTH.deviationS();
                for (double t : ts(share, next)) {
                    double weight = Math.exp(-0.5 * (away * away + far * far + t * t))
                            * likelihood[mark(eta(share, c, s, t) + error)];
                    evidence += weight;
                    double there = eta(next, c, s, t);
                    for (int k = 0; k < nextErrors.length; k++) {
                        int mark = mark(there + nextErrors[k]);
                        rf[k] += weight * SHOWN[mark];
                        inside[k] += weight * in[mark];
                    }
                }
            }
        }
        return new Sums(evidence, rf, inside);
    }

    private static double[] errors(int count) {
        double[] errors = new double[count];
        for (int i = 0; i < count; i++) {
            errors[i] = SHARED_ERROR * (-4 + 8.0 * i / (count - 1));
        }
        return errors;
    }

    private static double normal(double error) {
        return Math.exp(-0.5 * error * error / (SHARED_ERROR * SHARED_ERROR));
    }

    // The readings of both spots lie above what their neighbours in the prior would show, so the plate's error
    // is not 0.
    @ParameterizedTest
    @CsvSource({"3, 0.25, 0.4, 4", "3, 0.12, 0.7, 3", "6, 0.9, 0.8, 3", "1, 0.08, 0.93, 2"})
    void expectationsAndJointChanceAgree(int share, double a, double b, int next) {
        double[] in = onMarks(eta -> insideAt(next, eta));
        double[] ofA = onMarks(eta -> likelihoodAt(share, a, eta));
        double[] ofB = onMarks(eta -> likelihoodAt(share, b, eta));
        double[] nextErrors = errors(13);
        double weights = 0;
        double rfA = 0;
        double chance = 0;
        for (double error : errors(25)) {
            Sums first = spot(share, ofA, error, next, nextErrors, in);
            Sums second = spot(share, ofB, error, next, nextErrors, in);
            for (int k = 0; k < nextErrors.length; k++) {
                double weight = normal(error) * normal(nextErrors[k]);
                weights += weight * first.evidence() * second.evidence();
                rfA += weight * first.rf()[k] * second.evidence();
                chance += weight * first.inside()[k] * second.inside()[k];
            }
        }
        Outlook outlook = Plates.outlook(
                TRUTH.models(),
                Plates.ACETATE,
                Setting.BENCH,
                List.of("A", "B"),
                List.of(Plates.run(Plates.ACETATE, TRUTH.percents()[share], Map.of("A", a, "B", b))),
                0.2,
                0.8);
        double percent = TRUTH.percents()[next];
        assertEquals(rfA / weights, outlook.rf(0, percent), 0.005, "Rf of A");
        assertEquals(chance / weights, outlook.chance(percent, List.of(0, 1)), 0.02, "joint chance");
    }

    // Own algebra of importance sampling: with their weights the errors tried have the mean and the variance of
    // the prior, however much wider they were looked for. One plate with one spot, which tells next to nothing
    // of the plate's error.
    @Test
    void theErrorsTriedAreWeighedBackToTheirPrior() {
        List<List<Trial>> spot = List.of(List.of(new Trial(0, 25, Reading.of(0.4))));
        SharedPlateError error =
                new SharedPlateError(1, spot, PairModel.of(TRUTH.measured()), PlateScatter.of(Setting.BENCH));
        double weights = 0;
        double mean = 0;
        double square = 0;
        for (SharedPlateError.Tried tried : error.tried()) {
            double weight = Math.exp(tried.logWeight());
            weights += weight;
            mean += weight * tried.shifts()[0];
            square += weight * tried.shifts()[0] * tried.shifts()[0];
        }
        assertEquals(0, mean / weights, 0.1 * SHARED_ERROR);
        assertEquals(1, Math.sqrt(square / weights) / SHARED_ERROR, 0.1);
    }
}
