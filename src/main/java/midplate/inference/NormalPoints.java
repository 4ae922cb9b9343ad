package midplate.inference;

/** Gauss–Hermite points and weights for a standard normal variable, five of them (exact to degree nine). */
final class NormalPoints {
    private static final double[] POINTS = {-2.8569700138728, -1.35562617997427, 0, 1.35562617997427, 2.8569700138728};
    private static final double[] WEIGHTS = {
        0.011257411327720691, 0.22207592200561266, 8.0 / 15, 0.22207592200561266, 0.011257411327720691
    };

    private NormalPoints() {}

    /** The points, rising. */
    static double[] points() {
        return POINTS.clone();
    }

    /** Their weights, sum 1. */
    static double[] weights() {
        return WEIGHTS.clone();
    }
}
