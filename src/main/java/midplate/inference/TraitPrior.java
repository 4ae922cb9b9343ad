package midplate.inference;

import midplate.catalogue.MeasuredPair;
import org.jspecify.annotations.Nullable;

/** How likely each set of traits on a {@link TraitGrid} is before anything was read; the weights sum to 1. */
final class TraitPrior {
    private final TraitGrid grid;
    /** Of all nodes with one c and one s together. */
    private final double[] columns;

    private final GivenT given;
    private final Posterior nodes;
    /** The same whoever works it out, so it does not matter if two threads do. */
    private volatile @Nullable TraitCloud cloud;

    private TraitPrior(TraitGrid grid, double[] columns, GivenT given) {
        this.grid = grid;
        this.columns = columns;
        this.given = given;
        this.nodes = Posterior.over(grid, columns, given);
    }

    /** The spread that was fitted for a pair, on a grid of spots that has the traits in which its compounds differ. */
    static TraitPrior of(MeasuredPair.Traits traits) {
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

    /** A weight for each column, of any sum; t is spread in it as given. */
    static TraitPrior of(TraitGrid grid, double[] columns, GivenT given) {
        return new TraitPrior(grid, normalized(columns), given);
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

    /** The same compounds with another density of c: s and t stay spread at each c as they are. */
    TraitPrior withSpreadOfC(double[] density) {
        double[] spread = spreadOfC();
        double[] factor = new double[spread.length];
        for (int iC = 0; iC < factor.length; iC++) {
            factor[iC] = spread[iC] > 0 ? density[iC] / spread[iC] : 0;
        }
        double[] moved = new double[columns.length];
        for (int from = 0; from < moved.length; from += factor.length) {
            for (int iC = 0; iC < factor.length; iC++) {
                moved[from + iC] = columns[from + iC] * factor[iC];
            }
        }
        return new TraitPrior(grid, normalized(moved), given);
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
