package midplate.column;

import java.util.List;
import java.util.Optional;

/**
 * One tube of a run.
 *
 * @param marks what was seen in it; an empty list where it was looked at and nothing was there; absent where nobody looked
 */
public record Tube(Optional<List<TubeMark>> marks) {
    /** Keeps its own copy. */
    public Tube {
        marks = marks.map(List::copyOf);
    }

    /** A tube in which this was seen. */
    public static Tube seen(TubeMark... marks) {
        return new Tube(Optional.of(List.of(marks)));
    }

    /** A tube at which nobody looked. */
    public static Tube notLookedAt() {
        return new Tube(Optional.empty());
    }

    /** The compounds in it, in the order marked; none where nobody looked. */
    List<String> spots() {
        return marks.orElse(List.of()).stream()
                .filter(mark -> mark.strength() > 0)
                .map(TubeMark::spot)
                .distinct()
                .toList();
    }

    /** How strong a compound is in it; 0 where it was not seen. */
    int strength(String spot) {
        return marks.orElse(List.of()).stream()
                .filter(mark -> mark.spot().equals(spot))
                .mapToInt(TubeMark::strength)
                .max()
                .orElse(0);
    }

    boolean isLookedAt() {
        return marks.isPresent();
    }
}
