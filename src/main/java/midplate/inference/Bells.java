package midplate.inference;

import java.util.List;
import midplate.catalogue.PlatePair.Bell;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/** Normal curves over the traits, on the nodes of a grid. A trait in which the compounds of the grid do not differ is left out. */
final class Bells {
    /** Farther from its middle than so many standard deviations a curve counts as 0. */
    private static final double REACH = 4.5;

    private final TraitGrid grid;
    private final boolean[] differs;

    Bells(TraitGrid grid) {
        this.grid = grid;
        this.differs = new boolean[] {true, grid.sCount() > 1, grid.tCount() > 1};
    }

    /** All of them, each by its weight. */
    double[] summed(List<Bell> bells) {
        double[] sum = new double[grid.size()];
        bells.forEach(bell -> add(bell, sum));
        return sum;
    }

    /** Adds one curve to the nodes, so that it adds its weight in all; nothing where the grid does not reach. */
    void add(Bell bell, double[] to) {
        double[] middle = {bell.c(), bell.s(), bell.t()};
        double[][] precision = precision(bell);
        double reachC = StrictMath.max(grid.cStep() / 2, REACH * StrictMath.sqrt(bell.varianceC()));
        double reachS = StrictMath.max(grid.sStep() / 2, REACH * StrictMath.sqrt(bell.varianceS()));
        int firstC = Math.max(0, (int) StrictMath.ceil((middle[0] - reachC - grid.cAt(0)) / grid.cStep()));
        int lastC =
                Math.min(grid.cCount() - 1, (int) StrictMath.floor((middle[0] + reachC - grid.cAt(0)) / grid.cStep()));
        if (firstC > lastC) {
            return;
        }
        double sum = 0;
        double[] density = new double[grid.sCount() * (lastC - firstC + 1) * grid.tCount()];
        for (int pass = 0; pass < 2; pass++) {
            int at = 0;
            for (int iS = 0; iS < grid.sCount(); iS++) {
                if (differs[1] && StrictMath.abs(grid.sAt(iS) - middle[1]) > reachS) {
                    at += (lastC - firstC + 1) * grid.tCount();
                    continue;
                }
                for (int iC = firstC; iC <= lastC; iC++) {
                    for (int iT = 0; iT < grid.tCount(); iT++, at++) {
                        int node = grid.node(iC, iS, iT);
                        if (pass == 0) {
                            density[at] = density(node, middle, precision);
                            sum += density[at];
                        } else if (sum > 0) {
                            to[node] += bell.weight() * density[at] / sum;
                        }
                    }
                }
            }
        }
    }

    private double density(int node, double[] middle, double[][] precision) {
        double c = grid.c(node) - middle[0];
        double s = differs[1] ? grid.s(node) - middle[1] : 0;
        double t = differs[2] ? grid.t(node) - middle[2] : 0;
        double square = precision[0][0] * c * c
                + precision[1][1] * s * s
                + precision[2][2] * t * t
                + 2 * (precision[0][1] * c * s + precision[0][2] * c * t + precision[1][2] * s * t);
        return StrictMath.exp(-0.5 * square);
    }

    /** The inverse of the covariance of the traits that differ, with 0 for the others. */
    private double[][] precision(Bell bell) {
        double[][] all = {
            {bell.varianceC(), bell.covarianceCS(), bell.covarianceCT()},
            {bell.covarianceCS(), bell.varianceS(), bell.covarianceST()},
            {bell.covarianceCT(), bell.covarianceST(), bell.varianceT()}
        };
        RealMatrix covariance = new Array2DRowRealMatrix(3, 3);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                boolean counts = differs[i] && differs[j];
                covariance.setEntry(i, j, counts ? all[i][j] : i == j ? 1 : 0);
            }
        }
        return MatrixUtils.inverse(covariance).getData();
    }
}
