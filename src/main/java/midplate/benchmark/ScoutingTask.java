package midplate.benchmark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.Series;

/**
 * A sample of one to three compounds of which nothing was read: which plates to run at once, and which after them?
 *
 * @param spots the compounds, in the order of their series
 */
record ScoutingTask(List<TrueCurve> spots) {
    ScoutingTask {
        spots = spots.stream().sorted(Comparator.comparing(TrueCurve::series)).toList();
    }

    /** Samples drawn as in {@link PlateTasks}. */
    static List<ScoutingTask> of(OpenMeasurements measurements, int count, long seed) {
        return PlateTasks.of(measurements, count, seed).stream()
                .map(plate -> new ScoutingTask(plate.spots()))
                .toList();
    }

    /** What plates of a round show of each spot, rounded to 0.01 and sorted, so that the order of the spots tells nothing. */
    List<List<TrialReading>> shown(List<Double> percents) {
        List<List<TrialReading>> shown = new ArrayList<>();
        for (TrueCurve spot : spots) {
            shown.add(percents.stream()
                    .map(percent -> new TrialReading(
                            PairName.HEXANE_ETHYL_ACETATE, percent, Math.rint(spot.rf(percent) * 100) / 100))
                    .sorted()
                    .toList());
        }
        shown.sort(ScoutingTask::compare);
        return List.copyOf(shown);
    }

    private static int compare(List<TrialReading> one, List<TrialReading> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** The compounds, in the order of their series. */
    List<Series> members() {
        return spots.stream().map(TrueCurve::series).toList();
    }

    /** Whether all spots lie at 0.2 to 0.8 at a percentage [% v/v]. */
    boolean hitAt(double percent) {
        return spots.stream().allMatch(spot -> spot.inWindow(percent));
    }

    /** Whether some ratio is a hit. */
    boolean possible() {
        return TrueCurve.possible(spots);
    }
}
