package midplate.notebook;

import static midplate.notebook.ScoredPlates.advice;
import static midplate.notebook.ScoredPlates.lane;
import static midplate.notebook.ScoredPlates.mm;
import static midplate.notebook.ScoredPlates.only;
import static midplate.notebook.ScoredPlates.outcome;
import static midplate.notebook.ScoredPlates.seen;
import static midplate.notebook.ScoredPlates.study;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.ScoredPlates.Plate;
import midplate.notebook.StudyPlate.Given;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which plate scores an advice, and what came of it. All plates are invented. */
class AdviceOutcomesTest {
    @Test
    void everySpotInsideTheWindowCameTrueAndItIsToldWhereEachWasRead() {
        ScoredAdvice scored = only(advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(30, "s1"), mm(45, "s2"))));
        assertEquals(Outcome.CAME_TRUE, scored.outcome());
        assertEquals(Optional.of("p2"), scored.plate());
        assertEquals(0.4, scored.spots().get(0).read().orElseThrow().rf(), 1e-12);
        assertEquals(0.7, scored.spots().get(1).read().orElseThrow().rf(), 1e-12);
        assertEquals(0.5, scored.spots().get(0).foretold().rf());
    }

    @Test
    void oneSpotOutsideIsAMiss() {
        assertEquals(
                Outcome.MISSED, outcome(advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(30, "s1"), mm(55, "s2")))));
        assertEquals(
                "outcome.outside",
                only(advice(20, "s1"), Plate.of("p2", 20, lane(mm(11.9, "s1"))))
                        .why()
                        .key());
    }

    @Test
    void bothEndsOfTheWindowBelongToIt() {
        assertEquals(
                Outcome.CAME_TRUE,
                outcome(advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(20, "s1"), mm(50, "s2")))));
        assertEquals(Outcome.MISSED, outcome(advice(20, "s1"), Plate.of("p2", 20, lane(mm(50.1, "s1")))));
    }

    @ParameterizedTest // tolerance min(0.5, max(0.2, 2 %)): 0.2 at 2 %, 0.4 at 20 %, 0.5 at 50 %
    @CsvSource({
        "2, 2.2, true",
        "2, 2.21, false",
        "2, 1.8, true",
        "20, 20.4, true",
        "20, 20.41, false",
        "20, 19.6, true",
        "50, 50.5, true",
        "50, 50.51, false",
        "0, 0.2, true",
        "100, 99.5, true",
        "100, 99.4, false"
    })
    void aPlateRanTheAdviceWhereItsShareIsNearEnough(double advised, double run, boolean same) {
        Outcome outcome = outcome(advice(advised, "s1"), Plate.of("p2", run, lane(mm(30, "s1"))));
        assertEquals(same ? Outcome.CAME_TRUE : Outcome.NOT_RUN, outcome);
    }

    @Test
    void anAdviceWhoseRatioNoPlateRanIsNotScored() {
        ScoredAdvice scored = only(advice(20, "s1"), Plate.of("p2", 30, lane(mm(30, "s1"))));
        assertEquals(Outcome.NOT_RUN, scored.outcome());
        assertEquals(Optional.empty(), scored.plate());
    }

    @Test
    void aPlateThatTheAdviceRestedOnDoesNotScoreIt() {
        assertEquals(Outcome.NOT_RUN, outcome(advice(20, "s1"), Plate.of("p1", 20, lane(mm(30, "s1")))));
    }

    @Test
    void aRatioThatIsNoneYetRanNothing() {
        assertEquals(Outcome.NOT_RUN, outcome(advice(20, "s1"), Plate.of("p2", -1, lane(mm(30, "s1")))));
    }

    @Test
    void ofTwoPlatesOfTheRatioTheFirstCounts() {
        Plate first = Plate.of("p2", 20, lane(mm(30, "s1")));
        Plate second = Plate.of("p3", 20, lane(mm(55, "s1")));
        assertEquals(Optional.of("p2"), only(advice(20, "s1"), first, second).plate());
        assertEquals(Outcome.MISSED, outcome(advice(20, "s1"), second, first));
    }

    @Test
    void aPlateWithNothingOnItYetGivesWayToOneThatWasRead() {
        Plate empty = Plate.of("p2", 20, lane());
        Plate read = Plate.of("p3", 20, lane(mm(30, "s1")));
        assertEquals(Optional.of("p3"), only(advice(20, "s1"), empty, read).plate());
        ScoredAdvice alone = only(advice(20, "s1"), empty);
        assertEquals(Outcome.NOT_TOLD, alone.outcome());
        assertEquals("outcome.not-read", alone.why().key());
        Plate waiting = Plate.of("p2", 20, lane(seen(Given.CENTRE_MM, Entered.NOTHING, "s1")));
        assertEquals("outcome.not-read", only(advice(20, "s1"), waiting).why().key());
    }

    @Test
    void anotherPairIsAnotherMatter() {
        GivenAdvice methanol = new GivenAdvice(
                Instant.EPOCH,
                "",
                List.of("p1"),
                "dichloromethane",
                "methanol",
                20,
                "",
                0.2,
                0.8,
                List.of(),
                List.of(new Foretold("s1", 0.5, 0.4, 0.6)),
                0.8,
                "measured");
        assertEquals(Outcome.NOT_RUN, outcome(methanol, Plate.of("p2", 20, lane(mm(30, "s1")))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "none|''|''|true",
                "none|formic acid|''|true",
                "acetic-acid|''|acetic acid 1 %|true",
                "acetic-acid|''|Essigsäure 1 %|true",
                "acetic-acid|''|''|false",
                "own|1 % formic acid|1 % Formic  acid|true",
                "own|0,5 % formic acid|0.5 % formic acid|true",
                "own|1 % formic acid|1 % ammonia|false",
                "none|''|acetic acid 1 %|false",
                "own|''|''|false",
                "own|acetic acid 1 %|acetic acid 1 %|true",
                "acetic-acid|''|1 % formic acid|false",
                "own|Essigsäure 1 %|acetic acid 1 %|true",
            })
    void theAdditiveHasToBeTheSameInWhateverLanguage(String kind, String text, String advised, boolean same) {
        GivenAdvice advice = advice(20, List.of("p1"), List.of(), advised, "s1");
        Plate plate = Plate.of("p2", 20, lane(mm(30, "s1"))).with(new JarAdditive(kind, text));
        assertEquals(same ? Outcome.CAME_TRUE : Outcome.NOT_RUN, outcome(advice, plate));
    }

    @Test
    void anAdviceWithoutSpotsTellsNothing() {
        assertEquals(Outcome.NOT_TOLD, outcome(advice(20), Plate.of("p2", 20, lane(mm(30, "s1")))));
    }

    @Test
    void aPlateThatWouldScoreTwoAdvicesScoresTheLatest() {
        GivenAdvice early = advice(20, List.of("p1"), List.of(), "", "s1");
        GivenAdvice late = advice(20, List.of("p1", "p2"), List.of(), "", "s1");
        Plate between = Plate.of("p2", 30, lane(mm(55, "s1")));
        List<ScoredAdvice> scored =
                AdviceOutcomes.of(study(List.of(early, late), between, Plate.of("p3", 20, lane(mm(30, "s1")))));
        assertEquals(
                List.of(Outcome.NOT_RUN, Outcome.CAME_TRUE),
                scored.stream().map(ScoredAdvice::outcome).toList());
        assertEquals("outcome.given-again", scored.get(0).why().key());
        assertEquals(List.of(0, 1), scored.stream().map(ScoredAdvice::number).toList());
        // the later one rested on the plate that ran the first: each has its own
        List<ScoredAdvice> own = AdviceOutcomes.of(study(
                List.of(early, late), Plate.of("p2", 20, lane(mm(55, "s1"))), Plate.of("p3", 20, lane(mm(30, "s1")))));
        assertEquals(
                List.of(Outcome.MISSED, Outcome.CAME_TRUE),
                own.stream().map(ScoredAdvice::outcome).toList());
    }
}
