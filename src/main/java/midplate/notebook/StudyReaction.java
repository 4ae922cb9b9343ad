package midplate.notebook;

import java.util.List;

/**
 * A reaction that is followed by plates.
 *
 * @param expectedMinutes when it is expected to be over [min]; nothing where nobody knows
 * @param eluent what the plates run in
 * @param species what may be seen on them, by ids to which marks refer
 * @param plates in the order they were entered
 */
public record StudyReaction(
        Entered expectedMinutes, CheckEluent eluent, List<ReactionSpecies> species, List<ReactionPlate> plates) {
    /** Keeps its own copies. */
    public StudyReaction {
        species = List.copyOf(species);
        plates = List.copyOf(plates);
    }
}
