package midplate.inference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * What is known of one spot as few weighted points, for weighing thousands of simulated plates. Points are taken evenly by the
 * square root of the weights and carry what then lacks, so that unlikely traits have points enough once a reading speaks for
 * them. For one thread.
 */
final class SpotParticles {
    /** Points of a spot. */
    private static final int COUNT = 512;
    /** A point lighter than this beside the heaviest is left out of a sum. */
    private static final double NEGLIGIBLE = 1e-4;

    private static final double HALF = 0.5;

    private final PairModel model;
    private final TraitCloud cloud;
    private final int[] point;
    private final double[] weight;
    /** The chance to read inside, by point, then by share of the plate after the round. */
    private final double[] inside;

    private final double[][] rf;
    private final int next;
    private final ReadingLikelihoods likelihoods;
    /** On the ruler of the likelihoods, by share and point. */
    private final Map<Double, int[]> places = new HashMap<>();

    SpotParticles(Knowledge knowledge, int spot, WindowChances window, double[] next, ReadingLikelihoods likelihoods) {
        this.model = knowledge.model();
        this.likelihoods = likelihoods;
        this.cloud = knowledge.cloud(spot);
        this.point = points(cloud);
        this.weight = weights(cloud, point);
        this.next = next.length;
        this.inside = new double[point.length * next.length];
        this.rf = new double[next.length][point.length];
        double[] shifts = knowledge.nextShifts();
        double[] shiftWeights = knowledge.nextShiftWeights();
        for (int p = 0; p < next.length; p++) {
            WindowChances.Row row = window.at(next[p]);
            for (int i = 0; i < point.length; i++) {
                double eta = eta(i, row.climb());
                rf[p][i] = model.rf()[LogitScale.mark(eta)];
                for (int h = 0; h < shifts.length; h++) {
                    inside[i * next.length + p] += shiftWeights[h] * row.inside()[LogitScale.mark(eta + shifts[h])];
                }
            }
        }
    }

    private static double[] tempered(TraitCloud cloud) {
        double[] tempered = new double[cloud.size()];
        for (int i = 0; i < tempered.length; i++) {
            tempered[i] = Math.sqrt(cloud.weight(i));
        }
        return tempered;
    }

    /** Points at even steps of the summed square roots of the weights; all of them where they are few. */
    private static int[] points(TraitCloud cloud) {
        double[] summed = tempered(cloud);
        if (summed.length <= COUNT) {
            int[] all = new int[summed.length];
            Arrays.setAll(all, i -> i);
            return all;
        }
        for (int i = 1; i < summed.length; i++) {
            summed[i] += summed[i - 1];
        }
        int[] points = new int[COUNT];
        int at = 0;
        for (int k = 0; k < COUNT; k++) {
            double share = (k + HALF) / COUNT * summed[summed.length - 1];
            while (at < summed.length - 1 && summed[at] <= share) {
                at++;
            }
            points[k] = at;
        }
        return points;
    }

    /** What each point stands for: all of its weight where every point was taken, what tempering took from it where some were. */
    private static double[] weights(TraitCloud cloud, int[] point) {
        double[] weights = new double[point.length];
        for (int i = 0; i < weights.length; i++) {
            double its = cloud.weight(point[i]);
            weights[i] = cloud.size() <= COUNT ? its : Math.sqrt(its);
        }
        return TraitPrior.normalized(weights);
    }

    private double eta(int i, Climb climb) {
        return climb.eta(cloud.c(point[i]), cloud.s(point[i]), cloud.t(point[i]));
    }

    /** The weight of each point after readings [1, unnormalized] at some shares of the strong solvent [% v/v]. */
    double[] weighed(double[] percents, double[] readings) {
        double[] weights = weight.clone();
        for (int r = 0; r < readings.length; r++) {
            double[] likelihood = likelihoods.at(percents[r], ReadingLikelihoods.hundredth(readings[r]));
            int[] at = places(percents[r]);
            for (int i = 0; i < weights.length; i++) {
                weights[i] *= likelihood[at[i]];
            }
        }
        return weights;
    }

    /** Adds the weights times the chances to read inside to a sum for each share of the next plate; returns the sum of the weights. */
    double addInside(double[] weights, double[] sums) {
        double heaviest = 0;
        for (double each : weights) {
            heaviest = Math.max(heaviest, each);
        }
        double all = 0;
        for (int i = 0; i < weights.length; i++) {
            double each = weights[i];
            if (each > NEGLIGIBLE * heaviest) {
                all += each;
                int from = i * next;
                for (int p = 0; p < next; p++) {
                    sums[p] += each * inside[from + p];
                }
            }
        }
        return all;
    }

    /** How the true Rf is spread over even bins on the next plate of that place among the shares, for points that read inside. */
    double[] spread(double[] weights, int share, int bins) {
        double[] spread = new double[bins];
        for (int i = 0; i < weights.length; i++) {
            spread[Math.min(bins - 1, (int) (rf[share][i] * bins))] += weights[i] * inside[i * next + share];
        }
        double sum = Arrays.stream(spread).sum();
        return sum > 0 ? TraitPrior.normalized(spread) : spread;
    }

    private int[] places(double percent) {
        return places.computeIfAbsent(percent, share -> {
            Climb climb = model.climb(share);
            int[] its = new int[point.length];
            for (int i = 0; i < its.length; i++) {
                its[i] = ReadingLikelihoods.place(eta(i, climb));
            }
            return its;
        });
    }
}
