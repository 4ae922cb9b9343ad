package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * The spread of a few compounds, worked out plainly from its description: Bayes' rule on the nodes of a grid for each, a normal
 * curve for each, widened by the factor under which each compound is likeliest given the others and drawn together so that the
 * whole varies no more than the compounds. It shares the places of the nodes
 * with the program and no other code.
 */
final class PlainSpread {
    private static final double[] FACTORS = {0.3, 0.4, 0.5, 0.6, 0.7, 0.85, 1};
    private static final TDistribution STUDENT = new TDistribution(5);

    private final SimulatedPair pair;
    private final List<double[]> nodes = new ArrayList<>();
    private final List<double[]> likelihoods = new ArrayList<>();
    private final List<double[]> means = new ArrayList<>();
    private final List<double[][]> covariances = new ArrayList<>();
    private final double[] variance = new double[3];
    private double chosen;

    PlainSpread(SimulatedPair pair, TraitGrid grid, NormalSpread normal, double[][] rf) {
        this.pair = pair;
        for (int node = 0; node < grid.size(); node++) {
            nodes.add(new double[] {grid.c(node), grid.s(node), grid.t(node)});
        }
        double[][] covariance = {
            {normal.varianceC(), normal.covariance(), 0}, {normal.covariance(), normal.varianceS(), 0}, {0, 0, 1}
        };
        double[] prior = curve(new double[] {normal.meanC(), normal.meanS(), 0}, covariance);
        for (double[] row : rf) {
            double[] likelihood =
                    nodes.stream().mapToDouble(node -> likelihood(row, node)).toArray();
            likelihoods.add(likelihood);
            describe(prior, likelihood);
        }
        for (int i = 0; i < 3; i++) {
            int trait = i;
            variance[i] = StatUtils.populationVariance(trait(i))
                    + covariances.stream()
                                    .mapToDouble(each -> each[trait][trait])
                                    .sum()
                            / means.size();
        }
    }

    private double likelihood(double[] row, double[] node) {
        double product = 1;
        for (int j = 0; j < row.length && product > 0; j++) {
            double eta = pair.hold()[j] * node[0] + node[1] * pair.strength()[j] + node[2] * pair.early()[j];
            double at = (1 + pair.start() + pair.front()) / (1 + Math.exp(-eta)) - pair.start();
            double rf = Math.max(0, Math.min(1, at));
            double left = pair.leftAtLines();
            double sigma = pair.scales()[j] * Math.sqrt(left + (1 - left) * 4 * rf * (1 - rf));
            if (row[j] <= 0.005) {
                product *= STUDENT.cumulativeProbability((0.005 - at) / sigma);
            } else if (row[j] >= 0.995) {
                product *= STUDENT.cumulativeProbability((at - 0.995) / sigma);
            } else {
                product *= STUDENT.density((row[j] - at) / sigma) / sigma;
            }
        }
        return product;
    }

    private void describe(double[] prior, double[] likelihood) {
        double sum = 0;
        double[] mean = new double[3];
        double[][] square = new double[3][3];
        for (int node = 0; node < prior.length; node++) {
            double weight = prior[node] * likelihood[node];
            sum += weight;
            for (int i = 0; i < 3; i++) {
                mean[i] += weight * nodes.get(node)[i];
                for (int j = 0; j < 3; j++) {
                    square[i][j] += weight * nodes.get(node)[i] * nodes.get(node)[j];
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            mean[i] /= sum;
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                square[i][j] = square[i][j] / sum - mean[i] * mean[j];
            }
        }
        means.add(mean);
        covariances.add(square);
    }

    /** A normal curve on the nodes, its sum 1. */
    private double[] curve(double[] mean, double[][] covariance) {
        MultivariateNormalDistribution normal = new MultivariateNormalDistribution(mean, covariance);
        double[] density = nodes.stream().mapToDouble(normal::density).toArray();
        double sum = StatUtils.sum(density);
        for (int node = 0; node < density.length; node++) {
            density[node] /= sum;
        }
        return density;
    }

    private double[] widths() {
        int n = means.size();
        double[] widths = new double[3];
        for (int i = 0; i < 3; i++) {
            widths[i] = Math.sqrt(variance[i]);
        }
        double quartiles = StatUtils.percentile(trait(0), 75) - StatUtils.percentile(trait(0), 25);
        widths[0] = Math.min(widths[0], Math.max(0.1, quartiles / 1.349));
        for (int i = 0; i < 3; i++) {
            widths[i] *= Math.pow(n, -1.0 / 7);
        }
        return widths;
    }

    private double[] trait(int trait) {
        return means.stream().mapToDouble(each -> each[trait]).toArray();
    }

    /** For each compound the means of its traits and the variances of its curve, widened as suits best. */
    List<double[]> likeliest() {
        double[] widths = widths();
        double most = Double.NEGATIVE_INFINITY;
        List<double[]> best = List.of();
        for (double factor : FACTORS) {
            double fit = logLikelihood(factor, widths);
            if (fit > most) {
                most = fit;
                chosen = factor;
                best = described(factor, widths);
            }
        }
        return best;
    }

    /** The variance of a trait over the compounds, with what is not known of each. */
    double variance(int trait) {
        return variance[trait];
    }

    /** The factor that was chosen. */
    double chosen() {
        return chosen;
    }

    /** Standard deviation of a trait over that of the curves before they are drawn together. */
    private double together(int trait, double factor, double[] widths) {
        return Math.sqrt(variance[trait] / (variance[trait] + factor * factor * widths[trait] * widths[trait]));
    }

    private double[][] widened(int compound, double factor, double[] widths) {
        double[][] wide = new double[3][];
        for (int i = 0; i < 3; i++) {
            wide[i] = covariances.get(compound)[i].clone();
            wide[i][i] += factor * factor * widths[i] * widths[i];
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                wide[i][j] *= together(i, factor, widths) * together(j, factor, widths);
            }
        }
        return wide;
    }

    private double[] drawn(int compound, double factor, double[] widths) {
        double[] drawn = new double[3];
        for (int i = 0; i < 3; i++) {
            double middle = StatUtils.mean(trait(i));
            drawn[i] = middle + together(i, factor, widths) * (means.get(compound)[i] - middle);
        }
        return drawn;
    }

    private List<double[]> described(double factor, double[] widths) {
        List<double[]> all = new ArrayList<>();
        for (int k = 0; k < means.size(); k++) {
            double[] mean = drawn(k, factor, widths);
            double[][] wide = widened(k, factor, widths);
            all.add(new double[] {mean[0], mean[1], mean[2], wide[0][0], wide[1][1], wide[2][2]});
        }
        return all;
    }

    private double logLikelihood(double factor, double[] widths) {
        int n = means.size();
        List<double[]> curves = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            curves.add(curve(drawn(k, factor, widths), widened(k, factor, widths)));
        }
        double[] middle = {StatUtils.mean(trait(0)), StatUtils.mean(trait(1)), StatUtils.mean(trait(2))};
        double[] unseen =
                curve(middle, new double[][] {{4 * variance[0], 0, 0}, {0, 4 * variance[1], 0}, {0, 0, variance[2]}});
        double sum = 0;
        for (int own = 0; own < n; own++) {
            double likelihood = 0;
            for (int node = 0; node < unseen.length; node++) {
                double others = 0.01 * unseen[node];
                for (int k = 0; k < n; k++) {
                    others += k == own ? 0 : 0.99 / n * curves.get(k)[node];
                }
                likelihood += others * likelihoods.get(own)[node];
            }
            sum += Math.log(likelihood);
        }
        return sum;
    }
}
