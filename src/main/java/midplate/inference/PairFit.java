package midplate.inference;

import java.util.List;
import midplate.catalogue.PlatePair;

/**
 * What was fitted to the readings of one pair.
 *
 * @param percents the measured shares of the strong solvent [% v/v]
 * @param climbs a, G and L there; G is 0 at the reference share
 * @param strengthError standard errors of G for given traits of the compounds [ln units]
 * @param scales σ₀ there [1]
 * @param shape how readings and their noise behave near the two lines
 * @param atLines a spot read no farther than this from a line sits on it [1]; 0 where every reading is a number
 * @param traits how the traits of compounds are spread
 * @param compounds what its readings leave of the traits of each compound
 * @param told what compounds like those of the spread are once read, each by itself; readings that count for another pair left out
 * @param spread what all compounds are like, as one normal curve over c, s and, where they differ in it, t
 * @param readings number of readings
 * @param residual mean absolute deviation of the readings from the fitted curves [1 in Rf]
 * @param logLikelihood of all readings [ln units], for the normal spread of traits, to watch the rounds converge
 */
record PairFit(
        double[] percents,
        Climb[] climbs,
        double[] strengthError,
        double[] scales,
        PlateShape shape,
        double atLines,
        PlatePair.Traits traits,
        List<Estimate> compounds,
        List<Moments> told,
        Moments spread,
        int readings,
        double residual,
        List<Double> logLikelihood) {
    /**
     * Traits of a compound, given all its readings.
     *
     * @param c mean of c [ln units]
     * @param s mean of s [1]
     * @param varianceC [ln units²]
     * @param varianceS [1]
     */
    record Estimate(double c, double s, double varianceC, double varianceS) {
        static Estimate of(TraitGrid grid, Weights weights) {
            double c = weights.mean(grid::c);
            double s = weights.mean(grid::s);
            return new Estimate(
                    c,
                    s,
                    weights.mean(node -> (grid.c(node) - c) * (grid.c(node) - c)),
                    weights.mean(node -> (grid.s(node) - s) * (grid.s(node) - s)));
        }
    }
}
