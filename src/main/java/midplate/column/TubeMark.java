package midplate.column;

/**
 * A compound seen in a tube.
 *
 * @param spot its name
 * @param strength of its spot on the plate: 0 (looked for, not there), 1 (faint) to 4 (heavy)
 */
public record TubeMark(String spot, int strength) {
    /** A spot that is barely there. */
    static final int FAINT = 1;
    /** The heaviest. */
    static final int HEAVIEST = 4;
    /** From here on a spot is plain. */
    static final int PLAIN = 3;
}
