package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import midplate.plate.Setting;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Recorded requests, asked again. */
class ContractTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();

    static Stream<Recorded> pairs() throws IOException {
        return Recorded.all();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void anAnswerKeepsItsFormAndThePublishedValues(Recorded recorded) throws IOException {
        try {
            recorded.hold(answer(recorded));
            assertEquals(200, recorded.status());
        } catch (BadInput bad) {
            assertEquals(422, recorded.status(), bad.getMessage());
            recorded.hold(ErrorBody.of(bad.faults()));
        }
    }

    private static String answer(Recorded recorded) {
        return switch (recorded.route()) {
            case "/api/advice" ->
                EXCHANGE.advice(recorded.request(), Setting.BENCH).json();
            case "/api/scouting" ->
                EXCHANGE.scouting(recorded.request(), Setting.BENCH).json();
            case "/api/other-eluents" ->
                EXCHANGE.otherEluents(recorded.request(), Setting.BENCH).json();
            case "/api/structure" -> EXCHANGE.structure(recorded.request());
            case "/api/reading" -> EXCHANGE.reading(recorded.request());
            case "/api/equal-strength" ->
                EXCHANGE.equalStrength(recorded.request()).json();
            case "/api/column/plan" ->
                EXCHANGE.columns().plan(recorded.request(), Setting.BENCH).json();
            case "/api/column/fractions" -> EXCHANGE.columns().fractions(recorded.request());
            case "/api/checks/identity" ->
                EXCHANGE.checks().identity(recorded.request()).json();
            case "/api/checks/hrf" -> EXCHANGE.checks().hrf(recorded.request());
            case "/api/checks/purity" -> EXCHANGE.sight().purity(recorded.request());
            case "/api/checks/seeing" -> EXCHANGE.sight().seeing(recorded.request());
            case "/api/checks/reaction" -> EXCHANGE.reactions().reaction(recorded.request());
            case "/api/lesson/series" ->
                EXCHANGE.lessons().series(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/lesson/climb" ->
                EXCHANGE.lessons().climb(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/lesson/why" -> EXCHANGE.lessons().why(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/lesson/exercise" -> EXCHANGE.lessons().exercises().exercise(recorded.bytes());
            case "/api/lesson/exercise/run" -> EXCHANGE.lessons().exercises().run(recorded.bytes());
            case "/api/lesson/exercise/hint" -> EXCHANGE.lessons().exercises().hint(recorded.bytes());
            case "/api/lesson/exercise/placed" -> EXCHANGE.lessons().exercises().placed(recorded.bytes());
            case "/api/lesson/exercise/program" ->
                EXCHANGE.lessons().exercises().program(recorded.bytes());
            case "/api/lesson/exercise/key" -> EXCHANGE.lessons().exercises().key(recorded.bytes());
            case "/api/lesson/class" ->
                EXCHANGE.lessons().classReadings(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/lesson/class/example" ->
                EXCHANGE.lessons().classExample(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/lesson/slips" -> EXCHANGE.lessons().slips(recorded.request());
            case "/api/lesson/worksheet" ->
                EXCHANGE.lessons().worksheet(recorded.request().getBytes(StandardCharsets.UTF_8));
            case "/api/import" ->
                EXCHANGE.studies().imports().of(recorded.request().getBytes(StandardCharsets.UTF_8));
            default -> throw new IllegalArgumentException(recorded.route());
        };
    }
}
