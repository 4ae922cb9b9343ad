package midplate.inference;

import midplate.catalogue.MeasuredPair;
import org.jspecify.annotations.Nullable;

/** How likely each pair of traits on a {@link TraitGrid} is before anything was read; the weights sum to 1. */
final class TraitPrior {
    private final TraitGrid grid;
    private final double[] weights;
    private final Posterior nodes;
    /** The same whoever works it out, so it does not matter if two threads do. */
    private volatile @Nullable TraitCloud cloud;

    private TraitPrior(TraitGrid grid, double[] weights) {
        this.grid = grid;
        this.weights = weights;
        this.nodes = Posterior.over(grid, weights);
    }

    /** The spread that was fitted for a pair, on the grid of spots. */
    static TraitPrior of(MeasuredPair.Traits traits) {
        TraitGrid grid = TraitGrid.SPOTS;
        double[] density = new double[grid.cCount()];
        for (int iC = 0; iC < density.length; iC++) {
            density[iC] = density(traits, grid.cAt(iC));
        }
        return of(grid, density, traits);
    }

    /** The same with another density of c: s stays spread around its line. */
    static TraitPrior of(TraitGrid grid, double[] cDensity, MeasuredPair.Traits traits) {
        return of(grid, cDensity, aroundLine(grid, traits));
    }

    /** A density of c with the spread of s at each c, which {@link #aroundLine} gives. */
    static TraitPrior of(TraitGrid grid, double[] cDensity, double[] sAtC) {
        double[] weights = new double[grid.size()];
        for (int node = 0; node < weights.length; node++) {
            weights[node] = cDensity[node % cDensity.length] * sAtC[node];
        }
        return new TraitPrior(grid, normalized(weights));
    }

    /** For each node how likely its s is among all s at its c. */
    static double[] aroundLine(TraitGrid grid, MeasuredPair.Traits traits) {
        double[] sAtC = new double[grid.size()];
        for (int iC = 0; iC < grid.cCount(); iC++) {
            double mean = traits.sMean() + traits.sSlope() * (grid.cAt(iC) - traits.cCentre());
            double sum = 0;
            for (int node = iC; node < sAtC.length; node += grid.cCount()) {
                double z = (grid.s(node) - mean) / traits.sDeviation();
                sAtC[node] = StrictMath.exp(-0.5 * z * z);
                sum += sAtC[node];
            }
            for (int node = iC; node < sAtC.length; node += grid.cCount()) {
                sAtC[node] = sum > 0 ? sAtC[node] / sum : 0;
            }
        }
        return sAtC;
    }

    /** The fitted density of c between its nodes, straight lines in between, 0 beyond. */
    private static double density(MeasuredPair.Traits traits, double c) {
        double place = (c - traits.cFrom()) / traits.cStep();
        int i = (int) Math.floor(place);
        if (i < 0 || i >= traits.cDensity().size() - 1) {
            return 0;
        }
        double t = place - i;
        return (1 - t) * traits.cDensity().get(i) + t * traits.cDensity().get(i + 1);
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
        double mean = 0;
        double square = 0;
        for (int node = 0; node < weights.length; node++) {
            mean += weights[node] * grid.c(node);
            square += weights[node] * grid.c(node) * grid.c(node);
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

    /** The nodes that matter, ready to be weighed. */
    Posterior nodes() {
        return nodes;
    }

    /** The weight of each node; not to be changed. */
    double[] weights() {
        return weights;
    }
}
