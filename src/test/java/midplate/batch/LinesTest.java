package midplate.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinesTest {
    private static List<String> read(InputStream in, int longest) throws IOException {
        Lines lines = new Lines(in, longest);
        List<String> read = new ArrayList<>();
        for (Optional<Lines.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
            read.add(line.get().tooLong() ? "too long" : new String(line.get().bytes(), StandardCharsets.UTF_8));
        }
        return read;
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @CsvSource({
        "'',                ''",
        "'a|b|',            'a,b'",
        "'a|b',             'a,b'",
        "'|',               ''",
        "'a||b|',           'a,,b'",
        "'a\u00e9|',        'a\u00e9'",
    })
    void splitsAtLineEnds(String text, String expected) throws IOException {
        assertEquals(expected, String.join(",", read(bytes(text.replace('|', '\n')), 10)));
    }

    @Test
    void leavesOutCarriageReturnsAndTheMarkOfTheFirstLine() throws IOException {
        assertEquals(List.of("a", "\uFEFFb"), read(bytes("\uFEFFa\r\n\uFEFFb\r\n"), 10));
    }

    @Test
    void passesOverLinesThatAreTooLong() throws IOException {
        assertEquals(
                List.of("0123456789", "too long", "ok", "too long"),
                read(bytes("0123456789\n01234567890\nok\n" + "x".repeat(1_000_000)), 10));
    }

    @Test
    void holdsNoLineThatIsTooLong() throws IOException {
        // 3 GB in one line: more than an array can hold, so this fails at once if the line is kept
        InputStream endless = new InputStream() {
            private long left = 3L << 30;

            @Override
            public int read() {
                return left-- > 0 ? 'x' : -1;
            }

            @Override
            public int read(byte[] into, int from, int length) {
                int some = (int) Math.min(left, length);
                left -= some;
                return some == 0 ? -1 : some;
            }
        };
        assertEquals(List.of("too long"), read(endless, 1_000_000));
        assertTrue(endless.read() < 0);
    }
}
