package midplate.terminal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One plate as typed: {@code 10: A=0.05, B=0.12} with the percentage of the stronger solvent, or {@code 9:1 A=0.05 B=0.12}
 * with the ratio weak to strong. Numbers may have a decimal comma where it cannot be taken for one that separates spots.
 *
 * @param percentStrong share of the stronger solvent [% v/v]
 * @param rf Rf by spot [1], in the order typed
 */
record RunText(double percentStrong, Map<String, Double> rf) {
    private static final String NUMBER = "\\d+(?:[.,]\\d+)?";
    private static final Pattern RATIO =
            Pattern.compile("\\s*(" + NUMBER + ")\\s*:\\s*(" + NUMBER + ")(?:\\s*:\\s*|\\s+)(.+)");
    private static final Pattern PERCENT = Pattern.compile("\\s*([+-]?" + NUMBER + ")\\s*%?\\s*:\\s*(.+)");
    private static final String NAME = "[^\\s=,;:]+";
    /** A spot; a comma ends its number where no digit follows. */
    private static final Pattern SPOT = Pattern.compile("\\G[\\s,;]*(" + NAME + ")\\s*=\\s*([^\\s;=]*?)"
            + "(?=[,;]?\\s*$|[,;]?\\s+" + NAME + "\\s*=|;\\s*" + NAME + "\\s*=|,(?!\\d)" + NAME + "\\s*=)");

    /** The plate. */
    static RunText of(String text) {
        Matcher ratio = RATIO.matcher(text);
        if (ratio.matches() && ratio.group(3).contains("=")) {
            double weak = number("--run", ratio.group(1));
            double strong = number("--run", ratio.group(2));
            if (!(weak + strong > 0)) {
                throw new Nonsense(
                        "--run", text, "a ratio weak:strong, such as 9:1", "Give parts of which one is above 0.");
            }
            return new RunText(100 * strong / (weak + strong), spots(text, ratio.group(3)));
        }
        Matcher percent = PERCENT.matcher(text);
        if (percent.matches()) {
            return new RunText(number("--run", percent.group(1)), spots(text, percent.group(2)));
        }
        throw unread(text);
    }

    private static Map<String, Double> spots(String text, String list) {
        Map<String, Double> rf = new LinkedHashMap<>();
        Matcher spot = SPOT.matcher(list);
        int end = 0;
        while (spot.find()) {
            if (rf.put(spot.group(1), number("--run, " + spot.group(1), spot.group(2))) != null) {
                throw new Nonsense(
                        "--run", text, "each spot once", "Spot " + spot.group(1) + " stands twice: give its Rf once.");
            }
            end = spot.end();
        }
        if (rf.isEmpty() || !list.substring(end).matches("[\\s,;]*")) {
            throw unread(text);
        }
        return rf;
    }

    private static double number(String option, String text) {
        return Decimal.of(text)
                .orElseThrow(() -> new Nonsense(
                        option, text, "a number, such as 0.25 or 0,25", "Give the number without unit or words."));
    }

    private static Nonsense unread(String text) {
        return new Nonsense(
                "--run",
                text,
                "\"10: A=0.05, B=0.12\" (percent of the stronger solvent) or \"9:1 A=0.05 B=0.12\" (weak:strong)",
                "Put the percentage or the ratio first, then each spot with its Rf.");
    }
}
