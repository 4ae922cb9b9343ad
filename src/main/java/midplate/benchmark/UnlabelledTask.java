package midplate.benchmark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import midplate.inference.PairName;
import midplate.inference.Series;

/**
 * One sample on two plates: on the first each compound is read in a lane of its own, on the second all run in one lane and
 * nobody says which is which. Which are they, and what comes next?
 *
 * <p>On the second plate every compound is seen and nothing else; neighbours nearer than {@value #ALIKE} in Rf are seen as
 * one spot, at the mean of theirs.
 *
 * @param spots the compounds, two or more, from the start line up on the first plate; those read alike in the order of
 *     their series
 * @param first ethyl acetate of the labelled plate [% v/v]
 * @param second ethyl acetate of the other plate [% v/v]
 */
record UnlabelledTask(List<TrueCurve> spots, double first, double second) {
    /** Two spots nearer than this look like one [1 in Rf]; common practice, no source. */
    static final double ALIKE = 0.04;

    UnlabelledTask {
        double percent = first;
        spots = spots.stream()
                .sorted(Comparator.<TrueCurve>comparingDouble(spot -> read(spot.rf(percent)))
                        .thenComparing(TrueCurve::series))
                .toList();
    }

    /** What is told. */
    HalfLabelled told() {
        List<Double> seen = places().stream().map(Place::rf).toList();
        return new HalfLabelled(labelled(first), second, seen);
    }

    /** What was read of each spot at a percentage [% v/v], in their order. */
    List<TrialReading> labelled(double percent) {
        return spots.stream()
                .map(spot -> new TrialReading(PairName.HEXANE_ETHYL_ACETATE, percent, read(spot.rf(percent))))
                .toList();
    }

    /** Which compounds lie at each place of the second plate, from the start line up: the truth to be guessed. */
    List<Set<Integer>> truth() {
        return places().stream().map(Place::spots).toList();
    }

    /** Whether every compound has a spot of its own on the second plate. */
    boolean apart() {
        return places().size() == spots.size();
    }

    /** The ratios of the trial plates but these two [% v/v]. */
    double[] others() {
        return DoubleStream.of(PlateTasks.TRIAL_PERCENTS)
                .filter(percent -> percent != first && percent != second)
                .toArray();
    }

    /** Whether all spots lie at 0.2 to 0.8 at a percentage [% v/v]. */
    boolean hitAt(double next) {
        return spots.stream().allMatch(spot -> spot.inWindow(next));
    }

    /** The compounds, in the order of their series. */
    List<Series> members() {
        return spots.stream().map(TrueCurve::series).sorted().toList();
    }

    private List<Place> places() {
        List<Integer> climbing = new ArrayList<>();
        for (int spot = 0; spot < spots.size(); spot++) {
            climbing.add(spot);
        }
        climbing.sort(Comparator.comparingDouble(this::runs));
        List<Place> places = new ArrayList<>();
        for (int from = 0; from < climbing.size(); ) {
            int to = from + 1;
            while (to < climbing.size() && runs(climbing.get(to)) - runs(climbing.get(to - 1)) < ALIKE) {
                to++;
            }
            List<Integer> together = climbing.subList(from, to);
            double rf = together.stream().mapToDouble(this::runs).sum() / together.size();
            places.add(new Place(read(rf), new TreeSet<>(together)));
            from = to;
        }
        return places;
    }

    private double runs(int spot) {
        return spots.get(spot).rf(second);
    }

    /** As read: to two decimals. */
    private static double read(double rf) {
        return Math.rint(rf * 100) / 100;
    }

    private record Place(double rf, Set<Integer> spots) {}
}
