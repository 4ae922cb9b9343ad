package midplate.advice;

/**
 * How likely two spots come apart on the plate advised.
 *
 * @param names the two spots
 * @param chance that their true Rf differ by at least {@value midplate.inference.Parting#LEAST_RF} [1]
 */
public record ApartChance(ApartNames names, double chance) {}
