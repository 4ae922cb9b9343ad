package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.catalogue.PlatePair;
import midplate.catalogue.PlatePair.Bell;
import org.apache.commons.math3.stat.StatUtils;

/**
 * The spread of traits freed from the normal form: the next compound is taken to be like one of those measured. Compounds crowd
 * in classes that differ in how large they are, and days in how early they let them climb, so that a reading which says how weakly a
 * compound is held says something of the rest, too; and after a plate on which a spot ran with the front the shape of the trail is
 * most of what is known.
 *
 * <p>Each compound becomes a normal curve: mean and covariance of its traits as its readings leave them under the normal
 * spread, widened by λ times {@code n^(−1/(4 + d))} standard deviations of each of the d traits (Scott's and Silverman's rule
 * for the kernel, in c with the smaller of sd and IQR/1.349). So widened, a trait would vary by V + h² over all curves, where the
 * compounds vary by V: therefore each curve is drawn towards the mean and narrowed by {@code √(V/(V + h²))} in that trait. λ is the
 * one of seven that makes each compound's readings most likely under the curves of all the others, so nothing is tuned from outside.
 * One part in a hundred is a wide normal curve, since compounds never seen may lie outside.
 *
 * @see "Silverman1986"
 */
final class CompoundSpread {
    private static final double[] WIDENINGS = {0.3, 0.4, 0.5, 0.6, 0.7, 0.85, 1};
    private static final double UNSEEN = 0.01;
    private static final double WIDER = 2;
    private static final double QUARTILES_OF_NORMAL = 1.349;
    private static final double NEGLIGIBLE = 1e-8;
    /** Of c, s and t: a curve must not be narrower than the steps between the places at which spots are weighed. */
    private static final double[] LEAST_VARIANCE = {1e-4, 1e-4, 2.5e-3};

    private final TraitGrid grid;
    private final boolean[] differs;
    private final double[] prior;
    private final List<Weights> compounds = new ArrayList<>();
    private final List<double[]> means = new ArrayList<>();
    private final List<double[][]> covariances = new ArrayList<>();
    private final double[] mean = new double[3];
    private final double[] variance = new double[3];
    private final double[] width = new double[3];

    private CompoundSpread(TraitGrid grid, double[] prior, FitTables tables, double[][] rf) {
        this.grid = grid;
        this.differs = new boolean[] {true, grid.sCount() > 1, grid.tCount() > 1};
        this.prior = prior;
        for (double[] row : rf) {
            Weights weights = Weights.of(prior, tables, row, NEGLIGIBLE);
            compounds.add(weights);
            double[] middle = {weights.mean(grid::c), weights.mean(grid::s), weights.mean(grid::t)};
            means.add(middle);
            covariances.add(covariance(weights, middle));
        }
        measure();
    }

    /** Frees a normal spread. */
    static PlatePair.Traits freed(TraitGrid grid, NormalSpread normal, FitTables tables, double[][] rf) {
        return new CompoundSpread(grid, normal.on(grid), tables, rf).likeliest();
    }

