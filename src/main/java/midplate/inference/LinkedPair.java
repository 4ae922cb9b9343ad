package midplate.inference;

import java.util.Arrays;

/**
 * What traits in one pair say of c and s in another: {@code x_to = B·x_from + b}, around it a normal curve of covariance R. From a
 * cloud in the one it makes a prior in the other.
 *
 * @param slopes B, a row for c and, where compounds differ in it, one for s; a column for each trait of the other pair
 * @param intercepts b
 * @param around R, of c [ln units²] and s [1]
 */
record LinkedPair(double[][] slopes, double[] intercepts, double[][] around) {
    /** So many standard deviations of the curve are taken along. */
    private static final double REACH = 4;

    /** Places lighter than this share of the heaviest lead nowhere. */
    private static final double NEGLIGIBLE = 1e-3;

    /** No link is known better than this, however well compounds agree [ln units², 1]. */
    private static final double LEAST_C = 0.05 * 0.05;

    private static final double LEAST_S = 0.02 * 0.02;

    /** The variance of c over there of a compound of which this is known here [ln units²]. */
    double varianceC(Moments from) {
        return Math.max(LEAST_C, around[0][0]) + carriedC(from);
    }

    /** As much of it as comes from what is not known here [ln units²]. */
    double carriedC(Moments from) {
        double sum = 0;
        for (int i = 0; i < slopes[0].length; i++) {
            for (int j = 0; j < slopes[0].length; j++) {
                sum += slopes[0][i] * from.covariance()[i][j] * slopes[0][j];
            }
        }
        return sum;
    }

    /** The mean of c over there of a compound of which this is known here [ln units]. */
    double meanC(Moments from) {
        double sum = intercepts[0];
        for (int i = 0; i < slopes[0].length; i++) {
            sum += slopes[0][i] * from.mean()[i];
        }
        return sum;
    }

    /**
     * The same with c moved by what a structure says of the difference, and known as that says.
     *
     * @param shift what is added to c [ln units]
     * @param variance of c around it [ln units²]
     */
    LinkedPair moved(double shift, double variance) {
        double[] moved = intercepts.clone();
        moved[0] += shift;
        double[][] other = new double[around.length][];
        for (int i = 0; i < other.length; i++) {
            other[i] = around[i].clone();
        }
        double scale = Math.sqrt(variance / around[0][0]);
        other[0][0] = variance;
        if (other.length > 1) {
            other[0][1] *= scale;
            other[1][0] *= scale;
        }
        return new LinkedPair(slopes, moved, other);
    }

    /**
     * What is thought of a compound over there: each point of the cloud stands for a normal curve; t is what it is at that c and s.
     *
     * @param there what compounds are like over there, for its grid and its t
     */
    TraitPrior prior(TraitCloud cloud, TraitPrior there) {
        TraitGrid grid = there.grid();
        double[] middles = middles(cloud, grid);
        int width = grid.cCount();
        int height = grid.sCount();
        double[] kernel = kernel(grid);
        int reachS = reachS(grid);
        int reachC = kernel.length / (2 * reachS + 1) / 2;
        double least = NEGLIGIBLE * Arrays.stream(middles).max().orElse(0);
        double[] columns = new double[middles.length];
        for (int iS = 0; iS < height; iS++) {
            for (int iC = 0; iC < width; iC++) {
                double weight = middles[iS * width + iC];
                if (weight > least) {
                    int firstC = Math.max(0, iC - reachC);
                    int lastC = Math.min(width - 1, iC + reachC);
                    for (int toS = Math.max(0, iS - reachS); toS <= Math.min(height - 1, iS + reachS); toS++) {
                        int row = (toS - iS + reachS) * (2 * reachC + 1) + reachC - iC;
                        for (int toC = firstC; toC <= lastC; toC++) {
                            columns[toS * width + toC] += weight * kernel[row + toC];
                        }
                    }
                }
            }
        }
        return there.withColumns(columns);
    }

    /** The middles of the curves, each shared between the four places of the grid around it; what lies beyond the grid is held at its edge. */
    private double[] middles(TraitCloud cloud, TraitGrid grid) {
        int width = grid.cCount();
        int height = grid.sCount();
        double[] middles = new double[width * height];
        for (int point = 0; point < cloud.size(); point++) {
            double placeC = held((at(0, cloud, point) - grid.cAt(0)) / grid.cStep(), width);
            double placeS = height == 1 ? 0 : held((at(1, cloud, point) - grid.sAt(0)) / grid.sStep(), height);
            int iC = Math.min((int) placeC, Math.max(0, width - 2));
            int iS = Math.min((int) placeS, Math.max(0, height - 2));
            double restC = placeC - iC;
            double restS = placeS - iS;
            double weight = cloud.weight(point);
            int place = iS * width + iC;
            middles[place] += weight * (1 - restC) * (1 - restS);
            middles[place + 1] += weight * restC * (1 - restS);
            if (height > 1) {
                middles[place + width] += weight * (1 - restC) * restS;
                middles[place + width + 1] += weight * restC * restS;
            }
        }
        return middles;
    }

    private static double held(double place, int count) {
        return Math.max(0, Math.min(count - 1, place));
    }

    private double at(int trait, TraitCloud cloud, int point) {
        if (trait >= slopes.length) {
            return 1;
        }
        double[] slope = slopes[trait];
        double sum = intercepts[trait] + slope[0] * cloud.c(point);
        if (slope.length > 1) {
            sum += slope[1] * cloud.s(point);
        }
        return slope.length > 2 ? sum + slope[2] * cloud.t(point) : sum;
    }

    private double varianceS() {
        return around.length > 1 ? Math.max(LEAST_S, around[1][1]) : LEAST_S;
    }

    private int reachS(TraitGrid grid) {
        return grid.sCount() == 1 ? 0 : (int) Math.ceil(REACH * Math.sqrt(varianceS()) / grid.sStep());
    }

    /** The normal curve of R at the steps of the grid, row by row of s; places four standard deviations away and more are left out. */
    private double[] kernel(TraitGrid grid) {
        double varianceC = Math.max(LEAST_C, around[0][0]);
        double varianceS = varianceS();
        double correlation = around.length > 1 ? around[0][1] / Math.sqrt(varianceC * varianceS) : 0;
        double open = 1 - correlation * correlation;
        int reachC = (int) Math.ceil(REACH * Math.sqrt(varianceC) / grid.cStep());
        int reachS = reachS(grid);
        double[] kernel = new double[(2 * reachC + 1) * (2 * reachS + 1)];
        int at = 0;
        for (int stepS = -reachS; stepS <= reachS; stepS++) {
            double s = stepS * grid.sStep() / Math.sqrt(varianceS);
            for (int stepC = -reachC; stepC <= reachC; stepC++, at++) {
                double c = stepC * grid.cStep() / Math.sqrt(varianceC);
                kernel[at] = Math.exp(-0.5 * (c * c - 2 * correlation * c * s + s * s) / open);
            }
        }
        return kernel;
    }
}
