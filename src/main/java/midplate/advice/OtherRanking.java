package midplate.advice;

import java.util.Comparator;
import java.util.List;

/**
 * Puts other eluents in order. Those that reach the strength asked for come first in every order; what ties goes by the chance that
 * the two closest spots come apart inside the window with all others, then by the chance that they come apart anywhere, then by what
 * the pair rests on. The chance to come apart alone would praise ignorance: two spots of which nothing is known lie apart on three
 * plates of four, but seldom where they can be read.
 */
final class OtherRanking {
    /** Above any number of flags. */
    private static final int AVOIDED = 100;

    private OtherRanking() {}

    /** The order. */
    static Comparator<OtherEluent> by(OtherRank rank) {
        Comparator<OtherEluent> reached =
                Comparator.comparing(each -> each.equal().isEmpty());
        Comparator<OtherEluent> chances = Comparator.comparingDouble((OtherEluent each) -> -each.goal())
                .thenComparingDouble(
                        each -> -each.closest().map(ClosestSpots::chance).orElse(0.0))
                .thenComparingDouble(each -> -each.chance())
                .thenComparing(OtherEluent::basis)
                .thenComparing(each -> each.weak().id() + " " + each.strong().id());
        Comparator<OtherEluent> first = switch (rank) {
            case APART -> (one, other) -> 0;
            case SAFETY -> Comparator.comparing(each -> concern(each.flags()));
            case DRYING ->
                Comparator.comparingDouble(each -> each.boilingPoint().orElse(Double.POSITIVE_INFINITY));
            case MEASURED -> Comparator.comparing(OtherEluent::basis).thenComparingDouble(OtherEluent::width);
        };
        return reached.thenComparing(first).thenComparing(chances);
    }

    /** How much speaks against solvents, the less the better: what is chlorinated or forms peroxides fast comes after all else. */
    static int concern(List<SolventFlag> flags) {
        return flags.size() + (flags.stream().anyMatch(SolventFlag::isAvoided) ? AVOIDED : 0);
    }
}
