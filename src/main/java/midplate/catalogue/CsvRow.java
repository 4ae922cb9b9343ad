package midplate.catalogue;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A row of a CSV file, asked cell by cell; what a cell may not hold is refused with the place.
 *
 * @param file the file's name
 * @param number the row as a spreadsheet counts it, the header being row 1
 * @param columns the names of the columns
 * @param cells what stands there
 */
record CsvRow(String file, String number, List<String> columns, List<String> cells) {
    /** One number as tables print it: no exponent, no range, no NaN. */
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private static final Pattern CONFIDENCE = Pattern.compile("[HML]");

    /** What stands in a cell; empty where nothing does. */
    String text(String column) {
        int at = columns.indexOf(column);
        if (at < 0) {
            throw new IllegalArgumentException(file + " has no column " + column);
        }
        return cells.get(at);
    }

    /** A cell that must not be empty. */
    String filled(String column) {
        String cell = text(column);
        if (cell.isEmpty()) {
            throw bad(column, "a text", "Fill the cell, or remove the row.");
        }
        return cell;
    }

    /** A cell that must fit a pattern. */
    String matching(String column, Pattern pattern, String allowed) {
        String cell = text(column);
        if (!pattern.matcher(cell).matches()) {
            throw bad(column, allowed, "Correct the cell.");
        }
        return cell;
    }

    /** A cell that must hold one of the words given. */
    String oneOf(String column, Collection<String> words) {
        String cell = text(column);
        if (!words.contains(cell)) {
            throw bad(column, listed(words), "Correct the cell.");
        }
        return cell;
    }

    /** A cell that must name one of the things given. */
    <T> T named(String column, Map<String, T> things, String where) {
        T thing = things.get(text(column));
        if (thing == null) {
            throw bad(column, listed(things.keySet()), "Correct the cell, or add it to " + where + ".");
        }
        return thing;
    }

    /** A cell that must hold one number as printed, within what is plausible. */
    void number(String column, double low, double high) {
        String cell = text(column);
        boolean fits = NUMBER.matcher(cell).matches();
        double value = fits ? Double.parseDouble(cell) : Double.NaN;
        if (!(value >= low && value <= high)) {
            throw bad(
                    column,
                    String.format(Locale.ROOT, "one number in [%s, %s]", low, high),
                    "Correct the cell; a value that is not known is no row here but one in gaps.csv.");
        }
    }

    /** The basis of this row, from column {@code basis}. */
    Basis basis() {
        for (Basis basis : Basis.values()) {
            if (basis.id().equals(text("basis"))) {
                return basis;
            }
        }
        throw bad("basis", "read, memory, own", "Correct the cell.");
    }

    /** The confidence of this row, which a value from memory has and no other one. */
    String confidence(Basis basis) {
        String cell = text("confidence");
        if (basis == Basis.MEMORY) {
            return matching("confidence", CONFIDENCE, "H, M or L where the basis is memory");
        }
        if (!cell.isEmpty()) {
            throw bad("confidence", "nothing unless the basis is memory", "Empty the cell.");
        }
        return cell;
    }

    /** The fault of a cell of this row, to be thrown. */
    BadSolventData bad(String column, String allowed, String todo) {
        return new BadSolventData(file, number, column, text(column), allowed, todo);
    }

    private static String listed(Collection<String> words) {
        Optional<String> all =
                words.stream().map(word -> word.isEmpty() ? "(empty)" : word).reduce((a, b) -> a + ", " + b);
        return all.orElse("nothing");
    }
}
