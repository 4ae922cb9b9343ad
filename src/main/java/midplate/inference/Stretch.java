package midplate.inference;

/**
 * What a plate shows of a spot near its two lines: {@code Rf = (1 + ε₀ + ε₁)/(1 + e^(−η)) − ε₀}, held between 0 and 1.
 *
 * <p>A logistic curve comes near the lines but never reaches them; spots do: one that moves less than its own radius is read
 * at the start line, one that lags less than that behind the front is read at the front. ε₀ and ε₁ [1], in [0, 0.2], say how
 * far the scale reaches beyond start line and front; 0 and 0 give the logistic curve. Without them the model takes a spot near
 * a line too exactly at its word, foretells too small a step to the middle of the plate, and says too small a chance.
 *
 * @param start ε₀ [1]
 * @param front ε₁ [1]
 */
record Stretch(double start, double front) {
    static final double MOST = 0.2;

    Stretch {
        if (!(start >= 0 && start <= MOST && front >= 0 && front <= MOST)) {
            throw new IllegalArgumentException("stretch " + start + ", " + front + "; allowed [0, " + MOST + "]");
        }
    }

    /** Rf [1] from the logistic value 1/(1 + e^(−η)) [1]. */
    double rf(double logistic) {
        return StrictMath.max(0, StrictMath.min(1, beyond(logistic)));
    }

    /** The same, not held between the lines: how surely a spot is read at one, in [−ε₀, 1 + ε₁]. */
    double beyond(double logistic) {
        return (1 + start + front) * logistic - start;
    }

    /** The logistic value [1] that shows as an Rf [1]. */
    double logistic(double rf) {
        return (rf + start) / (1 + start + front);
    }

    /** The slope of {@link #beyond} over η [1] at a logistic value. */
    double slope(double logistic) {
        return (1 + start + front) * logistic * (1 - logistic);
    }
}
