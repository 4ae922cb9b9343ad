package midplate.chemistry;

import java.util.Arrays;

/**
 * How evenly spots spread over a plate, as one number from 0 (all at the ends, or some together) to 1 (equal gaps).
 *
 * <p>The order in which the spots come does not matter. No spot, or an Rf outside 0 to 1, is refused.
 *
 * @see "Komsta2007"
 */
public final class SpotSpread {
    private static final Range RF = Range.closed(0, 1);

    private SpotSpread() {}

    /**
     * R_U [1], retention uniformity: {@code R_U = 1 − √(6(n+1)/(n(2n+1))·Σ(Rf_i − i/(n+1))²)}.
     *
     * <p>Rf_i [1] sorted upwards, i from 1 to n; n [1] number of spots, 1 or more. Two spots together lower it a little.
     *
     * @param rf Rf [1] of each spot, 0 to 1, in any order
     * @see "Komsta2007"
     */
    public static double uniformity(double... rf) {
        double[] sorted = sorted(rf);
        int n = sorted.length;
        double squares = 0;
        for (int i = 1; i <= n; i++) {
            double away = sorted[i - 1] - i / (n + 1.0);
            squares += away * away;
        }
        return 1 - Math.sqrt(6.0 * (n + 1) / (n * (2.0 * n + 1)) * squares);
    }

    /**
     * R_D [1], retention distance: {@code R_D = ((n+1)^(n+1)·Π(Rf_{i+1} − Rf_i))^(1/n)}, i from 0 to n, with
     * {@code Rf_0 = 0} and {@code Rf_{n+1} = 1}.
     *
     * <p>Rf_i [1] sorted upwards; n [1] number of spots, 1 or more. Two spots together, or one at an end, make it 0.
     *
     * @param rf Rf [1] of each spot, 0 to 1, in any order
     * @see "Komsta2007"
     */
    public static double distance(double... rf) {
        double[] sorted = sorted(rf);
        int n = sorted.length;
        double logProduct = (n + 1) * Math.log(n + 1.0);
        double before = 0;
        for (int i = 0; i <= n; i++) {
            double here = i < n ? sorted[i] : 1;
            logProduct += Math.log(here - before);
            before = here;
        }
        return Math.exp(logProduct / n);
    }

    private static double[] sorted(double... rf) {
        Range.rightOpen(1, Double.POSITIVE_INFINITY).require("spots", rf.length);
        double[] sorted = rf.clone();
        for (int i = 0; i < sorted.length; i++) {
            RF.require("rf[" + i + "]", sorted[i]);
        }
        Arrays.sort(sorted);
        return sorted;
    }
}
