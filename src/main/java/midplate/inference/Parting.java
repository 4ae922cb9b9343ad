package midplate.inference;

import java.util.List;

/**
 * Which spots must come apart on a plate.
 *
 * <p>Two spots are apart when their true Rf differ by at least {@value #LEAST_RF}: two spots of 4 mm on a run of 40 mm then
 * just do not touch (common practice, no source).
 *
 * @param pairs the pairs, in any order
 * @param developments how often the plate is developed before it is looked at, at least 1
 */
public record Parting(List<SpotPair> pairs, int developments) {
    /** The least difference of two true Rf that counts as apart [1]. */
    public static final double LEAST_RF = 0.1;

    /** Nothing needs to come apart. */
    public static final Parting NONE = new Parting(List.of(), 1);

    /** Keeps its own copy. */
    public Parting {
        pairs = List.copyOf(pairs);
        if (developments < 1) {
            throw new IllegalArgumentException("Came " + developments + " developments; allowed are 1 or more.");
        }
    }

    /** These pairs on a plate developed once. */
    public static Parting of(List<SpotPair> pairs) {
        return new Parting(pairs, 1);
    }

    /** The same pairs on a plate developed so often. */
    public Parting after(int times) {
        return new Parting(pairs, times);
    }
}
