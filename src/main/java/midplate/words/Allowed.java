package midplate.words;

import java.util.List;
import java.util.Locale;

/**
 * What is allowed, as a message that reads alike in every language: intervals as mathematicians write them, and lists of
 * names.
 *
 * <p>An end given as text is shown with the digits it was written in, only its decimal mark changes with the language.
 */
public final class Allowed {
    private Allowed() {}

    /** Both ends included: {@code [0, 100]}. */
    public static Message closed(double low, double high) {
        return closed(number(low), number(high));
    }

    /** Both ends included, as written. */
    public static Message closed(String low, String high) {
        return Message.of("allowed.closed", "low", figure(low), "high", figure(high));
    }

    /** Neither end included: {@code (0, 1)}. */
    public static Message open(String low, String high) {
        return Message.of("allowed.open", "low", figure(low), "high", figure(high));
    }

    /** The lower end excluded: {@code (0, 1]}. */
    public static Message leftOpen(String low, String high) {
        return Message.of("allowed.left-open", "low", figure(low), "high", figure(high));
    }

    /** The upper end excluded: {@code [0, 40)}. */
    public static Message rightOpen(String low, String high) {
        return Message.of("allowed.right-open", "low", figure(low), "high", figure(high));
    }

    /** An interval of lengths. */
    public static Message mm(Message interval) {
        return Message.of("allowed.mm", "interval", interval);
    }

    /** Words of a request or names that somebody gave: they are the same in every language. */
    public static Message words(String words) {
        return Message.of("allowed.words", "words", words);
    }

    /** The same, more than one. */
    public static Message words(Iterable<String> words) {
        return words(String.join(", ", words));
    }

    /** Things named one after the other. */
    public static Message list(List<Message> things) {
        return joined("allowed.list", things);
    }

    /** Things of which one may be taken. */
    public static Message either(List<Message> things) {
        return joined("allowed.either", things);
    }

    /** Pairs named one after the other. */
    public static Message pairs(List<Message> pairs) {
        return joined("allowed.pairs", pairs);
    }

    private static Message joined(String key, List<Message> things) {
        Message all = things.isEmpty() ? words("") : things.get(0);
        for (Message thing : things.subList(Math.min(1, things.size()), things.size())) {
            all = Message.of(key, "before", all, "last", thing);
        }
        return all;
    }

    /** A number as it is written in an interval: whole ones without decimals, {@code ∞} for what has no end. */
    public static String number(double end) {
        if (Double.isInfinite(end)) {
            return end > 0 ? "∞" : "-∞";
        }
        return end == Math.rint(end) ? String.format(Locale.ROOT, "%.0f", end) : Double.toString(end);
    }

    /** A number written with a point, to be shown with the decimal mark of the language and otherwise as it is. */
    public static Message figure(String written) {
        int point = written.indexOf('.');
        return point < 0
                ? words(written)
                : Message.of(
                        "number.written",
                        "whole",
                        written.substring(0, point),
                        "decimals",
                        written.substring(point + 1));
    }
}
