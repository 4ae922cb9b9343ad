package midplate.benchmark;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Structures of a training that are so like a structure asked about that what was learned from them may be no more than its
 * neighbour's reading: of each structure asked about the most similar one of the training, all of them where several are
 * equally so, and every one of similarity {@value #ALIKE} or more ({@link Lingo}). A similarity of 0 makes no neighbour.
 */
final class Neighbours {
    /** From this similarity on a structure is left out even where another is nearer [1]; common practice, no source. */
    static final double ALIKE = 0.6;

    private static final double TIE = 1e-12;

    private Neighbours() {}

    /**
     * The neighbours among the training.
     *
     * @param asked structures asked about, as SMILES
     * @param training structures to learn from, as SMILES
     */
    static Set<String> of(Collection<String> asked, Collection<String> training) {
        Map<String, Lingo> known = new TreeMap<>();
        training.forEach(smiles -> known.put(smiles, Lingo.of(smiles)));
        Set<String> neighbours = new TreeSet<>();
        for (String smiles : asked) {
            Lingo lingo = Lingo.of(smiles);
            Map<String, Double> similarities = new TreeMap<>();
            known.forEach((other, its) -> similarities.put(other, lingo.similarity(its)));
            double nearest = similarities.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElse(0);
            similarities.forEach((other, similarity) -> {
                if (similarity > 0 && (similarity >= nearest - TIE || similarity >= ALIKE - TIE)) {
                    neighbours.add(other);
                }
            });
        }
        return neighbours;
    }
}
