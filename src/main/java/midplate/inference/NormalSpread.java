package midplate.inference;

import java.util.Arrays;
import java.util.List;

/**
 * A normal spread of the traits: mean and covariance of (c, s).
 *
 * @param meanC [ln units]
 * @param meanS [1]
 * @param varianceC [ln units²]
 * @param covariance [ln units]
 * @param varianceS [1]
 */
record NormalSpread(double meanC, double meanS, double varianceC, double covariance, double varianceS) {
    static final NormalSpread START = new NormalSpread(0, 1, 4, 0, 0.06);
    private static final double LEAST_VARIANCE_S = 1e-4;

    /** The moments of the weights of all series. */
    static NormalSpread of(TraitGrid grid, List<Weights> weights) {
        double[] sums = new double[6];
        for (Weights series : weights) {
            for (int k = 0; k < series.size(); k++) {
                double c = grid.c(series.node(k));
                double s = grid.s(series.node(k));
                double w = series.weight(k);
                sums[0] += w;
                sums[1] += w * c;
                sums[2] += w * s;
                sums[3] += w * c * c;
                sums[4] += w * c * s;
                sums[5] += w * s * s;
            }
        }
        double c = sums[1] / sums[0];
        double s = sums[2] / sums[0];
        return new NormalSpread(
                c,
                s,
                sums[3] / sums[0] - c * c,
                sums[4] / sums[0] - c * s,
                StrictMath.max(LEAST_VARIANCE_S, sums[5] / sums[0] - s * s));
    }

    /** The same compounds in other units: c' = c + s·origin and s' = s/unit. */
    NormalSpread moved(double origin, double unit) {
        return new NormalSpread(
                meanC + origin * meanS,
                meanS / unit,
                varianceC + 2 * origin * covariance + origin * origin * varianceS,
                (covariance + origin * varianceS) / unit,
                varianceS / (unit * unit));
    }

    /** Its moments over c, s as far as compounds differ in it, and t likewise. */
    Moments moments(TraitGrid grid) {
        int traits = grid.tCount() > 1 ? 3 : grid.sCount() > 1 ? 2 : 1;
        double[] mean = {meanC, meanS, 0};
        double[][] all = {{varianceC, covariance, 0}, {covariance, varianceS, 0}, {0, 0, 1}};
        double[][] some = new double[traits][];
        for (int i = 0; i < traits; i++) {
            some[i] = Arrays.copyOf(all[i], traits);
        }
        return new Moments(Arrays.copyOf(mean, traits), some);
    }

    /** The density at each node of a fit's grid, t standard normal beside it; it sums to 1. */
    double[] on(TraitGrid grid) {
        double[] density = new double[grid.size()];
        double[] normalT = grid.normalT();
        double determinant = varianceC * varianceS - covariance * covariance;
        for (int node = 0; node < density.length; node++) {
            double c = grid.c(node) - meanC;
            double s = grid.s(node) - meanS;
            double square = (varianceS * c * c - 2 * covariance * c * s + varianceC * s * s) / determinant;
            density[node] = StrictMath.exp(-0.5 * square) * normalT[node % normalT.length];
        }
        return TraitPrior.normalized(density);
    }
}
