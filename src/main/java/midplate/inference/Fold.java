package midplate.inference;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of several parts that structures fall into by their SMILES, so that no structure stands on both sides: the first
 * byte of the SHA-256 of {@code fold/} and the SMILES, modulo the number of parts.
 *
 * @param index which part, from 0
 * @param count how many parts, 2 to 20
 */
public record Fold(int index, int count) {
    private static final int MOST = 20;
    private static final Pattern FORM = Pattern.compile("([0-9]{1,2})/([0-9]{1,2})");

    /** What to do with the structures of a fold. */
    public enum Part {
        /** Keep these only. */
        INSIDE,
        /** Keep all but these. */
        OUTSIDE
    }

    /** Refuses a part that there is not. */
    public Fold {
        if (!(count >= 2 && count <= MOST && index >= 0 && index < count)) {
            throw refused(index + "/" + count);
        }
    }

    /**
     * A fold as written on a command line: {@code 1/5}.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Fold of(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw refused(text);
        }
        return new Fold(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    /** Whether a structure falls into this part. */
    public boolean holds(String smiles) {
        byte[] digest = Digest.sha256(("fold/" + smiles).getBytes(StandardCharsets.UTF_8));
        return Byte.toUnsignedInt(digest[0]) % count == index;
    }

    private static IllegalArgumentException refused(String came) {
        return new IllegalArgumentException("fold: came " + came + "; allowed is I/N with N in [2, " + MOST
                + "] and I in [0, N). Write the part and the number of parts, for example 0/5.");
    }

    /** As on a command line: {@code 1/5}. */
    @Override
    public String toString() {
        return index + "/" + count;
    }
}
