package midplate.catalogue;

import java.util.Locale;

/**
 * A file of {@code solvent-data} that cannot be used, told so that the person who edits it finds the cell. Thrown at
 * start: the program does not run on data it cannot vouch for.
 */
public final class BadSolventData extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * One bad cell.
     *
     * @param file the file's name
     * @param row the row as a spreadsheet counts it, the header being row 1; in JSON the key; {@code -} for none
     * @param column the column's name; in JSON the field; {@code -} for none
     * @param cell what stands there
     * @param allowed what may stand there
     * @param todo what to do next
     */
    BadSolventData(String file, String row, String column, String cell, String allowed, String todo) {
        super(String.format(
                Locale.ROOT, "%s, row %s, column %s: \"%s\". Allowed: %s. %s", file, row, column, cell, allowed, todo));
    }
}
