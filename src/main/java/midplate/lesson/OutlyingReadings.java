package midplate.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Readings far from the other ones of their spot: more than 3.5 scales from the median, where the scale is 1.4826 times the median of the
 * distances from it, as wide as a standard deviation of normal errors (the rule of Iglewicz and Hoaglin, from memory, high confidence), and at
 * least the 0.01 to which an Rf is written. Spots with fewer than {@value #LEAST} readings have none.
 *
 * @see "IglewiczHoaglin1993"
 */
final class OutlyingReadings {
    /** Fewest readings among which one can be far off (own choice). */
    static final int LEAST = 6;

    private static final double SCALES = 3.5;
    private static final double NORMAL = 1.4826;
    private static final double WRITTEN_TO = 0.01;

    private OutlyingReadings() {}

    /** Those far off, in their order. */
    static List<ClassReading> in(int spots, List<ClassReading> readings) {
        double[] median = new double[spots];
        double[] reach = new double[spots];
        for (int s = 0; s < spots; s++) {
            double[] all = of(s, readings);
            median[s] = middle(all);
            double middle = median[s];
            double scale = NORMAL
                    * middle(Arrays.stream(all).map(rf -> Math.abs(rf - middle)).toArray());
            reach[s] = all.length < LEAST ? 1 : SCALES * Math.max(scale, WRITTEN_TO);
        }
        List<ClassReading> found = new ArrayList<>();
        for (ClassReading each : readings) {
            if (Math.abs(each.rf() - median[each.spot()]) > reach[each.spot()]) {
                found.add(each);
            }
        }
        return List.copyOf(found);
    }

    /** The readings of a spot [Rf]. */
    static double[] of(int spot, List<ClassReading> readings) {
        return readings.stream()
                .filter(each -> each.spot() == spot)
                .mapToDouble(ClassReading::rf)
                .toArray();
    }

    /** The median; NaN of nothing. */
    static double middle(double[] values) {
        return new Median().evaluate(values);
    }
}
