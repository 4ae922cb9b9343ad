package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.notebook.KeptPhotos;
import midplate.notebook.PhotoName;
import midplate.notebook.StudyFolder;
import midplate.notebook.StudyId;
import midplate.wire.StudyAnswers;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The pictures of plates that are kept with a study: sent, seen, taken away. The server names each by its SHA-256, since browsers work
 * one out only at addresses that they hold to be safe.
 */
final class PhotoRoutes {
    /** The one kind of picture that is kept. */
    static final String JPEG = "image/jpeg";

    private static final String ALL = "/api/studies/{id}/photos";
    private static final String ONE = ALL + "/{sha256}";
    private static final Pattern PATH =
            Pattern.compile("/api/studies/" + StudyId.FORM + "/photos(/" + PhotoName.FORM + ")?");
    private static final Set<HandlerType> OF_ONE = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.DELETE);
    /** The name of a picture is that of its contents, so what a browser has of it stays right. */
    private static final String FOR_GOOD = "private, max-age=31536000, immutable";

    private static final int MADE = 201;
    private static final int GONE = 204;
    private static final int FIELDS = 422;

    private final KeptPhotos photos;

    PhotoRoutes(StudyFolder folder) {
        this.photos = folder.photos();
    }

    /** How a path of pictures may be asked; empty where it is none. */
    static Optional<Set<HandlerType>> methods(String path) {
        Matcher form = PATH.matcher(path);
        return form.matches() ? Optional.of(form.group(1) == null ? Routes.WRITE : OF_ONE) : Optional.empty();
    }

    /** Whether what is sent to a path is a picture. */
    static boolean takesPicture(String path) {
        return PATH.matcher(path).matches();
    }

    void add(RoutesConfig routes) {
        routes.post(ALL, this::keep);
        routes.get(ONE, this::read);
        routes.head(ONE, this::read); // else the answer is 200 whether or not there is one
        routes.delete(ONE, this::remove);
    }

    private void keep(Context ctx) {
        byte[] picture = Body.of(ctx, KeptPhotos.MOST_BYTES, Message.of("todo.smaller-picture"));
        if (!isJpeg(picture)) {
            throw new Turned(
                    FIELDS,
                    new Refusal(
                            "request",
                            Message.of("fault.no-jpeg"),
                            picture.length + " bytes",
                            Message.of("allowed.whole-jpeg"),
                            Message.of("todo.send-jpeg")));
        }
        PhotoName name = photos.keep(study(ctx), picture);
        ctx.status(MADE).contentType("application/json; charset=utf-8").result(StudyAnswers.photo(name));
    }

    /** Whether bytes begin and end as a JPEG does: a marker for its start with another one behind it, and one for its end. */
    private static boolean isJpeg(byte[] bytes) {
        int n = bytes.length;
        return n > 4 && marker(bytes, 0) == 0xffd8 && bytes[2] == (byte) 0xff && marker(bytes, n - 2) == 0xffd9;
    }

    private static int marker(byte[] bytes, int at) {
        return (bytes[at] & 0xff) << 8 | bytes[at + 1] & 0xff;
    }

    private void read(Context ctx) {
        StudyId study = study(ctx);
        PhotoName name = name(ctx);
        byte[] picture = photos.read(study, name);
        ctx.header("Content-Security-Policy", Guard.PART_POLICY);
        ctx.header("Cache-Control", FOR_GOOD);
        ctx.header(
                "Content-Disposition",
                "inline; filename=\"midplate-" + study.value() + "-"
                        + name.sha256().substring(0, 8) + ".jpg\"");
        ctx.res().setCharacterEncoding((String) null); // else that of texts stands behind the type
        ctx.contentType(JPEG).result(picture);
    }

    private void remove(Context ctx) {
        Body.none(ctx);
        photos.remove(study(ctx), name(ctx));
        ctx.status(GONE);
    }

    private static StudyId study(Context ctx) {
        return StudyId.in(ctx.pathParam("id")).orElseThrow(() -> new Turned(404, Failures.notFound(ctx)));
    }

    private static PhotoName name(Context ctx) {
        return PhotoName.in(ctx.pathParam("sha256")).orElseThrow(() -> new Turned(404, Failures.notFound(ctx)));
    }
}
