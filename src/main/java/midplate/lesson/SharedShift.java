package midplate.lesson;

import java.util.Optional;
import midplate.chemistry.RetentionFactor;

/**
 * Scatter of a class where each spot was read once on a plate. What a plate does to one spot it does to all of them: its error moves η
 * = ln(Rf/(1 − Rf)) of all its spots by the same p, whereas errors of reading know nothing of each other. So the covariance of two spots
 * over the plates is the variance of p, and what a spot scatters beyond that is its own.
 *
 * <p>{@code σ_p² = Σ w_st·cov(η_s, η_t)/Σ w_st} over pairs of spots s &lt; t with {@code w_st = (g_s·g_t)²·(n_st − 1)}: n_st plates have
 * both, and {@code g = Rf·(1 − Rf)}, at the mean of the spot, turns η into Rf, so that spots near a line, whose η is read poorly, count little. A spot's own
 * variance is {@code g_s²·(var(η_s) − σ_p²)} [Rf²], averaged with weights n_s − 1. With every spot on every plate and all g alike this is the two-way
 * analysis of variance without repeats (own algebra, tested against it). Anything that only some spots of a plate share counts as their
 * own.
 *
 * @param shift σ_p² [ln units squared]; below 0 where spots move against each other
 * @param own variance of a spot by itself [Rf²]
 * @param between mean over the spots of what the shift makes of them [Rf²]
 * @param plates how many have two spots or more
 * @param spots how many spots say something of it
 */
record SharedShift(double shift, double own, double between, int plates, int spots) {
    /** Least plates with two spots from which anything is told (own choice). */
    static final int LEAST_PLATES = 4;
    /** An Rf nearer to a line than this counts as this far from it [1]: η has no end there. */
    private static final double NEAREST = 0.02;
    /** Spots whose mean lies nearer to a line than this say nothing of the shift [1] (own choice). */
    private static final double LINE = 0.04;

    /** η of an Rf, not nearer to a line than it is read. */
    static double eta(double rf) {
        return RetentionFactor.logit(Math.max(NEAREST, Math.min(1 - NEAREST, rf)));
    }

    /** By how much an Rf moves with η [1]. */
    static double slope(double rf) {
        return rf * (1 - rf);
    }

    /** Whether a spot whose mean or median is there says anything of a shift. */
    static boolean isTold(double rf) {
        return slope(rf) >= slope(LINE);
    }

    /** Of what was read; empty with fewer than {@value #LEAST_PLATES} plates that have two spots. */
    static Optional<SharedShift> of(ClassTable table) {
        Columns columns = Columns.of(table);
        int both = columns.withTwo();
        double weights = 0;
        double sum = 0;
        for (int s = 0; s < table.spots(); s++) {
            for (int t = s + 1; t < table.spots(); t++) {
                double weight = columns.weight(s, t);
                if (weight > 0) {
                    weights += weight;
                    sum += weight * columns.covariance(s, t);
                }
            }
        }
        if (both < LEAST_PLATES || weights == 0) {
            return Optional.empty();
        }
        double shift = sum / weights;
        double own = 0;
        double freedom = 0;
        double between = 0;
        int told = 0;
        for (int s = 0; s < table.spots(); s++) {
            int more = columns.common(s, s) - 1;
            if (columns.isTold(s) && more > 0) {
                double square = columns.slope[s] * columns.slope[s];
                own += more * square * (columns.covariance(s, s) - shift);
                between += more * square * shift;
                freedom += more;
                told++;
            }
        }
        return Optional.of(new SharedShift(shift, own / freedom, between / freedom, both, told));
    }

    /** The mean squares that lead to these variances where every spot was read on every plate, by which their intervals are told. */
    PlateAnova anova() {
        double within = Math.max(0, own);
        return new PlateAnova(within + spots * between, plates - 1, within, (plates - 1) * (spots - 1), spots);
    }

    /** η by plate and spot, NaN where a spot was not read. */
    private record Columns(double[][] eta, double[] slope) {
        static Columns of(ClassTable table) {
            double[][] eta = new double[table.plates()][table.spots()];
            double[] slope = new double[table.spots()];
            for (int s = 0; s < table.spots(); s++) {
                double sum = 0;
                int count = 0;
                for (int i = 0; i < table.plates(); i++) {
                    double rf = table.mean(i, s).orElse(Double.NaN);
                    eta[i][s] = Double.isNaN(rf) ? rf : SharedShift.eta(rf);
                    if (!Double.isNaN(rf)) {
                        sum += rf;
                        count++;
                    }
                }
                slope[s] = count == 0 ? 0 : SharedShift.slope(sum / count);
            }
            return new Columns(eta, slope);
        }

        boolean isTold(int s) {
            return slope[s] >= SharedShift.slope(LINE);
        }

        int common(int s, int t) {
            int count = 0;
            for (double[] plate : eta) {
                count += Double.isNaN(plate[s]) || Double.isNaN(plate[t]) ? 0 : 1;
            }
            return count;
        }

        double weight(int s, int t) {
            if (!isTold(s) || !isTold(t)) {
                return 0;
            }
            double both = slope[s] * slope[t];
            return both * both * Math.max(0, common(s, t) - 1);
        }

        double covariance(int s, int t) {
            int count = common(s, t);
            double ofS = 0;
            double ofT = 0;
            for (double[] plate : eta) {
                if (!Double.isNaN(plate[s]) && !Double.isNaN(plate[t])) {
                    ofS += plate[s] / count;
                    ofT += plate[t] / count;
                }
            }
            double sum = 0;
            for (double[] plate : eta) {
                if (!Double.isNaN(plate[s]) && !Double.isNaN(plate[t])) {
                    sum += (plate[s] - ofS) * (plate[t] - ofT);
                }
            }
            return sum / (count - 1);
        }

        int withTwo() {
            int count = 0;
            for (double[] plate : eta) {
                int told = 0;
                for (int s = 0; s < plate.length; s++) {
                    told += isTold(s) && !Double.isNaN(plate[s]) ? 1 : 0;
                }
                count += told > 1 ? 1 : 0;
            }
            return count;
        }
    }
}
