package midplate.benchmark;

/**
 * The Rf that a contender expects of a spot.
 *
 * @param rf the Rf to expect as read [1]
 * @param low the Rf is below with probability 0.05 [1]
 * @param high the Rf is above with probability 0.05 [1]
 */
public record Guess(double rf, double low, double high) {
    /** Refuses what is no band around no Rf; a slip of the contender. */
    public Guess {
        if (!(rf >= 0 && rf <= 1 && low <= high)) {
            throw new IllegalArgumentException("Guess: came " + rf + " in [" + low + ", " + high
                    + "]; allowed is an Rf in [0, 1] and a band with low ≤ high.");
        }
    }
}
