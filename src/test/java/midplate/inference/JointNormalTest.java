package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import midplate.catalogue.JointTraits;
import midplate.catalogue.JointTraits.Axis;
import midplate.catalogue.JointTraits.Trait;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Against draws of the normal curve itself (Commons Math), by regression and by weighing. */
@DisplayName("A normal curve over the traits in several pairs")
class JointNormalTest {
    private static final List<Axis> AXES = List.of(
            new Axis("a", Trait.C),
            new Axis("a", Trait.S),
            new Axis("a", Trait.T),
            new Axis("b", Trait.C),
            new Axis("b", Trait.S),
            new Axis("d", Trait.C));
    private static final double[] MEAN = {0.4, 1, 0.1, 1.5, 1.1, -0.5};
    private static final int DRAWS = 200_000;
    private static final double[][] COVARIANCE = covariance();
    private static final double[][] DRAWN =
            new MultivariateNormalDistribution(new Well19937c(7), MEAN, COVARIANCE).sample(DRAWS);

    /** M·Mᵀ of an invented M. */
    private static double[][] covariance() {
        double[][] m = {
            {1.4, 0, 0, 0, 0, 0},
            {0.05, 0.2, 0, 0, 0, 0},
            {-0.2, 0.1, 0.9, 0, 0, 0},
            {1.3, 0.1, 0.1, 0.5, 0, 0},
            {-0.05, 0.1, 0.02, 0.05, 0.2, 0},
            {1.1, -0.2, 0.1, 0.4, 0.1, 0.6}
        };
        return new Array2DRowRealMatrix(m)
                .multiply(new Array2DRowRealMatrix(m).transpose())
                .getData();
    }

    private static JointNormal normal() {
        List<Double> triangle = new ArrayList<>();
        for (int i = 0; i < MEAN.length; i++) {
            for (int j = 0; j <= i; j++) {
                triangle.add(COVARIANCE[i][j]);
            }
        }
        return JointNormal.of(new JointTraits(AXES, Arrays.stream(MEAN).boxed().toList(), triangle));
    }

    private static double[] column(int axis) {
        return Arrays.stream(DRAWN).mapToDouble(draw -> draw[axis]).toArray();
    }

    @Test
    void saysOfOnePairWhatTheRegressionOnAnotherSays() {
        LinkedPair link = normal().link("a", "b");
        double[][] x = Arrays.stream(DRAWN).map(draw -> Arrays.copyOf(draw, 3)).toArray(double[][]::new);
        for (int trait = 0; trait < 2; trait++) {
            OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
            regression.newSampleData(column(3 + trait), x);
            double[] found = regression.estimateRegressionParameters();
            assertEquals(found[0], link.intercepts()[trait], 0.03);
            assertArrayEquals(Arrays.copyOfRange(found, 1, 4), link.slopes()[trait], 0.02);
            assertEquals(regression.estimateErrorVariance(), link.around()[trait][trait], 0.01);
        }
    }

    // Bayes' rule: each draw weighed by exp(−½·xᵀΛx + hᵀx).
    @Test
    void givenReadingsIsWhatTheWeighedDrawsAre() {
        double[][] precision = {{2, 0.3, 0}, {0.3, 5, 0}, {0, 0, 0}};
        double[] pull = {3, 6, 0};
        JointNormal given =
                normal().given("a", new TraitSite(new Array2DRowRealMatrix(precision), new ArrayRealVector(pull)));
        double sum = 0;
        double[] mean = new double[2];
        double square = 0;
        for (double[] draw : DRAWN) {
            double log = 0;
            for (int i = 0; i < 3; i++) {
                log += pull[i] * draw[i];
                for (int j = 0; j < 3; j++) {
                    log -= 0.5 * draw[i] * precision[i][j] * draw[j];
                }
            }
            double weight = Math.exp(log);
            sum += weight;
            mean[0] += weight * draw[3];
            mean[1] += weight * draw[4];
            square += weight * draw[3] * draw[3];
        }
        Moments told = given.of("b");
        assertEquals(mean[0] / sum, told.mean()[0], 0.02);
        assertEquals(mean[1] / sum, told.mean()[1], 0.01);
        assertEquals(square / sum - mean[0] * mean[0] / sum / sum, told.covariance()[0][0], 0.02);
    }

