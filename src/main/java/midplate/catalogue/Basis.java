package midplate.catalogue;

import java.util.Locale;

/** How a value got here. */
public enum Basis {
    /** Read in the source that is named. */
    READ,
    /** A value of the source named, recalled; nobody had the source in hand. Carries a confidence. */
    MEMORY,
    /** Own arithmetic or reasoning, told in the note. */
    OWN;

    /** The word in the files: {@code read}, {@code memory}, {@code own}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
