package midplate.inference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Likelihoods of readings to hundredths on plates whose own error nobody knows, on a ruler of η coarser than {@link LogitScale}:
 * every {@value #STRIDE}th of its marks. Good enough to choose a ratio by; for one thread.
 */
final class ReadingLikelihoods {
    private static final int STRIDE = 5;
    private static final int HUNDREDTHS = 100;
    private static final int SIZE = (LogitScale.SIZE + STRIDE - 1) / STRIDE;

    private final PairModel model;
    private final PlateScatter scatter;
    private final int[] shifts;
    private final double[] weights;
    private final Map<Double, double[] @Nullable []> known = new HashMap<>();

    ReadingLikelihoods(Knowledge knowledge) {
        this.model = knowledge.model();
        this.scatter = knowledge.scatter();
        this.shifts = Arrays.stream(knowledge.nextShifts())
                .mapToInt(shift -> (int) Math.rint(shift * LogitScale.PER_UNIT / STRIDE))
                .toArray();
        this.weights = knowledge.nextShiftWeights();
    }

    /** A reading [1] to hundredths. */
    static int hundredth(double reading) {
        return (int) Math.rint(reading * HUNDREDTHS);
    }

    /** The place of an η on the ruler. */
    static int place(double eta) {
        return (LogitScale.mark(eta) + STRIDE / 2) / STRIDE;
    }

    /** The likelihood of a reading at a share [% v/v], by place on the ruler; not to be changed. */
    double[] at(double percent, int hundredth) {
        double[] @Nullable [] byReading =
                known.computeIfAbsent(percent, share -> new double[HUNDREDTHS + 1] @Nullable []);
        double[] likelihood = byReading[hundredth];
        if (likelihood == null) {
            likelihood = over(percent, (double) hundredth / HUNDREDTHS);
            byReading[hundredth] = likelihood;
        }
        return likelihood;
    }

    private double[] over(double percent, double read) {
        Noise noise = model.noise();
        double middle = noise.middle(percent);
        double[] plain = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            int mark = Math.min(LogitScale.SIZE - 1, i * STRIDE);
            double sigma = noise.sigmaFrom(middle, model.rf()[mark], scatter.readingError());
            plain[i] = Noise.likelihood(read, model.beyond()[mark], sigma, noise.atLines());
        }
        if (!scatter.isShared()) {
            return plain;
        }
        double[] summed = new double[SIZE];
        for (int h = 0; h < shifts.length; h++) {
            for (int i = 0; i < SIZE; i++) {
                summed[i] += weights[h] * plain[Math.max(0, Math.min(SIZE - 1, i + shifts[h]))];
            }
        }
        return summed;
    }
}
