package midplate.notebook;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which state of a study's file is meant: it changes with every byte of it.
 *
 * @param value the first 32 hexadecimal digits of the SHA-256 of the whole file
 */
public record StudyTag(String value) {
    private static final int DIGITS = 32;
    private static final Pattern WRITTEN = Pattern.compile("[0-9a-f]{32}");

    /**
     * Of that form only.
     *
     * @throws IllegalArgumentException for any other text
     */
    public StudyTag {
        if (!WRITTEN.matcher(value).matches()) {
            throw new IllegalArgumentException("No tag of a study: " + value.length() + " signs");
        }
    }

    /** The tag of a file with these bytes. */
    static StudyTag of(byte[] file) {
        return new StudyTag(FileSeal.digest(file).substring(0, DIGITS));
    }

    /** The tag in a text from outside; empty where it is none, and then it fits no file. */
    public static Optional<StudyTag> in(String text) {
        return WRITTEN.matcher(text).matches() ? Optional.of(new StudyTag(text)) : Optional.empty();
    }
}
