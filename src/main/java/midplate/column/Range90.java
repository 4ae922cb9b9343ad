package midplate.column;

/**
 * A number and how sure it is.
 *
 * @param value below and above with the same probability
 * @param low below with probability 0.05
 * @param high above with probability 0.05
 */
public record Range90(double value, double low, double high) {}
