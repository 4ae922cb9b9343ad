package midplate.catalogue;

/**
 * What readings in one measured pair say about another: {@code c_to = intercept + slope·c_from} with a scatter.
 *
 * @param from id of the pair that was read
 * @param to id of the pair that is asked about
 * @param intercept [ln units]
 * @param slope [1]
 * @param deviation standard deviation around the line [ln units], above 0
 * @param compounds number of series measured in both
 * @param lowest c_from below which fewer than one in fifty of them lie: the line says nothing there [ln units]
 * @param highest c_from above which fewer than one in fifty lie [ln units]
 */
public record PairLink(
        String from,
        String to,
        double intercept,
        double slope,
        double deviation,
        int compounds,
        double lowest,
        double highest) {
    /** Whether the line may be used at a c_from [ln units]. */
    public boolean reaches(double c) {
        return c >= lowest && c <= highest;
    }
}
