package midplate.column;

import java.util.Arrays;

/**
 * On which side of the target each other spot leaves, as the medians of its band and of the target's say, and in how many cases it
 * does so. Fractions are kept where the plan shows the target: a case in which the two change places parts them, but not there, and
 * whoever pools by the plan would keep the wrong one. So such a case does not count as a pure cut. Two spots of which nothing is
 * known but that they were seen at one place stand in either order equally often, whatever column and eluent do to them, so that no
 * chance above one half is told for them.
 */
final class LeavingOrder {
    /**
     * Where two spots leave in the order told in fewer of the cases, nothing shows their order [1]: two that were read alike do in
     * one half, give or take what the plate model makes of rounding; own.
     */
    static final double SHOWN = 0.75;

    /** The same where one of the two may lie nearly anywhere: what compounds do in general is no sign of what this one does; own. */
    static final double SHOWN_VAGUE = 0.9;
    /** A spot may lie nearly anywhere where its 90 % band is wider at the ratio that puts it where plates part best [1 in Rf]; own. */
    static final double VAGUE = 0.6;

    private final Bands bands;
    private final int target;
    private final int stride;
    /** By spot: 1 where it leaves after the target, −1 before it, 0 for the target itself. */
    private final int[] sides;

    private LeavingOrder(Bands bands, int target, int stride, int[] sides) {
        this.bands = bands;
        this.target = target;
        this.stride = stride;
        this.sides = sides;
    }

    /** The order over every so many-th case. */
    static LeavingOrder of(Bands bands, int spots, int target, int stride) {
        int[] sides = new int[spots];
        double wanted = median(bands, target, stride);
        for (int spot = 0; spot < spots; spot++) {
            if (spot != target) {
                sides[spot] = median(bands, spot, stride) > wanted ? 1 : -1;
            }
        }
        return new LeavingOrder(bands, target, stride, sides);
    }

    private static double median(Bands bands, int spot, int stride) {
        double[] middles = new double[(bands.cases() + stride - 1) / stride];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = bands.middleMl(spot, i * stride);
        }
        Arrays.sort(middles);
        int half = middles.length / 2;
        return middles.length % 2 == 1 ? middles[half] : (middles[half - 1] + middles[half]) / 2;
    }

    /** Whether all spots leave on their side in a case. */
    boolean holds(int oneCase) {
        for (int spot = 0; spot < sides.length; spot++) {
            if (spot != target && !holds(spot, oneCase)) {
                return false;
            }
        }
        return true;
    }

    /** Whether one other spot does. */
    boolean holds(int other, int oneCase) {
        return sides[other] * (bands.middleMl(other, oneCase) - bands.middleMl(target, oneCase)) > 0;
    }

    /** The share of cases in which it does [1]. */
    double share(int other) {
        int held = 0;
        int seen = 0;
        for (int one = 0; one < bands.cases(); one += stride) {
            held += holds(other, one) ? 1 : 0;
            seen++;
        }
        return (double) held / seen;
    }
}
