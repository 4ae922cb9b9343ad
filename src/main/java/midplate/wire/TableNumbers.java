package midplate.wire;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.notebook.Entered;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Reads the numbers of a table. A number whose only mark stands before exactly three digits may be meant with decimals or with thousands;
 * it is taken where the mark is the decimal mark of the table, or where a 0 stands before it, and refused else.
 */
final class TableNumbers {
    /** What stands before decimals. */
    enum Decimal {
        /** As in 0,35. */
        COMMA,
        /** As in 0.35. */
        POINT
    }

    private static final int LONGEST = 40;
    private static final Pattern NUMBER = Pattern.compile("([+-]?)(\\d*)(?:([.,])(\\d*))?(?:[eE]([+-]?\\d{1,2}))?");
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}(?:[.,' \\u00a0\\u202f]\\d{3})+(?:[.,]\\d*)?");
    private static final Pattern AS_IN_JSON = Pattern.compile("-?(?:0|[1-9]\\d*)(?:\\.\\d+)?(?:[eE][+-]?\\d+)?");
    private static final Pattern RF = Pattern.compile("[01]?[.,]\\d+|0|1");
    private static final int GROUP = 3;

    private final Decimal decimal;

    TableNumbers(Decimal decimal) {
        this.decimal = decimal;
    }

    Decimal decimal() {
        return decimal;
    }

    /** Whether a cell looks like a number, whatever its mark means. */
    static boolean looksLikeOne(String cell) {
        String text = plain(cell);
        return isNumber(NUMBER.matcher(text), text) || GROUPED.matcher(text).matches();
    }

    /** Whether a cell may be an Rf by its looks. */
    static boolean mayBeRf(String cell) {
        return RF.matcher(cell).matches();
    }

    /** The decimal mark of the numbers in these cells; where none tells, that of whoever parts cells by this delimiter. */
    static Decimal decimal(List<String> cells, char delimiter) {
        int commas = 0;
        int points = 0;
        for (String cell : cells) {
            String text = plain(cell);
            Matcher number = NUMBER.matcher(text);
            if (isNumber(number, text) && number.group(3) != null && !isDoubtful(number)) {
                commas += number.group(3).equals(",") ? 1 : 0;
                points += number.group(3).equals(".") ? 1 : 0;
            }
        }
        if (commas == points) {
            return delimiter == ';' ? Decimal.COMMA : Decimal.POINT;
        }
        return commas > points ? Decimal.COMMA : Decimal.POINT;
    }

    /**
     * The number in a cell, times a factor, written with a point.
     *
     * @throws Refusal where it is none, or may be two
     */
    Entered read(RunColumn column, String cell, BigDecimal factor, Message allowed) {
        String text = plain(cell);
        Matcher number = NUMBER.matcher(text);
        if (!isNumber(number, text)) {
            boolean grouped = GROUPED.matcher(text).matches();
            throw new Refusal(
                    column.id(),
                    grouped
                            ? Message.of("import.thousands", "came", shown(cell))
                            : Message.of("import.no-number", "came", shown(cell)),
                    shown(cell),
                    allowed,
                    grouped ? Message.of("todo.no-thousands") : Message.of("todo.write-number"));
        }
        String mark = decimal == Decimal.COMMA ? "," : ".";
        if (number.group(3) != null && !number.group(3).equals(mark) && isDoubtful(number)) {
            throw new Refusal(
                    column.id(),
                    Message.of("import.thousands", "came", shown(cell)),
                    shown(cell),
                    allowed,
                    Message.of("todo.no-thousands"));
        }
        String point = text.replace(',', '.');
        BigDecimal value = new BigDecimal(point.startsWith("+") ? point.substring(1) : point);
        if (factor.compareTo(BigDecimal.ONE) != 0) {
            value = value.multiply(factor).stripTrailingZeros();
        } else if (AS_IN_JSON.matcher(point).matches()) {
            return Entered.number(point, value.doubleValue());
        }
        return Entered.number(value.toPlainString(), value.doubleValue());
    }

    private static boolean isNumber(Matcher number, String text) {
        return text.length() <= LONGEST
                && number.matches()
                && (!number.group(2).isEmpty()
                        || (number.group(4) != null && !number.group(4).isEmpty()));
    }

    /** Whether thousands may be meant. */
    private static boolean isDoubtful(Matcher number) {
        String whole = number.group(2);
        return number.group(4).length() == GROUP
                && !whole.isEmpty()
                && whole.length() <= GROUP
                && whole.charAt(0) != '0'
                && number.group(5) == null;
    }

    private static String plain(String cell) {
        return cell.strip().replace('\u2212', '-');
    }

    private static String shown(String cell) {
        return ShownText.of(cell);
    }
}
