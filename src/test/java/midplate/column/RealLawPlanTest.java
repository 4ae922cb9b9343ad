package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import midplate.advice.Adviser;
import midplate.advice.Consultation;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Plans by the law packed with the program, of invented plates")
class RealLawPlanTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final Adviser ADVISER = Adviser.builtIn(CATALOGUE);

    private static Run plate(double percent, double a, double b) {
        Map<String, Reading> readings = new TreeMap<>(Map.of("A", Reading.of(a), "B", Reading.of(b)));
        return new Run(
                Eluent.of(Sorbent.SILICA, CATALOGUE.solvent("hexane"), CATALOGUE.solvent("ethyl acetate"), percent),
                readings);
    }

    private static ColumnPlan plan(List<String> spots, List<Run> plates, ColumnQuestion.Elution elution) {
        Question sample = new Question(
                Sorbent.SILICA,
                CATALOGUE.solvent("hexane"),
                CATALOGUE.solvent("ethyl acetate"),
                Optional.empty(),
                spots,
                plates,
                Window.USUAL,
                Setting.BENCH,
                Glassware.USUAL);
        Consultation consultation = ADVISER.consult(sample);
        ColumnForecast law =
                ColumnForecast.of(ColumnLaw.builtIn(CATALOGUE), sample, consultation.knowledge(), List.of());
        ColumnQuestion question = new ColumnQuestion(
                sample,
                "B",
                100,
                Optional.empty(),
                Loading.WET,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                elution,
                List.of());
        return ColumnPlanner.of(CATALOGUE).plan(question, law, consultation);
    }

    @Test
    void anEasyPairRunsWhereFlashColumnsAreRunAndComesPure() {
        ColumnPlan plan = plan(
                List.of("A", "B"),
                List.of(plate(20, 0.7, 0.3), plate(10, 0.5, 0.15)),
                ColumnQuestion.Elution.ISOCRATIC);
        double rf = plan.bands().get(1).rf().value();
        assertTrue(rf >= 0.2 && rf <= 0.38, "Rf " + rf);
        assertTrue(plan.chancePure() > 0.8, "chance " + plan.chancePure());
        assertTrue(plan.cut().orElseThrow().purity() >= PureCut.PURITY);
        assertTrue(plan.load().mostMg() >= 100);
    }

    @Test
    void theOrderOfTheSpotsChangesNeitherEluentNorBed() {
        List<Run> plates = List.of(plate(10, 0.45, 0.2));
        ColumnPlan one = plan(List.of("A", "B"), plates, ColumnQuestion.Elution.BEST);
        ColumnPlan other = plan(List.of("B", "A"), plates, ColumnQuestion.Elution.BEST);
        assertEquals(one.program(), other.program());
        assertEquals(one.bed(), other.bed());
        assertEquals(one.chancePure(), other.chancePure(), 1e-9);
    }

    @Test
    void closerSpotsComePureLessOften() {
        ColumnPlan far = plan(List.of("A", "B"), List.of(plate(15, 0.55, 0.25)), ColumnQuestion.Elution.ISOCRATIC);
        ColumnPlan near = plan(List.of("A", "B"), List.of(plate(15, 0.32, 0.25)), ColumnQuestion.Elution.ISOCRATIC);
        assertTrue(near.chancePure() < far.chancePure() - 0.1, near.chancePure() + " and " + far.chancePure());
        assertTrue(PlanAsked.codes(near.warnings()).contains("overlaps"));
    }
}
