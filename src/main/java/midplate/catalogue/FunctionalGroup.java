package midplate.catalogue;

import java.util.List;

/**
 * A part of a molecule that counts on silica.
 *
 * @param id its name in files and requests
 * @param kind what it is to the molecule
 * @param energy group adsorption energy Q⁰ on silica [1], published or by analogy; what the fit starts from
 * @param basis where the energy comes from: {@link Basis#OWN} where it is an analogy
 * @param confidence H, M or L of an energy from memory; empty otherwise
 * @param source the publication, or Midplate
 * @param about ids of the groups that a surrounding makes stronger or weaker; empty for all else
 * @param note what the energy was published for
 * @param smarts patterns that find it, separated by blanks, each with the atom it is counted by first and then the atoms it takes;
 *     empty for what no pattern finds
 * @see "Snyder1968"
 */
public record FunctionalGroup(
        String id,
        Kind kind,
        double energy,
        Basis basis,
        String confidence,
        Source source,
        List<String> about,
        String note,
        String smarts) {
    /** Below that of a thiol, above those of halogens on a ring: those leave the surface to any other group; our own choice. */
    private static final double LEAST_POLAR = 1.2;

    /** Keeps its own copy. */
    public FunctionalGroup {
        about = List.copyOf(about);
    }

    /** What a group is to the molecule. */
    public enum Kind {
        /** Its size: carbons and what hardly interacts. */
        SIZE("size"),
        /** A functional group. */
        GROUP("group"),
        /** What surrounds a functional group and makes it stronger or weaker: an internal hydrogen bond, a bulky neighbour. */
        SURROUNDING("surrounding"),
        /** An atom that nothing here knows. */
        UNKNOWN("unknown");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** Its name in the file. */
        public String id() {
            return id;
        }
    }

    /** Whether silica holds it so strongly that it competes for a place on the surface. */
    public boolean isPolar() {
        return (kind == Kind.GROUP || kind == Kind.UNKNOWN) && energy >= LEAST_POLAR;
    }
}
