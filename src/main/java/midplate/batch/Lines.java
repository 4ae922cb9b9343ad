package midplate.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads lines of bytes one by one. A line longer than the limit is passed over and told as such, without ever being held
 * as a whole; the mark that some programs put before UTF-8 is left out of the first line.
 */
final class Lines {
    private static final int BLOCK = 1 << 16;
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final InputStream in;
    private final int longest;
    private final byte[] block = new byte[BLOCK];
    private int at;
    private int end;
    private boolean first = true;

    /** Lines of at most so many bytes, their ends not counted. */
    Lines(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /** A line without its end; nothing of it is held when it was too long. */
    static final class Line {
        private static final Line TOO_LONG = new Line(new byte[0]);

        private final byte[] bytes;

        private Line(byte[] bytes) {
            this.bytes = bytes;
        }

        boolean tooLong() {
            return this == TOO_LONG;
        }

        /** What stands in it. */
        byte[] bytes() {
            return bytes.clone();
        }
    }

    /** The next line; empty at the end of the input. */
    Optional<Line> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        boolean tooLong = false;
        boolean any = false;
        while (true) {
            if (at == end && !refill()) {
                return any ? Optional.of(line(line, tooLong)) : Optional.empty();
            }
            any = true;
            int stop = at;
            while (stop < end && block[stop] != '\n') {
                stop++;
            }
            if (!tooLong) {
                line.write(block, at, stop - at);
            }
            if (line.size() > longest + MARK.length + 1) { // room for the mark and a carriage return
                tooLong = true;
                line = new ByteArrayOutputStream();
            }
            at = stop;
            if (at < end) {
                at++;
                return Optional.of(line(line, tooLong));
            }
        }
    }

    private boolean refill() throws IOException {
        at = 0;
        end = Math.max(0, in.read(block));
        return end > 0;
    }

    private Line line(ByteArrayOutputStream out, boolean tooLong) {
        byte[] all = out.toByteArray();
        int from = first && startsWithMark(all) ? MARK.length : 0;
        int to = all.length > from && all[all.length - 1] == '\r' ? all.length - 1 : all.length;
        first = false;
        if (tooLong || to - from > longest) {
            return Line.TOO_LONG;
        }
        return new Line(Arrays.copyOfRange(all, from, to));
    }

    private static boolean startsWithMark(byte[] bytes) {
        return bytes.length >= MARK.length && bytes[0] == MARK[0] && bytes[1] == MARK[1] && bytes[2] == MARK[2];
    }
}
