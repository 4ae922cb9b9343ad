package midplate.benchmark;

import java.util.List;

/**
 * What is told of a spot whose structure is known.
 *
 * @param smiles the structure
 * @param trials what was read of it; may be empty
 */
record ToldSpot(String smiles, List<TrialReading> trials) implements Comparable<ToldSpot> {
    ToldSpot {
        trials = List.copyOf(trials);
    }

    @Override
    public int compareTo(ToldSpot other) {
        int order = Integer.compare(trials.size(), other.trials.size());
        for (int i = 0; i < trials.size() && order == 0; i++) {
            order = trials.get(i).compareTo(other.trials.get(i));
        }
        return order != 0 ? order : smiles.compareTo(other.smiles);
    }
}
