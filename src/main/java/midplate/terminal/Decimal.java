package midplate.terminal;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads a number as people write it: with a point or with a comma before the decimals. */
final class Decimal {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)");

    private Decimal() {}

    /** The number; empty when it is none. */
    static OptionalDouble of(String text) {
        String plain = text.strip();
        return NUMBER.matcher(plain).matches() && plain.length() <= 40
                ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')))
                : OptionalDouble.empty();
    }
}
