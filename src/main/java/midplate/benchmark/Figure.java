package midplate.benchmark;

/**
 * One figure of the results.
 *
 * @param value the mean
 * @param standardError its standard error over compounds; NaN when too few stand behind it
 * @param count how many values stand behind it
 */
public record Figure(double value, double standardError, long count) {}
