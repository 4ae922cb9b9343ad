package midplate.notebook;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which picture of a plate is meant: its name changes with every byte of it.
 *
 * @param sha256 the SHA-256 of the picture, 64 small hexadecimal digits
 */
public record PhotoName(String sha256) {
    /** What is allowed, for addresses. */
    public static final String FORM = "[0-9a-f]{64}";

    private static final Pattern WRITTEN = Pattern.compile(FORM);

    /**
     * Of that form only.
     *
     * @throws IllegalArgumentException for any other text
     */
    public PhotoName {
        if (!WRITTEN.matcher(sha256).matches()) {
            throw new IllegalArgumentException("No name of a picture: " + sha256.length() + " signs");
        }
    }

    /** The name of a picture with these bytes. */
    static PhotoName of(byte[] picture) {
        return new PhotoName(FileSeal.digest(picture));
    }

    /** The name in a text from outside; empty where it is none. */
    public static Optional<PhotoName> in(String text) {
        return WRITTEN.matcher(text).matches() ? Optional.of(new PhotoName(text)) : Optional.empty();
    }
}
