package midplate.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * How many readings fall into steps of Rf.
 *
 * <p>A step is as wide as Freedman and Diaconis have it, {@code 2·IQR/∛n} (from memory, high confidence), the median over the spots, then the
 * nearest of 0.01, 0.02, 0.05 and 0.1, so that all spots of a class have the same and ends read well. A reading at an end counts above it, 1 below.
 *
 * @param width of a step [Rf]
 * @param first the number of the first step, counted from the start line; it begins at first·width
 * @param counts of each step from the first to the last with a reading
 * @see "FreedmanDiaconis1981"
 */
public record ReadingHistogram(double width, int first, List<Integer> counts) {
    private static final double[] WIDTHS = {0.01, 0.02, 0.05, 0.1};
    /** A reading written with two decimals may lie this far below its end in binary. */
    private static final double ROUNDING = 1e-9;

    /** Keeps its own copy. */
    public ReadingHistogram {
        counts = List.copyOf(counts);
    }

    /** The width that all spots share [Rf]; spots with fewer than two readings say nothing. */
    static double width(List<double[]> spots) {
        double[] wished = spots.stream()
                .filter(each -> each.length > 1)
                .mapToDouble(ReadingHistogram::wished)
                .sorted()
                .toArray();
        double middle = wished.length == 0 ? 0 : new Percentile(50).evaluate(wished);
        double best = WIDTHS[0];
        for (double width : WIDTHS) {
            if (Math.abs(Math.log(width / Math.max(middle, WIDTHS[0])))
                    < Math.abs(Math.log(best / Math.max(middle, WIDTHS[0])))) {
                best = width;
            }
        }
        return best;
    }

    private static double wished(double[] readings) {
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        percentile.setData(readings);
        return 2 * (percentile.evaluate(75) - percentile.evaluate(25)) / Math.cbrt(readings.length);
    }

    /** Of the readings of a spot, one or more. */
    static ReadingHistogram of(double[] readings, double width) {
        int steps = (int) Math.round(1 / width);
        int[] at = Arrays.stream(readings)
                .mapToInt(rf -> Math.min(steps - 1, (int) Math.floor(rf / width + ROUNDING)))
                .sorted()
                .toArray();
        List<Integer> counts = new ArrayList<>();
        for (int step = at[0]; step <= at[at.length - 1]; step++) {
            int here = step;
            counts.add((int) Arrays.stream(at).filter(each -> each == here).count());
        }
        return new ReadingHistogram(width, at[0], counts);
    }
}
