package midplate.inference;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Plates of possible samples as they might be read, drawn with the noise of the model and a fresh error of each plate. A plate
 * of one ratio shows the same whatever other plates run beside it, so that rounds of plates are compared on the same samples.
 * For one thread.
 */
final class RehearsedPlates {
    /** An odd number, but not that by which the generator itself steps: its streams would be shifted copies of one. */
    private static final long APART = 0xD1342543DE82EF95L;

    private final Knowledge knowledge;
    private final PossibleSamples samples;
    private final int[] order;
    private final int count;
    private final long seed;
    private final Map<Double, Plates> plates = new HashMap<>();

    /**
     * One ratio over all samples.
     *
     * @param readings by sample, then by spot [1]
     * @param shifts error of the plate, by sample [ln units]
     */
    record Plates(double[][] readings, double[] shifts) {}

    /** @param order the spots in an order that does not depend on how they were typed */
    RehearsedPlates(Knowledge knowledge, int[] order, PreposteriorAnalysis.Draws draws) {
        this.knowledge = knowledge;
        this.order = order;
        this.count = draws.samples();
        this.seed = draws.seed();
        this.samples = PossibleSamples.of(knowledge, count, (int) (Math.floorMod(seed, 9_973L) * count));
    }

    /** η [1] of a spot of a sample in an eluent. */
    double eta(int sample, int spot, Climb climb) {
        return samples.eta(sample, spot, climb);
    }

    /** What plates of a share [% v/v] show. */
    Plates at(double percent) {
        return plates.computeIfAbsent(percent, this::drawn);
    }

    private Plates drawn(double percent) {
        SplittableRandom random = new SplittableRandom(seed * APART + Double.doubleToLongBits(percent));
        PairModel model = knowledge.model();
        Climb climb = model.climb(percent);
        double[] sigma = model.sigma(percent, knowledge.scatter().readingError());
        double[][] readings = new double[count][order.length];
        double[] shifts = new double[count];
        for (int k = 0; k < count; k++) {
            shifts[k] = knowledge.scatter().sharedError() * random.nextGaussian();
            for (int spot : order) {
                int mark = LogitScale.mark(eta(k, spot, climb) + shifts[k]);
                double read = model.rf()[mark] + sigma[mark] * Noise.student(random::nextGaussian);
                readings[k][spot] = Math.max(0, Math.min(1, read));
            }
        }
        return new Plates(readings, shifts);
    }
}
