package midplate.inference;

import java.util.Locale;

/** A file of open measurements that cannot be used, told so that the person who has it finds the cell. */
public final class BadMeasurements extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * One bad cell.
     *
     * @param file the file's name
     * @param row the row as a spreadsheet counts it, the header being row 1; {@code -} for none
     * @param column the column's name; {@code -} for none
     * @param cell what stands there
     * @param allowed what may stand there
     * @param todo what to do next
     */
    BadMeasurements(String file, String row, String column, String cell, String allowed, String todo) {
        super(String.format(
                Locale.ROOT, "%s, row %s, column %s: \"%s\". Allowed: %s. %s", file, row, column, cell, allowed, todo));
    }

    /**
     * A structure that cannot be read.
     *
     * @param smiles what stands there
     * @param why what is wrong with it
     */
    public static BadMeasurements structure(String smiles, String why) {
        return new BadMeasurements(MeasurementReader.FILE, "-", "smiles", smiles, "a structure that can be read", why);
    }

    /** The same with what led to it. */
    BadMeasurements because(Exception cause) {
        initCause(cause);
        return this;
    }
}
