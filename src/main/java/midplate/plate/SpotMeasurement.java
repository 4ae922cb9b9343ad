package midplate.plate;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One spot as measured with a ruler, or worked out from a picture; {@link PlateReading} checks the lengths.
 *
 * @param spot the spot's name; the same name in two lanes (its own and the mixed one) means the same compound
 * @param centreMm height of the spot's middle above the plate's lower edge [mm]
 * @param sizeMm length of the spot in the direction of the run [mm]; {@value #USUAL_SIZE_MM} mm where it is not given
 * @param fromLeftMm distance of the spot's middle from the plate's left edge [mm]
 * @param errorMm standard error of {@code centreMm} [mm], above 0 and at most {@value #LARGEST_ERROR_MM}, where it was worked out
 *     elsewhere; it takes the place of that of a ruler
 * @param shape what the spot looks like, where that was said
 */
public record SpotMeasurement(
        String spot,
        double centreMm,
        OptionalDouble sizeMm,
        OptionalDouble fromLeftMm,
        OptionalDouble errorMm,
        Optional<SpotForm> shape) {
    /** Size taken for a spot whose size was not measured [mm]; common practice, no source: spots of 1 to 2 mm. */
    public static final double USUAL_SIZE_MM = 2;

    /** The largest error of a centre that is taken [mm]: as large as a plate, beyond which a height says nothing. */
    public static final double LARGEST_ERROR_MM = 100;

    /** A spot of which only the height was measured [mm]. */
    public static SpotMeasurement of(String spot, double centreMm) {
        return new SpotMeasurement(
                spot,
                centreMm,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** This spot with its size in the direction of the run [mm]. */
    public SpotMeasurement withSize(double millimetres) {
        return withSize(OptionalDouble.of(millimetres));
    }

    /** This spot with its size in the direction of the run [mm], if there is any. */
    public SpotMeasurement withSize(OptionalDouble millimetres) {
        return new SpotMeasurement(spot, centreMm, millimetres, fromLeftMm, errorMm, shape);
    }

    /** This spot with its distance from the plate's left edge [mm]. */
    public SpotMeasurement withFromLeft(double millimetres) {
        return withFromLeft(OptionalDouble.of(millimetres));
    }

    /** This spot with its distance from the plate's left edge [mm], if there is any. */
    public SpotMeasurement withFromLeft(OptionalDouble millimetres) {
        return new SpotMeasurement(spot, centreMm, sizeMm, millimetres, errorMm, shape);
    }

    /** This spot with the standard error of its middle's height [mm] that was worked out elsewhere. */
    public SpotMeasurement withError(double millimetres) {
        return withError(OptionalDouble.of(millimetres));
    }

    /** This spot with the standard error of its middle's height [mm], if any was worked out elsewhere. */
    public SpotMeasurement withError(OptionalDouble millimetres) {
        return new SpotMeasurement(spot, centreMm, sizeMm, fromLeftMm, millimetres, shape);
    }

    /** This spot with what it looks like. */
    public SpotMeasurement withShape(SpotForm look) {
        return withShape(Optional.of(look));
    }

    /** This spot with what it looks like, if that was said. */
    public SpotMeasurement withShape(Optional<SpotForm> look) {
        return new SpotMeasurement(spot, centreMm, sizeMm, fromLeftMm, errorMm, look);
    }

    /** Half the size, measured or usual [mm]. */
    double halfSizeMm() {
        return sizeMm.orElse(USUAL_SIZE_MM) / 2;
    }
}
