package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.MeasuredPair;

/**
 * The spread of traits with c freed from the normal form: compounds crowd in the middle and trail off to both sides more than
 * a normal curve allows, and after a plate on which a spot ran with the front the shape of the trail is most of what is known.
 *
 * <p>A few rounds, each: weigh the traits of every series; sum the weights of c over series; smooth them with a normal
 * kernel of width {@code 0.9·min(sd, IQR/1.349)·n^(−1/5)} (Silverman's rule, nothing tuned); add one part in a hundred of
 * a wide normal curve, since compounds never seen may lie outside. s stays normal around a straight line in c.
 *
 * @see "Silverman1986"
 */
final class TraitSpread {
    private static final int ROUNDS = 3;
    private static final double UNSEEN = 0.01;
    private static final double WIDER = 2;
    private static final double QUARTILES_OF_NORMAL = 1.349;

    private final TraitGrid grid;
    private final MeasuredPair.Traits traits;

    private TraitSpread(TraitGrid grid, MeasuredPair.Traits traits) {
        this.grid = grid;
        this.traits = traits;
    }

    /** Frees a normal spread. */
    static TraitSpread freed(TraitGrid grid, NormalSpread normal, FitTables tables, double[][] rf) {
        double[] prior = normal.on(grid);
        TraitSpread spread = of(grid, prior, rf.length);
        for (int round = 0; round < ROUNDS; round++) {
            double[] summed = new double[grid.size()];
            for (double[] row : rf) {
                Weights weights = Weights.of(prior, tables, row, 0);
                for (int k = 0; k < weights.size(); k++) {
                    summed[weights.node(k)] += weights.weight(k) / rf.length;
                }
            }
            spread = of(grid, summed, rf.length);
            prior = spread.onGrid();
        }
        return spread;
    }

    /** The weights of the traits on the fit's grid; sum 1. */
    double[] onGrid() {
        double[] density =
                traits.cDensity().stream().mapToDouble(Double::doubleValue).toArray();
        return TraitPrior.of(grid, density, traits).weights();
    }

    MeasuredPair.Traits traits() {
        return traits;
    }

    private static TraitSpread of(TraitGrid grid, double[] summed, int series) {
        double[] density = new double[grid.cCount()];
        double meanC = 0;
        double meanS = 0;
        for (int node = 0; node < summed.length; node++) {
            density[node % density.length] += summed[node];
            meanC += summed[node] * grid.c(node);
            meanS += summed[node] * grid.s(node);
        }
        double varianceC = 0;
        double covariance = 0;
        for (int node = 0; node < summed.length; node++) {
            varianceC += summed[node] * (grid.c(node) - meanC) * (grid.c(node) - meanC);
            covariance += summed[node] * (grid.c(node) - meanC) * (grid.s(node) - meanS);
        }
        double slope = covariance / varianceC;
        double varianceS = 0;
        for (int node = 0; node < summed.length; node++) {
            double away = grid.s(node) - meanS - slope * (grid.c(node) - meanC);
            varianceS += summed[node] * away * away;
        }
        double deviation = StrictMath.sqrt(varianceC);
        double narrow = StrictMath.min(deviation, quartiles(grid, density) / QUARTILES_OF_NORMAL);
        double width = 0.9 * narrow * StrictMath.pow(series, -0.2);
        double[] smooth = smoothed(grid, density, width, meanC, WIDER * deviation);
        List<Double> nodes = new ArrayList<>();
        for (double each : smooth) {
            nodes.add(each);
        }
        return new TraitSpread(
                grid,
                new MeasuredPair.Traits(
                        grid.cAt(0),
                        grid.cStep(),
                        nodes,
                        meanS,
                        slope,
                        meanC,
                        StrictMath.sqrt(StrictMath.max(1e-4, varianceS))));
    }

    /** Distance between the quartiles of c [ln units]. */
    private static double quartiles(TraitGrid grid, double[] density) {
        double summed = 0;
        double first = grid.cAt(0);
        double third = grid.cAt(0);
        for (int iC = 0; iC < density.length; iC++) {
            if (summed < 0.25) {
                first = grid.cAt(iC);
            }
            if (summed < 0.75) {
                third = grid.cAt(iC);
            }
            summed += density[iC];
        }
        return StrictMath.max(third - first, grid.cStep());
    }

    private static double[] smoothed(TraitGrid grid, double[] density, double width, double mean, double wide) {
        double[] smooth = new double[density.length];
        double[] unseen = new double[density.length];
        for (int iC = 0; iC < density.length; iC++) {
            double away = (grid.cAt(iC) - mean) / wide;
            unseen[iC] = StrictMath.exp(-0.5 * away * away);
            for (int other = 0; other < density.length; other++) {
                double z = (grid.cAt(iC) - grid.cAt(other)) / width;
                smooth[iC] += density[other] * StrictMath.exp(-0.5 * z * z);
            }
        }
        TraitPrior.normalized(smooth);
        TraitPrior.normalized(unseen);
        for (int iC = 0; iC < smooth.length; iC++) {
            smooth[iC] = (1 - UNSEEN) * smooth[iC] + UNSEEN * unseen[iC];
        }
        return smooth;
    }
}
