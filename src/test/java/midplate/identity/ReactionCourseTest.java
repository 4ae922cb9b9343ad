package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a chemist would say of grades on a few plates; all of it invented, the verdicts are common practice. */
class ReactionCourseTest {
    private static final ReactionCourse COURSE = ReactionCourse.of((here, one, other, most) -> List.of());
    private static final double[] TIMES = {0, 10, 30, 60, 120, 240};

    private static ReactionSpecies species(String name, SpeciesPart part, double rf) {
        OptionalDouble place = rf > 0 ? OptionalDouble.of(rf) : OptionalDouble.empty();
        return new ReactionSpecies(new Compound(name, place, Optional.empty()), part);
    }

    private static ReactionQuestion grades(
            double startRf, double productRf, String start, String product, String other) {
        List<ReactionPlate> plates = new ArrayList<>();
        for (int i = 0; i < start.length(); i++) {
            plates.add(new ReactionPlate(
                    TIMES[i],
                    List.of(mark("SM", start.charAt(i)), mark("P", product.charAt(i)), mark("X", other.charAt(i))),
                    OptionalInt.empty()));
        }
        return new ReactionQuestion(
                List.of(
                        species("SM", SpeciesPart.START, startRf),
                        species("P", SpeciesPart.PRODUCT, productRf),
                        species("X", SpeciesPart.OTHER, 0)),
                plates,
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static ReactionMark mark(String name, char grade) {
        return new ReactionMark(name, grade - '0', OptionalDouble.empty());
    }

    @ParameterizedTest
    @CsvSource({
        // start, product, other, verdict
        "4,      0,      0,      not-told",
        "44,     00,     00,     not-told",
        "000,    000,    000,    not-told",
        "000,    024,    000,    not-told",
        "432,    023,    000,    running",
        "4321,   0234,   0000,   running",
        "43200,  02344,  00000,  finished",
        "432000, 023444, 000001, finished",
        "43200,  00000,  00000,  gone-wrong",
        "432100, 034421, 001234, gone-wrong",
        "433222, 022333, 000000, stalled",
        "43200,  01000,  00123,  gone-wrong",
    })
    void saysWhatAChemistWouldSay(String start, String product, String other, String verdict) {
        ReactionAnswer answer = COURSE.follow(grades(0.5, 0.3, start, product, other));
        assertEquals(verdict, answer.state().id(), answer.toString());
    }

    @Test
    void anEndThatLooksLikeAStallIsToBeConfirmedSoon() {
        ReactionAnswer answer = COURSE.follow(grades(0.5, 0.3, "432110", "012344", "000000"));
        assertEquals(ReactionState.NOT_TOLD, answer.state());
        assertEquals("done.stall-or-end", ((Message) answer.inWords().args().get("why")).key());
        assertEquals(10, answer.lookAgain().orElseThrow().afterMinutes());
    }

    @Test
    void aSpotThatIsBothCannotBeTold() {
        ReactionAnswer answer = COURSE.follow(grades(0.42, 0.41, "43200", "02344", "00000"));
        assertEquals(ReactionState.NOT_TOLD, answer.state());
        assertEquals("done.apart-none", answer.apart().orElseThrow().text().key());
    }

    @Test
    void theNextLookIsNoSoonerThanAPlateNorLaterThanItHasRun() {
        for (String start : List.of("44", "432", "4433", "44321", "443333")) {
            ReactionAnswer answer =
                    COURSE.follow(grades(0.5, 0.3, start, "012344".substring(0, start.length()), "000000"));
            double last = TIMES[start.length() - 1];
            answer.lookAgain().ifPresent(look -> {
                assertTrue(look.afterMinutes() >= 10 && look.afterMinutes() <= Math.max(10, last), look.toString());
                assertEquals(last + look.afterMinutes(), look.atMinutes());
            });
        }
        assertTrue(COURSE.follow(grades(0.5, 0.3, "43200", "02344", "00000"))
                .lookAgain()
                .isEmpty());
    }

    @Test
    void chancesAreChancesAndNothingIsSaidOfConversion() {
        ReactionAnswer answer = COURSE.follow(grades(0.5, 0.3, "4321", "0234", "0001"));
        assertEquals(
                1, answer.chances().values().stream().mapToDouble(each -> each).sum(), 1e-9);
        Texts texts = Texts.english();
        for (Message reason : answer.reasons()) {
            assertFalse(texts.render(reason).contains("%"), texts.render(reason));
        }
    }

    @Test
    void aStartThatWasNeverSeenIsNoEnd() {
        ReactionAnswer answer = COURSE.follow(grades(0.5, 0.3, "000", "024", "000"));
        assertEquals(ReactionState.NOT_TOLD, answer.state());
        assertEquals("done.start-never-seen", why(answer));
        assertFalse(
                keys(answer.reasons()).contains("done.start-gone"),
                answer.reasons().toString());
    }

    /** A spot of 3 mm on a run of 50 mm is 0.06 long: what lies nearer is under it. */
    @ParameterizedTest
    @CsvSource({
        // Rf of start and product, product, verdict, why
        "0.40, 0.44, 02344, not-told, done.end-hidden",
        "0.45, 0.40, 02344, not-told, done.end-hidden",
        "0.40, 0.48, 02344, finished, done.finished",
        "0.40, 0.45, 02222, finished, done.finished",
        "0.90, 0.97, 02344, not-told, done.end-hidden",
        "0.03, 0.11, 02344, not-told, done.end-hidden",
        "0.98, 0.40, 02344, not-told, done.end-at-edge",
        "0.01, 0.40, 02344, not-told, done.end-at-edge",
        "0.90, 0.40, 02344, finished, done.finished",
        "0,    0,    02344, finished, done.finished",
    })
    void noEndIsToldWhereARestWouldBeCovered(
            double startRf, double productRf, String product, String verdict, String key) {
        ReactionAnswer answer = COURSE.follow(grades(startRf, productRf, "43200", product, "00000"));
        assertEquals(verdict, answer.state().id(), answer.toString());
        assertEquals(
                key,
                answer.state() == ReactionState.NOT_TOLD
                        ? why(answer)
                        : answer.inWords().key());
    }

    @Test
    void whatStaysAtTheStartLineCoversAStartThatHardlyRuns() {
        assertEquals(
                "done.end-hidden-line", why(COURSE.follow(lined(grades(0.05, 0.5, "43200", "02344", "00000"), 0, 3))));
        assertEquals(
                ReactionState.FINISHED,
                COURSE.follow(lined(grades(0.05, 0.5, "43200", "02344", "00000"), 0, 0))
                        .state());
    }

    @Test
    void oneNegativePlateLooksFinishedAndIsToBeConfirmedAPlateLater() {
        ReactionAnswer once = COURSE.follow(grades(0.5, 0.3, "4320", "0244", "0000"));
        assertEquals(ReactionState.FINISHED, once.state(), once.toString());
        assertEquals("done.finished-once", once.inWords().key());
        assertEquals("done.look-confirm", once.lookAgain().orElseThrow().text().key());
        assertEquals(TIMES[3] + 10, once.lookAgain().orElseThrow().atMinutes());
        assertTrue(
                keys(once.reasons()).contains("done.start-gone-last"),
                once.reasons().toString());
        ReactionAnswer twice = COURSE.follow(grades(0.5, 0.3, "43200", "02444", "00000"));
        assertEquals("done.finished", twice.inWords().key());
    }

    @Test
    void aProductThatFallsWhileTheStartLineRisesIsWarnedOf() {
        ReactionQuestion question = lined(grades(0.5, 0.3, "43200", "02443", "00000"), 0, 2);
        assertTrue(
                keys(COURSE.follow(question).warnings()).contains("done.product-falls-line"),
                COURSE.follow(question).toString());
        assertFalse(
                keys(COURSE.follow(grades(0.5, 0.3, "43200", "02444", "00000")).warnings())
                        .contains("done.product-falls"));
    }

    @Test
    void aStartThatBecameStrongerIsToldWhicheverWayItEnds() {
        for (String start : List.of("241", "421243", "4012")) {
            ReactionAnswer answer =
                    COURSE.follow(grades(0.5, 0.3, start, "012344".substring(0, start.length()), "000000"));
            assertTrue(keys(answer.warnings()).contains("done.stronger"), start + answer.warnings());
        }
        assertFalse(keys(COURSE.follow(grades(0.5, 0.3, "432", "012", "000")).warnings())
                .contains("done.stronger"));
    }

    @Test
    void whatFellOnTheLastPlateIsNotSaidToStandThere() {
        assertTrue(keys(COURSE.follow(grades(0.5, 0.3, "443", "001", "000")).reasons())
                .contains("done.fell-last"));
        assertTrue(keys(COURSE.follow(grades(0.5, 0.3, "4433", "0012", "0000")).reasons())
                .contains("done.fell"));
    }

    @Test
    void whoIsToldOfAStallIsToldWhyToCare() {
        ReactionAnswer stalled = COURSE.follow(grades(0.5, 0.3, "433222", "022333", "000000"));
        assertTrue(keys(stalled.reasons()).contains("done.todo-stalled"), stalled.toString());
        assertTrue(Texts.english().render(Message.of("done.todo-stalled")).contains("before you add or heat"));
    }

    private static String why(ReactionAnswer answer) {
        return ((Message) answer.inWords().args().get("why")).key();
    }

    private static List<String> keys(List<Message> messages) {
        return messages.stream().map(Message::key).toList();
    }

    /** The same with what stays at the start line, on the first plates and on the last. */
    private static ReactionQuestion lined(ReactionQuestion question, int first, int last) {
        List<ReactionPlate> plates = new ArrayList<>();
        for (ReactionPlate plate : question.plates()) {
            boolean latest = plates.size() == question.plates().size() - 1;
            plates.add(new ReactionPlate(plate.minutes(), plate.marks(), OptionalInt.of(latest ? last : first)));
        }
        return new ReactionQuestion(question.species(), plates, question.eluent(), question.expectedMinutes());
    }

    @Test
    void aSpotThatMovesAgainstTheOthersIsTold() {
        List<ReactionPlate> plates = new ArrayList<>();
        double[][] places = {{0.50, 0.30}, {0.51, 0.31}, {0.52, 0.44}};
        for (int i = 0; i < places.length; i++) {
            plates.add(new ReactionPlate(
                    TIMES[i],
                    List.of(
                            new ReactionMark("SM", 3, OptionalDouble.of(places[i][0])),
                            new ReactionMark("P", 2, OptionalDouble.of(places[i][1]))),
                    OptionalInt.empty()));
        }
        ReactionQuestion question = new ReactionQuestion(
                List.of(species("SM", SpeciesPart.START, 0), species("P", SpeciesPart.PRODUCT, 0)),
                plates,
                Optional.empty(),
                OptionalDouble.empty());
        List<Message> jumps = new ReactionRf(question).jumps();
        assertEquals(
                List.of("P"),
                jumps.stream().map(jump -> jump.args().get("spot")).toList(),
                jumps.toString());
    }
}
