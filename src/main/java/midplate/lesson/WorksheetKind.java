package midplate.lesson;

import java.util.Locale;

/** What a question of a worksheet is about. */
public enum WorksheetKind {
    /** Rf of three spots, by ruler. */
    RF,
    /** Four compounds from the lowest spot to the highest. */
    ORDER,
    /** Whether a sample is the reference beside it, by a lane with both. */
    CO_SPOT,
    /** A plate too weak or too strong: what to pour next. */
    RATIO,
    /** A plate that somebody measured from its edge. */
    EDGE;

    /** As it stands in requests: {@code co-spot}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
