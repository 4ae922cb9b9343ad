package midplate.catalogue;

import java.util.List;

/**
 * What the parts of a molecule do to c in one pair beyond what the traits in another pair say of it: a sum as in {@link
 * GroupEffects}, over the parts that stood in some compound measured in both.
 *
 * @param from id of the pair that was read
 * @param to id of the pair that is asked about
 * @param parts the parts, the constant first
 * @param covariance of what they do, lower triangle row by row [ln units²]
 * @param unseen variance of what any other part does [ln units²], at least 0
 * @param residual variance of c around the sum [ln units²], above 0
 * @param compounds number of series fitted
 */
public record GroupDifference(
        String from,
        String to,
        List<Part> parts,
        List<Double> covariance,
        double unseen,
        double residual,
        int compounds) {
    /** The file that holds all of them. */
    public static final String FILE = "differences.json";

    /** Keeps its own copies. */
    public GroupDifference {
        parts = List.copyOf(parts);
        covariance = List.copyOf(covariance);
    }

    /**
     * A part.
     *
     * @param part id of the group, {@link GroupEffects#CONSTANT} or {@link GroupEffects#FURTHER}
     * @param c what each adds to c [ln units]
     * @param compounds in how many of the series fitted it stands
     */
    public record Part(String part, double c, int compounds) {}
}
