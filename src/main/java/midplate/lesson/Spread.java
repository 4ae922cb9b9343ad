package midplate.lesson;

/**
 * A standard deviation [1 in Rf] with the interval that holds the true one in about 90 of 100 cases.
 *
 * @param value the estimate; 0 where that of the variance is not above 0
 * @param low lower end
 * @param high upper end
 */
public record Spread(double value, double low, double high) {
    /** From variances, of which those below 0 count as 0; the ends hold the estimate. */
    static Spread of(double variance, double low, double high) {
        double value = root(variance);
        return new Spread(value, Math.min(value, root(low)), Math.max(value, root(high)));
    }

    static double root(double variance) {
        return Math.sqrt(Math.max(0, variance));
    }
}
