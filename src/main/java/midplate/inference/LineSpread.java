package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.PlatePair;
import midplate.catalogue.PlatePair.Bell;

/**
 * The spread of traits of {@link Form#TWO_TRAITS}: c freed from the normal form, s normal around a straight line in c.
 *
 * <p>A few rounds, each: weigh the traits of every series; sum the weights of c over series; smooth them with a normal
 * kernel of width {@code 0.9·min(sd, IQR/1.349)·n^(−1/5)} (Silverman's rule, nothing tuned); add one part in a hundred of
 * a wide normal curve, since compounds never seen may lie outside.
 *
 * @see "Silverman1986"
 */
final class LineSpread {
    private static final int ROUNDS = 3;
    private static final double UNSEEN = 0.01;
    private static final double WIDER = 2;
    private static final double QUARTILES_OF_NORMAL = 1.349;

    private final TraitGrid grid;
    private final List<Bell> bells;

    private LineSpread(TraitGrid grid, List<Bell> bells) {
        this.grid = grid;
        this.bells = bells;
    }

    /** Frees a normal spread. */
    static PlatePair.Traits freed(TraitGrid grid, NormalSpread normal, FitTables tables, double[][] rf) {
        double[] prior = normal.on(grid);
        LineSpread spread = of(grid, prior, rf.length);
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
        return new PlatePair.Traits(spread.bells);
    }

    /** The weights of the traits; sum 1. */
    private double[] onGrid() {
        return TraitPrior.normalized(new Bells(grid).summed(bells));
    }

    private static LineSpread of(TraitGrid grid, double[] summed, int series) {
        double[] density = new double[grid.cCount()];
        double meanC = 0;
        double meanS = 0;
        for (int node = 0; node < summed.length; node++) {
            density[grid.cOf(node)] += summed[node];
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
        double varianceOfNode = grid.cStep() * grid.cStep() / 4;
        List<Bell> bells = new ArrayList<>();
        for (int iC = 0; iC < smooth.length; iC++) {
            bells.add(new Bell(
                    smooth[iC],
                    grid.cAt(iC),
                    meanS + slope * (grid.cAt(iC) - meanC),
                    0,
                    varianceOfNode,
                    slope * varianceOfNode,
                    0,
                    StrictMath.max(1e-4, varianceS) + slope * slope * varianceOfNode,
                    0,
                    0));
        }
        return new LineSpread(grid, bells);
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
