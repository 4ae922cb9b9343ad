package midplate.notebook;

import static midplate.notebook.ScoredPlates.advice;
import static midplate.notebook.ScoredPlates.lane;
import static midplate.notebook.ScoredPlates.mm;
import static midplate.notebook.ScoredPlates.only;
import static midplate.notebook.ScoredPlates.outcome;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.ScoredPlates.Plate;
import midplate.notebook.StudyPlate.Lane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The spots of an advice found again on a plate, with labels and without. All plates are invented. */
class SpotsAccountedTest {
    @Test
    void aReadingThatHidesTwoCompoundsCountsForBoth() {
        Plate merged = Plate.of("p2", 20, lane(mm(30, "s1", "s2")));
        assertEquals(Outcome.CAME_TRUE, outcome(advice(20, "s1", "s2"), merged));
        GivenAdvice apart = advice(20, List.of("p1"), List.of("s1", "s2"), "", "s1", "s2");
        assertEquals(Outcome.MISSED, outcome(apart, merged));
        assertEquals("outcome.together", only(apart, merged).why().key());
    }

    @ParameterizedTest
    @CsvSource({"30, 35, true", "30, 34.9, false", "35, 30, true"})
    void twoThatWereToBeKeptApartHaveToBe(double one, double other, boolean are) {
        GivenAdvice apart = advice(20, List.of("p1"), List.of("s1", "s2"), "", "s1", "s2");
        Outcome outcome = outcome(apart, Plate.of("p2", 20, lane(mm(one, "s1"), mm(other, "s2"))));
        assertEquals(are ? Outcome.CAME_TRUE : Outcome.MISSED, outcome);
    }

    @Test
    void labelsDoNotMatterWhereAllAreAccountedFor() {
        GivenAdvice both = advice(20, "s1", "s2");
        assertEquals(Outcome.CAME_TRUE, outcome(both, Plate.of("p2", 20, lane(mm(30), mm(40)))));
        assertEquals(Outcome.MISSED, outcome(both, Plate.of("p2", 20, lane(mm(30), mm(55)))));
        assertEquals(Outcome.NOT_TOLD, outcome(both, Plate.of("p2", 20, lane(mm(30)))));
        assertEquals(Outcome.NOT_TOLD, outcome(both, Plate.of("p2", 20, lane(mm(30)), lane(mm(40)))));
        assertEquals(
                List.of(0.4, 0.6),
                only(both, Plate.of("p2", 20, lane(mm(40), mm(30)))).unlabelled().stream()
                        .map(reading -> Math.rint(reading.rf() * 1000) / 1000)
                        .toList());
    }

    @Test
    void aForeignSpotMayLieOutsideOnlyWhereItIsClearlyTheForeignOne() {
        GivenAdvice both = advice(20, "s1", "s2");
        assertEquals(Outcome.CAME_TRUE, outcome(both, Plate.of("p2", 20, lane(mm(30), mm(40), mm(45)))));
        assertEquals(Outcome.NOT_TOLD, outcome(both, Plate.of("p2", 20, lane(mm(30), mm(40), mm(55)))));
        assertEquals(Outcome.MISSED, outcome(both, Plate.of("p2", 20, lane(mm(30), mm(56), mm(55)))));
        assertEquals(Outcome.CAME_TRUE, outcome(both, Plate.of("p2", 20, lane(mm(30, "s1"), mm(40, "s2"), mm(55)))));
    }

    @Test
    void theOneLeftWithoutALabelIsTheOneThatIsMissing() {
        ScoredAdvice scored = only(advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(30, "s1"), mm(40))));
        assertEquals(Outcome.CAME_TRUE, scored.outcome());
        assertEquals(0.6, scored.spots().get(1).read().orElseThrow().rf(), 1e-12);
        assertEquals(List.of(), scored.unlabelled());
        // alone in a lane it may be either
        assertEquals(
                Outcome.NOT_TOLD,
                outcome(advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(30, "s1")), lane(mm(40)))));
    }

    @Test
    void unlabelledSpotsAreApartWhicheverIsWhich() {
        GivenAdvice apart = advice(20, List.of("p1"), List.of("s1", "s2"), "", "s1", "s2");
        assertEquals(Outcome.CAME_TRUE, outcome(apart, Plate.of("p2", 20, lane(mm(30), mm(40)))));
        assertEquals(Outcome.MISSED, outcome(apart, Plate.of("p2", 20, lane(mm(30), mm(33)))));
        GivenAdvice three = advice(20, List.of("p1"), List.of("s1", "s2"), "", "s1", "s2", "s3");
        assertEquals(Outcome.CAME_TRUE, outcome(three, Plate.of("p2", 20, lane(mm(25), mm(35), mm(45)))));
        assertEquals(Outcome.NOT_TOLD, outcome(three, Plate.of("p2", 20, lane(mm(25), mm(27), mm(45)))));
        // spotted alone in a lane of its own, then with the other: the two of the second lane tell
        assertEquals(Outcome.CAME_TRUE, outcome(apart, Plate.of("p2", 20, lane(mm(30, "s1")), lane(mm(30), mm(40)))));
    }

    @Test
    void theLaneWithAsManySpotsAsAreToBeFoundTellsRatherThanAFullerOne() {
        GivenAdvice both = advice(20, "s1", "s2");
        Lane fuller = lane(mm(30), mm(40), mm(55));
        assertEquals(Outcome.CAME_TRUE, outcome(both, Plate.of("p2", 20, fuller, lane(mm(30), mm(40)))));
    }

    @Test
    void lanesThatLookTheSameAreTakenAtTheirMean() {
        Plate same = Plate.of("p2", 20, lane(mm(30), mm(49)), lane(mm(30), mm(53)));
        assertEquals(Outcome.MISSED, outcome(advice(20, "s1", "s2"), same), "0.78 and 0.86 in the mean 0.82");
    }

    @Test
    void aSpotLookedForAndNotSeenTellsNothing() {
        ScoredAdvice scored = only(
                advice(20, "s1", "s2"), Plate.of("p2", 20, lane(mm(30, "s1"))).without("s2"));
        assertEquals(Outcome.NOT_TOLD, scored.outcome());
        assertEquals("B", scored.why().args().get("spot"));
        assertEquals(0.4, scored.spots().get(0).read().orElseThrow().rf(), 1e-12);
    }

    @Test
    void aSpotThatTheSampleGainedLaterDoesNotMatter() {
        Plate plate = Plate.of("p2", 20, lane(mm(30, "s1"), mm(56, "s3")));
        assertEquals(Outcome.CAME_TRUE, outcome(advice(20, "s1"), plate));
        assertEquals(Outcome.CAME_TRUE, outcome(advice(20, "s1"), plate.without("s2")));
    }
}
