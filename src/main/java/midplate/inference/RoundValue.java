package midplate.inference;

/**
 * What a round of plates is worth, over simulated samples. Two values are compared sample by sample, which tells far more than
 * their means do, since both rounds were run with the same samples and the same errors.
 */
public final class RoundValue {
    private final double[] each;
    private final double now;

    RoundValue(double[] each, double now) {
        this.each = each;
        this.now = now;
    }

    /** The chance that the aim is met on one of the plates of the round or on the next one after them [1]. */
    public double chance() {
        return mean(each);
    }

    /** The chance that it is met on one of the plates of the round [1]. */
    public double now() {
        return now;
    }

    /** Standard error of the chance for as many independent samples [1]; evenly drawn ones are no worse. */
    public double standardError() {
        return error(each);
    }

    /** By how much the chance of this round exceeds that of another one [1]. */
    public double above(RoundValue other) {
        return mean(less(other));
    }

    /** Standard error of that [1]. */
    public double errorAbove(RoundValue other) {
        return error(less(other));
    }

    private double[] less(RoundValue other) {
        if (other.each.length != each.length) {
            throw new IllegalArgumentException("Rounds over different samples cannot be compared.");
        }
        double[] less = new double[each.length];
        for (int k = 0; k < less.length; k++) {
            less[k] = each[k] - other.each[k];
        }
        return less;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double error(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1) / values.length);
    }
}
