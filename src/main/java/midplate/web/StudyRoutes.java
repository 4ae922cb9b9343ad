package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.notebook.KeptStudy;
import midplate.notebook.Study;
import midplate.notebook.StudyConflict;
import midplate.notebook.StudyFolder;
import midplate.notebook.StudyId;
import midplate.notebook.StudyTag;
import midplate.wire.StudyAnswers;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/** The studies: listed, read, kept, put away. */
final class StudyRoutes {
    private static final String ALL = "/api/studies";
    private static final String ONE = ALL + "/{id}";

    private static final Pattern WITH_ID = Pattern.compile(ALL + "/" + StudyId.FORM + "(/[a-z.]+)?");
    /** How what follows the id of a study may be asked. */
    private static final Map<String, Set<HandlerType>> METHODS = Map.of(
            "",
            Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.PUT, HandlerType.DELETE),
            RunRoutes.CSV,
            Set.of(HandlerType.GET, HandlerType.HEAD));

    private static final List<String> ASKED = List.of("find", "which", "from");
    private static final int MADE = 201;
    private static final int FIELDS = 422;

    private final Tongue tongue;
    private final StudyFolder folder;

    StudyRoutes(Tongue tongue, StudyFolder folder) {
        this.tongue = tongue;
        this.folder = folder;
    }

    /** How a path with the id of a study may be asked; empty where it is none of these routes. */
    static Optional<Set<HandlerType>> methods(String path) {
        Matcher form = WITH_ID.matcher(path);
        return form.matches()
                ? Optional.ofNullable(METHODS.get(form.group(1) == null ? "" : form.group(1)))
                : Optional.empty();
    }

    void add(RoutesConfig routes) {
        routes.get(ALL, this::list);
        routes.get(ONE, this::read);
        routes.head(ONE, this::read); // else the answer is 200 whether or not there is one
        routes.put(ONE, this::keep);
        routes.delete(ONE, this::putAway);
    }

    private void list(Context ctx) {
        StudyAnswers answers = answers(ctx);
        for (Map.Entry<String, List<String>> asked : ctx.queryParamMap().entrySet()) {
            checkAsked(asked.getKey(), asked.getValue());
        }
        String body = answers.list(
                folder.path(),
                folder.list(answers.search(asked(ctx, "find"), asked(ctx, "which"), asked(ctx, "from"))));
        json(ctx, body);
    }

    private static Optional<String> asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name));
    }

    private static void checkAsked(String name, List<String> values) {
        if (!ASKED.contains(name)) {
            throw new Turned(
                    FIELDS,
                    new Refusal(
                            name.isEmpty() ? "request" : Guard.shown(name),
                            Message.of("fault.unknown-field", "name", Guard.shown(name)),
                            Guard.shown(String.join(", ", values)),
                            Allowed.words(ASKED),
                            Nearest.to(name, ASKED)
                                    .map(near -> Message.of("todo.did-you-mean", "name", near))
                                    .orElse(Message.of("todo.leave-out"))));
        }
        if (values.size() > 1) {
            throw new Turned(
                    FIELDS,
                    new Refusal(
                            name,
                            Message.of("fault.duplicate-field", "name", name),
                            Guard.shown(String.join(", ", values)),
                            Message.of("allowed.each-name-once"),
                            Message.of("todo.keep-one")));
        }
    }

    private void read(Context ctx) {
        StudyAnswers answers = answers(ctx);
        KeptStudy kept = folder.read(id(ctx));
        tag(ctx, kept.tag());
        json(ctx, answers.one(kept));
    }

    private void keep(Context ctx) {
        StudyAnswers answers = answers(ctx);
        Condition condition = Condition.of(ctx);
        Study study = answers.study(Body.of(ctx, Message.of("todo.split-study")), id(ctx));
        try {
            Optional<StudyTag> expected = condition.expected();
            if (expected.isPresent()) {
                answer(ctx, answers, folder.replace(study, expected.get()));
            } else {
                ctx.status(MADE);
                answer(ctx, answers, folder.create(study));
            }
        } catch (StudyConflict conflict) {
            KeptStudy now = conflict.now();
            // sent again because the answer was lost: what is wanted is there already
            if (!now.study().equals(study.at(now.study().created(), now.study().modified()))) {
                throw conflict;
            }
            ctx.status(200);
            answer(ctx, answers, now);
        }
    }

    private void putAway(Context ctx) {
        StudyAnswers answers = answers(ctx);
        Body.none(ctx);
        answer(ctx, answers, folder.keep(id(ctx), Condition.expected(ctx), Study.Keeping.ARCHIVED));
    }

    private static void answer(Context ctx, StudyAnswers answers, KeptStudy kept) {
        tag(ctx, kept.tag());
        json(ctx, answers.kept(kept));
    }

    private StudyAnswers answers(Context ctx) {
        return tongue.of(ctx).studies();
    }

    private static StudyId id(Context ctx) {
        return StudyId.in(ctx.pathParam("id")).orElseThrow(() -> new Turned(404, Failures.notFound(ctx)));
    }

    /** Says which state of a study it is. */
    static void tag(Context ctx, StudyTag tag) {
        ctx.header("ETag", '"' + tag.value() + '"');
    }

    private static void json(Context ctx, String body) {
        ctx.contentType("application/json; charset=utf-8").result(body);
    }
}
