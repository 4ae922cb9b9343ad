package midplate.notebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The digest that each file of the folder carries in itself, third in its object: {@code "sha256": "…"}, the SHA-256 of all its
 * bytes with these 64 digits replaced by zeros. A file that was changed by anything but this program does not fit it.
 */
final class FileSeal {
    /** How a file stands to its digest. */
    enum State {
        /** It is as this program wrote it. */
        FITS,
        /** It has a digest that is not its own. */
        WRONG,
        /** It has none where it should be. */
        MISSING
    }

    private static final String NONE = "0".repeat(64);
    private static final String BEGINNING =
            "^[\\s\\xef\\xbb\\xbf]*\\{\\s*\"format\"\\s*:\\s*\"[^\"]*\"\\s*,\\s*\"version\"\\s*:\\s*[0-9]+\\s*,";
    private static final String FIELD = "\"sha256\"\\s*:\\s*\"([0-9a-f]{64})\"";
    private static final Pattern UNSEALED = Pattern.compile(BEGINNING + "(\\s*)");
    private static final Pattern SEALED = Pattern.compile(BEGINNING + "\\s*(?<field>" + FIELD + "\\s*,)");
    /** Where somebody's editor moved it: as the last field the comma stands before it. */
    private static final Pattern MOVED = Pattern.compile("(?<!\\\\)(" + FIELD + "\\s*,|,\\s*" + FIELD + ")");
    /** The digest begins within so many bytes, however the file is laid out. */
    private static final int HEAD = 1024;

    private FileSeal() {}

    /** SHA-256 in hexadecimal digits. */
    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** A file as its format wrote it, with its digest put in. */
    static byte[] sealed(byte[] plain) {
        String head = text(plain, HEAD);
        Matcher beginning = UNSEALED.matcher(head);
        if (!beginning.find() || SEALED.matcher(head).find()) {
            throw new IllegalStateException("A study is written with format and version first, and without a digest");
        }
        byte[] field = (beginning.group(1) + "\"sha256\": \"" + NONE + "\",").getBytes(StandardCharsets.ISO_8859_1);
        int at = beginning.start(1);
        byte[] file = new byte[plain.length + field.length];
        System.arraycopy(plain, 0, file, 0, at);
        System.arraycopy(field, 0, file, at, field.length);
        System.arraycopy(plain, at, file, at + field.length, plain.length - at);
        byte[] digits = digest(file).getBytes(StandardCharsets.ISO_8859_1);
        System.arraycopy(digits, 0, file, at + field.length - digits.length - 2, digits.length);
        return file;
    }

    /** Whether a file is as this program wrote it. */
    static State state(byte[] file) {
        Matcher seal = SEALED.matcher(text(file, HEAD));
        if (!seal.find()) {
            return State.MISSING;
        }
        byte[] unsealed = file.clone();
        Arrays.fill(unsealed, seal.start(2), seal.end(2), (byte) '0');
        return digest(unsealed).equals(seal.group(2)) ? State.FITS : State.WRONG;
    }

    /** A file without its digest: blanks stand in its place, so that every place in it keeps its line and column. */
    static byte[] without(byte[] file) {
        Matcher seal = SEALED.matcher(text(file, HEAD));
        if (seal.find()) {
            return blanked(file, seal.start("field"), seal.end("field"));
        }
        return withoutMoved(file, text(file, file.length));
    }

    /** Only the file itself has its digest in its outermost braces; further in, a picture has one of its own. */
    private static byte[] withoutMoved(byte[] file, String text) {
        Matcher moved = MOVED.matcher(text);
        boolean isText = false;
        int depth = 0;
        int at = 0;
        while (moved.find()) {
            for (; at < moved.start(); at++) {
                char sign = text.charAt(at);
                if (isText && sign == '\\') {
                    at++;
                } else if (sign == '"') {
                    isText = !isText;
                } else if (!isText) {
                    depth += sign == '{' ? 1 : sign == '}' ? -1 : 0;
                }
            }
            if (!isText && depth == 1) {
                return blanked(file, moved.start(), moved.end());
            }
        }
        return file;
    }

    private static byte[] blanked(byte[] file, int from, int to) {
        byte[] rest = file.clone();
        Arrays.fill(rest, from, to, (byte) ' ');
        return rest;
    }

    /** One sign a byte, so that places in the text are places in the file. */
    private static String text(byte[] file, int most) {
        return new String(file, 0, Math.min(most, file.length), StandardCharsets.ISO_8859_1);
    }
}
