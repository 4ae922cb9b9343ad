package midplate.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Proposals are held against the truth")
class JudgingTest {
    private static Mark mark(double x, double rf, boolean marked) {
        return new Mark(0, x, 10 + 50 * rf, rf, 0.4, 3, "compact", "gauss", marked);
    }

    private static Proposed proposed(double x, double rf) {
        return new Proposed(x, 10 + 50 * rf, rf, 0.1, "compact", 0.4, 3);
    }

    @Test
    void theNearerOfTwoProposalsStandsForASpot() {
        Matching matching =
                Matching.of(List.of(mark(10, 0.5, true)), List.of(proposed(10, 0.53), proposed(10, 0.49)), 10);
        assertEquals(1, matching.of(0));
        assertFalse(matching.isTaken(0));
        assertFalse(matching.isIdle(1));
    }

    @Test
    void aProposalTooFarAsideOrUpStandsForNone() {
        Matching matching =
                Matching.of(List.of(mark(10, 0.5, true)), List.of(proposed(14.1, 0.5), proposed(10, 0.541)), 10);
        assertEquals(-1, matching.of(0));
    }

    @Test
    void aSpotThatNobodyNeedMarkComesLastAndDoesNotCount() {
        List<Mark> marks = List.of(mark(10, 0.5, false), mark(10, 0.52, true));
        Matching one = Matching.of(marks, List.of(proposed(10, 0.5)), 10);
        assertEquals(-1, one.of(0));
        assertEquals(0, one.of(1));
        Matching both = Matching.of(marks, List.of(proposed(10, 0.5), proposed(10, 0.525)), 10);
        assertTrue(both.isIdle(0));
        assertTrue(both.isTaken(1));
    }

    @Test
    void figuresCountMissedOnesAndFalseOnes() {
        Outcome near = new Outcome(mark(10, 0.5, true), proposed(10, 0.51), 0.01, 0.5, 50);
        Outcome far = new Outcome(mark(10, 0.7, true), proposed(10, 0.72), 0.02, 1, 50);
        Outcome missed = new Outcome(mark(10, 0.3, true), null, Double.NaN, Double.NaN, 50);
        List<Proposed> four = List.of(proposed(10, 0.51), proposed(10, 0.72), proposed(10, 0.1), proposed(10, 0.2));
        Judged one = new Judged(
                1, JsonNodeFactory.instance.objectNode(), List.of(near, far, missed), four, four.subList(2, 4), "");
        Judged other =
                new Judged(2, JsonNodeFactory.instance.objectNode(), List.of(near), four.subList(0, 1), List.of(), "");
        Tally tally = new Tally(List.of(one, other), outcome -> true, proposal -> true);
        assertEquals(
                2 / 4.0, tally.ofAll(outcome -> outcome.isWithin(Tally.NEAR)).value(), 1e-12);
        assertEquals(
                2 / 3.0, tally.ofFound(outcome -> outcome.isWithin(Tally.NEAR)).value(), 1e-12);
        assertEquals(1 / 4.0, tally.ofAll(Outcome::isMissed).value(), 1e-12);
        assertEquals(2 / 5.0, tally.extra().value(), 1e-12);
        // 1/2 of 4: rests are 1 − 1.5 and 1 − 0.5; √(0.5 · 2 / 1) / 4
        assertEquals(0.25, tally.ofAll(outcome -> outcome.isWithin(Tally.NEAR)).error(), 1e-12);
        assertFalse(far.isWithinTwoErrors());
        assertTrue(near.isRfWithinTwoErrors(), "lines are as uncertain as with a ruler");
        assertFalse(far.isRfWithinTwoErrors());
    }
}
