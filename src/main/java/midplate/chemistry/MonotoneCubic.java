package midplate.chemistry;

import java.util.Arrays;

/**
 * A smooth curve through points that never overshoots them: between two points it stays between their values, so it is
 * monotone where the points are.
 *
 * <p>Piecewise cubic Hermite polynomials; the slope at an inner point is the harmonic mean of its two neighbouring slopes,
 * weighted by the lengths of the other interval, and 0 where they differ in sign; at the ends a three-point formula, cut so
 * that the shape holds. Outside the points the value of the nearest end is kept.
 *
 * @see "FritschButland1984"
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCubic(double[] x, double[] y, double[] slope) {
        this.x = x;
        this.y = y;
        this.slope = slope;
    }

    /**
     * The curve through points.
     *
     * @param x places, rising strictly, at least two, finite
     * @param y values there, as many, finite
     * @throws IllegalArgumentException when they are not
     */
    public static MonotoneCubic through(double[] x, double[] y) {
        if (x.length != y.length || x.length < 2) {
            throw new IllegalArgumentException(
                    "Came " + x.length + " places and " + y.length + " values; allowed are two or more of each.");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i]) || (i > 0 && !(x[i] > x[i - 1]))) {
                throw new IllegalArgumentException("Point " + i + " (" + x[i] + ", " + y[i]
                        + "): places must rise strictly and all numbers be finite. Sort them and drop repeats.");
            }
        }
        return new MonotoneCubic(x.clone(), y.clone(), slopes(x, y));
    }

    /** The value at a place; beyond the ends that of the nearest end. */
    public double at(double place) {
        int last = x.length - 1;
        if (!(place > x[0])) {
            return y[0];
        }
        if (place >= x[last]) {
            return y[last];
        }
        int found = Arrays.binarySearch(x, place);
        int i = found >= 0 ? found : -found - 2;
        double h = x[i + 1] - x[i];
        double t = (place - x[i]) / h;
        double u = 1 - t;
        return y[i] * (1 + 2 * t) * u * u
                + y[i + 1] * (3 - 2 * t) * t * t
                + h * (slope[i] * t * u * u - slope[i + 1] * t * t * u);
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] h = new double[n - 1];
        double[] chord = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            h[i] = x[i + 1] - x[i];
            chord[i] = (y[i + 1] - y[i]) / h[i];
        }
        double[] slope = new double[n];
        if (n == 2) {
            Arrays.fill(slope, chord[0]);
            return slope;
        }
        for (int i = 1; i < n - 1; i++) {
            if (chord[i - 1] * chord[i] > 0) {
                double before = 2 * h[i] + h[i - 1];
                double after = h[i] + 2 * h[i - 1];
                slope[i] = (before + after) / (before / chord[i - 1] + after / chord[i]);
            }
        }
        slope[0] = end(h[0], h[1], chord[0], chord[1]);
        slope[n - 1] = end(h[n - 2], h[n - 3], chord[n - 2], chord[n - 3]);
        return slope;
    }

    private static double end(double near, double far, double nearChord, double farChord) {
        double slope = ((2 * near + far) * nearChord - near * farChord) / (near + far);
        if (slope * nearChord <= 0) {
            return 0;
        }
        boolean turns = nearChord * farChord < 0;
        return turns && Math.abs(slope) > 3 * Math.abs(nearChord) ? 3 * nearChord : slope;
    }
}
