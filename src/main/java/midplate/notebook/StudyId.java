package midplate.notebook;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The name of a study among all studies: the day it was begun and ten signs at random, {@code 20261126-k7m2q9x4tb}. Small
 * letters and digits only, so it may be the name of a file on every system; nothing else ever becomes one.
 *
 * @param value as it is written: {@code [0-9]{8}-[a-z2-9]{10}}
 */
public record StudyId(String value) {
    /** What is allowed, for messages. */
    public static final String FORM = "[0-9]{8}-[a-z2-9]{10}";

    private static final Pattern WRITTEN = Pattern.compile(FORM);

    /**
     * Of that form only.
     *
     * @throws IllegalArgumentException for any other text
     */
    public StudyId {
        if (!WRITTEN.matcher(value).matches()) {
            throw new IllegalArgumentException("No id of a study: " + value.length() + " signs");
        }
    }

    /** The id in a text from outside; empty where it is none. */
    public static Optional<StudyId> in(String text) {
        return WRITTEN.matcher(text).matches() ? Optional.of(new StudyId(text)) : Optional.empty();
    }
}
