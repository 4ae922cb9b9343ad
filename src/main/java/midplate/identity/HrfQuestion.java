package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which hRf would these spots have on the plates of the table?
 *
 * @param system the id of a tabulated system, whose published values then count; empty where the standards carry their own
 * @param standards the reference spots as measured on this plate
 * @param measured the spots to correct
 */
public record HrfQuestion(Optional<String> system, List<Standard> standards, List<Spot> measured) {
    /** Keeps its own copies. */
    public HrfQuestion {
        standards = List.copyOf(standards);
        measured = List.copyOf(measured);
    }

    /**
     * A reference spot.
     *
     * @param name what it is called; one of the system's where a system is asked for
     * @param published its published hRf [1], 0 to 100; empty for the one of the system
     * @param measured its hRf on this plate [1], 0 to 100
     */
    public record Standard(String name, OptionalDouble published, double measured) {}

    /**
     * A spot to correct.
     *
     * @param name what it is called
     * @param hrf its hRf on this plate [1], 0 to 100
     */
    public record Spot(String name, double hrf) {}
}
