package midplate.identity;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.GroupCounts.Detail;

/**
 * Whether a compound may leave the plate when it is warmed, from its groups.
 *
 * <p>A rule of thumb and own choice, no published limit: size = carbons + 2 · (groups that are no carbon), with carbons from aromatic
 * and saturated carbon, two for each double or triple bond; small means at most {@value #MOST_SIZE}. Monoterpenes, small aromatics and
 * their simple aldehydes, ketones and alcohols are small; vanillin and caffeine are not. Acids, salts, amides and the like are
 * held by the layer whatever their size. Only compounds of which every carbon was counted are judged.
 */
final class Volatility {
    private static final int MOST_SIZE = 12;
    /** Carbons that one of the group stands for. */
    private static final Map<String, Integer> CARBONS = Map.of(
            "aromatic-carbon", 1, "alkyl-carbon", 1, "alkene", 2, "alkyne", 2, "tert-butyl", 0, "ring-ketone", 0);
    /** What the next group of a compound adds, as a group of its own makes it boil higher. */
    private static final int GROUP = 2;

    private static final Set<String> HELD = Set.of(
            "amidine",
            "azo",
            "boronic-acid",
            "carbamate",
            "carboxylic-acid",
            "hydrazine",
            "imide",
            "inner-salt",
            "n-hydroxy",
            "n-oxide",
            "onium-ion",
            "phosphine-oxide",
            "phosphonate",
            "phosphonic-acid",
            "primary-amide",
            "primary-carbamate",
            "pyridone",
            "secondary-amide",
            "sulfonamide",
            "sulfone",
            "sulfonic-acid",
            "sulfoxide",
            "tertiary-amide",
            "thiocarbonyl",
            "unrecognised",
            "urea");

    private Volatility() {}

    /** What is known of it. */
    enum Volatile {
        /** It may leave the plate on warming, as far as the rule tells. */
        MAY_LEAVE,
        /** The rule does not say so; no proof that it stays. */
        NOT_TOLD
    }

    /** What the rule says of a compound. */
    static Volatile of(Optional<GroupCounts> structure) {
        return structure.filter(Volatility::isSmall).isPresent() ? Volatile.MAY_LEAVE : Volatile.NOT_TOLD;
    }

    private static boolean isSmall(GroupCounts counts) {
        if (counts.detail() != Detail.WHOLE || counts.counts().keySet().stream().anyMatch(HELD::contains)) {
            return false;
        }
        int size = counts.counts().entrySet().stream()
                .mapToInt(group -> group.getValue() * CARBONS.getOrDefault(group.getKey(), GROUP))
                .sum();
        return size <= MOST_SIZE;
    }
}
