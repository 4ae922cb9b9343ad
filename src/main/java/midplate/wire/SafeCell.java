package midplate.wire;

import java.util.regex.Pattern;

/**
 * Texts in cells of a table that a spreadsheet may open. One that a spreadsheet would take for a formula gets an apostrophe before it, and
 * loses it when it is read back; so does one that begins with apostrophes and goes on like a formula, so that each comes back as it was.
 */
final class SafeCell {
    /** What spreadsheets begin formulas with, their wide forms, and signs some of them skip before that. */
    private static final Pattern FORMULA =
            Pattern.compile("(?s)'*\\s*[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20\\u2212].*|'*[\\t\\r\\n].*");

    private SafeCell() {}

    /** As it is written. */
    static String out(String text) {
        return FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    /** As it was. */
    static String in(String cell) {
        return cell.startsWith("'") && FORMULA.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
