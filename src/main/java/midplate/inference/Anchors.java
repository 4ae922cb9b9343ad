package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where names mean something before anything was labelled.
 *
 * <p>Spots without a labelled reading, in this pair or through another one, are told apart by nothing: every way to match them
 * comes with all exchanges of their names. The lane with the most unlabelled spots then gives the names: on it such spots take the
 * places in rising Rf, in the order in which they were asked about, those not seen last. Spots that were looked for on different
 * plates are different groups.
 */
final class Anchors {
    private final Map<LaneToMatch, List<List<Integer>>> groups = new LinkedHashMap<>();

    private Anchors() {}

    /**
     * The anchors of a sample.
     *
     * @param nameless spots of which no reading is labelled, rising
     * @param lanes all lanes, in an order that depends on what was seen
     */
    static Anchors of(List<Integer> nameless, List<LaneToMatch> lanes) {
        Anchors anchors = new Anchors();
        Map<Set<Integer>, List<Integer>> alike = new LinkedHashMap<>();
        for (int spot : nameless) {
            Set<Integer> possible = new TreeSet<>();
            for (int lane = 0; lane < lanes.size(); lane++) {
                if (lanes.get(lane).candidates().contains(spot)) {
                    possible.add(lane);
                }
            }
            alike.computeIfAbsent(possible, key -> new ArrayList<>()).add(spot);
        }
        alike.forEach((possible, spots) -> {
            if (spots.size() > 1 && !possible.isEmpty()) {
                LaneToMatch most = null;
                for (int lane : possible) {
                    LaneToMatch each = lanes.get(lane);
                    most = most == null || each.seen().size() > most.seen().size() ? each : most;
                }
                anchors.groups.computeIfAbsent(most, key -> new ArrayList<>()).add(spots);
            }
        });
        return anchors;
    }

    /** Groups of spots that get their names on a lane. */
    List<List<Integer>> on(LaneToMatch lane) {
        return groups.getOrDefault(lane, List.of());
    }

    /** The lanes with those that give names first. */
    List<LaneToMatch> first(List<LaneToMatch> lanes) {
        List<LaneToMatch> order = new ArrayList<>(lanes);
        order.sort(Comparator.comparing(lane -> !groups.containsKey(lane)));
        return order;
    }
}
