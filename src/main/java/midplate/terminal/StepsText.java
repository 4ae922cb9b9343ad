package midplate.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.wire.RequestText;
import org.jspecify.annotations.Nullable;

/**
 * Eluents for a column as typed: one, {@code 10 %} or {@code 9:1}, or each with its volume, {@code 5 %:60, 4:1:120}. Numbers may
 * have a decimal comma where it cannot be taken for one that separates steps.
 *
 * @param steps at least one; only a single one may have no volume
 */
record StepsText(List<Step> steps) {
    private static final String NUMBER = "([+-]?\\d+(?:[.,]\\d+)?)";
    private static final Pattern PERCENT = Pattern.compile(NUMBER + "\\s*%(?:\\s*:\\s*" + NUMBER + "\\s*(?:ml)?)?");
    private static final Pattern RATIO =
            Pattern.compile(NUMBER + "\\s*:\\s*" + NUMBER + "(?:\\s*:\\s*" + NUMBER + "\\s*(?:ml)?)?");
    private static final String SEPARATOR = "\\s*;\\s*|\\s*,\\s+";

    /**
     * One eluent.
     *
     * @param percentStrong share of the stronger solvent [% v/v]
     * @param volumeMl how much of it [ml], where it was said
     */
    record Step(double percentStrong, OptionalDouble volumeMl) {}

    StepsText {
        steps = List.copyOf(steps);
    }

    /** The steps. */
    static StepsText of(String text) {
        List<Step> steps = new ArrayList<>();
        for (String one : text.strip().split(SEPARATOR, -1)) {
            steps.add(step(text, one));
        }
        if (steps.size() > 1 && steps.stream().anyMatch(step -> step.volumeMl().isEmpty())) {
            throw new Nonsense(
                    "--steps",
                    text,
                    "a volume behind each of several eluents, such as \"5 %:60, 20 %:120\"",
                    "Say how many millilitres of each are poured.");
        }
        return new StepsText(steps);
    }

    private static Step step(String text, String one) {
        Matcher percent = PERCENT.matcher(one);
        if (percent.matches()) {
            return new Step(Decimal.of(percent.group(1)).orElseThrow(), volume(percent.group(2)));
        }
        Matcher ratio = RATIO.matcher(one);
        if (ratio.matches()) {
            double weak = Decimal.of(ratio.group(1)).orElseThrow();
            double strong = Decimal.of(ratio.group(2)).orElseThrow();
            if (weak >= 0 && strong >= 0 && weak + strong > 0) {
                return new Step(100 * strong / (weak + strong), volume(ratio.group(3)));
            }
        }
        throw new Nonsense(
                "--steps",
                text,
                "one eluent, \"10 %\" or 9:1 (weak:strong), or several with their millilitres, \"5 %:60, 4:1:120\"",
                "Give the percentage with % or the ratio first, then a colon and the volume; separate steps by commas.");
    }

    private static OptionalDouble volume(@Nullable String text) {
        return text == null ? OptionalDouble.empty() : Decimal.of(text);
    }

    /** Puts them into what is asked of a column. */
    void put(RequestText column) {
        if (steps.get(0).volumeMl().isEmpty()) {
            column.with("percentStrong", steps.get(0).percentStrong());
        } else {
            steps.forEach(step ->
                    column.withStep(step.percentStrong(), step.volumeMl().orElseThrow()));
        }
    }
}
