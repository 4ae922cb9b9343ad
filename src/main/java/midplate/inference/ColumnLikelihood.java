package midplate.inference;

import java.util.List;
import midplate.catalogue.ColumnLaw;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.util.FastMath;

/**
 * How likely the middles of bands are under one law of columns. Runs of one compound on one cartridge with one eluent have more in
 * common than the law knows, so that together they count as one.
 *
 * @param outsideMl V_ext [ml]
 * @param voidMlPerGram φ [ml/g]
 * @param holdMlPerGram h [ml/g]
 * @param steepness γ [1]
 * @param drift λ [1]
 * @param spotSpread τ [ln units]; 0 where compounds do not differ beyond their plates
 * @param scatter σ [ln units]
 * @param freedom ν [1]
 */
record ColumnLikelihood(
        double outsideMl,
        double voidMlPerGram,
        double holdMlPerGram,
        double steepness,
        double drift,
        double spotSpread,
        double scatter,
        double freedom) {
    private static final double LEAST_FREEDOM = 1.5;
    private static final double MOST_FREEDOM = 60;
    private static final double MOST_LOG = 20;
    private static final double REACH = 3;
    /** δ [standard deviations], evenly, and its weights. */
    private static final double[] POINTS = new double[21];

    private static final double[] WEIGHTS = new double[POINTS.length];

    static {
        double sum = 0;
        for (int i = 0; i < POINTS.length; i++) {
            POINTS[i] = REACH * (2.0 * i / (POINTS.length - 1) - 1);
            WEIGHTS[i] = StrictMath.exp(-POINTS[i] * POINTS[i] / 2);
            sum += WEIGHTS[i];
        }
        for (int i = 0; i < WEIGHTS.length; i++) {
            WEIGHTS[i] /= sum;
        }
    }

    /** The law with its degrees of freedom held where they make a difference. */
    static ColumnLikelihood of(
            double outsideMl,
            double voidMlPerGram,
            double holdMlPerGram,
            double steepness,
            double drift,
            double spotSpread,
            double scatter,
            double freedom) {
        double held = StrictMath.max(LEAST_FREEDOM, StrictMath.min(MOST_FREEDOM, freedom));
        return new ColumnLikelihood(
                outsideMl, voidMlPerGram, holdMlPerGram, steepness, drift, spotSpread, scatter, held);
    }

    /** Logarithm of the likelihood of all runs. */
    double logLikelihood(List<ColumnCompound> compounds) {
        double sum = 0;
        for (ColumnCompound compound : compounds) {
            sum += weighed(compound).logEvidence();
        }
        return sum;
    }

    /** How likely a compound's runs are, and the weights of its draws and δ. */
    private record Weighed(double logEvidence, double[][] weights) {}

    private Weighed weighed(ColumnCompound compound) {
        double[] own = own();
        double[][] held = compound.cells().stream().map(this::heldMl).toArray(double[][]::new);
        double[][] logs = new double[ColumnCompound.DRAWS][own.length];
        double norm = compound.cells().size() * logNorm();
        for (int j = 0; j < own.length; j++) {
            double first = norm + (own.length > 1 ? StrictMath.log(WEIGHTS[j]) : 0);
            for (int k = 0; k < logs.length; k++) {
                logs[k][j] = first;
            }
            for (int i = 0; i < held.length; i++) {
                ColumnCompound.Cell cell = compound.cells().get(i);
                double unretained = voidMl(cell.grams());
                for (int k = 0; k < logs.length; k++) {
                    logs[k][j] += logKernel(cell, FastMath.log(unretained + own[j] * held[i][k]));
                }
            }
        }
        return normalized(logs);
    }

    /** e^δ at each point. */
    private double[] own() {
        if (!(spotSpread > 0)) {
            return new double[] {1};
        }
        double[] own = new double[POINTS.length];
        for (int j = 0; j < own.length; j++) {
            own[j] = StrictMath.exp(spotSpread * POINTS[j]);
        }
        return own;
    }

    private static Weighed normalized(double[][] logs) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double[] row : logs) {
            for (double log : row) {
                greatest = StrictMath.max(greatest, log);
            }
        }
        double sum = 0;
        for (double[] row : logs) {
            for (int j = 0; j < row.length; j++) {
                row[j] = StrictMath.exp(row[j] - greatest);
                sum += row[j];
            }
        }
        for (double[] row : logs) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= sum;
            }
        }
        return new Weighed(greatest + StrictMath.log(sum / logs.length), logs);
    }

    /** What is held beyond V₀ [ml] for each draw of a compound without a δ of its own. */
    private double[] heldMl(ColumnCompound.Cell cell) {
        double[] held = new double[cell.eta().length];
        for (int k = 0; k < held.length; k++) {
            double log = -steepness * cell.eta()[k] - drift * (cell.place() - ColumnLaw.ORIGIN);
            held[k] = holdMlPerGram * cell.grams() * StrictMath.exp(StrictMath.min(MOST_LOG, log));
        }
        return held;
    }

    /** V₀ [ml]. */
    double voidMl(double grams) {
        return outsideMl + voidMlPerGram * grams;
    }

    /** Student's t of all runs of a cell but for its norm, together counted as one run. */
    private double logKernel(ColumnCompound.Cell cell, double logMiddle) {
        double product = 1;
        for (double read : cell.logMiddles()) {
            double z = (read - logMiddle) / scatter;
            product *= 1 + z * z / freedom;
        }
        return -0.5 * (freedom + 1) * FastMath.log(product) / cell.logMiddles().length;
    }

    private double logNorm() {
        return Gamma.logGamma((freedom + 1) / 2)
                - Gamma.logGamma(freedom / 2)
                - 0.5 * StrictMath.log(freedom * StrictMath.PI)
                - StrictMath.log(scatter);
    }

    /** Mean over cells and runs of how far ln V lies from the mean over the draws, no run of the compound being known [ln units]. */
    double error(ColumnCompound compound) {
        double sum = 0;
        for (ColumnCompound.Cell cell : compound.cells()) {
            double foretold = 0;
            for (double held : heldMl(cell)) {
                foretold += StrictMath.log(voidMl(cell.grams()) + held) / cell.eta().length;
            }
            for (double read : cell.logMiddles()) {
                sum += StrictMath.abs(read - foretold) / cell.logMiddles().length;
            }
        }
        return sum / compound.cells().size();
    }

    /** Mean over draws and δ, as the compound's own runs weigh them, of ln V less what the law says, for each cell [ln units]. */
    double[] residuals(ColumnCompound compound) {
        double[][] weights = weighed(compound).weights();
        double[] own = own();
        double[] residuals = new double[compound.cells().size()];
        for (int i = 0; i < residuals.length; i++) {
            ColumnCompound.Cell cell = compound.cells().get(i);
            double[] held = heldMl(cell);
            double mean = 0;
            for (double read : cell.logMiddles()) {
                mean += read / cell.logMiddles().length;
            }
            for (int k = 0; k < weights.length; k++) {
                for (int j = 0; j < own.length; j++) {
                    residuals[i] += weights[k][j] * (mean - StrictMath.log(voidMl(cell.grams()) + own[j] * held[k]));
                }
            }
        }
        return residuals;
    }
}
