package midplate.notebook;

import static midplate.notebook.ScoredPlates.advice;
import static midplate.notebook.ScoredPlates.lane;
import static midplate.notebook.ScoredPlates.mm;
import static midplate.notebook.ScoredPlates.number;
import static midplate.notebook.ScoredPlates.only;
import static midplate.notebook.ScoredPlates.outcome;
import static midplate.notebook.ScoredPlates.rf;
import static midplate.notebook.ScoredPlates.seen;
import static midplate.notebook.ScoredPlates.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.ScoredPlates.Plate;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.plate.Limit;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** What was seen on a plate, as the score of an advice takes it. All plates are invented. */
class SeenPlateTest {
    @Test
    void severalLanesCountByTheirMean() {
        Plate plate = Plate.of("p2", 20, lane(mm(49, "s1")), lane(mm(50.8, "s1")));
        assertEquals(Outcome.CAME_TRUE, outcome(advice(20, "s1"), plate));
        assertEquals(
                0.798,
                only(advice(20, "s1"), plate)
                        .spots()
                        .get(0)
                        .read()
                        .orElseThrow()
                        .rf(),
                1e-12);
        assertEquals(
                Outcome.MISSED,
                outcome(advice(20, "s1"), Plate.of("p2", 20, lane(rf(0.79, "s1")), lane(mm(52, "s1")))));
    }

    @Test
    void anImpossiblePlateTellsNothingAndSaysWhy() {
        Plate reversed = Plate.of("p2", 20, lane(mm(30, "s1"))).front(number(5));
        ScoredAdvice scored = only(advice(20, "s1"), reversed);
        assertEquals(Outcome.NOT_TOLD, scored.outcome());
        assertEquals("outcome.unreadable", scored.why().key());
        String words = Texts.english().render(scored.why());
        assertTrue(words.contains("not above the start line"), words);
        Plate beyond = Plate.of("p2", 20, lane(mm(64, "s1")));
        String named = Texts.english().render(only(advice(20, "s1"), beyond).why());
        assertTrue(named.contains("Spot A "), named);
        assertEquals(
                Outcome.NOT_TOLD,
                outcome(advice(20, "s1"), Plate.of("p2", 20, lane(mm(30, "s1"))).front(Entered.text("6o"))));
        assertEquals(Outcome.NOT_TOLD, outcome(advice(20, "s1"), Plate.of("p2", 20, lane(rf(1.2, "s1")))));
        assertEquals(
                Outcome.NOT_TOLD,
                outcome(advice(20, "s1"), Plate.of("p2", 20, lane(seen(Given.RF, Entered.text("0.3x"), "s1")))));
    }

    @Test
    void rfNeedsNoLinesWhereNoneWereEntered() {
        Plate plate = Plate.of("p2", 20, lane(rf(0.3, "s1")));
        StudyPlate bare = plate.made();
        StudyPlate noLines = new StudyPlate(
                bare.id(),
                Entered.NOTHING,
                Entered.NOTHING,
                Entered.NOTHING,
                Entered.NOTHING,
                bare.weak(),
                bare.strong(),
                bare.eluent(),
                bare.percentStrong(),
                bare.additive(),
                bare.conditions(),
                bare.lanes(),
                bare.notSeen(),
                bare.photo());
        Study study = study(List.of(advice(20, "s1")), plate);
        Study without = new Study(
                study.id(),
                "",
                study.created(),
                study.modified(),
                study.keeping(),
                study.origin(),
                "silica",
                "bench",
                List.of(),
                study.spots(),
                List.of(noLines),
                study.next(),
                study.advices(),
                study.column(),
                study.checks(),
                "");
        assertEquals(Outcome.CAME_TRUE, AdviceOutcomes.of(without).get(0).outcome());
    }

    @Test
    void anErrorThatAPictureToldCountsAndAFaultyOneIsTold() {
        for (String error : List.of("0.2", "99")) {
            SpotSeen seen = withError(mm(35, "s1"), Entered.number(error, Double.parseDouble(error)));
            assertEquals(Outcome.CAME_TRUE, outcome(advice(20, "s1"), Plate.of("p2", 20, lane(seen))), error);
        }
        // own algebra: 35 mm on a run from 10 to 60 mm is Rf 0.5; √(0.2² + 0.25·0.5)/50
        Study study = study(
                List.of(advice(20, "s1")),
                Plate.of("p2", 20, lane(withError(mm(35, "s1"), Entered.number("0.2", 0.2)))));
        assertEquals(
                Math.sqrt(0.04 + 0.125) / 50,
                Objects.requireNonNull(SeenPlate.of(
                                        study, study.plates().get(study.plates().size() - 1))
                                .readings()
                                .get("s1"))
                        .standardError()
                        .orElseThrow(),
                1e-12);
        for (Entered none : List.of(Entered.number("0", 0), Entered.number("101", 101), Entered.text("o.2"))) {
            SpotSeen seen = withError(mm(35, "s1"), none);
            ScoredAdvice scored = only(advice(20, "s1"), Plate.of("p2", 20, lane(seen)));
            assertEquals(Outcome.NOT_TOLD, scored.outcome(), none.typed());
            assertEquals("outcome.unreadable", scored.why().key(), none.typed());
        }
    }

    private static SpotSeen withError(SpotSeen seen, Entered error) {
        return new SpotSeen(
                seen.id(),
                seen.spots(),
                seen.given(),
                seen.place(),
                seen.sizeMm(),
                Optional.of(error),
                Optional.of("compact"),
                seen.seen());
    }

    @Test
    void aSpotOnTheStartLineIsABoundAndOutsideTheUsualWindow() {
        ScoredAdvice scored = only(advice(20, "s1"), Plate.of("p2", 20, lane(mm(10.5, "s1"))));
        assertEquals(Outcome.MISSED, scored.outcome());
        assertEquals(Limit.AT_START, scored.spots().get(0).read().orElseThrow().limit());
        assertEquals(
                Limit.AT_FRONT,
                only(advice(20, "s1"), Plate.of("p2", 20, lane(rf(1, "s1"))))
                        .spots()
                        .get(0)
                        .read()
                        .orElseThrow()
                        .limit());
        GivenAdvice low = new GivenAdvice(
                Instant.EPOCH,
                "",
                List.of("p1"),
                "hexane",
                "ethyl-acetate",
                20,
                "",
                0.01,
                0.8,
                List.of(),
                List.of(new Foretold("s1", 0.1, 0, 0.2)),
                0.8,
                "measured");
        assertEquals(
                Outcome.NOT_TOLD,
                outcome(low, Plate.of("p2", 20, lane(rf(0, "s1")))),
                "at most 0.03 may lie in 0.01 to 0.8");
        assertEquals(
                Outcome.MISSED,
                AdviceOutcomes.of(study("automated", List.of(low), Plate.of("p2", 20, lane(rf(0, "s1")))))
                        .get(0)
                        .outcome(),
                "an automated laboratory reads 0 as 0");
    }
}
