package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Setting;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which plates to run at once; readings are invented. */
@DisplayName("Plates to run at once")
class ScoutingTest {
    private static ScoutingPlan plan(Asking asking, int jars) {
        return Asking.ADVISER.scout(asking.question(), jars);
    }

    private static Asking two(Setting setting) {
        return Asking.acetate().spots("A", "B").in(setting);
    }

    @Test
    void areWorthNoLessWhereMoreJarsAreFree() {
        for (Setting setting : Setting.values()) {
            double before = plan(two(setting), 1).straight().round().chance();
            for (int jars = 1; jars <= Scouting.MOST_JARS; jars++) {
                double chance = plan(two(setting), jars).round().chance();
                assertTrue(chance >= before, setting + ", " + jars + ": " + chance + " after " + before);
                before = chance;
            }
        }
    }

    @Test
    void areCountedAsOneRoundAndAsPlates() {
        ScoutingPlan plan = plan(two(Setting.BENCH), 3);
        assertEquals(plan.jars().size() + 1 - plan.round().now(), plan.round().plates(), 1e-12);
        assertEquals(2 - plan.straight().round().now(), plan.straight().round().plates(), 1e-12);
        assertEquals(plan.round().chance() - plan.straight().round().chance(), plan.gain(), 1e-9);
        assertTrue(plan.gainError() < plan.round().standardError());
    }

    @Test
    void startFromTheRatioThatIsAdvised() {
        ScoutingPlan plan = plan(two(Setting.BENCH).run(5, Map.of("A", 0.02, "B", 0.1)), 2);
        Advice advice = two(Setting.BENCH).run(5, Map.of("A", 0.02, "B", 0.1)).advice();
        assertEquals(advice.ratio(), plan.straight().ratio());
        double error = 4 * plan.straight().round().standardError();
        assertEquals(advice.goal().chance(), plan.straight().round().now(), error);
    }

    @Test
    void areNotWorthItWhereTheNextPlateIsAsGoodAsSure() {
        Asking sure =
                Asking.acetate().in(Setting.AUTOMATED).run(25, Map.of("A", 0.5)).run(16.7, Map.of("A", 0.38));
        ScoutingPlan plan = plan(sure, 3);
        assertEquals(ScoutingPlan.Worth.STRAIGHT, plan.worth());
        assertTrue(plan.straight().round().chance() > 0.99);
    }

    @Test
    void leaveTheHabitOutWhereThePairWasNotMeasuredThatFar() {
        assertTrue(plan(two(Setting.BENCH), 1).habit().isPresent());
        Asking methanol = Asking.about("dichloromethane", "methanol");
        assertTrue(plan(methanol, 1).habit().isEmpty());
    }

    @Test
    void areRatiosThatTheGlasswareMeasures() {
        Glassware coarse = new Glassware(10, 1);
        for (ScoutingPlan.Jar jar : plan(two(Setting.BENCH).poured(10, 1), 3).jars()) {
            assertTrue(coarse.measures(jar.ratio()), jar.ratio().toString());
        }
    }

    @Test
    void dependOnNoOrderOfTheSpots() {
        Map<String, Double> read = Map.of("A", 0.02, "B", 0.1, "C", 0.31);
        ScoutingPlan plan =
                plan(Asking.acetate().spots("A", "B", "C").run(5, read).apart("A", "C"), 2);
        ScoutingPlan turned =
                plan(Asking.acetate().spots("C", "A", "B").run(5, read).apart("C", "A"), 2);
        assertEquals(plan.percentsStrong(), turned.percentsStrong());
        assertEquals(plan.round(), turned.round());
        assertEquals(plan.straight(), turned.straight());
    }

    @Test
    void arePlannedAfterAPlateOnWhichNobodyNamedTheSpots() {
        Asking seen = two(Setting.BENCH).run(5, Map.of("A", 0.05, "B", 0.2)).unlabelled(10, Set.of(), 0.12, 0.4);
        ScoutingPlan plan = plan(seen, 2);
        assertEquals(seen.advice().ratio(), plan.straight().ratio());
        double error = 4 * plan.straight().round().standardError();
        assertEquals(seen.advice().goal().chance(), plan.straight().round().now(), error);
    }

    @Test
    void areTheSameWhenAskedAgain() {
        Adviser other = Adviser.builtIn(Asking.CATALOGUE);
        ScoutingPlan plan = plan(two(Setting.BENCH), 2);
        assertEquals(plan, other.scout(two(Setting.BENCH).question(), 2));
    }

    @Test
    void sayWhyAndHowSure() {
        ScoutingPlan plan = plan(two(Setting.BENCH), 2);
        List<String> codes = Asking.codes(plan.reasons());
        assertTrue(codes.contains("habit") && codes.contains("simulated") && codes.contains("plates"), codes + "");
        assertEquals(plan.worth() == ScoutingPlan.Worth.SCOUT ? "worth-scout" : "worth-straight", codes.get(0));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 4, 99})
    void areOneToThree(int jars) {
        Refusal refusal = assertThrows(Refusal.class, () -> plan(Asking.acetate(), jars));
        assertEquals("jars", refusal.field());
        assertEquals(Integer.toString(jars), refusal.came());
    }
}
