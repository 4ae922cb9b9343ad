package midplate.lesson;

import java.util.OptionalDouble;

/**
 * How an Rf came about.
 *
 * @param by who divided
 * @param startPart height of the start line over that of the front, both from the plate's edge [1], in (0, 1); empty where not known
 */
public record HowRead(By by, OptionalDouble startPart) {
    /** A height of the start line below this was hardly drawn there: heights were measured from the line [mm]; common practice, no source. */
    private static final double START_AT_EDGE_MM = 1;

    /** Nothing is known of it. */
    public static final HowRead UNTOLD = new HowRead(By.PAIR, OptionalDouble.empty());

    /** Who divided the distances. */
    public enum By {
        /** The pair: it may have divided other distances than it should. */
        PAIR,
        /** The program, from heights: only they can be wrong. */
        PROGRAM
    }

    /** The pair gave an Rf, and the heights of its lines from the edge [mm]. */
    public static HowRead divided(double startMm, double frontMm) {
        return new HowRead(By.PAIR, part(startMm, frontMm));
    }

    /** The pair gave heights [mm]; a start line at the edge was not drawn there, so that the run was taken from the edge. */
    public static HowRead measured(double startMm, double frontMm) {
        return startMm < START_AT_EDGE_MM ? UNTOLD : new HowRead(By.PROGRAM, part(startMm, frontMm));
    }

    private static OptionalDouble part(double startMm, double frontMm) {
        return startMm > 0 && startMm < frontMm ? OptionalDouble.of(startMm / frontMm) : OptionalDouble.empty();
    }
}
