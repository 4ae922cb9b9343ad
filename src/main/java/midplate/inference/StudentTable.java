package midplate.inference;

/**
 * Student's distribution function of {@link Noise} from a table: cubics through values and slopes at every 1/{@value
 * #PER_UNIT}, within 1e-8 of {@link Noise#below} everywhere. For sums over many readings to expect, where absolute
 * chances are added up; likelihoods, of which ratios count, take the exact function.
 */
final class StudentTable {
    private static final int PER_UNIT = 32;
    /** Beyond so many σ less than 1e-8 is left. */
    private static final double END = 64;

    private static final int CUBICS = (int) (END * PER_UNIT);
    /** Four coefficients for each stretch of the upper half. */
    private static final double[] COEFFICIENTS = new double[4 * CUBICS];

    static {
        double step = 1.0 / PER_UNIT;
        for (int k = 0; k < CUBICS; k++) {
            double value = Noise.below(k * step);
            double rise = Noise.below((k + 1) * step) - value;
            double slope = step * Noise.density(k * step, 1);
            double nextSlope = step * Noise.density((k + 1) * step, 1);
            COEFFICIENTS[4 * k] = value;
            COEFFICIENTS[4 * k + 1] = slope;
            COEFFICIENTS[4 * k + 2] = 3 * rise - 2 * slope - nextSlope;
            COEFFICIENTS[4 * k + 3] = slope + nextSlope - 2 * rise;
        }
    }

    private StudentTable() {}

    /** The chance of a deviation below z [1]. */
    static double below(double z) {
        double place = Math.abs(z) * PER_UNIT;
        if (!(place < CUBICS)) {
            return z > 0 ? 1 : z < 0 ? 0 : z; // what is no number stays none
        }
        int k = (int) place;
        double t = place - k;
        int at = 4 * k;
        double half =
                COEFFICIENTS[at] + t * (COEFFICIENTS[at + 1] + t * (COEFFICIENTS[at + 2] + t * COEFFICIENTS[at + 3]));
        return z < 0 ? 1 - half : half;
    }
}
