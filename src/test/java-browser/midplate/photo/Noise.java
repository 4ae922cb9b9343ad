package midplate.photo;

import org.apache.commons.math3.distribution.NormalDistribution;

/** Many normal numbers, quickly: one of 16384 quantiles for each. */
final class Noise {
    private static final int BITS = 14;
    private static final float[] QUANTILES = quantiles();

    private long state;

    Noise(long seed) {
        this.state = seed | 1;
    }

    private static float[] quantiles() {
        NormalDistribution normal = new NormalDistribution();
        float[] quantiles = new float[1 << BITS];
        for (int i = 0; i < quantiles.length; i++) {
            quantiles[i] = (float) normal.inverseCumulativeProbability((i + 0.5) / quantiles.length);
        }
        return quantiles;
    }

    /** The next number: mean 0, variance 1. */
    float next() {
        state ^= state << 13;
        state ^= state >>> 7;
        state ^= state << 17;
        return QUANTILES[(int) ((state * 0x2545F4914F6CDD1DL) >>> (64 - BITS))];
    }
}
