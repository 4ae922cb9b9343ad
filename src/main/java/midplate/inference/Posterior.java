package midplate.inference;

import java.util.Arrays;
import java.util.List;

/**
 * Bayes' rule on a grid: prior times likelihoods, for one spot. Only nodes that still matter are kept.
 *
 * <p>The likelihoods are tabulated once for each reading; shifts move η of a plate's readings, so that the error shared by
 * a plate can be tried out without tabulating again.
 */
final class Posterior {
    /** Nodes lighter than this share of the heaviest are dropped [1]. */
    private static final double NEGLIGIBLE = 1e-4;
    /** A wide cloud needs no more points than about these. */
    private static final int ENOUGH = 600;

    private final double[] c;
    private final double[] s;
    private final double[] prior;

    private Posterior(double[] c, double[] s, double[] prior) {
        this.c = c;
        this.s = s;
        this.prior = prior;
    }

    /** The nodes of a grid that matter under some weights, which are their prior. */
    static Posterior over(TraitGrid grid, double[] prior) {
        int[] kept = kept(prior);
        double[] c = new double[kept.length];
        double[] s = new double[kept.length];
        double[] weight = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            c[i] = grid.c(kept[i]);
            s[i] = grid.s(kept[i]);
            weight[i] = prior[kept[i]];
        }
        return new Posterior(c, s, weight);
    }

    /** A result: the unnormalized sum, which is the evidence, and the weights, which sum to it. */
    record Weighed(double evidence, double[] weights) {}

    /**
     * Prior times the likelihoods of some readings.
     *
     * @param likelihoods one table over the marks of η for each reading
     * @param strengths G of each reading's plate [ln units]
     * @param shifts error of each reading's plate [ln units]
     */
    Weighed weigh(List<double[]> likelihoods, double[] strengths, double[] shifts) {
        double[] weights = prior.clone();
        for (int r = 0; r < strengths.length; r++) {
            double[] likelihood = likelihoods.get(r);
            double strength = strengths[r];
            double shift = shifts[r];
            for (int node = 0; node < weights.length; node++) {
                weights[node] *= likelihood[LogitScale.mark(c[node] + s[node] * strength + shift)];
            }
        }
        double evidence = 0;
        for (double weight : weights) {
            evidence += weight;
        }
        return new Weighed(evidence, weights);
    }

    /** The nodes that matter under some weights, with their prior. */
    Posterior lightened(double[] weights) {
        int[] kept = kept(weights);
        double[] keptC = new double[kept.length];
        double[] keptS = new double[kept.length];
        double[] keptPrior = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            keptC[i] = c[kept[i]];
            keptS[i] = s[kept[i]];
            keptPrior[i] = prior[kept[i]];
        }
        return new Posterior(keptC, keptS, keptPrior);
    }

    /** The nodes with their prior as weights. */
    TraitCloud priorCloud() {
        return new TraitCloud(c, s, TraitPrior.normalized(prior.clone())).merged(ENOUGH);
    }

    /** The nodes that matter, with normalized weights. */
    TraitCloud cloud(Weighed weighed) {
        int[] kept = kept(weighed.weights());
        double[] keptC = new double[kept.length];
        double[] keptS = new double[kept.length];
        double[] keptWeight = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            keptC[i] = c[kept[i]];
            keptS[i] = s[kept[i]];
            keptWeight[i] = weighed.weights()[kept[i]];
        }
        return new TraitCloud(keptC, keptS, TraitPrior.normalized(keptWeight)).merged(ENOUGH);
    }

    private static int[] kept(double[] weights) {
        double heaviest = 0;
        for (double weight : weights) {
            heaviest = Math.max(heaviest, weight);
        }
        int[] kept = new int[weights.length];
        int count = 0;
        for (int node = 0; node < weights.length; node++) {
            if (weights[node] > 0 && weights[node] >= NEGLIGIBLE * heaviest) {
                kept[count++] = node;
            }
        }
        return Arrays.copyOf(kept, count);
    }
}
