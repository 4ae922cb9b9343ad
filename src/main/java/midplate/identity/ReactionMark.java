package midplate.identity;

import java.util.OptionalDouble;

/**
 * How strongly a spot stood in the lane of the reaction.
 *
 * @param species its name
 * @param strength by eye, from {@value #UNSEEN}, looked for and not seen, over {@value #TRACE}, a trace, to {@value #FULL}, as strong
 *     as the starting material in its own lane
 * @param rf where it stood [1], if that was read
 */
public record ReactionMark(String species, int strength, OptionalDouble rf) {
    /** Looked for and not seen. */
    public static final int UNSEEN = 0;
    /** A trace. */
    public static final int TRACE = 1;
    /** Stronger than a trace. */
    public static final int PLAIN = 2;
    /** As strong as the starting material in its own lane. */
    public static final int FULL = 4;
}
