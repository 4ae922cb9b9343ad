package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import midplate.inference.Sightings.Sighting;
import midplate.plate.Limit;
import midplate.plate.Reading;

/**
 * The ways in which the candidates of one lane may lie at its places, with their weights.
 *
 * <p>Weight: {@code ∏(1 − m)·p(r)} over the spots that are seen, times {@code 2δ} for each spot that shares a place with
 * another, times {@code m} for each spot that is not seen, times {@code q} for each unlabelled place at which no spot lies. p
 * [1/Rf] is the density of the spot's reading at r [1], after all that is taken for its readings already; m [1] the chance that a
 * compound of the sample is not seen; δ [1 in Rf] the distance below which two spots look like one, and a spot that shares a place
 * may lie δ/2 to either side; q [1/Rf] how many foreign spots lie in a lane. On a line, a number at one included, p is a chance and no density; there
 * any number of spots look like one, and q is multiplied by the width of the bound. A labelled spot may hide others as well.
 *
 * <p>Candidates are taken one after another; after each the best {@value #MOST} ways are kept. What all ways together weigh is
 * summed without listing them ({@link LaneTotal}); only where more than 12 candidates are told apart it is estimated: as if what
 * was dropped had gone on like what was kept.
 */
final class LaneChoices {
    /** m: not every compound is seen in every lane; common practice, no source. */
    static final double MISSED = 0.05;
    /** q: few lanes show a spot that belongs to no compound asked about; common practice, no source. */
    static final double FOREIGN = 0.01;
    /** δ: the size of a spot, 2 mm, on a run of 50 mm; common practice, no source. */
    static final double ALIKE = 0.04;

    private static final int MOST = 256;
    /** Ways lighter than this share of the best are dropped [1]. */
    private static final double NEGLIGIBLE = 1e-7;
    /** The narrowest bound of a line [1]. */
    private static final double LEAST_WIDTH = 1e-3;

    private final LaneToMatch lane;
    private final Matching before;
    private final List<List<Integer>> anchored;
    private final double[][] alone;
    private final double[][] shared;

    /** A way: the place of each candidate, and the logarithm of its weight. */
    @SuppressWarnings("ArrayRecordComponent")
    record Choice(int[] places, double logWeight) {}

    /** The heaviest ways, and the logarithm of the weight of all ways, those that were dropped included. */
    record Ways(List<Choice> heaviest, double logTotal) {}

    private LaneChoices(LaneToMatch lane, Matching before, List<List<Integer>> anchored) {
        this.lane = lane;
        this.before = before;
        this.anchored = anchored;
        int candidates = lane.candidates().size();
        this.alone = new double[candidates][lane.places()];
        this.shared = new double[candidates][lane.places()];
        for (int i = 0; i < candidates; i++) {
            for (int place = 0; place < lane.places(); place++) {
                alone[i][place] = gain(i, sighting(lane, place, false));
                shared[i][place] = gain(i, sighting(lane, place, true));
            }
        }
    }

    /**
     * The ways, each once.
     *
     * @param lane whose spots to match
     * @param before what is taken to be known
     * @param anchored spots that nothing tells apart before this lane: among them names follow the places
     */
    static Ways of(LaneToMatch lane, Matching before, List<List<Integer>> anchored) {
        return new LaneChoices(lane, before, anchored).all();
    }

    /** What is read of a spot at a place. */
    static Sighting sighting(LaneToMatch lane, int place, boolean isShared) {
        Reading reading = lane.reading(place);
        return new Sighting(reading, isShared && reading.limit() == Limit.NONE ? ALIKE / 2 : 0);
    }

    private double gain(int candidate, Sighting sighting) {
        SpotTraces spot = before.spot(lane.candidates().get(candidate));
        return spot.with(lane.plate(), sighting).logLikelihood() - spot.logLikelihood();
    }

    private Ways all() {
        List<Choice> ways = List.of(new Choice(new int[0], 0));
        double logKept = 0;
        for (int i = 0; i < alone.length; i++) {
            List<Choice> longer = new ArrayList<>();
            for (Choice way : ways) {
                for (int place = lowest(way, i); place <= lane.places(); place++) {
                    int[] places = Arrays.copyOf(way.places(), i + 1);
                    places[i] = place;
                    longer.add(new Choice(places, way.logWeight() + step(way.places(), i, place)));
                }
            }
            ways = heaviest(longer);
            logKept += logSum(ways) - logSum(longer);
        }
        List<Choice> complete = ways.stream()
                .map(way -> new Choice(way.places(), way.logWeight() + foreign(way.places()) + names(way.places())))
                .toList();
        List<int[]> units = units();
        return new Ways(complete, LaneTotal.isFeasible(units) ? logTotal(units) : logSum(complete) - logKept);
    }

    private static double logSum(List<Choice> ways) {
        double best = ways.stream().mapToDouble(Choice::logWeight).max().orElse(0);
        return best
                + Math.log(ways.stream()
                        .mapToDouble(way -> Math.exp(way.logWeight() - best))
                        .sum());
    }

