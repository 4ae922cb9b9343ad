package midplate.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Map;
import java.util.Set;
import midplate.wire.LessonAnswers;

/** What can be asked about lessons. */
final class LessonRoutes {
    static final Map<String, Set<HandlerType>> METHODS = Map.ofEntries(
            Map.entry("/api/lesson/tables", Routes.READ),
            Map.entry("/api/lesson/class", Routes.WRITE),
            Map.entry("/api/lesson/class/example", Routes.WRITE),
            Map.entry("/api/lesson/series", Routes.WRITE),
            Map.entry("/api/lesson/climb", Routes.WRITE),
            Map.entry("/api/lesson/why", Routes.WRITE),
            Map.entry("/api/lesson/slips", Routes.WRITE),
            Map.entry("/api/lesson/worksheet", Routes.WRITE),
            Map.entry("/api/lesson/exercise", Routes.WRITE),
            Map.entry("/api/lesson/exercise/run", Routes.WRITE),
            Map.entry("/api/lesson/exercise/hint", Routes.WRITE),
            Map.entry("/api/lesson/exercise/placed", Routes.WRITE),
            Map.entry("/api/lesson/exercise/program", Routes.WRITE),
            Map.entry("/api/lesson/exercise/key", Routes.WRITE));

    private final Tongue tongue;

    LessonRoutes(Tongue tongue) {
        this.tongue = tongue;
    }

    void add(RoutesConfig routes) {
        routes.get("/api/lesson/tables", Routes.reply(ctx -> lessons(ctx).tables()));
        routes.post("/api/lesson/class", Routes.reply(ctx -> lessons(ctx).classReadings(Body.of(ctx))));
        routes.post(
                "/api/lesson/class/example", Routes.reply(ctx -> lessons(ctx).classExample(Body.of(ctx))));
        routes.post("/api/lesson/series", Routes.reply(ctx -> lessons(ctx).series(Body.of(ctx))));
        routes.post("/api/lesson/climb", Routes.reply(ctx -> lessons(ctx).climb(Body.of(ctx))));
        routes.post("/api/lesson/why", Routes.reply(ctx -> lessons(ctx).why(Body.of(ctx))));
        routes.post("/api/lesson/slips", Routes.reply(ctx -> lessons(ctx).slips(Body.of(ctx))));
        routes.post("/api/lesson/worksheet", Routes.reply(ctx -> lessons(ctx).worksheet(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise",
                Routes.reply(ctx -> lessons(ctx).exercises().exercise(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise/run",
                Routes.reply(ctx -> lessons(ctx).exercises().run(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise/hint",
                Routes.reply(ctx -> lessons(ctx).exercises().hint(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise/placed",
                Routes.reply(ctx -> lessons(ctx).exercises().placed(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise/program",
                Routes.reply(ctx -> lessons(ctx).exercises().program(Body.of(ctx))));
        routes.post(
                "/api/lesson/exercise/key",
                Routes.reply(ctx -> lessons(ctx).exercises().key(Body.of(ctx))));
    }

    private LessonAnswers lessons(Context ctx) {
        return tongue.of(ctx).lessons();
    }
}
