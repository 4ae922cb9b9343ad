package midplate.plate;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One plate as measured with a ruler, every height from the plate's lower edge; {@link PlateReading} checks the lengths.
 *
 * @param heightMm height of the plate [mm]
 * @param startMm height of the start line [mm]
 * @param frontMm height that the front reached [mm]
 * @param widthMm width of the plate [mm]
 * @param solventLevelMm height of the solvent's surface in the jar when the plate was put in [mm]
 * @param spots the spots; may be empty
 */
public record PlateMeasurement(
        double heightMm,
        double startMm,
        double frontMm,
        OptionalDouble widthMm,
        OptionalDouble solventLevelMm,
        List<SpotMeasurement> spots) {
    /** Keeps its own copy of the spots. */
    public PlateMeasurement {
        spots = List.copyOf(spots);
    }

    /** A plate of which width and solvent level were not measured; heights in mm. */
    public static PlateMeasurement of(double heightMm, double startMm, double frontMm, SpotMeasurement... spots) {
        return new PlateMeasurement(
                heightMm, startMm, frontMm, OptionalDouble.empty(), OptionalDouble.empty(), List.of(spots));
    }

    /** This plate with its width [mm]. */
    public PlateMeasurement withWidth(double millimetres) {
        return new PlateMeasurement(heightMm, startMm, frontMm, OptionalDouble.of(millimetres), solventLevelMm, spots);
    }

    /** This plate with the height of the solvent's surface [mm]. */
    public PlateMeasurement withSolventLevel(double millimetres) {
        return new PlateMeasurement(heightMm, startMm, frontMm, widthMm, OptionalDouble.of(millimetres), spots);
    }

    /** How far the front ran from the start line [mm]. */
    double runMm() {
        return frontMm - startMm;
    }
}
