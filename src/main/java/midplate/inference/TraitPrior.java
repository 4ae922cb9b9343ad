package midplate.inference;

import midplate.catalogue.PlatePair;
import org.jspecify.annotations.Nullable;

/** How likely each set of traits on a {@link TraitGrid} is before anything was read; the weights sum to 1. */
final class TraitPrior {
    /** The least weight of t where no compound was measured, of the heaviest node. */
    private static final double UNMEASURED = 1e-7;

    private final TraitGrid grid;
    /** Of all nodes with one c and one s together. */
    private final double[] columns;

    private final GivenT given;
    private final Posterior nodes;
    /** The same whoever works it out, so it does not matter if two threads do. */
    private volatile @Nullable TraitCloud cloud;
    /** Likewise. */
    private volatile @Nullable GivenT everywhere;

    private TraitPrior(TraitGrid grid, double[] columns, GivenT given) {
        this.grid = grid;
        this.columns = columns;
        this.given = given;
        this.nodes = Posterior.over(grid, columns, given);
    }

    /** The spread that was fitted for a pair, on a grid of spots that has the traits in which its compounds differ. */
    static TraitPrior of(PlatePair.Traits traits) {
        TraitGrid grid = TraitGrid.spots(
                trait(traits.bells().stream().anyMatch(bell -> bell.varianceS() > 0)),
                trait(traits.bells().stream().anyMatch(bell -> bell.varianceT() > 0)));
        return of(grid, new Bells(grid).summed(traits.bells()));
    }

    private static TraitGrid.Trait trait(boolean differs) {
        return differs ? TraitGrid.Trait.OWN : TraitGrid.Trait.ALIKE;
    }

    /** A weight for each node, of any sum. */
    static TraitPrior of(TraitGrid grid, double[] weights) {
        GivenT given = GivenT.of(grid, weights);
        return new TraitPrior(grid, normalized(given.columnWeights().clone()), given);
    }

    /** The weight of each column, sum 1. */
    double[] columnWeights() {
        return columns.clone();
    }

    /** The weight of each node, sum 1. */
    double[] nodeWeights() {
        double[] weights = new double[grid.size()];
        for (int node = 0; node < weights.length; node++) {
            int column = node / given.count();
            weights[node] = columns[column] * given.weight(column, node % given.count());
        }
        return weights;
    }

    /** Other compounds, with a weight for each column, of any sum: t is spread in each as it is here. */
    TraitPrior withColumns(double[] weights) {
        return new TraitPrior(grid, normalized(weights), everywhere());
    }

    /** How t is spread in each column, also where hardly a compound is. */
    private GivenT everywhere() {
        GivenT known = everywhere;
        if (known == null) {
            double[] weights = nodeWeights();
            double heaviest = 0;
            for (double node : weights) {
                heaviest = Math.max(heaviest, node);
            }
            double[] normal = grid.normalT();
            for (int node = 0; node < weights.length; node++) {
                weights[node] += UNMEASURED * heaviest * normal[node % normal.length];
            }
            known = GivenT.of(grid, weights);
            everywhere = known;
        }
        return known;
    }

    private double[] spreadOfC() {
        double[] spread = new double[grid.cCount()];
        for (int column = 0; column < columns.length; column++) {
            spread[column % spread.length] += columns[column];
        }
        return spread;
    }

    static double[] normalized(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    TraitGrid grid() {
        return grid;
    }

    /** Variance of c [ln units²]. */
    double varianceC() {
        double[] spread = spreadOfC();
        double mean = 0;
        double square = 0;
        for (int iC = 0; iC < spread.length; iC++) {
            mean += spread[iC] * grid.cAt(iC);
            square += spread[iC] * grid.cAt(iC) * grid.cAt(iC);
        }
        return square - mean * mean;
    }

    /** What is known of a spot that was not read, worked out when first asked for. */
    TraitCloud cloud() {
        TraitCloud known = cloud;
        if (known == null) {
            known = nodes.priorCloud();
            cloud = known;
        }
        return known;
    }

    /** The columns that matter, ready to be weighed. */
    Posterior nodes() {
        return nodes;
    }
}
