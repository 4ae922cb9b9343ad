package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A plate of a reaction.
 *
 * @param minutes since the reaction was begun [min], at least 0
 * @param marks the spots that were looked for; others were not looked at
 * @param baseline material that stays at the start line, graded like a spot, if it was looked at
 */
public record ReactionPlate(double minutes, List<ReactionMark> marks, OptionalInt baseline) {
    /** Keeps its own copy. */
    public ReactionPlate {
        marks = List.copyOf(marks);
    }

    /** The mark of a spot; empty where it was not looked at. */
    public Optional<ReactionMark> mark(String species) {
        return marks.stream().filter(mark -> mark.species().equals(species)).findFirst();
    }

    /** The grade of a spot; empty where it was not looked at. */
    public OptionalInt grade(String species) {
        return mark(species).map(mark -> OptionalInt.of(mark.strength())).orElse(OptionalInt.empty());
    }
}
