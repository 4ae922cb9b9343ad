package midplate.lesson;

import java.util.List;
import java.util.OptionalDouble;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.plate.SpotMeasurement;
import midplate.words.Refusal;

/**
 * The plate of a slip as it should be: heights from its lower edge.
 *
 * @param heightMm its height [mm]
 * @param widthMm its width [mm]
 * @param startMm height of the start line [mm]
 * @param frontMm height at which the front is marked [mm]
 */
public record SlipPlate(double heightMm, double widthMm, double startMm, double frontMm) {
    /** The plate that lessons begin with. */
    public static final SlipPlate USUAL = new SlipPlate(70, 40, 10, 62);

    /** What cannot be; the fields begin with {@code plate.}. */
    public List<Refusal> faults() {
        return PlateReading.faults(measured(startMm, frontMm, List.of()));
    }

    /** From the start line to the front [mm]. */
    public double runMm() {
        return frontMm - startMm;
    }

    /** Where a spot of an Rf [1] lies [mm]. */
    double at(double rf) {
        return startMm + rf * runMm();
    }

    /** The middle of a lane from the left edge [mm]. */
    double laneMm(int lane, int lanes) {
        return widthMm * (lane + 0.5) / lanes;
    }

    /** The plate as somebody measures it, with these two lines [mm]. */
    PlateMeasurement measured(double start, double front, List<SpotMeasurement> spots) {
        return new PlateMeasurement(heightMm, start, front, OptionalDouble.of(widthMm), OptionalDouble.empty(), spots);
    }
}
