package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Setting;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The reasons of an advice")
class ReasonsTest {
    private static Message first(Asking asking) {
        return asking.advice().why().get(0);
    }

    // The two spots fill the window; whichever reads lower or higher becomes the one that decides.
    @Test
    void changeWithOneReading() {
        Message held = first(Asking.acetate().spots("A", "B", "C").run(25, Map.of("A", 0.11, "B", 0.55, "C", 0.5)));
        assertEquals("A", held.args().get("spot"));
        assertTrue(held.code().startsWith("why-low"), held.toString());
        assertEquals(0.2, held.args().get("edge"));
        Message loose = first(Asking.acetate().spots("A", "B", "C").run(25, Map.of("A", 0.5, "B", 0.97, "C", 0.5)));
        assertEquals("B", loose.args().get("spot"));
        assertTrue(loose.code().startsWith("why-high"), loose.toString());
        assertEquals(0.8, loose.args().get("edge"));
        Message turned = first(Asking.acetate().spots("A", "B", "C").run(25, Map.of("A", 0.55, "B", 0.11, "C", 0.5)));
        assertEquals("B", turned.args().get("spot"));
    }

    // Own algebra: the room is the distance from the expected Rf to the edge.
    @Test
    void nameTheRoomToTheEdge() {
        Advice advice = Asking.acetate()
                .spots("A", "B")
                .in(Setting.BENCH)
                .run(10, Map.of("A", 0.12, "B", 0.33))
                .advice();
        Message reason = advice.why().get(0);
        double rf = (double) reason.args().get("rf");
        double edge = (double) reason.args().get("edge");
        assertEquals(Math.abs(rf - edge), (double) reason.args().get("room"), 1e-12);
        assertTrue(advice.forecast().spots().stream()
                .anyMatch(spot -> spot.spot().equals(reason.args().get("spot")) && spot.rf() == rf));
    }

    @Test
    void aSafePlateIsCalledSafe() {
        Asking asking = Asking.acetate();
        for (int i = 0; i < 3; i++) {
            asking.run(25, Map.of("A", 0.45));
        }
        assertEquals("why-safe", first(asking).code());
    }

    @ParameterizedTest
    @CsvSource({"10, 0.05, why-stronger", "50, 0.9, why-weaker"})
    void sayWhichWayTheStepGoes(double percent, double rf, String code) {
        Advice advice = Asking.acetate().run(percent, Map.of("A", rf)).advice();
        Message step = advice.why().get(1);
        assertEquals(code, step.code());
        assertEquals(percent, step.args().get("before"));
        assertEquals(advice.forecast().percentStrong(), (double) step.args().get("after"), 0.05, "to a decimal");
        assertTrue((double) step.args().get("factor") > 1);
    }

    // Own arithmetic: 2 : 1 is 33.333… %.
    @Test
    void noPercentageHasMoreThanADecimal() {
        Asking asking = Asking.acetate().run(100 / 3.0, Map.of("A", 0.4)).run(100 / 3.0, Map.of("A", 0.4));
        assertEquals(33.3, Asking.find(asking.advice().why(), "why-same").args().get("percent"));
    }

    @Test
    void aGoodPlateIsRunAgain() {
        Asking asking = Asking.acetate().run(20, Map.of("A", 0.4)).run(20, Map.of("A", 0.4));
        assertEquals(20.0, asking.advice().forecast().percentStrong(), 1e-12);
        assertEquals("why-same", asking.advice().why().get(1).code());
    }

    @Test
    void withoutAPlateTheFirstEluentIsExplained() {
        Advice advice = Asking.acetate().advice();
        Message reason = advice.why().get(0);
        assertEquals("why-no-plate", reason.code(), "the first thing said");
        assertEquals(175, reason.args().get("compounds"), "series fitted, as the packed file says");
    }

    @Test
    void withoutAReadingNoSpotDecides() {
        for (Asking asking : List.of(
                Asking.acetate().spots("A", "B", "C").apart("A", "B"),
                Asking.acetate().spots("A", "B").run(20, Map.of()))) {
            List<Message> why = asking.advice().why();
            assertEquals("why-no-plate", why.get(0).code());
            assertTrue(why.stream().noneMatch(message -> message.args().containsKey("edge")), why.toString());
            assertFalse(Asking.codes(why).contains("why-apart-decides"), why.toString());
        }
        assertFalse(Asking.codes(
                        Asking.acetate().unlabelled(20, Set.of(), 0.3).advice().why())
                .contains("why-no-plate"));
    }

    @Test
    void theClosestTwoAreNamed() {
        Advice apart = Asking.acetate()
                .spots("A", "B", "C")
                .run(20, Map.of("A", 0.2, "B", 0.58, "C", 0.4))
                .advice();
        Message gap = Asking.find(apart.why(), "why-gap");
        assertEquals("C", gap.args().get("lower"));
        assertEquals("B", gap.args().get("upper"));
        Advice touching = Asking.acetate()
                .spots("A", "B")
                .run(20, Map.of("A", 0.40, "B", 0.41))
                .run(30, Map.of("A", 0.51, "B", 0.52))
                .advice();
        assertTrue(Asking.codes(touching.why()).contains("why-touching"));
        assertFalse(Asking.codes(Asking.acetate().advice().why()).contains("why-gap"), "one spot has no neighbour");
    }

    // Own: of 100 plates, never 0 or 100 unless it is certain.
    @ParameterizedTest
    @CsvSource({"0, 0", "1e-9, 1", "0.004, 1", "0.5, 50", "0.876, 88", "0.9999, 99", "1, 100"})
    void aChanceIsSoManyOfAHundred(double chance, int times) {
        assertEquals(times, Reasons.times(chance));
    }
}
