package midplate.lesson;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Readings far from where their spot and their plate have them: more than 3.5 scales off, after the shift of the whole plate is taken away ({@link
 * PlateShifts}). The scale is 1.4826 times the median of the distances, as wide as a standard deviation of normal errors (the rule of Iglewicz and
 * Hoaglin, from memory, high confidence); readings that set the shift of their plate have no distance and are left out of it; and it is at least what
 * is usual on one plate. Spots with fewer than {@value #LEAST} readings have none. On a plate with one reading nothing tells the plate
 * from the reading, and the class's scatter holds both.
 *
 * @see "IglewiczHoaglin1993"
 */
final class OutlyingReadings {
    /** Fewest readings among which one can be far off (own choice). */
    static final int LEAST = 6;

    private static final double SCALES = 3.5;
    private static final double NORMAL = 1.4826;
    /** What readings scatter by on one plate [Rf]: the upper end of the usual; from memory, high confidence. */
    private static final double USUAL_ON_ONE_PLATE = 0.02;
    /** A distance below this is none [Rf]. */
    private static final double NOTHING = 1e-9;

    private OutlyingReadings() {}

    /** Those far off, in their order. */
    static List<ClassReading> in(int spots, List<ClassReading> readings) {
        PlateShifts shifts = PlateShifts.of(spots, readings);
        double[] reach = new double[spots];
        for (int s = 0; s < spots; s++) {
            int spot = s;
            double[] off = readings.stream()
                    .filter(each -> each.spot() == spot)
                    .mapToDouble(each -> each.rf() - shifts.expected(each))
                    .toArray();
            reach[s] = off.length < LEAST ? 1 : reach(off, USUAL_ON_ONE_PLATE);
        }
        return readings.stream()
                .filter(each -> Math.abs(each.rf() - shifts.expected(each)) > reach[each.spot()])
                .toList();
    }

    /** How far off is not yet far: of distances, with the least that their scale is taken for. */
    static double reach(double[] off, double least) {
        double[] distances =
                Arrays.stream(off).map(Math::abs).filter(each -> each > NOTHING).toArray();
        return SCALES * (distances.length == 0 ? least : Math.max(least, NORMAL * middle(distances)));
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
