package midplate.inference;

import midplate.chemistry.GroupCounts;

/** Finds the functional groups of a structure. */
@FunctionalInterface
public interface GroupCounter {
    /**
     * The groups of a structure.
     *
     * @param smiles the structure in canonical form
     */
    GroupCounts of(String smiles);
}
