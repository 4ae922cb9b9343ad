package midplate.inference;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** The weights of the traits of one series on the grid, given all its readings; only nodes that matter are kept. */
final class Weights {
    private final int[] nodes;
    private final double[] weights;
    private final double evidence;

    private Weights(int[] nodes, double[] weights, double evidence) {
        this.nodes = nodes;
        this.weights = weights;
        this.evidence = evidence;
    }

    /**
     * Prior times likelihoods.
     *
     * @param prior a weight for each node
     * @param tables Rf and σ at each node for each share
     * @param row the readings of the series, NaN where none
     * @param negligible nodes lighter than this share of the heaviest are dropped
     */
    static Weights of(double[] prior, FitTables tables, double[] row, double negligible) {
        double[] all = prior.clone();
        for (int j = 0; j < row.length; j++) {
            if (!Double.isNaN(row[j])) {
                for (int node = 0; node < all.length; node++) {
                    if (all[node] > 0) {
                        all[node] *= tables.likelihood(row[j], j, node);
                    }
                }
            }
        }
        double evidence = 0;
        double heaviest = 0;
        for (double each : all) {
            evidence += each;
            heaviest = StrictMath.max(heaviest, each);
        }
        int[] nodes = new int[all.length];
        double[] weights = new double[all.length];
        int count = 0;
        double kept = 0;
        for (int node = 0; node < all.length; node++) {
            if (all[node] > negligible * heaviest) {
                nodes[count] = node;
                weights[count++] = all[node];
                kept += all[node];
            }
        }
        for (int k = 0; k < count; k++) {
            weights[k] /= kept;
        }
        return new Weights(Arrays.copyOf(nodes, count), Arrays.copyOf(weights, count), evidence);
    }

    /** Σ prior·likelihood. */
    double evidence() {
        return evidence;
    }

    int size() {
        return nodes.length;
    }

    int node(int k) {
        return nodes[k];
    }

    double weight(int k) {
        return weights[k];
    }

    /** The mean of a quantity of the nodes. */
    double mean(IntToDoubleFunction quantity) {
        double mean = 0;
        for (int k = 0; k < nodes.length; k++) {
            mean += weights[k] * quantity.applyAsDouble(nodes[k]);
        }
        return mean;
    }
}