    private double[][] covariance(Weights weights, double[] middle) {
        double[][] covariance = new double[3][3];
        for (int k = 0; k < weights.size(); k++) {
            double[] away = away(weights.node(k), middle);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    covariance[i][j] += weights.weight(k) * away[i] * away[j];
                }
            }
        }
        return covariance;
    }

    private double[] away(int node, double[] middle) {
        return new double[] {grid.c(node) - middle[0], grid.s(node) - middle[1], grid.t(node) - middle[2]};
    }

    /** Mean and variance of each trait over all compounds, and the width of a kernel for them. */
    private void measure() {
        int n = means.size();
        for (int i = 0; i < 3; i++) {
            int trait = i;
            double[] middles = means.stream().mapToDouble(each -> each[trait]).toArray();
            mean[i] = StatUtils.mean(middles);
            variance[i] = !differs[i]
                    ? 0
                    : StatUtils.populationVariance(middles, mean[i])
                            + covariances.stream()
                                            .mapToDouble(each -> each[trait][trait])
                                            .sum()
                                    / n;
            width[i] = StrictMath.sqrt(variance[i]);
        }
        double[] c = means.stream().mapToDouble(each -> each[0]).toArray();
        double quartiles = StatUtils.percentile(c, 75) - StatUtils.percentile(c, 25);
        width[0] = StrictMath.min(width[0], StrictMath.max(grid.cStep(), quartiles / QUARTILES_OF_NORMAL));
        int traits = 1 + (differs[1] ? 1 : 0) + (differs[2] ? 1 : 0);
        double narrower = StrictMath.pow(n, -1.0 / (4 + traits));
        for (int i = 0; i < 3; i++) {
            width[i] *= narrower;
        }
    }

    private PlatePair.Traits likeliest() {
        double most = Double.NEGATIVE_INFINITY;
        List<Bell> best = List.of();
        for (double widening : WIDENINGS) {
            List<Bell> bells = bells(widening);
            double fit = likelihoodOfEachUnderOthers(bells);
            if (fit > most) {
                most = fit;
                best = bells;
            }
        }
        List<Bell> all = new ArrayList<>(best);
        all.add(unseen());
        all.sort(
                Comparator.comparingDouble(Bell::c).thenComparingDouble(Bell::s).thenComparingDouble(Bell::t));
        return new PlatePair.Traits(all);
    }

    /** A curve for each compound. */
    private List<Bell> bells(double widening) {
        double[] together = together(widening);
        List<Bell> bells = new ArrayList<>();
        for (int k = 0; k < means.size(); k++) {
            double[] middle = means.get(k);
            double[][] v = covariances.get(k);
            bells.add(new Bell(
                    (1 - UNSEEN) / means.size(),
                    drawn(middle, 0, together),
                    drawn(middle, 1, together),
                    drawn(middle, 2, together),
                    widened(v, 0, widening, together),
                    differs[1] ? v[0][1] * together[0] * together[1] : 0,
                    differs[2] ? v[0][2] * together[0] * together[2] : 0,
                    widened(v, 1, widening, together),
                    differs[1] && differs[2] ? v[1][2] * together[1] * together[2] : 0,
                    widened(v, 2, widening, together)));
        }
        return bells;
    }

    /** By how much curves so widened are drawn together in each trait [1]. */
    private double[] together(double widening) {
        double[] together = new double[3];
        for (int i = 0; i < 3; i++) {
            double kernel = widening * width[i];
            together[i] = variance[i] > 0 ? StrictMath.sqrt(variance[i] / (variance[i] + kernel * kernel)) : 1;
        }
        return together;
    }

    private double drawn(double[] middle, int trait, double[] together) {
        return mean[trait] + together[trait] * (middle[trait] - mean[trait]);
    }

    private double widened(double[][] covariance, int trait, double widening, double[] together) {
        double kernel = widening * width[trait];
        return least(trait, (covariance[trait][trait] + kernel * kernel) * together[trait] * together[trait]);
    }

    private double least(int trait, double variance) {
        return differs[trait] ? StrictMath.max(LEAST_VARIANCE[trait], variance) : 0;
    }

    private Bell unseen() {
        return new Bell(
                UNSEEN,
                mean[0],
                mean[1],
                mean[2],
                least(0, WIDER * WIDER * variance[0]),
                0,
                0,
                least(1, WIDER * WIDER * variance[1]),
                0,
                least(2, variance[2]));
    }

    /** Sum over compounds of the logarithm of the likelihood of their readings under the curves of all other ones. */
    private double likelihoodOfEachUnderOthers(List<Bell> bells) {
        Bells on = new Bells(grid);
        double[] all = on.summed(bells);
        on.add(unseen(), all);
        double sum = 0;
        for (int i = 0; i < bells.size(); i++) {
            double[] own = on.summed(List.of(bells.get(i)));
            Weights compound = compounds.get(i);
            double likelihood = 0;
            for (int k = 0; k < compound.size(); k++) {
                int node = compound.node(k);
                likelihood += compound.weight(k) / prior[node] * StrictMath.max(0, all[node] - own[node]);
            }
            sum += StrictMath.log(likelihood * compound.evidence());
        }
        return sum;
    }
}
