package midplate.benchmark;

import midplate.inference.PairName;

/**
 * The straight line of log k against log of the strong solvent's share, with one slope for every compound and pair:
 * {@code R_M = a − m·log10 φ}, m = 1.3; below 0.2 % the value at 0.2 %.
 *
 * @see "Soczewinski1969"
 */
final class LogLogLaw implements StrengthLaw {
    private static final double SLOPE = 1.3;
    private static final double LEAST_PERCENT = 0.2;

    @Override
    public double strength(PairName pair, double percent) {
        return SLOPE * Math.log(Math.max(percent, LEAST_PERCENT) / 100);
    }
}
