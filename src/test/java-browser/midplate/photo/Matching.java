package midplate.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Joins proposals and truth one to one, the nearest first; spots that a person would mark come before the others. */
final class Matching {
    private static final double NEAR_RF = 0.04;
    private static final double NEAR_LANE = 0.4;
    private static final double WIDEST_LANE_MM = 15;

    private record Pair(int mark, int proposal, double off) {}

    private final List<Mark> marks;
    private final List<Proposed> proposals;
    private final Map<Integer, Integer> joined = new HashMap<>();
    private final Set<Integer> taken = new TreeSet<>();

    private Matching(List<Mark> marks, List<Proposed> proposals) {
        this.marks = marks;
        this.proposals = proposals;
    }

    static Matching of(List<Mark> marks, List<Proposed> proposals, double laneDistance) {
        Matching matching = new Matching(marks, proposals);
        double near = NEAR_LANE * Math.min(WIDEST_LANE_MM, laneDistance);
        matching.join(true, near);
        matching.join(false, near);
        return matching;
    }

    private void join(boolean marked, double nearMm) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            for (int j = 0; j < proposals.size(); j++) {
                double off = Math.abs(proposals.get(j).rf() - marks.get(i).rf());
                double aside = Math.abs(proposals.get(j).xMm() - marks.get(i).xMm());
                if (marks.get(i).marked() == marked && off <= NEAR_RF && aside <= nearMm) {
                    pairs.add(new Pair(i, j, off));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::off));
        for (Pair pair : pairs) {
            if (!joined.containsKey(pair.mark()) && taken.add(pair.proposal())) {
                joined.put(pair.mark(), pair.proposal());
            }
        }
    }

    /** The index of what is proposed for a mark, or −1. */
    int of(int mark) {
        return joined.getOrDefault(mark, -1);
    }

    boolean isTaken(int proposal) {
        return taken.contains(proposal);
    }

    /** Whether a proposal stands for a spot that nobody need mark. */
    boolean isIdle(int proposal) {
        return joined.entrySet().stream()
                .anyMatch(pair ->
                        pair.getValue() == proposal && !marks.get(pair.getKey()).marked());
    }
}
