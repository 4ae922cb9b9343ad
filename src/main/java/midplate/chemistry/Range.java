package midplate.chemistry;

import java.util.Objects;
import midplate.words.Allowed;
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
        Message reason = Message.of(
                "chemistry.out-of-range", "field", field, "came", Allowed.figure(came), "allowed", allowed());
        throw new Refusal(field, reason, came, allowed(), Message.of("todo.give-number-inside"));
    }

    /** What is allowed, to be put into words. */
    Message allowed() {
        String from = Allowed.number(low);
        String to = Allowed.number(high);
        if (lowEnd == End.INCLUDED) {
            return highEnd == End.INCLUDED ? Allowed.closed(from, to) : Allowed.rightOpen(from, to);
        }
        return highEnd == End.INCLUDED ? Allowed.leftOpen(from, to) : Allowed.open(from, to);
    }

    /** As mathematicians write it: {@code (0, 1]}. */
    @Override
    public String toString() {
        return (lowEnd == End.INCLUDED ? "[" : "(")
                + Allowed.number(low) + ", " + Allowed.number(high)
                + (highEnd == End.INCLUDED ? "]" : ")");
    }
}
