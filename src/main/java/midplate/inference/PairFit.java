package midplate.inference;

import java.util.List;
import midplate.catalogue.MeasuredPair;

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
 * @param meanC mean of c of each compound, given all its readings [ln units]
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
        MeasuredPair.Traits traits,
        double[] meanC,
        int readings,
        double residual,
        List<Double> logLikelihood) {}
