package midplate.inference;

import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;

/**
 * What is thought of the effects of groups before they are fitted: normal around {@code −κ·Q⁰}, closer where the energy was
 * published than where it is an analogy.
 *
 * @param scale κ [ln units]
 * @param size standard deviation for parts of the molecule's size
 * @param published for groups with a published energy
 * @param analogy for groups with an energy by analogy
 * @param surrounding for what makes a group stronger or weaker
 * @param unknown for an atom that nothing knows
 * @param residual variance of compounds around the sum
 */
record GroupPrior(
        double scale,
        double size,
        double published,
        double analogy,
        double surrounding,
        double unknown,
        double residual) {
    /** Of the constant: as good as free. */
    private static final double FREE = 10;
    /** Mean for a part. */
    double mean(MoleculeParts parts, int place) {
        return parts.isGroup(place) ? -scale * parts.group(place).energy() : 0;
    }

    /** Variance for a part. */
    double variance(MoleculeParts parts, int place) {
        double deviation = deviation(parts, place);
        return deviation * deviation;
    }

    private double deviation(MoleculeParts parts, int place) {
        if (place == 0) {
            return FREE;
        }
        if (!parts.isGroup(place)) {
            return surrounding;
        }
        FunctionalGroup group = parts.group(place);
        return switch (group.kind()) {
            case SIZE -> size;
            case GROUP -> group.basis() == Basis.OWN ? analogy : published;
            case SURROUNDING -> surrounding;
            case UNKNOWN -> unknown;
        };
    }
}
