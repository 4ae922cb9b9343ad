package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.plate.Reading;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;

/**
 * A lane whose unlabelled spots are to be matched to the spots of the sample.
 *
 * @param plate number of the plate among all plates, in their order
 * @param run by which whoever asks knows the plate
 * @param lane number of the lane on its plate
 * @param seen the unlabelled spots, from the start line up
 * @param labelled where known spots lie, which may hide others; each place once, from the start line up
 * @param candidates spots that the unlabelled ones may be, by their numbers, rising
 * @param noise by which a number at a line is a bound
 */
record LaneToMatch(
        int plate,
        int run,
        int lane,
        List<UnlabelledSpot> seen,
        List<Reading> labelled,
        List<Integer> candidates,
        Noise noise) {
    private static final Comparator<UnlabelledSpot> FROM_START =
            Comparator.comparing(UnlabelledSpot::reading, Trial.READING).thenComparingInt(UnlabelledSpot::index);

    /** An order of lanes that depends on what was seen; only lanes just alike are told apart by their numbers. */
    static final Comparator<UnlabelledLane> BY_CONTENT = Comparator.<UnlabelledLane, List<Reading>>comparing(
                    LaneToMatch::readings, (one, other) -> compare(one, other, Trial.READING))
            .thenComparing(lane -> lane.labelled().stream().sorted().toList().toString());

    /** The same for plates, of which whatever is labelled is alike. */
    static final Comparator<PlateRun> PLATES = Comparator.<PlateRun, List<UnlabelledLane>>comparing(
                    run -> run.unlabelled().stream().sorted(BY_CONTENT).toList(),
                    (one, other) -> compare(one, other, BY_CONTENT))
            .thenComparing(run -> run.notSeen().stream().sorted().toList().toString());

    LaneToMatch {
        seen = List.copyOf(seen);
        labelled = List.copyOf(labelled);
        candidates = List.copyOf(candidates);
    }

    /** The lanes of plates in their order; the noise is that of their pair. */
    static List<LaneToMatch> of(List<String> spots, List<PlateRun> plates, Noise noise) {
        List<LaneToMatch> lanes = new ArrayList<>();
        for (int plate = 0; plate < plates.size(); plate++) {
            PlateRun run = plates.get(plate);
            List<UnlabelledLane> sorted = run.unlabelled().stream()
                    .sorted(BY_CONTENT.thenComparingInt(UnlabelledLane::lane))
                    .toList();
            for (UnlabelledLane lane : sorted) {
                lanes.add(of(spots, run, plate, lane, noise));
            }
        }
        return lanes;
    }

    private static LaneToMatch of(List<String> spots, PlateRun run, int plate, UnlabelledLane lane, Noise noise) {
        List<Integer> candidates = new ArrayList<>();
        List<Reading> labelled = new ArrayList<>();
        for (int spot = 0; spot < spots.size(); spot++) {
            String name = spots.get(spot);
            Reading reading = run.readings().get(name);
            if (lane.labelled().contains(name)) {
                if (reading != null && !labelled.contains(reading)) {
                    labelled.add(reading);
                }
            } else if (!run.notSeen().contains(name)) {
                candidates.add(spot);
            }
        }
        labelled.sort(Trial.READING);
        return new LaneToMatch(
                plate,
                run.number(),
                lane.lane(),
                lane.spots().stream().sorted(FROM_START).toList(),
                labelled,
                candidates,
                noise);
    }

    private static List<Reading> readings(UnlabelledLane lane) {
        return lane.spots().stream()
                .map(UnlabelledSpot::reading)
                .sorted(Trial.READING)
                .toList();
    }

    private static <T> int compare(List<T> one, List<T> other, Comparator<T> by) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            int order = by.compare(one.get(i), other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }

    /** How many places there are for a spot: the unlabelled ones, then the labelled ones. */
    int places() {
        return seen.size() + labelled.size();
    }

    /** What was read at a place; a number at a line as a bound. */
    Reading reading(int place) {
        return noise.bound(place < seen.size() ? seen.get(place).reading() : labelled.get(place - seen.size()));
    }

    /** Whether nobody said what a place holds. */
    boolean isUnlabelled(int place) {
        return place < seen.size();
    }
}
