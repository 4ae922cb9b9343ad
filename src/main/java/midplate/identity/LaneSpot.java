package midplate.identity;

import java.util.OptionalDouble;

/**
 * One spot of a lane, by its height or by its Rf; {@link IdentityFaults} checks the numbers.
 *
 * @param centreMm height of its middle above the lower edge of the plate [mm], if that was measured
 * @param rf its Rf [1], if that was given instead
 * @param sizeMm its length along the run [mm]; 3 mm where it is not given
 * @param shape what it looks like
 */
public record LaneSpot(OptionalDouble centreMm, OptionalDouble rf, OptionalDouble sizeMm, SpotShape shape) {
    /** A round spot at a height [mm]. */
    public static LaneSpot atMm(double centreMm) {
        return new LaneSpot(
                OptionalDouble.of(centreMm), OptionalDouble.empty(), OptionalDouble.empty(), SpotShape.ROUND);
    }

    /** A round spot at an Rf [1]. */
    public static LaneSpot atRf(double rf) {
        return new LaneSpot(OptionalDouble.empty(), OptionalDouble.of(rf), OptionalDouble.empty(), SpotShape.ROUND);
    }

    /** This spot with its length along the run [mm]. */
    public LaneSpot sized(double millimetres) {
        return new LaneSpot(centreMm, rf, OptionalDouble.of(millimetres), shape);
    }

    /** This spot drawn out along the run. */
    public LaneSpot streaked() {
        return new LaneSpot(centreMm, rf, sizeMm, SpotShape.STREAK);
    }
}
