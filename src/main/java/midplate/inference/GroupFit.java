package midplate.inference;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Fits what the parts of a molecule add to one of its traits: {@code y = X·w + residual}, Bayesian linear regression with a normal
 * prior for each w ({@link GroupPrior}). The numbers of the prior itself are those under which the traits of all compounds are
 * most likely together, held by a wide normal curve around their usual sizes; so a group that few compounds have stays near its
 * published energy, and its band stays wide.
 *
 * @see "Bishop2006"
 * @see "RasmussenWilliams2006"
 */
final class GroupFit {
    private static final int EVALUATIONS = 2000;
    private static final double RELATIVE = 1e-7;
    private static final double STEP = 0.4;
    /** ln of κ and of the deviations for size, published, analogy, surrounding, where they begin and where they are held. */
    private static final double[] USUAL = {-1, -1.5, -0.5, -0.2, -0.5};

    /** Standard deviation of the effect of an atom that nothing knows, in units of the trait. */
    private static final double UNKNOWN = 2;

    private static final double RESIDUAL_OF_TRAIT = 0.1;
    private static final double LEAST_RESIDUAL_OF_TRAIT = 0.003;

    private final MoleculeParts parts;
    private final Energies energies;
    private final double[][] rows;
    private final double[] y;
    private final double[] variance;
    private final double unit;

    /** What is thought of the effects to begin with. */
    enum Energies {
        /** Published energies say where they lie. */
        COUNT,
        /** They lie around 0, each kind of part as far as it turns out. */
        SAY_NOTHING,
        /** They lie around 0, all equally far: ridge regression. */
        ALIKE
    }

    /** What was fitted: w, its covariance, κ and the variance of the residual. */
    record Fitted(double[] effects, double[][] covariance, double scale, double residual) {}

    private GroupFit(MoleculeParts parts, Energies energies, double[][] rows, double[] y, double[] variance) {
        this.parts = parts;
        this.energies = energies;
        this.rows = rows;
        this.y = y;
        this.variance = variance;
        this.unit = energies == Energies.COUNT ? 1 : spread(y);
    }

    /**
     * Fits the effects.
     *
     * @param parts what a row counts
     * @param energies whether the published energies say where effects lie
     * @param rows a row for each compound
     * @param y the trait of each compound
     * @param variance how well each is known
     */
    static Fitted fit(MoleculeParts parts, Energies energies, double[][] rows, double[] y, double[] variance) {
        return new GroupFit(parts, energies, rows, y, variance).run();
    }

    private static double spread(double[] y) {
        double mean = 0;
        double square = 0;
        for (double each : y) {
            mean += each / y.length;
            square += each * each / y.length;
        }
        return StrictMath.sqrt(StrictMath.max(1e-12, square - mean * mean));
    }

    private Fitted run() {
        double[] start = {USUAL[0], USUAL[1], USUAL[2], USUAL[3], USUAL[4], StrictMath.log(RESIDUAL_OF_TRAIT)};
        double[] best = new SimplexOptimizer(RELATIVE, RELATIVE)
                .optimize(
                        new MaxEval(EVALUATIONS),
                        new ObjectiveFunction(this::unlikelihood),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(start.length, STEP))
                .getPoint();
        return fitted(prior(best));
    }

    private GroupPrior prior(double[] logs) {
        double residual = unit * unit * StrictMath.max(LEAST_RESIDUAL_OF_TRAIT, StrictMath.exp(logs[5]));
        if (energies == Energies.ALIKE) {
            double all = unit * StrictMath.exp(logs[2]);
            return new GroupPrior(0, all, all, all, all, all, residual);
        }
        double scale = energies == Energies.COUNT ? StrictMath.exp(logs[0]) : 0;
        return new GroupPrior(
                scale,
                unit * StrictMath.exp(logs[1]),
                unit * StrictMath.exp(logs[2]),
                unit * StrictMath.exp(logs[3]),
                unit * StrictMath.exp(logs[4]),
                unit * UNKNOWN,
                residual);
    }

    /** −ln of how likely the traits are, and of how usual the prior is. */
    private double unlikelihood(double[] logs) {
        GroupPrior prior = prior(logs);
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance(prior));
        RealVector away = away(prior);
        double sum = 0.5 * away.dotProduct(cholesky.getSolver().solve(away));
        RealMatrix l = cholesky.getL();
        for (int i = 0; i < y.length; i++) {
            sum += StrictMath.log(l.getEntry(i, i));
        }
        for (int k = 0; k < USUAL.length; k++) {
            sum += 0.5 * (logs[k] - USUAL[k]) * (logs[k] - USUAL[k]);
        }
        return sum;
    }

    /** Covariance of the traits of the compounds under a prior. */
    private RealMatrix covariance(GroupPrior prior) {
        int n = y.length;
        double[][] covariance = new double[n][n];
        double[] priorVariance = new double[parts.count()];
        for (int k = 0; k < priorVariance.length; k++) {
            priorVariance[k] = prior.variance(parts, k);
        }
        for (int i = 0; i < n; i++) {
            double[] scaled = new double[priorVariance.length];
            for (int k = 0; k < scaled.length; k++) {
                scaled[k] = rows[i][k] * priorVariance[k];
            }
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < scaled.length; k++) {
                    sum += scaled[k] * rows[j][k];
                }
                covariance[i][j] = sum;
                covariance[j][i] = sum;
            }
            covariance[i][i] += variance[i] + prior.residual();
        }
        return new Array2DRowRealMatrix(covariance, false);
    }

    /** How far each trait lies from what the prior alone says. */
    private RealVector away(GroupPrior prior) {
        double[] away = new double[y.length];
        for (int i = 0; i < away.length; i++) {
            away[i] = y[i];
            for (int k = 0; k < parts.count(); k++) {
                away[i] -= rows[i][k] * prior.mean(parts, k);
            }
        }
        return new ArrayRealVector(away, false);
    }

    private Fitted fitted(GroupPrior prior) {
        int p = parts.count();
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance(prior));
        RealMatrix inverse = cholesky.getSolver().getInverse();
        double wider = wider(inverse, away(prior));
        RealMatrix x = new Array2DRowRealMatrix(rows, false);
        RealVector pulled = x.preMultiply(inverse.operate(away(prior)));
        RealMatrix told = x.transpose().multiply(inverse).multiply(x);
        double[] effects = new double[p];
        double[][] posterior = new double[p][p];
        for (int i = 0; i < p; i++) {
            double own = prior.variance(parts, i);
            effects[i] = prior.mean(parts, i) + own * pulled.getEntry(i);
            for (int j = 0; j < p; j++) {
                double less = own * told.getEntry(i, j) * prior.variance(parts, j);
                posterior[i][j] = wider * ((i == j ? own : 0) - less);
            }
        }
        return new Fitted(effects, posterior, prior.scale(), StrictMath.max(wider * prior.residual(), known()));
    }

    /** How well the traits of compounds are known, on average: no compound is foretold better from those of others. */
    private double known() {
        double sum = 0;
        for (double each : variance) {
            sum += each;
        }
        return sum / variance.length;
    }

    /**
     * By how much wider than it takes itself to be the forecast of a compound must be: the mean square of how far each lies from
     * what all others say of it, in the standard deviations that they say (equation 5.12 of the source), at least 1.
     */
    private double wider(RealMatrix inverse, RealVector away) {
        RealVector pulled = inverse.operate(away);
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += pulled.getEntry(i) * pulled.getEntry(i) / inverse.getEntry(i, i);
        }
        return StrictMath.max(1, sum / y.length);
    }
}
