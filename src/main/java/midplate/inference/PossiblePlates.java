package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * Possible samples, and plates of one of them as somebody might read them: the truth of what is known is drawn once, then each plate has an
 * error of its own and each reading another. The same chance gives the same plates. Immutable.
 */
public final class PossiblePlates {
    private final Knowledge knowledge;
    private final PossibleSamples samples;

    private PossiblePlates(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.samples = PossibleSamples.of(knowledge);
    }

    /** Those of what is known. */
    public static PossiblePlates of(Knowledge knowledge) {
        return new PossiblePlates(knowledge);
    }

    /** How many samples there are. */
    public int samples() {
        return samples.count();
    }

    /** The true Rf [1] of a spot of a sample at a share of the strong solvent [% v/v]: what a plate without any error shows. */
    public double rf(int sample, int spot, double percent) {
        return samples.rf(sample, spot, knowledge.model().climb(percent));
    }

    /**
     * What a reading scatters by itself, beside the error that all spots of its plate share: the standard deviation [Rf], {@code σ·√(ν/(ν − 2))} of
     * Student's noise with ν = 5.
     *
     * @param percent share of the strong solvent [% v/v]
     * @param rf where the spot is [1]
     */
    public double ownScatter(double percent, double rf) {
        int mark = LogitScale.mark(knowledge.model().eta(rf));
        double sigma = knowledge.model().sigma(percent, knowledge.scatter().readingError())[mark];
        return sigma * Math.sqrt(Noise.DEGREES / (Noise.DEGREES - 2.0));
    }

    /** Standard deviation of the error that all spots of a plate share [ln units]. */
    public double sharedScatter() {
        return knowledge.scatter().sharedError();
    }

    /**
     * A plate of a sample as it is read, each spot from 0 to 1 [1], in the order of the spots: moved by an error of the plate that all spots
     * share, in ln units, and by Student's noise of {@link Noise} for each reading.
     *
     * @param sample which, from 0
     * @param percent share of the strong solvent [% v/v]
     * @param normal numbers of the standard normal distribution, as many as are asked for
     */
    public List<Double> read(int sample, double percent, DoubleSupplier normal) {
        PairModel model = knowledge.model();
        Climb climb = model.climb(percent);
        double[] sigma = model.sigma(percent, knowledge.scatter().readingError());
        double shift = knowledge.scatter().sharedError() * normal.getAsDouble();
        List<Double> readings = new ArrayList<>();
        for (int spot = 0; spot < knowledge.spots(); spot++) {
            int mark = LogitScale.mark(samples.eta(sample, spot, climb) + shift);
            double read = model.rf()[mark] + sigma[mark] * Noise.student(normal);
            readings.add(Math.max(0, Math.min(1, read)));
        }
        return List.copyOf(readings);
    }
}
