package midplate.wire;

import java.util.Optional;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;
import midplate.inference.KeptLatest;
import midplate.structure.Molecule;
import midplate.structure.Structures;
import midplate.words.Message;

/** What is known of compounds before any plate; safe to share between threads. Structures asked for last are kept. */
final class Compounds {
    /** The class of compounds without any group. */
    static final String HYDROCARBON = "hydrocarbon";

    /** A batch asks about the same compounds again and again; each takes a few kB. */
    private static final int MOST_KEPT = 1000;

    private static final int MOST_CARBONS = 90;
    private static final int MOST_OF_A_GROUP = 12;

    private final FunctionalGroups groups;
    private final Structures structures;
    private final KeptLatest<String, Molecule> molecules = new KeptLatest<>(MOST_KEPT);

    /** With these groups. */
    Compounds(FunctionalGroups groups) {
        this.groups = groups;
        this.structures = Structures.of(groups);
    }

    /** The groups that are counted. */
    FunctionalGroups groups() {
        return groups;
    }

    /** What draws structures. */
    Structures structures() {
        return structures;
    }

    /**
     * A structure by its SMILES.
     *
     * @param field the place in the request
     * @throws midplate.words.Refusal when it cannot be read
     */
    Molecule molecule(String field, String smiles) {
        return molecules.get(smiles.strip(), () -> structures.read(field, smiles));
    }

    /** The most that a molecule may be said to have of a group. */
    static int most(FunctionalGroup group) {
        return group.kind() == FunctionalGroup.Kind.SIZE ? MOST_CARBONS : MOST_OF_A_GROUP;
    }

    /** Whether a group names a class of compounds. */
    static boolean isClass(FunctionalGroup group) {
        return group.kind() == FunctionalGroup.Kind.GROUP;
    }

    /** What a group is called. */
    static Message said(String group) {
        return Message.of("group." + group);
    }

    /** What a class is called. */
    static Message saidOfClass(String name) {
        return name.equals(HYDROCARBON) ? Message.of("class.hydrocarbon") : said(name);
    }

    /**
     * A compound as a request describes it.
     *
     * @param counts its groups
     * @param molecule its structure, where that came
     */
    record Described(GroupCounts counts, Optional<Molecule> molecule) {}
}
