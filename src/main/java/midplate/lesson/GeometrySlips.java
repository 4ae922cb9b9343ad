package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.plate.SpotMeasurement;

/**
 * Slips that geometry alone works out: s start line, f front, L = f − s, r true Rf, so that a spot lies at s + r·L; all lengths in mm,
 * heights from the plate's lower edge; own algebra.
 */
final class GeometrySlips {
    /** Half a mark of a ruler [mm]; common practice, no source. */
    static final double RULER_MM = 0.5;

    private GeometrySlips() {}

    static SlipPlates of(SlipCase slip) {
        return switch (slip.question().slip()) {
            case FROM_EDGE -> fromEdge(slip);
            case START_LINE_OFF -> startLineOff(slip);
            case FRONT_TO_TOP -> frontToTop(slip);
            case STOPPED_SHORT -> stoppedShort(slip);
            case FRONT_NOT_MARKED -> frontNotMarked(slip);
            default -> inThePool(slip);
        };
    }

    /** Both heights are counted from e below the start line: Rf′ = (e + r·L)/(e + L). */
    private static SlipPlates fromEdge(SlipCase slip) {
        SeenPlate seen = slip.right();
        SlipPlate plate = slip.plate();
        return SlipPlates.of(slip, seen, slip.noted(seen, plate.startMm() - slip.size(), plate.frontMm(), 0));
    }

    /** The sample was put a above the line: the spot lies at s + a + r·(L − a), and Rf′ = (a + r·(L − a))/L. */
    private static SlipPlates startLineOff(SlipCase slip) {
        double front = slip.plate().frontMm();
        return SlipPlates.noted(slip, slip.running(slip.plate().startMm() + slip.size(), front, front));
    }

    /** The front stands at the top H while the solvent goes on by b: Rf′ = r·(H + b − s)/(H − s), at most 1. */
    private static SlipPlates frontToTop(SlipCase slip) {
        SlipPlate plate = slip.plate();
        double top = plate.heightMm();
        SeenPlate seen = slip.running(plate.startMm(), top + slip.size(), top);
        return SlipPlates.of(slip, seen, slip.noted(seen, plate.startMm(), top, 0));
    }

    /** On a run of length l the ruler's half millimetre is ±0.5/l in Rf. */
    private static SlipPlates stoppedShort(SlipCase slip) {
        double start = slip.plate().startMm();
        double front = start + slip.size();
        SeenPlate seen = slip.running(start, front, front);
        SlipNoting low = slip.noted(seen, start, front, -RULER_MM);
        SlipNoting high = slip.noted(seen, start, front, RULER_MM);
        return SlipPlates.of(
                slip,
                seen,
                new SlipNoting(SlipNoting.Ruler.TOO_LOW, low.plate(), Set.of()),
                new SlipNoting(SlipNoting.Ruler.TOO_HIGH, high.plate(), Set.of()));
    }

    /** The front is noted m too low: Rf′ = r·L/(L − m). */
    private static SlipPlates frontNotMarked(SlipCase slip) {
        SlipPlate plate = slip.plate();
        SeenPlate seen = slip.right();
        return SlipPlates.of(slip, seen, slip.noted(seen, plate.startMm(), plate.frontMm() - slip.size(), 0));
    }

    /**
     * The solvent's surface stands h above the start line, across round spots of radius R: what is below dissolves into the jar. What
     * is left above it, {@link CutCircle}, begins at its own middle m above the line: Rf′ = (m + r·(L − m))/L. That all below dissolves
     * is the most that can be; what is held strongly partly stays.
     */
    private static SlipPlates inThePool(SlipCase slip) {
        SlipPlate plate = slip.plate();
        double radius = SpotGrowth.START_MM / 2;
        CutCircle left = CutCircle.beyond(slip.size() / radius);
        SeenPlate ran = slip.running(plate.startMm() + left.middle() * radius, plate.frontMm(), plate.frontMm());
        List<SeenSpot> spots = new ArrayList<>();
        for (SeenSpot spot : ran.spots()) {
            spots.add(
                    left.share() == 0
                            ? spot.looking(SeenSpot.Look.LOST, 0)
                            : left.share() < 1 ? spot.looking(SeenSpot.Look.FAINT, left.share()) : spot);
        }
        double surface = Math.max(0, plate.startMm() + slip.size());
        SeenPlate seen = new SeenPlate(
                ran.percentStrong(),
                plate.startMm(),
                plate.startMm(),
                plate.frontMm(),
                OptionalDouble.of(surface),
                List.of(),
                spots);
        List<SpotMeasurement> measured = slip.noted(seen).plate().spots();
        return SlipPlates.of(
                slip,
                seen,
                new SlipNoting(plate.measured(plate.startMm(), plate.frontMm(), measured)
                        .withSolventLevel(surface)));
    }
}
