package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The plan where a program or fractions were chosen, for invented columns")
class ChosenByHandTest {
    private static final Bed FORTY = new Cartridge(40);

    @Test
    void oneIsWarnedOfAnOwnProgramThatEndsTooSoon() {
        Program tooShort = new Program(List.of(new Program.Step(2, 60), new Program.Step(5, 40)));
        ColumnPlan plan =
                PlanAsked.about("B", 100, "A", "B").on(FORTY).pouring(tooShort).plan(InventedLaw.at10(0.5, 0.25));
        assertEquals(tooShort, plan.program());
        assertEquals(100, plan.solventMl(), 1e-9);
        assertTrue(plan.chancePure() < 0.01);
        List<String> codes = PlanAsked.codes(plan.warnings());
        assertTrue(codes.containsAll(List.of("target-late", "own-worse")));
        assertFalse(codes.contains("not-parted"), "it is the run that is too short: " + codes);
        assertFalse(PlanAsked.codes(plan.reasons()).contains("stays"), "the target is not out");
    }

    @Test
    void spotsThatAnotherRatioPartsAreNotSaidToBeInseparable() {
        ColumnPlan plan = PlanAsked.about("B", 100, "A", "B")
                .on(FORTY)
                .pouring(Program.isocratic(100))
                .plan(InventedLaw.at10(0.5, 0.25));
        List<String> codes = PlanAsked.codes(plan.warnings());
        assertTrue(plan.chancePure() < 0.05 && codes.contains("own-worse"), plan.chancePure() + " " + codes);
        assertTrue(codes.contains("overlaps") && !codes.contains("not-parted"), codes.toString());
    }

    @Test
    void fractionsLargerThanTheBandAreToldAndNotBlamedOnTheSpots() {
        ColumnPlan plan = PlanAsked.about("B", 100, "A", "B")
                .on(FORTY)
                .pouring(Program.isocratic(10))
                .fractions(2000)
                .plan(InventedLaw.at10(0.4, 0.25));
        List<String> codes = PlanAsked.codes(plan.warnings());
        assertTrue(plan.chancePure() < 0.05 && codes.contains("fraction-coarse"), plan.chancePure() + " " + codes);
        assertFalse(codes.contains("not-parted"), codes.toString());
    }

    @Test
    void aRunThatIsStoppedBeforeTheTargetLeavesIsNotSaidToBringItOut() {
        ColumnPlan plan = PlanAsked.about("A", 20, "A")
                .on(FORTY)
                .pouring(Program.isocratic(10))
                .plan(InventedLaw.at10(0.005));
        assertTrue(PlanAsked.codes(plan.warnings()).contains("target-late"));
        assertFalse(PlanAsked.codes(plan.reasons()).contains("why-volume"));
    }

    @Test
    void chosenFractionsAreKeptAndCoarseOnesCostPurity() {
        InventedLaw law = InventedLaw.at10(0.34, 0.25);
        Program same = Program.isocratic(10);
        ColumnPlan fine = PlanAsked.about("B", 100, "A", "B")
                .on(FORTY)
                .pouring(same)
                .fractions(5)
                .plan(law);
        ColumnPlan coarse = PlanAsked.about("B", 100, "A", "B")
                .on(FORTY)
                .pouring(same)
                .fractions(150)
                .plan(law);
        assertEquals(5, fine.fractionMl(), 0);
        assertEquals(150, coarse.fractionMl(), 0);
        assertTrue(coarse.chancePure() < fine.chancePure());
    }

    @Test
    void predictionsAtSharesAreThoseOfTheirPlan() {
        InventedLaw law = InventedLaw.at10(0.4, 0.25);
        PlanAsked asked = PlanAsked.about("B", 100, "A", "B").on(FORTY).pouring(Program.isocratic(10));
        List<ColumnPlan.Prediction> predictions =
                ColumnPlanner.of(PlanAsked.CATALOGUE).predict(asked.question(), law, FORTY, List.of(10.0, 20.0));
        assertEquals(asked.plan(law).bands(), predictions.get(0).bands());
        assertNotEquals(predictions.get(0).bands(), predictions.get(1).bands());
        assertEquals(20, predictions.get(1).percentStrong(), 0);
    }
}
