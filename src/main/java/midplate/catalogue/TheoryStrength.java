package midplate.catalogue;

import java.util.List;

/**
 * How published eluent strengths are turned into the curve of a pair without measurements, and how well that does for measured ones.
 *
 * @param series the table of strengths
 * @param activity α' of silica in Snyder's law [1], in (0, 1]
 * @param slope κ, by how much η of the average compound rises with the strength ε [ln units per unit of ε], above 0
 * @param checks one for each kind of pair, in the order of the kinds
 * @see "Snyder1968"
 */
public record TheoryStrength(StrengthSeries series, double activity, double slope, List<TheoryCheck> checks) {
    /** The file beside the index that holds it. */
    public static final String FILE = "theory.json";

    /**
     * Keeps its own copy.
     *
     * @throws IllegalArgumentException when a kind of pair has no check, or two
     */
    public TheoryStrength {
        checks = List.copyOf(checks);
        List<TheoryKind> kinds = checks.stream().map(TheoryCheck::kind).toList();
        if (!kinds.equals(List.of(TheoryKind.values()))) {
            throw new IllegalArgumentException("checks of " + kinds + "; allowed: one for each kind of pair, in order");
        }
    }

    /** The check that speaks for a kind of pair. */
    public TheoryCheck check(TheoryKind kind) {
        return checks.get(kind.ordinal());
    }
}
