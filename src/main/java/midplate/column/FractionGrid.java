package midplate.column;

import org.apache.commons.math3.special.Erf;

/**
 * The fractions of a run, and what share of a band falls into each.
 *
 * <p>A band is taken as a bell over the logarithm of the volume, start and end two standard deviations from its middle:
 * {@code μ = (ln start + ln end)/2, σ = ln(end/start)/4}. So nothing leaves before the first drop, and the band tails behind as
 * bands on silica do; over the volume itself a bell would be as steep behind as in front.
 */
final class FractionGrid {
    private static final double SIGMAS = 4;
    private static final double NARROWEST = 1e-6;
    private static final double SQRT2 = Math.sqrt(2);
    private static final double REACH = 6;
    private static final int PER_UNIT = 256;
    private static final double[] BELL = bell();

    private final double[] lnEnds;

    /**
     * Fractions from the first drop on.
     *
     * @param fractionMl volume of each [ml]
     * @param runMl eluent run [ml]; the last fraction may be shorter
     */
    FractionGrid(double fractionMl, double runMl) {
        this.lnEnds = new double[(int) count(fractionMl, runMl)];
        for (int i = 0; i < lnEnds.length; i++) {
            lnEnds[i] = Math.log(Math.min(runMl, (i + 1) * fractionMl));
        }
    }

    /** How many fractions that makes; a whole number, however many. */
    static double count(double fractionMl, double runMl) {
        return Math.max(1, Math.ceil(runMl / fractionMl - 1e-9));
    }

    int count() {
        return lnEnds.length;
    }

    /** The share of a band in each fraction [1]; what leaves later is in none. */
    double[] shares(double startMl, double endMl) {
        double[] shares = new double[lnEnds.length];
        addShares(startMl, endMl, shares);
        return shares;
    }

    /** Adds the shares of a band to others. */
    void addShares(double startMl, double endMl, double[] shares) {
        double lnStart = Math.log(Math.max(startMl, Double.MIN_NORMAL));
        double lnEnd = Math.log(Math.max(endMl, Double.MIN_NORMAL));
        double middle = (lnStart + lnEnd) / 2;
        double sigma = Math.max((lnEnd - lnStart) / SIGMAS, NARROWEST);
        double before = 0;
        for (int i = 0; i < lnEnds.length; i++) {
            double until = below((lnEnds[i] - middle) / sigma);
            shares[i] += until - before;
            before = until;
        }
    }

    /** The share of a bell below a number of its deviations; from a table, off by less than 2e-6. */
    private static double below(double z) {
        if (z <= -REACH) {
            return 0;
        }
        if (z >= REACH) {
            return 1;
        }
        double place = (z + REACH) * PER_UNIT;
        int at = (int) place;
        double part = place - at;
        return BELL[at] + part * (BELL[at + 1] - BELL[at]);
    }

    private static double[] bell() {
        double[] table = new double[(int) (2 * REACH * PER_UNIT) + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = Erf.erfc(-(i / (double) PER_UNIT - REACH) / SQRT2) / 2;
        }
        return table;
    }
}
