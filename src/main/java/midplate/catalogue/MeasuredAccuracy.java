package midplate.catalogue;

/** How accurate the advice was on compounds that the fit had not seen: the results that the benchmark wrote, as packed. */
public final class MeasuredAccuracy {
    private MeasuredAccuracy() {}

    /**
     * The results in JSON: {@code contenders}, each with its figures ({@code value}, {@code standardError}, {@code
     * count}), and how they were got in {@code setting}.
     *
     * @throws BadSolventData when the file is not there
     */
    public static String json() {
        return DataFolder.packed().text("accuracy.json");
    }
}
