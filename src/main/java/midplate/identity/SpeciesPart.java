package midplate.identity;

import java.util.Arrays;
import java.util.Optional;

/** What a spot of a reaction is. */
public enum SpeciesPart {
    /** A starting material. */
    START("start"),
    /** What is wanted. */
    PRODUCT("product"),
    /** Anything else. */
    OTHER("other");

    private final String id;

    SpeciesPart(String id) {
        this.id = id;
    }

    /** Its word in a request. */
    public String id() {
        return id;
    }

    /** By its word. */
    public static Optional<SpeciesPart> byId(String id) {
        return Arrays.stream(values()).filter(part -> part.id.equals(id)).findFirst();
    }
}
