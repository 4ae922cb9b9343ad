package midplate.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import midplate.wire.Exchange;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads a body up to the limit, whether or not its length was announced. */
final class Body {
    /** So much of a body that is too large is read and dropped, so that its sender sees the answer [bytes]. */
    private static final long DROPPED = 32L * 1024 * 1024;

    private Body() {}

    static byte[] of(Context ctx) {
        return of(ctx, Message.of("todo.fewer-plates"));
    }

    /** The same, with what to do where it is too large. */
    static byte[] of(Context ctx, Message todo) {
        return of(ctx, Exchange.MOST_BYTES, todo);
    }

    /** The same, up to another limit [bytes]. */
    static byte[] of(Context ctx, int most, Message todo) {
        try {
            InputStream in = ctx.req().getInputStream();
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length <= most) {
                return bytes;
            }
            drop(in);
        } catch (IOException e) {
            throw new UncheckedIOException("The body could not be read", e);
        }
        throw new Turned(
                413,
                new Refusal(
                        "request",
                        Message.of("fault.too-large", "most", most),
                        "more than " + most + " bytes",
                        Message.of("allowed.bytes", "interval", Allowed.closed(0, most)),
                        todo));
    }

    /** Refuses a body where none is wanted. */
    static void none(Context ctx) {
        try {
            if (ctx.req().getInputStream().read() < 0) {
                return;
            }
            drop(ctx.req().getInputStream());
        } catch (IOException e) {
            throw new UncheckedIOException("The body could not be read", e);
        }
        throw new Turned(
                400,
                new Refusal(
                        "request",
                        Message.of("fault.body-not-wanted"),
                        "a body",
                        Message.of("allowed.no-body"),
                        Message.of("todo.leave-body-out")));
    }

    private static void drop(InputStream in) throws IOException {
        byte[] block = new byte[1 << 16];
        long dropped = 0;
        int read = in.read(block);
        while (read >= 0 && dropped < DROPPED) {
            dropped += read;
            read = in.read(block);
        }
    }
}
