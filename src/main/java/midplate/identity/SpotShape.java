package midplate.identity;

import java.util.Locale;
import java.util.Optional;

/** What a spot looks like. */
public enum SpotShape {
    /** With an edge all round. */
    ROUND,
    /** Drawn out along the run. */
    STREAK;

    /** The word in requests and studies: {@code round}, {@code streak}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The shape of that word, written exactly so; empty when there is none. */
    public static Optional<SpotShape> byId(String id) {
        for (SpotShape shape : values()) {
            if (shape.id().equals(id)) {
                return Optional.of(shape);
            }
        }
        return Optional.empty();
    }
}
