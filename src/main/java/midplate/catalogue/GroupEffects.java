package midplate.catalogue;

import java.util.List;

/**
 * What the structure of a compound says about its traits in a solvent pair, as fitted to open measurements: a sum over the parts
 * of the molecule, {@code c = Σ nᵢ·cᵢ} and {@code s = Σ nᵢ·sᵢ}, around which compounds lie with what the sum does not explain.
 *
 * <p>The first part is the constant (n = 1), then come the groups in the order of {@code groups.csv}, and last the further
 * groups of Snyder's localization: all polar groups but the strongest, by the sum of their energies.
 *
 * @param pair id of the pair
 * @param effects the parts
 * @param scale κ, by which a group energy Q⁰ lowers c to begin with [ln units]
 * @param covarianceC of the {@code cᵢ}, lower triangle row by row [ln units²]
 * @param covarianceS of the {@code sᵢ} [1]
 * @param residualC variance of c around the sum [ln units²], above 0
 * @param residualS variance of s around the sum [1], above 0
 * @param typical what carries the groups of a compound of which only the groups are known
 * @param classC variance of c within a class of compounds, beyond what carries the group [ln units²], at least 0
 * @param classS variance of s within a class [1], at least 0
 * @param compounds number of series fitted
 * @see "Snyder1968"
 */
public record GroupEffects(
        String pair,
        List<Effect> effects,
        double scale,
        List<Double> covarianceC,
        List<Double> covarianceS,
        double residualC,
        double residualS,
        List<Typical> typical,
        double classC,
        double classS,
        int compounds) {
    /** The part that stands in every compound once. */
    public static final String CONSTANT = "constant";
    /** The part that counts all polar groups but the strongest. */
    public static final String FURTHER = "further-groups";

    /** Keeps its own copies. */
    public GroupEffects {
        effects = List.copyOf(effects);
        covarianceC = List.copyOf(covarianceC);
        covarianceS = List.copyOf(covarianceS);
        typical = List.copyOf(typical);
    }

    /** The file that holds what was fitted for a pair. */
    public static String file(String pair) {
        return pair + "-groups.json";
    }

    /**
     * What one part of a molecule adds.
     *
     * @param part id of the group, {@link #CONSTANT} or {@link #FURTHER}
     * @param c what each adds to c [ln units]; below 0 where it holds the compound back
     * @param s what each adds to s [1]
     * @param compounds in how many of the series fitted it stands
     * @param most how often it stands in the one that has most of it [1]
     */
    public record Effect(String part, double c, double s, int compounds, double most) {}

    /**
     * How often a part of the molecule's size stands in the compounds measured.
     *
     * @param part id of a group of kind size
     * @param mean how often on average [1]
     * @param variance of that number [1]
     */
    public record Typical(String part, double mean, double variance) {}
}
