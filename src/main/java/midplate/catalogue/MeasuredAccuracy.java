package midplate.catalogue;

/** How accurate the advice was on compounds that the fit had not seen: the results that the benchmark wrote, as packed. */
public final class MeasuredAccuracy {
    private MeasuredAccuracy() {}

    /**
     * The results in JSON on one line: {@code contenders}, each with its figures ({@code value}, {@code standardError}, {@code
     * count}), and how they were got in {@code setting}.
     *
     * @throws BadSolventData when the file is not there
     */
    public static String json() {
        // no text in it holds a line break, and the page loads it: without its indents 2 kB less are transferred
        return DataFolder.packed().text("accuracy.json").replaceAll("\\R\\s*", "");
    }
}
