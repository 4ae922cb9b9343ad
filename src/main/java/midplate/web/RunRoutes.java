package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import midplate.notebook.Study;
import midplate.notebook.StudyFolder;
import midplate.notebook.StudyId;
import midplate.notebook.StudySearch;
import midplate.wire.ImportAnswers;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Runs in and out, and what came of what was advised. */
final class RunRoutes {
    static final String IMPORT = "/api/import";
    static final String OUTCOMES = "/api/outcomes";
    /** What follows the id of a study. */
    static final String CSV = "/runs.csv";

    private static final String STUDY = "study";
    private static final int FIELDS = 422;

    private final Tongue tongue;
    private final StudyFolder folder;

    RunRoutes(Tongue tongue, StudyFolder folder) {
        this.tongue = tongue;
        this.folder = folder;
    }

    void add(RoutesConfig routes) {
        routes.post(
                IMPORT,
                ctx -> json(ctx, tongue.of(ctx).studies().imports().of(Body.of(ctx, Message.of("todo.split-file")))));
        routes.get(OUTCOMES, this::outcomes);
        routes.get("/api/studies/{id}" + CSV, this::csv);
    }

    private void outcomes(Context ctx) {
        Optional<Study> study = study(ctx);
        json(
                ctx,
                tongue.of(ctx)
                        .studies()
                        .outcomes(folder.list(StudySearch.everything()).studies(), study));
    }

    private Optional<Study> study(Context ctx) {
        for (String name : ctx.queryParamMap().keySet()) {
            if (!name.equals(STUDY)) {
                throw turned(
                        name,
                        Message.of("fault.unknown-field", "name", Guard.shown(name)),
                        Allowed.words(STUDY),
                        "todo.leave-out");
            }
        }
        List<String> came = ctx.queryParams(STUDY);
        if (came.size() > 1) {
            throw turned(
                    STUDY,
                    Message.of("fault.duplicate-field", "name", STUDY),
                    Message.of("allowed.each-name-once"),
                    "todo.keep-one");
        }
        return came.stream().findFirst().map(text -> {
            StudyId id = StudyId.in(text)
                    .orElseThrow(() -> turned(
                            text,
                            Message.of("fault.no-study-id"),
                            Message.of("allowed.study-id", "example", "20260914-k7m2q9x4tb"),
                            "todo.give-study-id"));
            return folder.read(id).study();
        });
    }

    private static Turned turned(String came, Message reason, Message allowed, String todo) {
        return new Turned(FIELDS, new Refusal(STUDY, reason, Guard.shown(came), allowed, Message.of(todo)));
    }

    private void csv(Context ctx) {
        StudyId id = StudyId.in(ctx.pathParam("id")).orElseThrow(() -> new Turned(404, Failures.notFound(ctx)));
        Study study = folder.read(id).study();
        ctx.header("Content-Disposition", "attachment; filename=\"midplate-" + id.value() + ".csv\"");
        ctx.contentType("text/csv; charset=utf-8").result(ImportAnswers.csv(study));
    }

    private static void json(Context ctx, String body) {
        ctx.contentType("application/json; charset=utf-8").result(body);
    }
}