    /** The candidates, those that get their names here together. */
    private List<int[]> units() {
        List<int[]> units = new ArrayList<>();
        for (List<Integer> group : anchored) {
            units.add(group.stream().mapToInt(lane.candidates()::indexOf).toArray());
        }
        for (int i = 0; i < alone.length; i++) {
            int spot = lane.candidates().get(i);
            if (anchored.stream().noneMatch(group -> group.contains(spot))) {
                units.add(new int[] {i});
            }
        }
        return units;
    }

    /** Each candidate's weights are divided by its greatest, so that no product leaves the range of numbers. */
    private double logTotal(List<int[]> units) {
        double[] greatest = new double[alone.length];
        double logScale = 0;
        for (int i = 0; i < alone.length; i++) {
            greatest[i] = Math.log(MISSED);
            for (int place = 0; place < lane.places(); place++) {
                greatest[i] = Math.max(greatest[i], Math.log(1 - MISSED) + Math.max(alone[i][place], shared[i][place]));
            }
            logScale += greatest[i];
        }
        List<LaneTotal.Place> seen = new ArrayList<>();
        List<double[]> free = new ArrayList<>();
        for (int place = 0; place < lane.places(); place++) {
            double[] byItself = new double[alone.length];
            double[] withOthers = new double[alone.length];
            for (int i = 0; i < alone.length; i++) {
                double seenOnce = Math.log(1 - MISSED) - greatest[i];
                byItself[i] = Math.exp(seenOnce + alone[i][place]);
                withOthers[i] = Math.exp(seenOnce + shared[i][place] + logAlike(place));
            }
            if (lane.isUnlabelled(place)) {
                double empty = FOREIGN * width(lane.reading(place));
                seen.add(new LaneTotal.Place(empty, byItself, withOthers, Math.exp(logAlike(place))));
            } else {
                free.add(withOthers);
            }
        }
        double[] missed = new double[alone.length];
        Arrays.setAll(missed, i -> MISSED * Math.exp(-greatest[i]));
        free.add(missed);
        return logScale + Math.log(LaneTotal.of(units, seen, free));
    }

    /** The lowest place a candidate may take: spots that nothing tells apart are named from the start line up. */
    private int lowest(Choice way, int candidate) {
        for (List<Integer> group : anchored) {
            int member = group.indexOf(lane.candidates().get(candidate));
            if (member > 0) {
                return way.places()[lane.candidates().indexOf(group.get(member - 1))];
            }
        }
        return 0;
    }

    private double step(int[] taken, int candidate, int place) {
        if (place == lane.places()) {
            return Math.log(MISSED);
        }
        double seen = Math.log(1 - MISSED);
        double merged = seen + shared[candidate][place] + logAlike(place);
        if (!lane.isUnlabelled(place)) {
            return merged;
        }
        int first = -1;
        int there = 0;
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] == place) {
                first = i;
                there++;
            }
        }
        return switch (there) {
            case 0 -> seen + alone[candidate][place];
            case 1 -> merged + shared[first][place] - alone[first][place];
            default -> merged;
        };
    }

    private double logAlike(int place) {
        return lane.reading(place).limit() == Limit.NONE ? Math.log(2 * ALIKE) : 0;
    }

    private double foreign(int[] places) {
        double log = 0;
        for (int place = 0; place < lane.seen().size(); place++) {
            int at = place;
            if (Arrays.stream(places).noneMatch(each -> each == at)) {
                log += Math.log(FOREIGN * width(lane.reading(place)));
            }
        }
        return log;
    }

    private static double width(Reading reading) {
        return switch (reading.limit()) {
            case NONE -> 1;
            case AT_START -> Math.max(LEAST_WIDTH, reading.rf());
            case AT_FRONT -> Math.max(LEAST_WIDTH, 1 - reading.rf());
        };
    }

    /** In how many ways the names of spots that nothing tells apart could have been exchanged: {@code n!/∏ mₖ!}. */
    private double names(int[] places) {
        double log = 0;
        for (List<Integer> group : anchored) {
            int run = 0;
            for (int member = 0; member < group.size(); member++) {
                int place = places[lane.candidates().indexOf(group.get(member))];
                boolean same = member > 0 && place == places[lane.candidates().indexOf(group.get(member - 1))];
                run = same ? run + 1 : 1;
                log += Math.log(member + 1) - Math.log(run);
            }
        }
        return log;
    }

    private static List<Choice> heaviest(List<Choice> ways) {
        double best = ways.stream().mapToDouble(Choice::logWeight).max().orElse(0);
        return ways.stream()
                .filter(way -> way.logWeight() >= best + Math.log(NEGLIGIBLE))
                .sorted(Comparator.comparingDouble(Choice::logWeight).reversed())
                .limit(MOST)
                .toList();
    }
}
