package midplate.chemistry;

import java.util.Locale;
import java.util.Objects;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * An interval of allowed numbers that refuses what lies outside, NaN included.
 *
 * @param low the lower end
 * @param lowEnd whether the lower end itself is allowed
 * @param high the upper end, which may be infinite
 * @param highEnd whether the upper end itself is allowed
 */
record Range(double low, End lowEnd, double high, End highEnd) {
    /** Whether an end belongs to its interval. */
    enum End {
        INCLUDED,
        EXCLUDED
    }

    static Range closed(double low, double high) {
        return new Range(low, End.INCLUDED, high, End.INCLUDED);
    }

    static Range open(double low, double high) {
        return new Range(low, End.EXCLUDED, high, End.EXCLUDED);
    }

    static Range leftOpen(double low, double high) {
        return new Range(low, End.EXCLUDED, high, End.INCLUDED);
    }

    static Range rightOpen(double low, double high) {
        return new Range(low, End.INCLUDED, high, End.EXCLUDED);
    }

    /** The value itself when it lies inside; refused otherwise. */
    double require(String field, double value) {
        boolean aboveLow = lowEnd == End.INCLUDED ? value >= low : value > low;
        boolean belowHigh = highEnd == End.INCLUDED ? value <= high : value < high;
        if (aboveLow && belowHigh) {
            return value;
        }
        String came = Objects.toString(value);
        Message reason = Message.of("chemistry.out-of-range", "field", field, "came", came, "allowed", toString());
        throw new Refusal(field, reason, came, toString(), "Give a number inside the interval.");
    }

    /** As mathematicians write it: {@code (0, 1]}. */
    @Override
    public String toString() {
        return (lowEnd == End.INCLUDED ? "[" : "(")
                + text(low) + ", " + text(high)
                + (highEnd == End.INCLUDED ? "]" : ")");
    }

    private static String text(double end) {
        if (Double.isInfinite(end)) {
            return end > 0 ? "∞" : "-∞";
        }
        return end == Math.rint(end) ? String.format(Locale.ROOT, "%.0f", end) : Double.toString(end);
    }
}
