package midplate.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only what this machine's own page, or a program run by the same person, may send: the right Host, writes from
 * the same origin, JSON only (a picture where one is to be kept), a known way to ask.
 */
final class Guard {
    /** What the page may load and who may frame it: itself, and nobody. */
    static final String POLICY = "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none';"
            + " frame-ancestors 'none'";

    /** Parts of a page, which load nothing of their own; there are many, so it is short. */
    private static final Pattern PART = Pattern.compile("\\.(js|css)$");

    /** What a part may load if somebody opens it by itself: nothing. */
    static final String PART_POLICY = "default-src 'none'";

    /** What works beside the page may load its own parts and nothing else: it can send nothing anywhere. */
    static final String WORKER_POLICY = "default-src 'none'; script-src 'self'";

    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private Guard() {}

    /** Sets the headers of every answer, and refuses what may not come in. */
    static void check(Context ctx) {
        headers(ctx);
        host(ctx);
        boolean write = !READING.contains(ctx.method());
        if (write) {
            origin(ctx);
        }
        method(ctx);
        if (write && !ctx.method().equals(HandlerType.DELETE)) {
            mediaType(ctx);
        }
    }

    private static void headers(Context ctx) {
        ctx.header("Content-Security-Policy", policy(ctx.path()));
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        if (ctx.path().startsWith("/api/")) {
            ctx.header("Vary", Tongue.ASKED);
        }
        ctx.header("Cache-Control", ctx.path().startsWith("/api/") ? "no-store" : "no-cache");
    }

    private static String policy(String path) {
        if (path.endsWith("/worker.js")) {
            return WORKER_POLICY;
        }
        return PART.matcher(path).find() ? PART_POLICY : POLICY;
    }

    private static void host(Context ctx) {
        String came = shown(ctx.header("Host"));
        int port = ctx.req().getLocalPort();
        Set<String> own = Set.of("127.0.0.1:" + port, "localhost:" + port);
        if (!own.contains(came.toLowerCase(Locale.ROOT))) {
            throw new Turned(
                    403,
                    new Refusal(
                            "Host",
                            Message.of("fault.foreign-host"),
                            came,
                            Allowed.either(
                                    List.of(Allowed.words("127.0.0.1:" + port), Allowed.words("localhost:" + port))),
                            Message.of("todo.open-on-machine", "address", "http://127.0.0.1:" + port + "/")));
        }
    }

    private static void origin(Context ctx) {
        String own = "http://" + shown(ctx.header("Host")).toLowerCase(Locale.ROOT);
        Optional<String> origin = Optional.ofNullable(ctx.header("Origin"));
        Optional<String> site = Optional.ofNullable(ctx.header("Sec-Fetch-Site"));
        boolean taken = origin.isPresent()
                ? origin.get().equalsIgnoreCase(own)
                        && site.orElse("same-origin").equals("same-origin")
                : site.isEmpty();
        if (!taken) {
            throw new Turned(
                    403,
                    new Refusal(
                            origin.isPresent() ? "Origin" : "Sec-Fetch-Site",
                            Message.of("fault.cross-site"),
                            origin.or(() -> site).map(Guard::shown).orElse(""),
                            Allowed.words(own),
                            Message.of("todo.send-from-page")));
        }
    }

    private static void method(Context ctx) {
        if (Routes.isUnknown(ctx.path())) {
            throw new Turned(404, Failures.notFound(ctx));
        }
        Set<HandlerType> allowed = Routes.methods(ctx.path());
        if (!allowed.contains(ctx.method())) {
            String names = allowed.stream()
                    .map(HandlerType::name)
                    .sorted()
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("");
            ctx.header("Allow", names);
            throw new Turned(
                    405,
                    new Refusal(
                            "method",
                            Message.of("fault.method-not-allowed", "path", shown(ctx.path())),
                            ctx.method().name(),
                            Allowed.words(names),
                            Message.of("todo.ask-with-these")));
        }
    }

    private static void mediaType(Context ctx) {
        boolean photo = PhotoRoutes.takesPicture(ctx.path());
        String came = shown(ctx.contentType());
        String plain = came.replace(" ", "").toLowerCase(Locale.ROOT);
        boolean right = photo
                ? plain.equals(PhotoRoutes.JPEG)
                : plain.equals("application/json") || plain.equals("application/json;charset=utf-8");
        if (!right || ctx.header("Content-Encoding") != null) {
            throw new Turned(
                    415,
                    new Refusal(
                            "Content-Type",
                            Message.of(photo ? "fault.not-jpeg-type" : "fault.not-json-type"),
                            right ? "Content-Encoding " + shown(ctx.header("Content-Encoding")) : came,
                            Message.of(photo ? "allowed.plain-jpeg" : "allowed.plain-json"),
                            Message.of(photo ? "todo.send-jpeg" : "todo.send-json")));
        }
    }

    static String shown(@Nullable String header) {
        if (header == null) {
            return "nothing";
        }
        return header.length() <= 80 ? header : header.substring(0, 80) + "…";
    }
}
