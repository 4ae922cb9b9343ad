package midplate.inference;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Tries out the errors δ [ln units] that whole plates may have had: a fixed, evenly spread set of vectors (one δ for each
 * plate), each with the weight that belongs to it.
 *
 * <p>Around the readings the model is made straight, {@code η = a·c + s·G + t·L + δ + e} with a normal prior for the traits; its
 * posterior of δ, a little widened, is where the vectors are taken from, by a Sobol sequence. The exact evidence of each
 * vector then corrects the weights (importance sampling), so that the straight model only says where to look.
 */
final class SharedPlateError {
    /** Vectors tried. */
    static final int COUNT = 32;

    private static final double WIDENED = 1.2;
    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** Sobol sequences go up to this many plates; of more, the rest get no error of their own. */
    private static final int MOST_PLATES = 50;

    private final double sharedError;
    private final RealVector centre;
    private final RealMatrix root;

    /**
     * Where to look.
     *
     * @param plates number of plates
     * @param spots the readings of each spot
     * @param model the pair
     * @param scatter the setting
     */
    SharedPlateError(int plates, List<List<Trial>> spots, PairModel model, PlateScatter scatter) {
        this.sharedError = scatter.sharedError();
        RealMatrix precision = MatrixUtils.createRealIdentityMatrix(plates)
                .scalarMultiply(1 / (scatter.sharedError() * scatter.sharedError()));
        RealVector pull = MatrixUtils.createRealVector(new double[plates]);
        for (List<Trial> trials : spots) {
            if (!trials.isEmpty()) {
                StraightSpot spot = new StraightSpot(trials, model, scatter);
                for (int i = 0; i < trials.size(); i++) {
                    int plate = trials.get(i).plate();
                    pull.addToEntry(plate, spot.pull.getEntry(i));
                    for (int j = 0; j < trials.size(); j++) {
                        precision.addToEntry(plate, trials.get(j).plate(), spot.precision.getEntry(i, j));
                    }
                }
            }
        }
        RealMatrix covariance = MatrixUtils.inverse(precision);
        centre = covariance.operate(pull);
        root = new CholeskyDecomposition(symmetric(covariance).scalarMultiply(WIDENED * WIDENED)).getL();
    }

    /**
     * What the weights of the vectors lack to be true ratios of densities, in logarithms: the same for all of them, so it
     * matters only beside vectors for other readings. {@code ln |L| − n·ln σ}: L the root of the covariance they are taken from, n
     * the number of plates, σ [ln units] the deviation of their errors.
     */
    double logSpread() {
        double log = 0;
        for (int plate = 0; plate < root.getRowDimension(); plate++) {
            log += Math.log(root.getEntry(plate, plate) / sharedError);
        }
        return log;
    }

    /** One vector of plate errors with its weight before the evidence: prior density over the density it was taken from. */
    record Tried(double[] shifts, double logWeight) {}

    /** The vectors, always the same for the same readings. */
    Tried[] tried() {
        int plates = centre.getDimension();
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(Math.min(plates, MOST_PLATES));
        sequence.skipTo(1); // the first vector is 0, which is no probability
        Tried[] tried = new Tried[COUNT];
        for (int k = 0; k < COUNT; k++) {
            double[] even = sequence.nextVector();
            double[] normal = new double[plates];
            double logDensity = 0;
            for (int i = 0; i < even.length; i++) {
                normal[i] = NORMAL.inverseCumulativeProbability(even[i]);
                logDensity -= 0.5 * normal[i] * normal[i];
            }
            double[] shifts = root.operate(MatrixUtils.createRealVector(normal))
                    .add(centre)
                    .toArray();
            double logPrior = 0;
            for (double shift : shifts) {
                logPrior -= 0.5 * shift * shift / (sharedError * sharedError);
            }
            tried[k] = new Tried(shifts, logPrior - logDensity);
        }
        return tried;
    }

    private static RealMatrix symmetric(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    /** One spot in the straight model, with its traits summed over. */
    private static final class StraightSpot {
        private static final double NEAREST_LINE = 0.03;
        private static final double DEVIATION_C = 2;
        private static final double DEVIATION_S = 0.2;

        private final RealMatrix precision;
        private final RealVector pull;

        StraightSpot(List<Trial> trials, PairModel model, PlateScatter scatter) {
            int n = trials.size();
            RealMatrix covariance = new Array2DRowRealMatrix(n, n);
            double[] away = new double[n];
            Climb[] climbs = trials.stream().map(t -> model.climb(t.percent())).toArray(Climb[]::new);
            for (int i = 0; i < n; i++) {
                double rf = Math.min(
                        1 - NEAREST_LINE,
                        Math.max(NEAREST_LINE, trials.get(i).reading().rf()));
                double sigma =
                        model.noise().sigma(trials.get(i).percent(), rf, scatter.readingError()) / (rf * (1 - rf));
                away[i] = Math.log(rf / (1 - rf)) - climbs[i].strength();
                for (int j = 0; j < n; j++) {
                    covariance.setEntry(
                            i,
                            j,
                            DEVIATION_C * DEVIATION_C * climbs[i].hold() * climbs[j].hold()
                                    + DEVIATION_S * DEVIATION_S * climbs[i].strength() * climbs[j].strength()
                                    + climbs[i].early() * climbs[j].early()
                                    + (i == j ? sigma * sigma : 0));
                }
            }
            precision = MatrixUtils.inverse(covariance);
            double mean = Arrays.stream(away).average().orElse(0);
            pull = precision.operate(MatrixUtils.createRealVector(away).mapSubtract(mean));
        }
    }
}
