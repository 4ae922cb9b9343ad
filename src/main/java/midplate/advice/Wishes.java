package midplate.advice;

import java.util.List;

/**
 * What is wished beyond a window for every spot.
 *
 * @param shelf the solvents at hand
 * @param apart pairs of spots to be kept apart
 * @param nextPlate the jar and the plate to be used
 */
public record Wishes(Shelf shelf, List<ApartNames> apart, NextPlate nextPlate) {
    /** Nothing is wished; any solvent, the usual jar and plate. */
    public static final Wishes NONE = new Wishes(Shelf.UNTOLD, List.of(), NextPlate.USUAL);

    /** Keeps its own copy. */
    public Wishes {
        apart = List.copyOf(apart);
    }
}
