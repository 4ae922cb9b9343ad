package midplate.plate;

import java.util.List;
import java.util.Set;

/**
 * One lane of a plate with spots that nobody named.
 *
 * @param lane number of the lane on its plate, from 1
 * @param labelled names of the spots that are known in this lane; they are none of the unlabelled ones
 * @param spots the others, in the order given, at least one
 */
public record UnlabelledLane(int lane, Set<String> labelled, List<UnlabelledSpot> spots) {
    /** Keeps its own copies. */
    public UnlabelledLane {
        labelled = Set.copyOf(labelled);
        spots = List.copyOf(spots);
    }
}
