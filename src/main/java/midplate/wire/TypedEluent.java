package midplate.wire;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The eluent as people write it: {@code 9 : 1}, {@code 10 %}, {@code 10}, {@code hexane/EtOAc 9:1}, {@code 10 % EtOAc in hexane}.
 *
 * @param ratio the part that is a ratio or a share of the stronger solvent
 * @param percentStrong what it means [% v/v]; empty where it means none
 * @param solvents the two it names, if it does, in its order; the ratio has the same
 */
record TypedEluent(String ratio, OptionalDouble percentStrong, Optional<SolventWords.Two> solvents) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,15}([.,]\\d{0,15})?|[.,]\\d{1,15})");
    private static final String SHARE = "(?<share>[\\d.,]+\\s?(?:[:/+]\\s?[\\d.,]+|\\s?(?:vol\\.?\\s?)?%))";
    private static final String BY_VOLUME = "(?:\\s?\\(?v/v\\)?)?";
    private static final Pattern SHARE_LAST = Pattern.compile("(?iu)[\\s,;(=]" + SHARE + BY_VOLUME + "\\)?$");
    private static final Pattern SHARE_FIRST = Pattern.compile("(?iu)^" + SHARE + "[\\s,;]");
    private static final Pattern SHARE_IN =
            Pattern.compile("(?iu)^(?<share>[\\d.,]+\\s?(?:vol\\.?\\s?)?%)\\s?(?<strong>.+?)\\sin\\s(?<weak>.+)$");
    private static final Pattern AROUND = Pattern.compile("(?iu)^[\\s,;(=]+|" + BY_VOLUME + "[\\s,;()=]*$");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern VOLUMES = Pattern.compile("(?iu)\\s*vol\\.?\\s*%");
    private static final int LONGEST = 200;

    /** Reads a text that is not empty. */
    static TypedEluent of(String cell, SolventWords words) {
        if (cell.length() > LONGEST) {
            return new TypedEluent(cell, OptionalDouble.empty(), Optional.empty());
        }
        String text = VOLUMES.matcher(cell).replaceAll(" %");
        OptionalDouble plain = percent(text);
        if (plain.isPresent()) {
            return new TypedEluent(text, plain, Optional.empty());
        }
        String line = BLANKS.matcher(text).replaceAll(" ");
        return shareIn(SHARE_IN.matcher(line), words)
                .or(() -> named(SHARE_LAST.matcher(line), line, words))
                .or(() -> named(SHARE_FIRST.matcher(line), line, words))
                .or(() -> words.two(text).map(two -> new TypedEluent("", OptionalDouble.empty(), Optional.of(two))))
                .orElseGet(() -> new TypedEluent(text, OptionalDouble.empty(), Optional.empty()));
    }

    private static Optional<TypedEluent> shareIn(Matcher form, SolventWords words) {
        if (!form.find()) {
            return Optional.empty();
        }
        return words.find(form.group("weak"))
                .flatMap(weak -> words.find(form.group("strong"))
                        .map(strong -> new TypedEluent(
                                form.group("share"),
                                percent(form.group("share")),
                                Optional.of(new SolventWords.Two(weak, strong)))));
    }

    /** A share at one end of the text, and two solvents in what is left. */
    private static Optional<TypedEluent> named(Matcher share, String text, SolventWords words) {
        if (!share.find()) {
            return Optional.empty();
        }
        String rest = share.start() == 0 ? text.substring(share.end()) : text.substring(0, share.start());
        String ratio = share.group("share").strip();
        return words.two(AROUND.matcher(rest).replaceAll(""))
                .map(two -> new TypedEluent(ratio, percent(ratio), Optional.of(two)));
    }

    /** The same with its solvents the other way round. */
    TypedEluent turned() {
        String[] parts = ratio.split("[:/+]", -1);
        String other = parts.length == 2 ? parts[1].strip() + " : " + parts[0].strip() : turnedShare();
        return new TypedEluent(
                other, percent(other), solvents.map(two -> new SolventWords.Two(two.second(), two.first())));
    }

    private String turnedShare() {
        return percentStrong.isPresent()
                ? JsonWriting.number(100 - percentStrong.getAsDouble(), 6).asText() + " %"
                : ratio;
    }

    /**
     * The share of the stronger solvent that a ratio or a share means [% v/v]: of {@code a : b} 100·b/(a + b), {@code 9/1} and {@code 9 + 1}
     * alike; empty where it means none or one outside [0, 100]. The page reads the same.
     */
    static OptionalDouble percent(String text) {
        String[] parts = text.split("[:/+]", -1);
        if (parts.length == 1) {
            return within(number(text.replaceFirst("%\\s*$", "")));
        }
        double weak = number(parts[0]);
        double strong = parts.length == 2 ? number(parts[1]) : Double.NaN;
        return weak >= 0 && strong >= 0 && weak + strong > 0
                ? OptionalDouble.of(100 * strong / (weak + strong))
                : OptionalDouble.empty();
    }

    private static OptionalDouble within(double percent) {
        return percent >= 0 && percent <= 100 ? OptionalDouble.of(percent + 0.0) : OptionalDouble.empty();
    }

    private static double number(String text) {
        String plain = text.strip();
        return NUMBER.matcher(plain).matches() ? Double.parseDouble(plain.replace(',', '.')) : Double.NaN;
    }
}
