package midplate.inference;

import java.util.Arrays;
import java.util.List;

/**
 * Bayes' rule on a grid: prior times likelihoods, for one spot. Only columns, nodes of one c and one s, that still matter are kept;
 * what t may be in them comes in only where a reading depends on it.
 *
 * <p>The likelihoods are tabulated once for each reading; shifts move η of a plate's readings, so that the error shared by
 * a plate can be tried out without tabulating again.
 */
final class Posterior {
    /** Columns lighter than this share of the heaviest are dropped [1]. */
    private static final double NEGLIGIBLE = 1e-5;
    /** A column that cannot reach this share of the heaviest, whatever its t, is not looked into [1]. */
    private static final double LOST = 1e-6;
    /** It is worth looking for those where there are more columns than so many. */
    private static final int MANY = 500;

    private final GivenT given;
    /** Where each column stands on the grid. */
    private final int[] column;

    private final double[] c;
    private final double[] s;
    private final double[] prior;

    private Posterior(GivenT given, int[] column, double[] c, double[] s, double[] prior) {
        this.given = given;
        this.column = column;
        this.c = c;
        this.s = s;
        this.prior = prior;
    }

    /**
     * The columns of a grid that matter.
     *
     * @param prior the weight of each column, c running faster than s
     * @param given what t may be in each
     */
    static Posterior over(TraitGrid grid, double[] prior, GivenT given) {
        int[] kept = kept(prior);
        double[] c = new double[kept.length];
        double[] s = new double[kept.length];
        double[] weight = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            c[i] = grid.cAt(kept[i] % grid.cCount());
            s[i] = grid.sAt(kept[i] / grid.cCount());
            weight[i] = prior[kept[i]];
        }
        return new Posterior(given, kept, c, s, weight);
    }

    /**
     * A result: the unnormalized sum, which is the evidence, the weights of the columns, which sum to it, and the sums of weight times t and
     * times t² in each.
     */
    record Weighed(double evidence, double[] weights, double[] sumsT, double[] sumsSquareT) {}

    /**
     * Prior times the likelihoods of some readings.
     *
     * @param likelihoods one table over the marks of η for each reading
     * @param climbs what the eluent of each reading's plate does
     * @param shifts error of each reading's plate [ln units]
     */
    Weighed weigh(List<double[]> likelihoods, Climb[] climbs, double[] shifts) {
        double[] weights = prior.clone();
        int[] early = new int[climbs.length];
        int count = 0;
        for (int r = 0; r < climbs.length; r++) {
            if (given.differs() && climbs[r].early() != 0) {
                early[count++] = r;
            } else {
                weighAlike(weights, likelihoods.get(r), climbs[r], shifts[r]);
            }
        }
        double[] sumsT = new double[weights.length];
        double[] sumsSquareT = new double[weights.length];
        if (count > 0) {
            EarlyReadings readings = new EarlyReadings(Arrays.copyOf(early, count), likelihoods, climbs, shifts);
            readings.weigh(weights, sumsT, sumsSquareT);
        } else {
            for (int i = 0; i < weights.length; i++) {
                sumsT[i] = weights[i] * given.mean(column[i]);
                sumsSquareT[i] = weights[i] * given.square(column[i]);
            }
        }
        double evidence = 0;
        for (double weight : weights) {
            evidence += weight;
        }
        return new Weighed(evidence, weights, sumsT, sumsSquareT);
    }

    /** A reading at a ratio where all compounds climb alike. */
    private void weighAlike(double[] weights, double[] likelihood, Climb climb, double shift) {
        double hold = climb.hold();
        double strength = climb.strength();
        for (int i = 0; i < weights.length; i++) {
            weights[i] *= likelihood[LogitScale.mark(hold * c[i] + s[i] * strength + shift)];
        }
    }

    /** Readings at ratios where some compounds climb before others. */
    private final class EarlyReadings {
        private final double[][] likelihood;
        private final Climb[] climb;
        private final double[] shift;
        /** By how many marks each t is ahead, for each reading. */
        private final double[][] ahead;

        EarlyReadings(int[] which, List<double[]> likelihoods, Climb[] climbs, double[] shifts) {
            likelihood = new double[which.length][];
            climb = new Climb[which.length];
            shift = new double[which.length];
            ahead = new double[which.length][given.count()];
            for (int r = 0; r < which.length; r++) {
                likelihood[r] = likelihoods.get(which[r]);
                climb[r] = climbs[which[r]];
                shift[r] = shifts[which[r]];
                for (int k = 0; k < given.count(); k++) {
                    ahead[r][k] = given.t(k) * climb[r].early() * LogitScale.PER_UNIT;
                }
            }
        }

        void weigh(double[] weights, double[] sumsT, double[] sumsSquareT) {
            double most = weights.length > MANY ? most() : Double.POSITIVE_INFINITY;
            double heaviest = 0;
            double[] places = new double[climb.length];
            double[] products = new double[given.count()];
            for (int i = 0; i < weights.length; i++) {
                if (weights[i] * most < LOST * heaviest) {
                    weights[i] = 0;
                    continue;
                }
                for (int r = 0; r < places.length; r++) {
                    places[r] = (climb[r].eta(c[i], s[i], 0) + shift[r]) * LogitScale.PER_UNIT + LogitScale.FIRST;
                }
                int first = given.first(column[i]);
                int end = given.end(column[i]);
                for (int k = first; k < end; k++) {
                    products[k] = given.weight(column[i], k) * likelihood[0][LogitScale.held(places[0] + ahead[0][k])];
                }
                for (int r = 1; r < places.length; r++) {
                    for (int k = first; k < end; k++) {
                        products[k] *= likelihood[r][LogitScale.held(places[r] + ahead[r][k])];
                    }
                }
                double sum = 0;
                double sumT = 0;
                double sumSquareT = 0;
                for (int k = first; k < end; k++) {
                    double t = given.t(k);
                    sum += products[k];
                    sumT += products[k] * t;
                    sumSquareT += products[k] * t * t;
                }
                sumsT[i] = weights[i] * sumT;
                sumsSquareT[i] = weights[i] * sumSquareT;
                weights[i] *= sum;
                heaviest = Math.max(heaviest, weights[i]);
            }
        }

        /** No column is multiplied by more. */
        private double most() {
            double most = 1;
            for (double[] each : likelihood) {
                double greatest = 0;
                for (double one : each) {
                    greatest = Math.max(greatest, one);
                }
                most *= greatest;
            }
            return most;
        }
    }

    /** The columns that matter under some weights, with their prior. */
    Posterior lightened(double[] weights) {
        int[] kept = kept(weights);
        int[] keptColumn = new int[kept.length];
        double[] keptC = new double[kept.length];
        double[] keptS = new double[kept.length];
        double[] keptPrior = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            keptColumn[i] = column[kept[i]];
            keptC[i] = c[kept[i]];
            keptS[i] = s[kept[i]];
            keptPrior[i] = prior[kept[i]];
        }
        return new Posterior(given, keptColumn, keptC, keptS, keptPrior);
    }

    /** The columns with their prior as weights. */
    TraitCloud priorCloud() {
        return cloud(weigh(List.of(), new Climb[0], new double[0]));
    }

    /** The columns that matter, with normalized weights. */
    TraitCloud cloud(Weighed weighed) {
        double[] weights = weighed.weights();
        int[] kept = kept(weights);
        TraitCloud.Points columns = TraitCloud.Points.of(kept.length);
        double[] deviations = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            int one = kept[i];
            double mean = weighed.sumsT()[one] / weights[one];
            columns.c()[i] = c[one];
            columns.s()[i] = s[one];
            columns.t()[i] = mean;
            columns.weight()[i] = weights[one];
            deviations[i] = Math.sqrt(Math.max(0, weighed.sumsSquareT()[one] / weights[one] - mean * mean));
        }
        TraitPrior.normalized(columns.weight());
        return given.differs() ? TraitCloud.ofGrid(columns, deviations) : TraitCloud.ofGrid(columns);
    }

    private static int[] kept(double[] weights) {
        double heaviest = 0;
        for (double weight : weights) {
            heaviest = Math.max(heaviest, weight);
        }
        double least = Math.max(Double.MIN_VALUE, NEGLIGIBLE * heaviest);
        int[] kept = new int[weights.length];
        int count = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] >= least) {
                kept[count++] = i;
            }
        }
        return Arrays.copyOf(kept, count);
    }
}
