package midplate.terminal;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An interval in words: {@code (0, 100000]} is what a computer reads, "more than 0, at most 100000" what a person does. */
final class IntervalWords {
    private static final Pattern INTERVAL = Pattern.compile("([\\[(])([^,\\s\\[(]+), ([^,\\s\\])]+)([])])( mm)?");

    private IntervalWords() {}

    /** What is allowed, in words where it is an interval and nothing else; as it came otherwise. */
    static String of(String allowed) {
        Matcher interval = INTERVAL.matcher(allowed);
        if (!interval.matches()) {
            return allowed;
        }
        String unit = interval.group(5) == null ? "" : interval.group(5);
        String low = (interval.group(1).equals("[") ? "at least " : "more than ") + interval.group(2);
        String high = (interval.group(4).equals("]") ? "at most " : "less than ") + interval.group(3);
        return low + ", " + high + unit;
    }
}
