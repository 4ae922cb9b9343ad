package midplate.catalogue;

/**
 * A pair without open measurements, its model made from published eluent strengths.
 *
 * @param pair the model
 * @param base id of the measured pair whose curve it borrows
 * @param deviationC standard deviation of c of a compound from its c in the base pair [ln units]
 * @param deviationS standard deviation of s of a compound from its s in the base pair [1]
 * @param sharedC as much of the deviation of c as all compounds have in common, since the strengths are off [ln units], at most all
 *     of it
 */
public record TheoryPair(PlatePair pair, String base, double deviationC, double deviationS, double sharedC) {
    /** The same as if the strengths were right: each compound deviates by itself. */
    public TheoryPair withoutShared() {
        double own = Math.sqrt(Math.max(0, deviationC * deviationC - sharedC * sharedC));
        return new TheoryPair(pair, base, own, deviationS, 0);
    }
}
