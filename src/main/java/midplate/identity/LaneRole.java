package midplate.identity;

import java.util.Locale;
import java.util.Optional;

/** What was spotted in a lane. */
public enum LaneRole {
    /** The sample in question. */
    UNKNOWN,
    /** The sample in question and one reference on top of each other. */
    CO_SPOT,
    /** One reference. */
    REFERENCE;

    /** The word in requests and studies: {@code unknown}, {@code co-spot}, {@code reference}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The role of that word, written exactly so; empty when there is none. */
    public static Optional<LaneRole> byId(String id) {
        for (LaneRole role : values()) {
            if (role.id().equals(id)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
