package midplate.catalogue;

import midplate.chemistry.Solvent;

/**
 * Two solvents that are no eluent together.
 *
 * @param one one of them
 * @param other the other; the order says nothing
 * @param verdict what happens when they are poured together
 * @param source the publication
 * @param locator page or entry in it
 * @param basis how the verdict got here
 * @param confidence of a verdict from memory: {@code H}, {@code M} or {@code L}; empty otherwise
 * @param note what a reader should know
 */
public record Immiscibility(
        Solvent one,
        Solvent other,
        Verdict verdict,
        Source source,
        String locator,
        Basis basis,
        String confidence,
        String note) {
    /** What happens. Both are refused as an eluent. */
    public enum Verdict {
        /** Two layers. */
        IMMISCIBLE,
        /** Two layers at some ratios. */
        PARTLY_MISCIBLE
    }
}
