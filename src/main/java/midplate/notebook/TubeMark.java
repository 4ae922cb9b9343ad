package midplate.notebook;

/**
 * A compound that was looked for in a tube.
 *
 * @param spot id of the compound
 * @param strength how strong its spot was, from 0 (not seen) to {@value #STRONGEST}
 */
public record TubeMark(String spot, int strength) {
    /** The strongest mark. */
    public static final int STRONGEST = 4;
}
