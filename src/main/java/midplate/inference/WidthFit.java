package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.JointTraits.Width;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * How far compounds measured in two pairs lie around what one says of c in the other. One width for all pairs, since few compounds
 * were measured in two: the one that makes where they lie most likely, {@code N(0, V + R·factor·exp(slope·(c − mean)))} with V
 * what is not known of the compound here and there; before any compound, {@code ln factor ~ N(0, 0.5²)} and {@code slope ~ N(0, 0.25²)},
 * own choice, so that a few compounds do not say much.
 */
final class WidthFit {
    private static final double EXACT = 1e-10;
    private static final int EVALUATIONS = 10_000;
    private static final double USUAL_LOG_FACTOR = 0.5;
    private static final double USUAL_SLOPE = 0.25;

    private final List<Compound> compounds = new ArrayList<>();

    /**
     * A compound measured in two pairs.
     *
     * @param away how far c lies from what is foretold [ln units]
     * @param known how well both are known [ln units²]
     * @param around R [ln units²]
     * @param c foretold, less the mean [ln units]
     */
    private record Compound(double away, double known, double around, double c) {
        double unlikelihood(double logFactor, double slope) {
            double variance = known + around * StrictMath.exp(logFactor + slope * c);
            return 0.5 * (StrictMath.log(variance) + away * away / variance);
        }
    }

    /**
     * Takes up a compound.
     *
     * @param link from one pair to the other
     * @param all what compounds are like in the other
     * @param here what the compound is in the one
     * @param there and in the other
     */
    void add(LinkedPair link, Moments all, Moments here, Moments there) {
        double foretold = link.meanC(here);
        compounds.add(new Compound(
                there.mean()[0] - foretold,
                there.covariance()[0][0] + link.carriedC(here),
                link.around()[0][0],
                foretold - all.mean()[0]));
    }

    /** The likeliest width; that of the normal curve where there are no compounds. */
    Width likeliest() {
        double[] start = {0, 0};
        double[] best = new SimplexOptimizer(EXACT, EXACT)
                .optimize(
                        new MaxEval(EVALUATIONS),
                        new ObjectiveFunction(point -> unlikelihood(point[0], point[1])),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(start.length, 0.1))
                .getPoint();
        return new Width(StrictMath.exp(best[0]), best[1]);
    }

    private double unlikelihood(double logFactor, double slope) {
        double factors = logFactor / USUAL_LOG_FACTOR;
        double slopes = slope / USUAL_SLOPE;
        double sum = 0.5 * (factors * factors + slopes * slopes);
        for (Compound compound : compounds) {
            sum += compound.unlikelihood(logFactor, slope);
        }
        return sum;
    }
}
