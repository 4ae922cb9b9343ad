package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The shares [% v/v] at which curves are worked out, so that straight lines in ln(p + 1) between them miss a chance by no more
 * than about 0.005.
 *
 * <p>Regular steps come first. Then the middle of each is worked out, and taken in where the line misses it by more than
 * {@value #BOUND}; so are the middles of its halves, at most {@value #DEEPEST} times. A chance may bend sharply: after good readings
 * in {@code automated} hardly anything is left open, and each spot comes into the window at a share of its own. The chance of
 * keeping pairs apart, counted on drawn plates, has steps of its own that stay missed by up to about 0.015.
 */
final class CurvePoints {
    /** From, by, to [% v/v]: finest where the strength climbs most. */
    private static final double[][] STEPS = {{0, 0.1, 10}, {10, 0.5, 20}, {20, 1, 100}};
    /** A line that misses the middle by more gets a further point [1]. */
    private static final double BOUND = 0.004;
    /** Shares are told to four decimals, so they are worked out at these. */
    private static final double WRITTEN = 1e4;

    private static final int DEEPEST = 5;
    private static final List<Double> REGULAR = steps();

    private final List<DoubleUnaryOperator> chances;
    private final List<Double> points = new ArrayList<>();

    private CurvePoints(List<DoubleUnaryOperator> chances) {
        this.chances = chances;
    }

    /** The shares, rising, for chances by the share; these should remember what they worked out. */
    static List<Double> of(List<DoubleUnaryOperator> chances) {
        List<Double> regular = regular();
        CurvePoints curve = new CurvePoints(chances);
        for (int i = 0; i + 1 < regular.size(); i++) {
            curve.points.add(regular.get(i));
            curve.halve(regular.get(i), regular.get(i + 1), DEEPEST);
        }
        curve.points.add(regular.get(regular.size() - 1));
        return curve.points;
    }

    /** The regular steps alone. */
    static List<Double> regular() {
        return REGULAR;
    }

    private static List<Double> steps() {
        List<Double> percents = new ArrayList<>();
        for (double[] stretch : STEPS) {
            for (int step = 0; stretch[0] + step * stretch[1] < stretch[2] - 1e-9; step++) {
                percents.add(Math.round((stretch[0] + step * stretch[1]) * 100) / 100.0);
            }
        }
        percents.add(100.0);
        return List.copyOf(percents);
    }

    private void halve(double low, double high, int deep) {
        if (deep == 0) {
            return;
        }
        double middle = Math.round((low + high) / 2 * WRITTEN) / WRITTEN;
        double part = Math.log((middle + 1) / (low + 1)) / Math.log((high + 1) / (low + 1));
        boolean missed = chances.stream().anyMatch(chance -> {
            double line = (1 - part) * chance.applyAsDouble(low) + part * chance.applyAsDouble(high);
            return Math.abs(chance.applyAsDouble(middle) - line) > BOUND;
        });
        if (missed) {
            halve(low, middle, deep - 1);
            points.add(middle);
            halve(middle, high, deep - 1);
        }
    }
}
