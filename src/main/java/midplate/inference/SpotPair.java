package midplate.inference;

/**
 * Two spots of a sample, by their places among the spots asked about.
 *
 * @param one the place of the first
 * @param other the place of the second, another one
 */
public record SpotPair(int one, int other) {
    /** Refuses a spot paired with itself; a slip in the program, since people give names. */
    public SpotPair {
        if (one == other || one < 0 || other < 0) {
            throw new IllegalArgumentException("Came " + one + " and " + other + "; allowed are two different places.");
        }
    }
}
