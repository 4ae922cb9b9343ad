package midplate.advice;

/**
 * The two spots of a sample that come to lie closest, at some mixture.
 *
 * @param one the name of the first, in the order asked
 * @param other the name of the second
 * @param chance that their true Rf differ by 0.1 at least [1]
 * @param gap how far apart in Rf they are to be expected, whichever runs higher [1]
 */
public record ClosestSpots(String one, String other, double chance, double gap) {}
