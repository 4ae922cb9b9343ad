package midplate.notebook;

import java.time.Instant;
import java.util.List;

/**
 * An advice as it was given: a ratio, its chance, and where the spots were foretold.
 *
 * @param given when
 * @param program version of the program that gave it
 * @param after ids of the plates that it rested on
 * @param weak id of the weaker solvent
 * @param strong id of the stronger solvent
 * @param percentStrong the share advised [% v/v]
 * @param additive what was added, in words; empty where nothing was
 * @param windowLow the lowest Rf wanted
 * @param windowHigh the highest Rf wanted
 * @param apart ids of two spots to be kept apart, or none
 * @param spots where each spot was foretold
 * @param probability the chance said that all spots lie in the window, and apart where that was asked
 * @param basis {@code measured}, {@code theory} or {@code guess}
 */
public record GivenAdvice(
        Instant given,
        String program,
        List<String> after,
        String weak,
        String strong,
        double percentStrong,
        String additive,
        double windowLow,
        double windowHigh,
        List<String> apart,
        List<Foretold> spots,
        double probability,
        String basis) {
    /** Keeps its own copies. */
    public GivenAdvice {
        after = List.copyOf(after);
        apart = List.copyOf(apart);
        spots = List.copyOf(spots);
    }

    /**
     * Where a spot was foretold.
     *
     * @param spot its id
     * @param rf the Rf
     * @param low below this with a chance of 5 %
     * @param high above this with a chance of 5 %
     */
    public record Foretold(String spot, double rf, double low, double high) {}
}
