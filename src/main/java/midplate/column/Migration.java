package midplate.column;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How a band moves down a column while the eluent changes.
 *
 * <p>With ξ [ml] the eluent that had come onto the bed when what now surrounds the band came onto it, a band that needs V_N(p) [ml] of
 * one eluent beyond the void goes the share dξ/V_N(p(ξ)) of the bed while ξ grows by dξ: in this measure of volume the void drops out,
 * and a step acts on the band when it has reached it. The band leaves when these shares sum to 1, at the volume ξ + V₀ with V₀ [ml]
 * what comes before anything that is not held. Steps of one eluent thus give exactly what one eluent gives. Own algebra; the same as
 * the usual integral over a gradient, in steps.
 *
 * @see "Snyder1968"
 */
final class Migration {
    private final double[] percents;
    private final double[] volumes;

    private Migration(double[] percents, double[] volumes) {
        this.percents = percents;
        this.volumes = volumes;
    }

    /** Through a program; neighbouring steps of one eluent are one step. */
    static Migration of(Program program) {
        List<double[]> steps = new ArrayList<>();
        for (Program.Step step : program.steps()) {
            double[] last = steps.isEmpty() ? new double[] {Double.NaN, 0} : steps.get(steps.size() - 1);
            if (last[0] == step.percentStrong()) {
                last[1] += step.volumeMl();
            } else {
                steps.add(new double[] {step.percentStrong(), step.volumeMl()});
            }
        }
        return new Migration(
                steps.stream().mapToDouble(step -> step[0]).toArray(),
                steps.stream().mapToDouble(step -> step[1]).toArray());
    }

    /** The shares of the strong solvent, one after the other [% v/v]. */
    double[] percents() {
        return percents.clone();
    }

    /**
     * ξ [ml] when the band leaves.
     *
     * @param held V_N [ml] for each step, 0 or more
     * @param factor by which all of them are multiplied [1]
     */
    double run(double[] held, double factor) {
        double left = 1;
        double run = 0;
        int last = percents.length - 1;
        for (int i = 0; i < last; i++) {
            double needed = left * held[i] * factor;
            if (needed <= volumes[i]) {
                return run + needed;
            }
            left -= volumes[i] / (held[i] * factor);
            run += volumes[i];
        }
        return run + left * held[last] * factor;
    }

    /** The same for a law of the share of the strong solvent. */
    double run(DoubleUnaryOperator held) {
        double[] each = new double[percents.length];
        for (int i = 0; i < each.length; i++) {
            each[i] = held.applyAsDouble(percents[i]);
        }
        return run(each, 1);
    }
}
