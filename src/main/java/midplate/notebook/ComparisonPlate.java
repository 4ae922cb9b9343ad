package midplate.notebook;

import java.util.List;
import java.util.Optional;
import midplate.identity.LaneRole;
import midplate.identity.SpotShape;

/**
 * A plate on which a sample ran beside references. Heights are measured from its lower edge.
 *
 * @param id its name in the study
 * @param eluent what it ran in
 * @param startMm height of the start line [mm]
 * @param frontMm height of the front [mm]
 * @param lanes from left to right
 */
public record ComparisonPlate(String id, CheckEluent eluent, Entered startMm, Entered frontMm, List<Lane> lanes) {
    /** Keeps its own copy. */
    public ComparisonPlate {
        lanes = List.copyOf(lanes);
    }

    /**
     * A lane.
     *
     * @param id its name in the study
     * @param role what was spotted in it
     * @param reference id of the reference in it; there in every lane but those of the sample alone
     * @param readings in the order they were entered
     */
    public record Lane(String id, LaneRole role, Optional<String> reference, List<Reading> readings) {
        /** Keeps its own copy. */
        public Lane {
            readings = List.copyOf(readings);
        }
    }

    /**
     * A spot that was seen in a lane.
     *
     * @param id its name in the study
     * @param given how its place was given
     * @param place the height of its centre [mm], or its Rf
     * @param sizeMm its size along the lane [mm], where it was measured
     * @param shape what it looks like, where somebody said it
     */
    public record Reading(
            String id, StudyPlate.Given given, Entered place, Optional<Entered> sizeMm, Optional<SpotShape> shape) {}
}
