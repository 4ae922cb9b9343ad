package midplate.inference;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/** Mean and covariance of some traits of a compound, c first, then s and t as far as compounds differ in them. */
record Moments(double[] mean, double[][] covariance) {
    /** A cloud narrower than the steps of its grid says no more than this [ln units², 1, 1]. */
    private static final double[] FLOOR = {1e-4, 1e-5, 1e-4};

    /** Takes up weighed points one by one. */
    static final class Sum {
        private final double[] first;
        private final double[][] second;
        private double weight;

        Sum(int traits) {
            first = new double[traits];
            second = new double[traits][traits];
        }

        /** Adds a point; of (c, s, t) as many are taken as there are traits. */
        void add(double w, double c, double s, double t) {
            double[] x = {c, s, t};
            weight += w;
            for (int i = 0; i < first.length; i++) {
                first[i] += w * x[i];
                for (int j = 0; j <= i; j++) {
                    second[i][j] += w * x[i] * x[j];
                }
            }
        }

        Moments moments() {
            int n = first.length;
            double[] mean = new double[n];
            double[][] covariance = new double[n][n];
            for (int i = 0; i < n; i++) {
                mean[i] = first[i] / weight;
                for (int j = 0; j <= i; j++) {
                    double each = second[i][j] / weight - mean[i] * mean[j];
                    covariance[i][j] = each;
                    covariance[j][i] = each;
                }
                covariance[i][i] = StrictMath.max(0, covariance[i][i]) + FLOOR[i];
            }
            return new Moments(mean, covariance);
        }
    }

    /** Of the points of a cloud. */
    static Moments of(TraitCloud cloud, int traits) {
        Sum sum = new Sum(traits);
        for (int point = 0; point < cloud.size(); point++) {
            sum.add(cloud.weight(point), cloud.c(point), cloud.s(point), cloud.t(point));
        }
        return sum.moments();
    }

    /** Of what readings left of the traits of a series. */
    static Moments of(TraitGrid grid, Weights weights, int traits) {
        Sum sum = new Sum(traits);
        for (int k = 0; k < weights.size(); k++) {
            int node = weights.node(k);
            sum.add(weights.weight(k), grid.c(node), grid.s(node), grid.t(node));
        }
        return sum.moments();
    }

    RealMatrix matrix() {
        return new Array2DRowRealMatrix(covariance, true);
    }
}
