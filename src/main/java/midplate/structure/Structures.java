package midplate.structure;

import java.util.List;
import java.util.function.Supplier;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;
import midplate.words.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Reads structural formulas. Safe to share between threads. Reading costs milliseconds: who asks for the same again and again
 * keeps the answers.
 */
public final class Structures {
    /** The longest SMILES that is read [characters]. */
    public static final int MOST_CHARACTERS = 4000;
    /** The largest molecule that is read [atoms that are not hydrogen]. */
    public static final int MOST_ATOMS = 200;

    static final String FIELD = "smiles";

    private final List<FunctionalGroup> groups;

    private @Nullable GroupSearch search;

    private Structures(List<FunctionalGroup> groups) {
        this.groups = groups;
    }

    /** Structures by these groups. */
    public static Structures of(FunctionalGroups groups) {
        return new Structures(groups.all());
    }

    /**
     * The groups of a structure.
     *
     * @param smiles the structure
     * @throws Refusal when it cannot be read; its field is {@code smiles}
     */
    public GroupCounts counts(String smiles) {
        return read(FIELD, smiles).counts();
    }

    /**
     * Reads a structure.
     *
     * @param field the place in the input, for a refusal
     * @param smiles the structure
     * @throws Refusal when it cannot be read
     */
    public Molecule read(String field, String smiles) {
        ReadSmiles read = ReadSmiles.of(field, smiles);
        return alone(() -> MoleculeReading.of(read, search()));
    }

    /**
     * Draws a structure as SVG without fonts, colours or styles of its own: strokes and fills are {@code currentColor}, each
     * bond carries the classes {@code bond} and {@code b0}, {@code b1} …, each atom with a letter {@code atom} and {@code a0} …,
     * counted as in {@link Molecule.Found}. Empty where this computer has no fonts to take letters from.
     *
     * @param molecule the structure
     */
    public String draw(Molecule molecule) {
        return Drawing.svg(molecule.smiles());
    }

    private GroupSearch search() {
        if (search == null) {
            search = GroupSearch.of(groups);
        }
        return search;
    }

    /** Patterns make parts of themselves while they search, so one structure is searched at a time. */
    private synchronized <T> T alone(Supplier<T> work) {
        return work.get();
    }
}
