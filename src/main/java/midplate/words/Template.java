package midplate.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One text with places for values: <code>{name}</code> shows a value plainly, <code>{name:2}</code> shows a number with
 * exactly two decimals. Braces stand for nothing else.
 *
 * <p>Numbers are written with the decimal mark of the texts and a hyphen-minus whatever the machine's language; a number
 * that rounds to zero carries no minus sign.
 */
final class Template {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z][A-Za-z0-9]*)(?::([0-9]))?}");

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
    private static final double MILLION = 1e6;
    /** Below this a double has decimals enough to tell what its digits are. */
    private static final double LARGE = 1e9;
    /** Halves are left to exact arithmetic. */
    private static final double CLEARLY_NEARER = 0.4999;

    private final String key;
    private final List<Part> parts;

    /** A stretch of text, or a place: then {@code name} is set, and {@code decimals} is -1 for "plainly". */
    private record Part(String text, @Nullable String name, int decimals) {}

    private Template(String key, List<Part> parts) {
        this.key = key;
        this.parts = List.copyOf(parts);
    }

    /**
     * Reads a text.
     *
     * @throws IllegalStateException when a brace belongs to no place
     */
    static Template of(String key, String text) {
        List<Part> parts = new ArrayList<>();
        Matcher place = PLACE.matcher(text);
        int from = 0;
        while (place.find()) {
            parts.add(plainText(key, text.substring(from, place.start())));
            String decimals = place.group(2);
            parts.add(new Part("", place.group(1), decimals == null ? -1 : Integer.parseInt(decimals)));
            from = place.end();
        }
        parts.add(plainText(key, text.substring(from)));
        return new Template(key, parts);
    }

    private static Part plainText(String key, String text) {
        if (text.indexOf('{') >= 0 || text.indexOf('}') >= 0) {
            throw new IllegalStateException(String.format(
                    Locale.ROOT,
                    "Text %s: a brace in \"%s\" opens no place. Write {name} or {name:2}, the digit for the decimals.",
                    key,
                    text));
        }
        return new Part(text, null, -1);
    }

    /** The text with the message's values in their places; the texts give the decimal mark and the words of inner messages. */
    String fill(Message message, Texts texts) {
        StringBuilder out = new StringBuilder();
        for (Part part : parts) {
            String name = part.name();
            out.append(name == null ? part.text() : shown(message, name, part.decimals(), texts));
        }
        return out.toString();
    }

    private String shown(Message message, String name, int decimals, Texts texts) {
        Object value = message.args().get(name);
        if (value == null) {
            throw new IllegalStateException(String.format(
                    Locale.ROOT,
                    "Text %s shows {%s}, but the message brought %s. Give the message that value.",
                    key,
                    name,
                    message.args().keySet()));
        }
        if (decimals < 0) {
            return plain(value, texts);
        }
        if (!(value instanceof Number number)) {
            throw new IllegalStateException(String.format(
                    Locale.ROOT,
                    "Text %s shows {%s:%d}, but the message brought the words \"%s\". Give it a number.",
                    key,
                    name,
                    decimals,
                    value));
        }
        return marked(fixed(number.doubleValue(), decimals), texts);
    }

    private static String plain(Object value, Texts texts) {
        if (value instanceof Message inner) {
            return texts.render(inner);
        }
        return value instanceof Double number ? marked(plain(number), texts) : value.toString();
    }

    private static String marked(String number, Texts texts) {
        return texts.decimalMark().equals(".") ? number : number.replace(".", texts.decimalMark());
    }

    private static String plain(double number) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        double millionths = number * MILLION;
        long whole = Math.round(millionths);
        if (Math.abs(millionths) < LARGE && whole / MILLION == number) { // then these are its very digits
            return whole == 0 ? "0" : stripped(BigDecimal.valueOf(whole, 6).toPlainString());
        }
        return number == 0
                ? "0"
                : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static String stripped(String withDecimals) {
        int end = withDecimals.length();
        while (withDecimals.charAt(end - 1) == '0') {
            end--;
        }
        return withDecimals.substring(0, withDecimals.charAt(end - 1) == '.' ? end - 1 : end);
    }

    private static String fixed(double number, int decimals) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        double parts = number * TENS[decimals];
        double whole = Math.rint(parts);
        if (Math.abs(parts) < LARGE && Math.abs(parts - whole) < CLEARLY_NEARER) {
            return BigDecimal.valueOf((long) whole, decimals).toPlainString();
        }
        // as String.format would write it, at a tenth of the cost; it knows no minus zero either
        return BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
