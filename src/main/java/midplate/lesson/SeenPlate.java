package midplate.lesson;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A plate as it lies there, heights from its lower edge.
 *
 * @param percentStrong share of the strong solvent in its eluent [% v/v]
 * @param startMm the line that was drawn [mm]
 * @param originMm where the sample was put [mm]
 * @param frontMm where the front stood [mm]
 * @param surfaceMm the solvent's surface, where it matters [mm]
 * @param smear from where to where something else covers it [mm], lowest first; empty where nothing does
 * @param spots in the order of the sample
 */
public record SeenPlate(
        double percentStrong,
        double startMm,
        double originMm,
        double frontMm,
        OptionalDouble surfaceMm,
        List<Double> smear,
        List<SeenSpot> spots) {
    /** Keeps its own copies. */
    public SeenPlate {
        smear = List.copyOf(smear);
        spots = List.copyOf(spots);
    }

    SeenPlate showing(List<SeenSpot> others) {
        return new SeenPlate(percentStrong, startMm, originMm, frontMm, surfaceMm, smear, others);
    }
}
