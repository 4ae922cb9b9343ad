package midplate.chemistry;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import midplate.words.Message;

/** What the plate is coated with. */
public enum Sorbent {
    /** Silica gel. */
    SILICA,
    /** Aluminium oxide. */
    ALUMINA;

    /** The name in files and requests: {@code silica} or {@code alumina}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its name, to be put into the words of a language; in English it is {@link #id()}. */
    public Message said() {
        return new Message("sorbent." + id(), Map.of());
    }

    /** The sorbent of that id, upper and lower case alike; empty when there is none. */
    public static Optional<Sorbent> byId(String id) {
        String wanted = id.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(sorbent -> sorbent.id().equals(wanted))
                .findFirst();
    }
}
