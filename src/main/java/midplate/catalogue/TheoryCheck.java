package midplate.catalogue;

import java.util.List;

/**
 * A measured pair foretold from published strengths as if it were not measured. What differs is
 * {@code δ = η measured − η foretold} [ln units] of each compound at each share, η the logit of its Rf.
 *
 * @param kind which pairs it speaks for
 * @param pair id of the pair foretold
 * @param from id of the measured pair whose curve was borrowed
 * @param percents shares of the strong solvent that were foretold [% v/v], rising
 * @param compounds series measured in both
 * @param bias mean of δ [ln units]; above 0 where spots climb higher than foretold. It is told and not corrected for: one pair is
 *     no sample of pairs
 * @param scatter standard deviation of δ between compounds, each by its mean over the shares, less what readings do not tell of them [ln units]
 * @param deviationC root mean square of δ, bias included, likewise [ln units]
 * @param deviationS root mean square of the error of s, the change of δ with G [1]
 */
public record TheoryCheck(
        TheoryKind kind,
        String pair,
        String from,
        List<Double> percents,
        int compounds,
        double bias,
        double scatter,
        double deviationC,
        double deviationS) {
    /** Keeps its own copy. */
    public TheoryCheck {
        percents = List.copyOf(percents);
    }
}
