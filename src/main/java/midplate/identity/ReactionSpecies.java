package midplate.identity;

/**
 * A spot that is followed through a reaction.
 *
 * @param compound its name, where it runs, and what it is made of, as far as known
 * @param part what it is in the reaction
 */
public record ReactionSpecies(Compound compound, SpeciesPart part) {
    /** What it is called. */
    public String name() {
        return compound.name();
    }
}
