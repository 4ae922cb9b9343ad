package midplate.identity;

import java.util.List;
import java.util.Optional;

/**
 * One lane of a plate on which samples are compared.
 *
 * @param role what was spotted
 * @param reference the name of the reference in it; empty in a lane of the sample alone
 * @param spots what was seen in it, in any order
 */
public record ComparedLane(LaneRole role, Optional<String> reference, List<LaneSpot> spots) {
    /** Keeps its own copy. */
    public ComparedLane {
        spots = List.copyOf(spots);
    }

    /** A lane of the sample in question. */
    public static ComparedLane unknown(LaneSpot... spots) {
        return new ComparedLane(LaneRole.UNKNOWN, Optional.empty(), List.of(spots));
    }

    /** A lane of the sample and a reference on top of each other. */
    public static ComparedLane coSpot(String reference, LaneSpot... spots) {
        return new ComparedLane(LaneRole.CO_SPOT, Optional.of(reference), List.of(spots));
    }

    /** A lane of a reference. */
    public static ComparedLane reference(String reference, LaneSpot... spots) {
        return new ComparedLane(LaneRole.REFERENCE, Optional.of(reference), List.of(spots));
    }
}
