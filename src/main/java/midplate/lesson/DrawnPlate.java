package midplate.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * A plate to be drawn in its true size, every height a whole number of half millimetres from the lower edge, so that a ruler can read it.
 *
 * @param halfStart start line [half mm]
 * @param halfFront front [half mm]
 * @param lanes what stands under each lane
 * @param spots the spots
 */
public record DrawnPlate(int halfStart, int halfFront, List<String> lanes, List<Spot> spots) {
    /** Width of each plate [mm]. */
    public static final double WIDTH_MM = 40;

    /** Height of each plate [mm]. */
    public static final double HEIGHT_MM = 70;

    /** How wide each spot is drawn [mm]. */
    public static final double ACROSS_MM = 3;

    /** How high each spot is drawn [mm]. */
    public static final double ALONG_MM = 2.6;

    private static final int LEAST_START = 16;
    private static final int MOST_START = 24;
    private static final int LEAST_RUN = 90;
    private static final int MOST_RUN = 104;

    /**
     * A spot.
     *
     * @param lane counted from 0
     * @param letter beside it
     * @param halfCentre its centre [half mm from the lower edge]
     */
    public record Spot(int lane, String letter, int halfCentre) {
        /** Its centre [mm from the lower edge]. */
        public double centreMm() {
            return halfCentre / 2.0;
        }
    }

    /** Keeps its own copies. */
    public DrawnPlate {
        lanes = List.copyOf(lanes);
        spots = List.copyOf(spots);
    }

    /** A plate without spots: start line at 8 to 12 mm, run of 45 to 52 mm. */
    static DrawnPlate bare(SeededDraws draws, List<String> lanes) {
        int start = draws.whole(LEAST_START, MOST_START);
        return new DrawnPlate(start, start + draws.whole(LEAST_RUN, MOST_RUN), lanes, List.of());
    }

    /** The same with a further spot. */
    DrawnPlate with(int lane, String letter, int halfWay) {
        List<Spot> all = new ArrayList<>(spots);
        all.add(new Spot(lane, letter, halfStart + halfWay));
        return new DrawnPlate(halfStart, halfFront, lanes, all);
    }

    /** How far a spot of that Rf ran [half mm]. */
    int halfWay(double rf) {
        return (int) Math.round(rf * halfRun());
    }

    /** The run [half mm]. */
    public int halfRun() {
        return halfFront - halfStart;
    }

    /** What a ruler says of a spot. */
    public RulerRf measured(Spot spot) {
        return new RulerRf(spot.halfCentre() - halfStart, halfRun());
    }

    /** The start line [mm from the lower edge]. */
    public double startMm() {
        return halfStart / 2.0;
    }

    /** The front [mm from the lower edge]. */
    public double frontMm() {
        return halfFront / 2.0;
    }
}
