package midplate.notebook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A plate of a reaction.
 *
 * @param id its name in the study
 * @param minutes after the start of the reaction [min]
 * @param marks what was looked for, each species at most once
 * @param baseline how much was left on the start line, from 0 (nothing) to {@value TubeMark#STRONGEST}, where somebody looked
 */
public record ReactionPlate(String id, Entered minutes, List<Mark> marks, OptionalInt baseline) {
    /** Keeps its own copy. */
    public ReactionPlate {
        marks = List.copyOf(marks);
    }

    /**
     * A species that was looked for.
     *
     * @param species its id
     * @param strength how strong its spot was, from 0 (not seen) to {@value TubeMark#STRONGEST}
     * @param rf its Rf on this plate, where it was read
     */
    public record Mark(String species, int strength, Optional<Entered> rf) {}
}
