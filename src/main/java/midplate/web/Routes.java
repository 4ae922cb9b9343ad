package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import midplate.notebook.StudyFolder;
import midplate.plate.Setting;
import midplate.wire.Exchange;
import midplate.words.Language;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;

/** What can be asked, and who answers it. */
final class Routes {
    static final Set<HandlerType> READ = Set.of(HandlerType.GET, HandlerType.HEAD);
    static final Set<HandlerType> WRITE = Set.of(HandlerType.POST);

    private static final Map<String, Set<HandlerType>> METHODS = Map.ofEntries(
            Map.entry("/api/library", READ),
            Map.entry("/api/sources", READ),
            Map.entry("/api/version", READ),
            Map.entry("/api/accuracy", READ),
            Map.entry("/api/texts", READ),
            Map.entry("/api/groups", READ),
            Map.entry("/api/studies", READ),
            Map.entry(RunRoutes.OUTCOMES, READ),
            Map.entry(RunRoutes.IMPORT, WRITE),
            Map.entry("/api/advice", WRITE),
            Map.entry("/api/structure", WRITE),
            Map.entry("/api/scouting", WRITE),
            Map.entry("/api/other-eluents", WRITE),
            Map.entry("/api/reading", WRITE),
            Map.entry("/api/checks/tables", READ),
            Map.entry("/api/checks/identity", WRITE),
            Map.entry("/api/checks/hrf", WRITE),
            Map.entry("/api/checks/seeing", WRITE),
            Map.entry("/api/checks/reaction", WRITE),
            Map.entry("/api/checks/purity", WRITE),
            Map.entry("/api/column/plan", WRITE),
            Map.entry("/api/column/fractions", WRITE),
            Map.entry("/api/equal-strength", WRITE));

    private final Tongue tongue;
    private final Exchange exchange;
    private final StudyRoutes studies;
    private final PhotoRoutes photos;
    private final RunRoutes runs;
    private final LessonRoutes lessons;

    Routes(Tongue tongue, StudyFolder folder) {
        this.tongue = tongue;
        this.studies = new StudyRoutes(tongue, folder);
        this.photos = new PhotoRoutes(folder);
        this.runs = new RunRoutes(tongue, folder);
        this.lessons = new LessonRoutes(tongue);
        this.exchange = tongue.in(Language.ENGLISH);
    }

    /** Whether a path looks like a route and is none. */
    static boolean isUnknown(String path) {
        return path.startsWith("/api/")
                && !METHODS.containsKey(path)
                && !LessonRoutes.METHODS.containsKey(path)
                && StudyRoutes.methods(path).isEmpty()
                && PhotoRoutes.methods(path).isEmpty();
    }

    /** How a path may be asked; a path that is no route can only be read. */
    static Set<HandlerType> methods(String path) {
        return StudyRoutes.methods(path)
                .or(() -> PhotoRoutes.methods(path))
                .orElseGet(() -> LessonRoutes.METHODS.getOrDefault(path, METHODS.getOrDefault(path, READ)));
    }

    void add(RoutesConfig routes) {
        routes.get("/api/library", reply(ctx -> tongue.of(ctx).library()));
        routes.get("/api/sources", reply(ctx -> exchange.sources()));
        routes.get("/api/accuracy", reply(ctx -> exchange.accuracy()));
        routes.get("/api/version", reply(ctx -> exchange.version()));
        routes.get("/api/groups", reply(ctx -> tongue.of(ctx).groups()));
        routes.get("/api/texts", reply(ctx -> texts(tongue.of(ctx).texts(), ctx.queryParam("of"))));
        routes.get(
                "/d3.min.js",
                ctx -> ctx.contentType("text/javascript; charset=utf-8").result(ChartLibrary.script()));
        routes.post("/api/advice", reply(ctx -> tongue.of(ctx).advice(Body.of(ctx), Setting.BENCH)));
        routes.post("/api/scouting", reply(ctx -> tongue.of(ctx).scouting(Body.of(ctx), Setting.BENCH)));
        routes.post("/api/other-eluents", reply(ctx -> tongue.of(ctx).otherEluents(Body.of(ctx), Setting.BENCH)));
        routes.post("/api/structure", reply(ctx -> tongue.of(ctx).structure(Body.of(ctx))));
        routes.post("/api/reading", reply(ctx -> tongue.of(ctx).reading(Body.of(ctx))));
        routes.post("/api/equal-strength", reply(ctx -> tongue.of(ctx).equalStrength(Body.of(ctx))));
        routes.post("/api/column/plan", reply(ctx -> tongue.of(ctx).columns().plan(Body.of(ctx), Setting.BENCH)));
        routes.post(
                "/api/column/fractions", reply(ctx -> tongue.of(ctx).columns().fractions(Body.of(ctx))));
        routes.get("/api/checks/tables", reply(ctx -> tongue.of(ctx).checks().tables()));
        routes.post("/api/checks/identity", reply(ctx -> tongue.of(ctx).checks().identity(Body.of(ctx))));
        routes.post("/api/checks/hrf", reply(ctx -> tongue.of(ctx).checks().hrf(Body.of(ctx))));
        routes.post("/api/checks/purity", reply(ctx -> tongue.of(ctx).sight().purity(Body.of(ctx))));
        routes.post(
                "/api/checks/reaction", reply(ctx -> tongue.of(ctx).reactions().reaction(Body.of(ctx))));
        routes.post("/api/checks/seeing", reply(ctx -> tongue.of(ctx).sight().seeing(Body.of(ctx))));
        studies.add(routes);
        photos.add(routes);
        runs.add(routes);
        lessons.add(routes);
    }

    /** Those of a first visit; those of what is fetched later where they are asked for. */
    private static String texts(Texts texts, @Nullable String of) {
        return "later".equals(of) ? texts.jsonForLater() : texts.jsonOfPage();
    }

    static Handler reply(Function<Context, String> answer) {
        return ctx -> ctx.contentType("application/json; charset=utf-8").result(answer.apply(ctx));
    }
}
