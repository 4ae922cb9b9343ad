package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The likeliest ways to match all unlabelled spots of a sample, found lane by lane: after each lane those lighter than
 * {@value #NEGLIGIBLE} of the best are dropped, and of the others the heaviest are kept. The error shared by a plate counts to
 * each reading while searching; {@link MatchedKnowledge} weighs what was found exactly.
 *
 * @param lanes in the order in which they were gone through
 * @param found the ways, the heaviest first, at least one
 * @param kept share of the weight that was kept [1]; on each lane out of all ways to go on with it from those kept before
 */
record Matchings(List<LaneToMatch> lanes, List<Matching> found, double kept) {
    private static final double NEGLIGIBLE = 1e-4;
    private static final int MOST = 48;
    private static final int FEWEST = 2;
    /** Spots times plates times ways: above it fewer ways are kept, so that no request takes long. */
    private static final int MOST_WORK = 2000;

    Matchings {
        lanes = List.copyOf(lanes);
        found = List.copyOf(found);
    }

    /**
     * Searches.
     *
     * @param spots the spots with their labelled readings
     * @param lanes all lanes with unlabelled spots
     * @param anchors where names begin
     * @param plates number of plates
     */
    static Matchings search(List<SpotTraces> spots, List<LaneToMatch> lanes, Anchors anchors, int plates) {
        int most = Math.max(FEWEST, Math.min(MOST, MOST_WORK / Math.max(1, spots.size() * plates)));
        List<LaneToMatch> order = anchors.first(lanes);
        List<Matching> found = List.of(Matching.start(spots));
        double kept = 1;
        for (LaneToMatch lane : order) {
            List<Longer> all = new ArrayList<>();
            double[] logTotals = new double[found.size()];
            for (int i = 0; i < logTotals.length; i++) {
                Matching before = found.get(i);
                LaneChoices.Ways ways = LaneChoices.of(lane, before, anchors.on(lane));
                ways.heaviest().forEach(choice -> all.add(new Longer(before, choice)));
                logTotals[i] = before.logWeight() + ways.logTotal();
            }
            all.sort(Comparator.comparingDouble(Longer::logWeight).reversed());
            double best = all.get(0).logWeight();
            double sum = Arrays.stream(logTotals)
                    .map(logTotal -> Math.exp(logTotal - best))
                    .sum();
            double taken = 0;
            List<Matching> next = new ArrayList<>();
            for (Longer each : all) {
                double weight = Math.exp(each.logWeight() - best);
                if (next.size() < most && weight >= NEGLIGIBLE) {
                    taken += weight;
                    next.add(each.before().with(lane, each.choice()));
                }
            }
            kept *= Math.min(1, taken / sum);
            found = next;
        }
        return new Matchings(order, found, kept);
    }

    private record Longer(Matching before, LaneChoices.Choice choice) {
        double logWeight() {
            return before.logWeight() + choice.logWeight();
        }
    }
}
