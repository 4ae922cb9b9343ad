package midplate.advice;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is wished of other eluents.
 *
 * @param percentStrong the mixture of the pair asked about that they should equal [% v/v, 0 to 100]; empty for the one advised
 * @param rank their order; empty for {@link OtherRank#APART} with two spots or more, {@link OtherRank#MEASURED} with one
 */
public record OthersWish(OptionalDouble percentStrong, Optional<OtherRank> rank) {
    /** The mixture advised, the usual order. */
    public static final OthersWish USUAL = new OthersWish(OptionalDouble.empty(), Optional.empty());

    /** The order for so many spots. */
    OtherRank rankFor(int spots) {
        return rank.orElse(spots > 1 ? OtherRank.APART : OtherRank.MEASURED);
    }
}
