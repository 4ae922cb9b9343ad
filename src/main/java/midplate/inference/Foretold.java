package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * By how much compounds differ from what was foretold of them: {@code δ = η measured − η foretold} [ln units].
 *
 * <p>Counted is where the Rf foretold lies between 0.05 and 0.95. Nearer to a line hardly anything of η is measured, and hardly
 * anything depends on it. What is measured does not decide, so that no great error is left out for being one. How badly readings tell the
 * traits of a compound is no error of the theory: its variance is taken off.
 */
final class Foretold {
    private static final double MOST_ETA = StrictMath.log(0.95 / 0.05);

    private final List<Double> means = new ArrayList<>();
    private final List<Double> squares = new ArrayList<>();
    private final List<Double> untold = new ArrayList<>();
    private final List<Double> untoldMeans = new ArrayList<>();
    private final List<Double> slopes = new ArrayList<>();

    /**
     * Adds a compound.
     *
     * @param strength G foretold of the eluents [ln units]
     * @param foretold η foretold there [ln units]
     * @param measured η measured there [ln units]
     * @param variance of their difference, from what the readings do not tell [ln units²]
     */
    void add(double[] strength, double[] foretold, double[] measured, double[] variance) {
        SimpleRegression drift = new SimpleRegression();
        List<Double> deltas = new ArrayList<>();
        List<Double> variances = new ArrayList<>();
        for (int k = 0; k < foretold.length; k++) {
            if (Math.abs(foretold[k]) <= MOST_ETA) {
                double delta = measured[k] - foretold[k];
                deltas.add(delta);
                squares.add(delta * delta);
                variances.add(variance[k]);
                drift.addData(strength[k], delta);
            }
        }
        if (!deltas.isEmpty()) {
            means.add(StatUtils.mean(array(deltas)));
            untold.addAll(variances);
            untoldMeans.add(StatUtils.mean(array(variances)));
        }
        if (deltas.size() > 1) {
            slopes.add(drift.getSlope());
        }
    }

    /** How many compounds count. */
    int compounds() {
        return means.size();
    }

    /** Mean of δ over compounds, each by its mean over the eluents [ln units]. */
    double bias() {
        return StatUtils.mean(array(means));
    }

    /** Standard deviation of these means, less what the readings do not tell [ln units]. */
    double scatter() {
        return rest(StatUtils.variance(array(means)), untoldMeans);
    }

    /** Root mean square of δ over all compounds and eluents, less what the readings do not tell [ln units]. */
    double deviationC() {
        return rest(StatUtils.mean(array(squares)), untold);
    }

    private static double rest(double square, List<Double> untold) {
        return StrictMath.sqrt(StrictMath.max(0, square - StatUtils.mean(array(untold))));
    }

    /** Root mean square of the slope of δ over G, which is the error of s [1]; 0 where no compound has two eluents. */
    double deviationS() {
        return slopes.isEmpty() ? 0 : StrictMath.sqrt(StatUtils.sumSq(array(slopes)) / slopes.size());
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
