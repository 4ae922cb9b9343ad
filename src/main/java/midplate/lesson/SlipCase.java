package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.plate.SpotMeasurement;

/**
 * A slip with the true Rf of every spot, to be worked out.
 *
 * @param question what is asked
 * @param rf of each spot in the eluent of a careful pair [1]
 * @param percentThen share of the strong solvent in the eluent of this time [% v/v]
 * @param rfThen of each spot in it [1]
 */
record SlipCase(SlipQuestion question, List<Double> rf, double percentThen, List<Double> rfThen) {
    SlipCase {
        rf = List.copyOf(rf);
        rfThen = List.copyOf(rfThen);
    }

    SlipPlate plate() {
        return question.plate();
    }

    double size() {
        return question.size();
    }

    int spots() {
        return rf.size();
    }

    String name(int spot) {
        return question.sample().compounds().get(spot).name();
    }

    /** What a careful pair sees. */
    SeenPlate right() {
        return plain(question.percentStrong(), rf, plate().startMm(), plate().frontMm(), plate().frontMm());
    }

    /** What this time's eluent does on a plate that is right in all else. */
    SeenPlate then() {
        return plain(percentThen, rfThen, plate().startMm(), plate().frontMm(), plate().frontMm());
    }

    /**
     * A plate that runs from somewhere [mm] up to somewhere [mm], and shows its front elsewhere [mm]; no spot lies above its front.
     */
    SeenPlate running(double origin, double end, double front) {
        return plain(percentThen, rfThen, origin, end, front);
    }

    private SeenPlate plain(double percent, List<Double> all, double origin, double end, double front) {
        List<SeenSpot> shown = new ArrayList<>();
        for (int spot = 0; spot < all.size(); spot++) {
            double mm = Math.min(front, origin + all.get(spot) * (end - origin));
            double way = Math.max(0, mm - origin);
            double left = plate().laneMm(spot, all.size());
            double across = SpotGrowth.acrossMm(way);
            shown.add(new SeenSpot(name(spot), mm, left, across, SpotGrowth.alongMm(way), SeenSpot.Look.CLEAR, 1));
        }
        return new SeenPlate(percent, plate().startMm(), origin, front, OptionalDouble.empty(), List.of(), shown);
    }

    /** What is noted of a plate whose heights are read as if its lower edge lay elsewhere [mm], between these two lines [mm]. */
    SlipNoting noted(SeenPlate seen, double start, double front, double shift) {
        boolean sized = question.slip().kind() == Slip.Kind.SIZE;
        List<SpotMeasurement> measured = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (SeenSpot spot : seen.spots()) {
            if (spot.look() == SeenSpot.Look.LOST) {
                continue;
            }
            if (spot.look() == SeenSpot.Look.CUT) {
                leftOut.add(spot.name());
            }
            SpotMeasurement plain = SpotMeasurement.of(spot.name(), Math.max(0, spot.mm() + shift));
            SpotMeasurement each =
                    sized || spot.look() == SeenSpot.Look.STREAK ? plain.withSize(spot.alongMm()) : plain;
            measured.add(sized ? each.withFromLeft(Math.max(0, spot.leftMm())) : each);
        }
        return new SlipNoting(
                SlipNoting.Ruler.AS_SEEN, plate().measured(start, front, measured), java.util.Set.copyOf(leftOut));
    }

    /** What is noted of a plate as it is. */
    SlipNoting noted(SeenPlate seen) {
        return noted(seen, plate().startMm(), plate().frontMm(), 0);
    }
}
