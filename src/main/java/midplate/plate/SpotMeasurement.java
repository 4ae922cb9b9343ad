package midplate.plate;

import java.util.OptionalDouble;

/**
 * One spot as measured with a ruler; {@link PlateReading} checks the lengths.
 *
 * @param spot the spot's name; the same name in two lanes (its own and the mixed one) means the same compound
 * @param centreMm height of the spot's middle above the plate's lower edge [mm]
 * @param sizeMm length of the spot in the direction of the run [mm]; {@value #USUAL_SIZE_MM} mm where it is not given
 * @param fromLeftMm distance of the spot's middle from the plate's left edge [mm]
 */
public record SpotMeasurement(String spot, double centreMm, OptionalDouble sizeMm, OptionalDouble fromLeftMm) {
    /** Size taken for a spot whose size was not measured [mm]; common practice, no source: spots of 1 to 2 mm. */
    public static final double USUAL_SIZE_MM = 2;

    /** A spot of which only the height was measured [mm]. */
    public static SpotMeasurement of(String spot, double centreMm) {
        return new SpotMeasurement(spot, centreMm, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** This spot with its size in the direction of the run [mm]. */
    public SpotMeasurement withSize(double millimetres) {
        return new SpotMeasurement(spot, centreMm, OptionalDouble.of(millimetres), fromLeftMm);
    }

    /** This spot with its distance from the plate's left edge [mm]. */
    public SpotMeasurement withFromLeft(double millimetres) {
        return new SpotMeasurement(spot, centreMm, sizeMm, OptionalDouble.of(millimetres));
    }

    /** Half the size, measured or usual [mm]. */
    double halfSizeMm() {
        return sizeMm.orElse(USUAL_SIZE_MM) / 2;
    }
}
