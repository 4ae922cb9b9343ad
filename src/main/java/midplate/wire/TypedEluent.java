package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.chemistry.Solvent;

/**
 * The eluent as people write it: {@code 9 : 1}, {@code 10 %}, {@code 10}, {@code hexane/EtOAc 9:1}, {@code 10 % EtOAc in hexane}.
 *
 * @param ratio the part that is a ratio or a share
 * @param percent what it means, of the second of two solvents or of the only one [% v/v]; empty where it means none
 * @param solvents none, one or two that are named; the parts of a ratio have their order
 * @param of whose the ratio or share is
 */
record TypedEluent(String ratio, OptionalDouble percent, List<Solvent> solvents, Of of) {
    /** Whose the ratio or share is. */
    enum Of {
        /** The parts of a ratio belong to the solvents in their order; a share is that of the last. */
        IN_ORDER,
        /** A share stands beside two solvents, and not which of them has it. */
        ONE_OF_TWO
    }

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,15}([.,]\\d{0,15})?|[.,]\\d{1,15})");
    private static final String PERCENT = "[\\d.,]+ ?%";
    private static final String RATIO = "[\\d.,]+ ?[:/+\\u2013-] ?[\\d.,]+";
    private static final String GAP = "[ ,;(=:]";
    private static final String BETWEEN = "(?:[ /,;:+&)\\u2013-]|\\b(?:and|und|with|mit)\\b)+";

    /** A share that says of which solvent, and in which other. */
    private static final List<Pattern> IN = forms(
            "(?<share>" + PERCENT + ") ?(?:of |von )?(?<strong>.+?) in (?<weak>.+)",
            "(?<strong>.+?)" + GAP + "+(?<share>" + PERCENT + ")\\)? in (?<weak>.+)",
            "(?<strong>.+?) in (?<weak>.+?)" + GAP + "+(?<share>" + PERCENT + ")\\)?");

    /** Each solvent with its own share. */
    private static final List<Pattern> EACH = forms(
            "(?<a>" + PERCENT + ") ?(?<first>.+?)" + BETWEEN + "(?<b>" + PERCENT + ") ?(?<second>.+)",
            "(?<first>.+?)" + GAP + "+(?<a>" + PERCENT + ")" + BETWEEN + "(?<second>.+?)" + GAP + "+(?<b>" + PERCENT
                    + ")\\)?");

    /** Two solvents, then the share with one of them again. */
    private static final List<Pattern> REPEATED =
            forms("(?<pair>.+?)" + GAP + "+(?<share>" + PERCENT + ") ?(?<strong>.+?)\\)?");

    /** A ratio or share at one end. */
    private static final List<Pattern> BESIDE = forms(
            "(?<rest>.+?)" + GAP + "(?<share>" + RATIO + "|" + PERCENT + ")\\)?",
            "\\(?(?<share>" + RATIO + "(?=[ ,;)])|" + PERCENT + ")(?<rest>.+)");

    private static final List<Pattern> PURE =
            forms("(?:pure|neat|pur|reine[mnrs]?|rein) (?<rest>.+)", "(?<rest>.+?)[ ,(]+(?:pure|neat|pur|rein)\\)?");
    private static final Pattern AROUND = Pattern.compile("^[ ,;()=:]+|[ ,;()=:]+$");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern BY_VOLUME = Pattern.compile("(?iu)\\(?\\bv ?[/:] ?v\\b\\)?|\\bby volume\\b");
    private static final Pattern VOLUMES =
            Pattern.compile("(?iu)\\s*(?:vol(?:\\.|umen)?[\\s-]*)?(?:%|percent\\b|prozent\\b)");
    private static final String ALL = "100 %";
    private static final double ROUNDED = 0.5;
    private static final int LONGEST = 100;

    /** Keeps its own copy. */
    TypedEluent {
        solvents = List.copyOf(solvents);
    }

    private static List<Pattern> forms(String... forms) {
        return List.of(forms).stream()
                .map(form -> Pattern.compile("(?iu)^" + form + "$"))
                .toList();
    }

    /** A ratio or a share whose solvents stand in its order. */
    static TypedEluent inOrder(String ratio, Solvent... solvents) {
        return new TypedEluent(ratio, percent(ratio), List.of(solvents), Of.IN_ORDER);
    }

    /** Reads a text that is not empty. */
    static TypedEluent of(String cell, SolventWords words) {
        TypedEluent unread = new TypedEluent(cell, OptionalDouble.empty(), List.of(), Of.IN_ORDER);
        if (cell.length() > LONGEST) {
            return unread;
        }
        String text = VOLUMES.matcher(cell).replaceAll(" %").strip();
        if (percent(text).isPresent()) {
            return inOrder(text);
        }
        String line = BLANKS.matcher(BY_VOLUME
                        .matcher(text.replace('[', '(').replace(']', ')'))
                        .replaceAll(" "))
                .replaceAll(" ")
                .strip();
        return first(IN, line, form -> in(form, words))
                .or(() -> first(EACH, line, form -> each(form, words)))
                .or(() -> first(REPEATED, line, form -> repeated(form, words)))
                .or(() -> first(BESIDE, line, form -> beside(form, words)))
                .or(() ->
                        first(PURE, line, form -> words.find(form.group("rest")).map(one -> inOrder(ALL, one))))
                .or(() -> words.two(line).map(two -> inOrder("", two.first(), two.second())))
                .orElse(unread);
    }

    /** Reads a text in one form. */
    private interface Form {
        Optional<TypedEluent> read(Matcher form);
    }

    private static Optional<TypedEluent> first(List<Pattern> forms, String line, Form read) {
        return forms.stream()
                .map(form -> form.matcher(line))
                .filter(Matcher::matches)
                .flatMap(form -> read.read(form).stream())
                .findFirst();
    }

    private static Optional<TypedEluent> in(Matcher form, SolventWords words) {
        return words.find(form.group("weak"))
                .flatMap(weak ->
                        words.find(form.group("strong")).map(strong -> inOrder(form.group("share"), weak, strong)));
    }

    private static Optional<TypedEluent> each(Matcher form, SolventWords words) {
        String ratio = plainShare(form.group("a")) + " : " + plainShare(form.group("b"));
        boolean whole = Math.abs(percent(form.group("a")).orElse(0)
                        + percent(form.group("b")).orElse(0)
                        - 100)
                <= ROUNDED;
        return words.find(bare(form.group("first")))
                .flatMap(first -> words.find(bare(form.group("second")))
                        .filter(second -> whole)
                        .map(second -> inOrder(ratio, first, second)));
    }

    private static String plainShare(String share) {
        return share.replace("%", "").strip();
    }

    private static Optional<TypedEluent> repeated(Matcher form, SolventWords words) {
        return words.two(bare(form.group("pair")))
                .flatMap(two -> words.find(bare(form.group("strong")))
                        .flatMap(strong -> strong.equals(two.second())
                                ? Optional.of(inOrder(form.group("share"), two.first(), strong))
                                : strong.equals(two.first())
                                        ? Optional.of(inOrder(form.group("share"), two.second(), strong))
                                        : Optional.empty()));
    }

    private static Optional<TypedEluent> beside(Matcher form, SolventWords words) {
        String share =
                form.group("share").replace('\u2013', ':').replace('-', ':').strip();
        String rest = bare(form.group("rest"));
        boolean isShare = share.endsWith("%");
        return words.two(rest)
                .map(two -> new TypedEluent(
                        share,
                        percent(share),
                        List.of(two.first(), two.second()),
                        isShare ? Of.ONE_OF_TWO : Of.IN_ORDER))
                .or(() -> isShare ? words.find(rest).map(one -> inOrder(share, one)) : Optional.empty());
    }

    private static String bare(String text) {
        return AROUND.matcher(text).replaceAll("");
    }

    /** The same with its two solvents the other way round, and the ratio with them. */
    TypedEluent turned() {
        String[] parts = ratio.split("[:/+]", -1);
        String other = parts.length == 2 ? parts[1].strip() + " : " + parts[0].strip() : rest();
        return new TypedEluent(other, percent(other), List.of(solvents.get(1), solvents.get(0)), Of.IN_ORDER);
    }

    /** The same under a header that names two solvents; one that is named here has the share. */
    TypedEluent under(SolventWords.Two header) {
        if (solvents.isEmpty()) {
            List<Solvent> two = List.of(header.first(), header.second());
            boolean isRatio = ratio.split("[:/+]", -1).length > 1;
            boolean isNumber = percent.isPresent() && !isRatio && !ratio.endsWith("%");
            return new TypedEluent(
                    isNumber ? ratio.strip() + " %" : ratio, percent, two, isRatio ? Of.IN_ORDER : Of.ONE_OF_TWO);
        }
        Solvent one = solvents.get(0);
        boolean isOfThem = solvents.size() == 1 && (one.equals(header.first()) || one.equals(header.second()));
        Solvent other = one.equals(header.first()) ? header.second() : header.first();
        return isOfThem ? new TypedEluent(ratio, percent, List.of(other, one), Of.IN_ORDER) : this;
    }

    /** What a share leaves to the other solvent. */
    String rest() {
        return percent.isPresent()
                ? JsonWriting.number(100 - percent.getAsDouble(), 6).asText() + " %"
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
