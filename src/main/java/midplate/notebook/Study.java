package midplate.notebook;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * All that is kept of one sample: what it is, the plates that were run, what the next jar shall be, what was advised.
 *
 * @param id its name among all studies
 * @param title what a person calls it; may be empty
 * @param created when it was first kept
 * @param modified when it was last kept; never before {@code created} nor before the time it bore until then
 * @param keeping whether it is at hand or put away
 * @param origin whether it is the invented example, began as that, or neither
 * @param sorbent id of the layer
 * @param setting id of the setting its plates are run in
 * @param shelf ids of the solvents at hand
 * @param spots the compounds of the sample
 * @param plates in the order they were run
 * @param next what the next jar shall be
 * @param advices in the order they were given
 * @param column what is thought of a column, and the columns that were run; absent while nobody thought of one
 * @param checks what plates were asked beside the search for an eluent; absent while nobody asked anything
 * @param notes free text; may be empty
 */
public record Study(
        StudyId id,
        String title,
        Instant created,
        Instant modified,
        Keeping keeping,
        Origin origin,
        String sorbent,
        String setting,
        List<String> shelf,
        List<StudySpot> spots,
        List<StudyPlate> plates,
        NextJar next,
        List<GivenAdvice> advices,
        Optional<StudyColumn> column,
        Optional<StudyChecks> checks,
        String notes) {
    /** Whether it is at hand. */
    public enum Keeping {
        /** In the list. */
        AT_HAND,
        /** Out of the list, to be had again. */
        ARCHIVED
    }

    /** Whose plates they are. */
    public enum Origin {
        /** A person's own. */
        OWN,
        /** The invented example as it comes. */
        EXAMPLE,
        /** Begun from the invented example: some plates may be invented. */
        FROM_EXAMPLE
    }

    /** Keeps its own copies. */
    public Study {
        shelf = List.copyOf(shelf);
        spots = List.copyOf(spots);
        plates = List.copyOf(plates);
        advices = List.copyOf(advices);
    }

    /** The same study kept at these times. */
    public Study at(Instant created, Instant modified) {
        return new Study(
                id, title, created, modified, keeping, origin, sorbent, setting, shelf, spots, plates, next, advices,
                column, checks, notes);
    }

    /** The same study, at hand or put away. */
    public Study keeping(Keeping keeping) {
        return new Study(
                id, title, created, modified, keeping, origin, sorbent, setting, shelf, spots, plates, next, advices,
                column, checks, notes);
    }
}
