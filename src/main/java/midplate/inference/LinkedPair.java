package midplate.inference;

import java.util.Arrays;
import midplate.catalogue.JointTraits.Width;

/**
 * What traits in one pair say of c and s in another: {@code x_to = B·x_from + b}, around it a normal curve of covariance R, in c
 * wider or narrower by where that lies. From a cloud in the one it makes a prior in the other.
 *
 * @param slopes B, a row for c and, where compounds differ in it, one for s; a column for each trait of the other pair
 * @param intercepts b
 * @param around R, of c [ln units²] and s [1]
 * @param widths how many times R the variance of c is
 */
record LinkedPair(double[][] slopes, double[] intercepts, double[][] around, Widths widths) {
    /** So many standard deviations of the curve are taken along. */
    private static final double REACH = 4;

    /** Places lighter than this share of the heaviest lead nowhere. */
    private static final double NEGLIGIBLE = 1e-3;

    /** No link is known better than this, however well compounds agree [ln units², 1]. */
    private static final double LEAST_C = 0.05 * 0.05;

    private static final double LEAST_S = 0.02 * 0.02;

    /**
     * How many times R the variance of c is, by where c is foretold.
     *
     * @param width the law
     * @param mean c to which its factor belongs [ln units]
     * @param lowest c below which it stays what it is there, since none were measured [ln units]
     * @param highest the same above [ln units]
     */
    record Widths(Width width, double mean, double lowest, double highest) {
        static final Widths ALIKE = new Widths(Width.OF_THE_CURVE, 0, 0, 0);

        double at(double c) {
            double held = Math.max(lowest, Math.min(highest, c));
            return width.factor() * Math.exp(width.slope() * (held - mean));
        }
    }

    /** The same width everywhere. */
    LinkedPair(double[][] slopes, double[] intercepts, double[][] around) {
        this(slopes, intercepts, around, Widths.ALIKE);
    }

    /** The same link with such widths. */
    LinkedPair with(Widths other) {
        return new LinkedPair(slopes, intercepts, around, other);
    }

    /** The variance of c over there of a compound of which this is known here [ln units²]. */
    double varianceC(Moments from) {
        return ownC(meanC(from)) + carriedC(from);
    }

    /** R of c, where c is foretold [ln units²]. */
    private double ownC(double c) {
        return Math.max(LEAST_C, around[0][0] * widths.at(c));
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
     * The same with c moved by what a structure says of the difference, and known as that says, wherever it lies.
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
        double[][] kernels = new double[width][];
        int reachS = reachS(grid);
        double least = NEGLIGIBLE * Arrays.stream(middles).max().orElse(0);
        double[] columns = new double[middles.length];
        for (int iS = 0; iS < height; iS++) {
            for (int iC = 0; iC < width; iC++) {
                double weight = middles[iS * width + iC];
                if (weight > least) {
                    if (kernels[iC] == null) {
                        kernels[iC] = kernel(grid, ownC(grid.cAt(iC)));
                    }
                    double[] kernel = kernels[iC];
                    int reachC = kernel.length / (2 * reachS + 1) / 2;
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

    /**
     * The normal curve of R at the steps of the grid, row by row of s; places four standard deviations away and more are left out.
     * Along a row each step multiplies by a ratio, and the ratio by a constant: {@code e^(−(x + d)²/2) = e^(−x²/2)·e^(−xd − d²/2)}.
     */
    private double[] kernel(TraitGrid grid, double varianceC) {
        double varianceS = varianceS();
        double correlation =
                around.length > 1 ? around[0][1] / Math.sqrt(Math.max(LEAST_C, around[0][0]) * varianceS) : 0;
        double open = 1 - correlation * correlation;
        int reachC = (int) Math.ceil(REACH * Math.sqrt(varianceC) / grid.cStep());
        int reachS = reachS(grid);
        double step = grid.cStep() / Math.sqrt(varianceC);
        double first = -reachC * step;
        double bend = Math.exp(-step * step / open);
        double[] kernel = new double[(2 * reachC + 1) * (2 * reachS + 1)];
        int at = 0;
        for (int stepS = -reachS; stepS <= reachS; stepS++) {
            double s = stepS * grid.sStep() / Math.sqrt(varianceS);
            double height = Math.exp(-0.5 * (first * first - 2 * correlation * first * s + s * s) / open);
            double ratio = Math.exp((-step * first - 0.5 * step * step + correlation * step * s) / open);
            for (int stepC = -reachC; stepC <= reachC; stepC++, at++) {
                kernel[at] = height;
                height *= ratio;
                ratio *= bend;
            }
        }
        return kernel;
    }
}
