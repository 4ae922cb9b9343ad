package midplate.wire;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The text in the bytes of a table: by its mark (UTF-8, UTF-16), else UTF-8 where it is that, else Windows-1252, in which spreadsheets of
 * the West write.
 *
 * @param text the text without the mark
 * @param charset the encoding it was read in
 */
record TableBytes(String text, Charset charset) {
    static final Charset WINDOWS = Charset.forName("windows-1252");

    private static final byte[] UTF8 = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] UTF16_LITTLE = {(byte) 0xFF, (byte) 0xFE};
    private static final byte[] UTF16_BIG = {(byte) 0xFE, (byte) 0xFF};

    /** The text; empty where the bytes are none, as what they hold or what their mark says tells. */
    static Optional<TableBytes> of(byte[] bytes) {
        Optional<TableBytes> read;
        if (begins(bytes, UTF8)) {
            read = in(StandardCharsets.UTF_8, bytes, UTF8.length);
        } else if (begins(bytes, UTF16_LITTLE)) {
            read = in(StandardCharsets.UTF_16LE, bytes, UTF16_LITTLE.length);
        } else if (begins(bytes, UTF16_BIG)) {
            read = in(StandardCharsets.UTF_16BE, bytes, UTF16_BIG.length);
        } else {
            read = in(StandardCharsets.UTF_8, bytes, 0).or(() -> in(WINDOWS, bytes, 0));
        }
        return read.filter(table -> table.text().chars().noneMatch(TableBytes::isNoText));
    }

    static boolean begins(byte[] bytes, byte[] mark) {
        return bytes.length >= mark.length && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
    }

    private static Optional<TableBytes> in(Charset charset, byte[] bytes, int from) {
        try {
            CharBuffer text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from));
            return Optional.of(new TableBytes(text.toString(), charset));
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** Control signs that no table holds; the end-of-file sign of old systems is none of them. */
    private static boolean isNoText(int sign) {
        return sign < ' ' && sign != '\t' && sign != '\n' && sign != '\r' && sign != 0x1A && sign != '\f';
    }
}
