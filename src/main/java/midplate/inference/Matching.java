package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One way to say what the unlabelled spots are, as far as the lanes were gone through.
 *
 * <p>Which spot lies where: each candidate of a lane at one of its places, or {@link LaneToMatch#places()} for not seen.
 */
final class Matching {
    private final List<SpotTraces> spots;
    private final List<int[]> lanes;
    private final double logWeight;

    private Matching(List<SpotTraces> spots, List<int[]> lanes, double logWeight) {
        this.spots = spots;
        this.lanes = lanes;
        this.logWeight = logWeight;
    }

    /** Before any lane: only what is labelled counts. */
    static Matching start(List<SpotTraces> labelled) {
        return new Matching(List.copyOf(labelled), List.of(), 0);
    }

    /** The same with one lane more. */
    Matching with(LaneToMatch lane, LaneChoices.Choice choice) {
        List<SpotTraces> more = new ArrayList<>(spots);
        int[] places = choice.places();
        for (int i = 0; i < places.length; i++) {
            int spot = lane.candidates().get(i);
            if (places[i] < lane.places()) {
                boolean shared = !lane.isUnlabelled(places[i]) || count(places, places[i]) > 1;
                more.set(spot, spots.get(spot).with(lane.plate(), LaneChoices.sighting(lane, places[i], shared)));
            }
        }
        List<int[]> all = new ArrayList<>(lanes);
        all.add(places);
        return new Matching(more, all, logWeight + choice.logWeight());
    }

    private static int count(int[] places, int place) {
        return (int) Arrays.stream(places).filter(each -> each == place).count();
    }

    /** A spot with all that is taken for its readings. */
    SpotTraces spot(int spot) {
        return spots.get(spot);
    }

    int spots() {
        return spots.size();
    }

    /** The candidates that lie at a place of a lane, by their numbers. */
    List<Integer> at(int laneNumber, LaneToMatch lane, int place) {
        List<Integer> there = new ArrayList<>();
        int[] places = lanes.get(laneNumber);
        for (int i = 0; i < places.length; i++) {
            if (places[i] == place) {
                there.add(lane.candidates().get(i));
            }
        }
        return there;
    }

    /** Logarithm of its weight beside that of the others, the errors of plates counted to the readings. */
    double logWeight() {
        return logWeight;
    }

    /** The part of it that does not come from the trials of the spots, and so stays when these are weighed anew. */
    double logRest(double logEvidenceBefore) {
        double evidence = 0;
        for (SpotTraces spot : spots) {
            evidence += spot.logEvidence();
        }
        return logWeight - (evidence - logEvidenceBefore);
    }
}
