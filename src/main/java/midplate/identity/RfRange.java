package midplate.identity;

/**
 * A figure on the scale of Rf with its band.
 *
 * @param value the likeliest [1]
 * @param low the lower end of its 90 % band [1]
 * @param high the upper end [1]
 */
public record RfRange(double value, double low, double high) {}
