package midplate.identity;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One plate on which a sample runs beside references.
 *
 * @param startMm height of the start line above the lower edge [mm]; may be left out where every spot is given by its Rf
 * @param frontMm height that the front reached [mm]; likewise
 * @param lanes from left to right
 */
public record ComparedPlate(OptionalDouble startMm, OptionalDouble frontMm, List<ComparedLane> lanes) {
    /** Keeps its own copy. */
    public ComparedPlate {
        lanes = List.copyOf(lanes);
    }

    /** A plate with both lines, heights in mm. */
    public static ComparedPlate of(double startMm, double frontMm, ComparedLane... lanes) {
        return new ComparedPlate(OptionalDouble.of(startMm), OptionalDouble.of(frontMm), List.of(lanes));
    }

    /** A plate of which only Rf were noted. */
    public static ComparedPlate ofRf(ComparedLane... lanes) {
        return new ComparedPlate(OptionalDouble.empty(), OptionalDouble.empty(), List.of(lanes));
    }
}
