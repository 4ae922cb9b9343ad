package midplate.inference;

import java.util.List;

/** Sums over all readings at one share, from which its strength and its scale are moved. */
final class ShareSums {
    private static final double LONGEST_STEP = 0.5;

    private double gradient;
    private double curvature;
    private double square;
    private double count;

    private ShareSums() {}

    /**
     * Sums over series and nodes, each reading counted by Student's weight {@code (ν + 1)/(ν + z²)}: a far one counts
     * little.
     */
    static ShareSums of(int share, List<Weights> weights, double[][] rf, FitTables tables) {
        ShareSums sums = new ShareSums();
        double[] fitted = tables.rf(share);
        double[] sigma = tables.sigma(share);
        double[] slope = tables.slope(share);
        for (int i = 0; i < rf.length; i++) {
            double read = rf[i][share];
            if (Double.isNaN(read)) {
                continue;
            }
            Weights series = weights.get(i);
            for (int k = 0; k < series.size(); k++) {
                int node = series.node(k);
                double away = read - fitted[node];
                double z = away / sigma[node];
                double counted = series.weight(k) * (Noise.DEGREES + 1) / (Noise.DEGREES + z * z);
                double precision = counted / (sigma[node] * sigma[node]);
                sums.gradient += precision * away * slope[node];
                sums.curvature += precision * slope[node] * slope[node];
                sums.square += counted * away * away / tables.shapeAt(share, node);
            }
            sums.count += 1;
        }
        return sums;
    }

    /** How far G moves [ln units]. */
    double step() {
        double step = curvature > 0 ? gradient / curvature : 0;
        return StrictMath.max(-LONGEST_STEP, StrictMath.min(LONGEST_STEP, step));
    }

    /** σ₀ at this share [1]. */
    double scale() {
        return StrictMath.sqrt(square / count);
    }
}
