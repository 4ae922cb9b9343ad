package midplate.inference;

import java.util.Comparator;

/**
 * One compound as it was run once over all eluents. One structure may have been run under several ids; the series, not the
 * structure, is the unit of every figure.
 *
 * @param compound its id in the file
 * @param smiles its structure in canonical form
 */
public record Series(int compound, String smiles) implements Comparable<Series> {
    private static final Comparator<Series> BY_COMPOUND =
            Comparator.comparingInt(Series::compound).thenComparing(Series::smiles);

    /** By compound id, then by structure. */
    @Override
    public int compareTo(Series other) {
        return BY_COMPOUND.compare(this, other);
    }
}
