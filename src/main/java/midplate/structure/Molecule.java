package midplate.structure;

import java.util.List;
import midplate.chemistry.GroupCounts;
import midplate.words.Message;

/**
 * A compound as read from its structural formula.
 *
 * @param smiles canonical SMILES of what is judged
 * @param formula molecular formula in Hill order, its charge last
 * @param molarMass with natural isotopes [g/mol]
 * @param heavyAtoms number of atoms that are not hydrogen
 * @param counts how often each group stands in it
 * @param found where each group stands, in the order of {@code groups.csv}
 * @param notes what is to be told of it
 */
public record Molecule(
        String smiles,
        String formula,
        double molarMass,
        int heavyAtoms,
        GroupCounts counts,
        List<Found> found,
        List<Message> notes) {
    /** Keeps its own copies. */
    public Molecule {
        found = List.copyOf(found);
        notes = List.copyOf(notes);
    }

    /**
     * A group and its places in the canonical SMILES.
     *
     * @param group id of the group
     * @param atoms for each time it stands there its atoms, counted from 0
     * @param bonds for each time the bonds between those atoms, counted from 0
     */
    public record Found(String group, List<List<Integer>> atoms, List<List<Integer>> bonds) {
        /** Keeps its own copies. */
        public Found {
            atoms = atoms.stream().map(List::copyOf).toList();
            bonds = bonds.stream().map(List::copyOf).toList();
        }

        /** How often it stands there. */
        public int count() {
            return atoms.size();
        }
    }
}
