package midplate.inference;

import java.util.List;
import java.util.Optional;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.TheoryPair;

/**
 * What the structure of a compound foretells of its traits in a pair.
 *
 * @param c mean of c [ln units]
 * @param s mean of s [1]
 * @param varianceC variance of c [ln units²]: of the effects, of compounds around them, and of what is not known of the structure
 * @param varianceS variance of s [1]
 * @param parts what each part of the molecule adds, in the order of the groups
 * @param heldBy the group that holds the compound back the most, together with what surrounds it; empty where none does
 */
public record StructureForecast(
        double c, double s, double varianceC, double varianceS, List<Part> parts, Optional<Part> heldBy) {
    /** A group in fewer compounds than these is called rare. */
    public static final int FEW_COMPOUNDS = 10;

    /** Keeps its own copy. */
    public StructureForecast {
        parts = List.copyOf(parts);
    }

    /**
     * A part of the molecule.
     *
     * @param id the group, or {@link GroupEffects#FURTHER}
     * @param count how often it is there [1]
     * @param effect what each adds to c [ln units]
     * @param error standard error of the effect [ln units]
     * @param compounds in how many of the compounds measured it stands
     */
    public record Part(String id, double count, double effect, double error, int compounds) {}

    /** The same in a pair that borrows the curve of this one: c and s there have errors of their own. */
    StructureForecast borrowedBy(TheoryPair theory) {
        return new StructureForecast(
                c,
                s,
                varianceC + theory.deviationC() * theory.deviationC(),
                varianceS + theory.deviationS() * theory.deviationS(),
                parts,
                heldBy);
    }

    /** The groups that stand in few of the compounds measured, so that the band is wide. */
    public List<Part> rare() {
        return parts.stream()
                .filter(part -> !part.id().equals(GroupEffects.FURTHER) && part.compounds() < FEW_COMPOUNDS)
                .toList();
    }
}
