package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Locale;
import java.util.UUID;
import midplate.notebook.FolderFault;
import midplate.notebook.NoSuchPhoto;
import midplate.notebook.NoSuchStudy;
import midplate.notebook.StudyConflict;
import midplate.wire.BadInput;
import midplate.wire.ErrorBody;
import midplate.words.Message;
import midplate.words.Refusal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Gives every failure the one form of an error; what went wrong inside goes to the log, and only its number out. */
final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    /** Says of a request that what is wrong was told already. */
    private static final String TOLD = "midplate.told";

    private final Tongue tongue;

    Failures(Tongue tongue) {
        this.tongue = tongue;
    }

    void add(RoutesConfig routes) {
        routes.exception(Turned.class, (turned, ctx) -> tell(ctx, turned.status(), turned.refusal()));
        routes.exception(BadInput.class, (bad, ctx) -> body(ctx, status(bad.kind()), ErrorBody.of(bad.faults())));
        routes.exception(NoSuchStudy.class, (gone, ctx) -> tell(ctx, 404, gone.refusal()));
        routes.exception(NoSuchPhoto.class, (gone, ctx) -> tell(ctx, 404, gone.refusal()));
        routes.exception(StudyConflict.class, (conflict, ctx) -> {
            StudyRoutes.tag(ctx, conflict.now().tag());
            tell(ctx, 412, conflict.refusal());
        });
        routes.exception(FolderFault.class, (fault, ctx) -> tell(ctx, status(fault.kind()), fault.refusal()));
        routes.exception(HttpResponseException.class, (e, ctx) -> tell(ctx, e.getStatus(), other(ctx, e.getStatus())));
        routes.exception(Exception.class, (slip, ctx) -> {
            String id = UUID.randomUUID().toString().substring(0, 8);
            LOG.error("{} while answering {} {}", id, ctx.method(), ctx.path(), slip);
            tell(
                    ctx,
                    500,
                    new Refusal(
                            "request",
                            Message.of("fault.own-fault"),
                            "failure " + id,
                            Message.of("allowed.answer"),
                            Message.of("todo.look-in-terminal", "id", id)));
        });
        routes.error(404, ctx -> {
            if (ctx.attribute(TOLD) == null) {
                tell(ctx, 404, notFound(ctx));
            }
        });
    }

    private static int status(BadInput.Kind kind) {
        return switch (kind) {
            case NO_JSON -> 400;
            case TOO_LARGE -> 413;
            case FIELDS -> 422;
        };
    }

    private static int status(FolderFault.Kind kind) {
        return switch (kind) {
            case NEWER, UNREADABLE -> 409;
            case CLOSED -> 503;
            case IN_USE, NO_FOLDER, NO_PERMISSION, FULL, NO_LOCK, GONE, OTHER -> 507;
        };
    }

    private static Refusal other(Context ctx, int status) {
        return status == 404
                ? notFound(ctx)
                : new Refusal(
                        "request",
                        Message.of("fault.not-taken"),
                        String.format(Locale.ROOT, "%s %s", ctx.method(), Guard.shown(ctx.path())),
                        Message.of("allowed.request-of-page"),
                        Message.of("todo.open-page"));
    }

    static Refusal notFound(Context ctx) {
        return new Refusal(
                "path",
                Message.of("fault.not-found"),
                Guard.shown(ctx.path()),
                Message.of("allowed.addresses"),
                Message.of("todo.start-at-root"));
    }

    private void tell(Context ctx, int status, Refusal refusal) {
        body(ctx, status, ErrorBody.of(tongue.of(ctx).texts(), refusal));
    }

    private static void body(Context ctx, int status, String json) {
        ctx.attribute(TOLD, status);
        ctx.header("Vary", Tongue.ASKED);
        ctx.status(status).contentType("application/json; charset=utf-8").result(json);
    }
}
