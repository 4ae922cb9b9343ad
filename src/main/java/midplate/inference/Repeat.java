package midplate.inference;

import java.util.List;

/**
 * One structure measured more than once in one eluent.
 *
 * @param smiles the structure
 * @param fractions the eluent: volume fractions [1] as in {@link Measurement}
 * @param rfs the Rf [1], two or more, in the order of their series
 */
public record Repeat(String smiles, List<Double> fractions, List<Double> rfs) {
    /** Keeps its own copies. */
    public Repeat {
        fractions = List.copyOf(fractions);
        rfs = List.copyOf(rfs);
    }

    /** Largest less smallest Rf [1]. */
    public double spread() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double rf : rfs) {
            low = Math.min(low, rf);
            high = Math.max(high, rf);
        }
        return high - low;
    }
}
