package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.chemistry.MonotoneCubic;
import midplate.inference.ReadingTable;
import midplate.inference.Series;

/**
 * What a compound would read at any ratio of hexane and ethyl acetate, taken as the truth: a monotone cubic in ln(% + 1)
 * through the running maxima of its own readings, seven or more of them with 0 and 100 % among them.
 *
 * @see "FritschButland1984"
 */
final class TrueCurve {
    private static final int LEAST_READINGS = 7;
    private static final double GRID_STEP = 0.5;
    private static final int GRID_SIZE = 201;

    private final Series series;
    private final MonotoneCubic curve;
    private final List<TrialReading> readings;
    private final boolean[] inWindow = new boolean[GRID_SIZE];

    private TrueCurve(Series series, MonotoneCubic curve, List<TrialReading> readings) {
        this.series = series;
        this.curve = curve;
        this.readings = List.copyOf(readings);
        for (int i = 0; i < GRID_SIZE; i++) {
            inWindow[i] = inWindow(i * GRID_STEP);
        }
    }

    /** The curves of all series with readings enough, in the order of the table. */
    static List<TrueCurve> of(ReadingTable table) {
        List<TrueCurve> curves = new ArrayList<>();
        for (int row = 0; row < table.series().size(); row++) {
            double[] rfs = table.row(row);
            List<double[]> points = new ArrayList<>();
            List<TrialReading> readings = new ArrayList<>();
            double highest = 0;
            for (int i = 0; i < rfs.length; i++) {
                if (!Double.isNaN(rfs[i])) {
                    highest = Math.max(highest, rfs[i]);
                    points.add(new double[] {table.percents()[i], highest});
                    readings.add(new TrialReading(table.pair(), table.percents()[i], rfs[i]));
                }
            }
            boolean whole =
                    points.size() >= LEAST_READINGS && points.get(0)[0] == 0 && points.get(points.size() - 1)[0] == 100;
            if (whole) {
                curves.add(through(table.series().get(row), points, readings));
            }
        }
        return List.copyOf(curves);
    }

    private static TrueCurve through(Series series, List<double[]> points, List<TrialReading> readings) {
        double[] x = points.stream().mapToDouble(p -> place(p[0])).toArray();
        double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
        return new TrueCurve(series, MonotoneCubic.through(x, y), readings);
    }

    private static double place(double percent) {
        return Math.log(percent + 1);
    }

    Series series() {
        return series;
    }

    /** The readings behind it as measured, by rising percentage. */
    List<TrialReading> readings() {
        return readings;
    }

    /** Rf [1] at a percentage of ethyl acetate [% v/v]. */
    double rf(double percent) {
        return curve.at(place(percent));
    }

    /** Whether Rf is 0.2 to 0.8 there. */
    boolean inWindow(double percent) {
        double rf = rf(percent);
        return rf >= 0.2 && rf <= 0.8;
    }

    /** Whether some percentage, in steps of 0.5, puts all of them into the window. */
    static boolean possible(List<TrueCurve> spots) {
        for (int i = 0; i < GRID_SIZE; i++) {
            int at = i;
            if (spots.stream().allMatch(spot -> spot.inWindow[at])) {
                return true;
            }
        }
        return false;
    }
}