    @Test
    void ofAFurtherPairIsThatOfItsBaseWithErrorsOfItsOwn() {
        JointNormal wider = normal().with("theory", "a", 0.5, 0.1);
        assertTrue(wider.knows("theory"));
        assertFalse(normal().knows("theory"));
        LinkedPair fromBase = wider.link("a", "theory");
        assertArrayEquals(new double[] {1, 0, 0}, fromBase.slopes()[0], 1e-9);
        assertArrayEquals(new double[] {0, 1, 0}, fromBase.slopes()[1], 1e-9);
        assertArrayEquals(new double[] {0, 0}, fromBase.intercepts(), 1e-9);
        assertEquals(0.25, fromBase.around()[0][0], 1e-9);
        assertEquals(0.01, fromBase.around()[1][1], 1e-9);
        // a reading there says less of a third pair than one in the base itself
        assertTrue(
                wider.link("theory", "d").around()[0][0] > wider.link("a", "d").around()[0][0] + 0.01);
    }

    @Test
    void isFoundAgainFromCompoundsMeasuredInSomeOfThePairs() {
        Random random = new Random(5);
        Map<String, Moments> spreads = new LinkedHashMap<>();
        Map<String, Map<Series, TraitSite>> sites = new LinkedHashMap<>();
        int[][] places = {{0, 1, 2}, {3, 4}, {5}};
        String[] pairs = {"a", "b", "d"};
        for (int p = 0; p < pairs.length; p++) {
            int n = places[p].length;
            double[] mean = new double[n];
            double[][] wide = new double[n][n];
            for (int i = 0; i < n; i++) {
                mean[i] = MEAN[places[p][i]] + 0.2;
                wide[i][i] = 2 * COVARIANCE[places[p][i]][places[p][i]];
            }
            spreads.put(pairs[p], new Moments(mean, wide));
            Map<Series, TraitSite> told = new TreeMap<>();
            for (int compound = 0; compound < 3000; compound++) {
                if (random.nextInt(3) > 0) {
                    told.put(new Series(compound, "C".repeat(3)), site(DRAWN[compound], places[p], random));
                }
            }
            sites.put(pairs[p], told);
        }
        JointTraits found = JointFit.fit(spreads, sites);
        assertEquals(AXES, found.axes());
        double[][] drawn =
                new Covariance(Arrays.copyOf(DRAWN, 3000)).getCovarianceMatrix().getData();
        int at = 0;
        for (int i = 0; i < MEAN.length; i++) {
            assertEquals(MEAN[i], found.means().get(i), 0.12 * Math.sqrt(COVARIANCE[i][i]));
            for (int j = 0; j <= i; j++, at++) {
                double unit = Math.sqrt(COVARIANCE[i][i] * COVARIANCE[j][j]);
                assertEquals(drawn[i][j] / unit, found.covariance().get(at) / unit, 0.08, i + ", " + j);
            }
        }
    }

    /** A compound's traits read with an error of a third of their spread. */
    private static TraitSite site(double[] truth, int[] places, Random random) {
        int n = places.length;
        double[][] precision = new double[n][n];
        double[] pull = new double[n];
        for (int i = 0; i < n; i++) {
            double error = Math.sqrt(COVARIANCE[places[i]][places[i]]) / 3;
            precision[i][i] = 1 / (error * error);
            pull[i] = (truth[places[i]] + error * random.nextGaussian()) / (error * error);
        }
        return new TraitSite(new Array2DRowRealMatrix(precision), new ArrayRealVector(pull));
    }
}
