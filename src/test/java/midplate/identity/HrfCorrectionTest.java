package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.HrfSystem;
import midplate.catalogue.HrfSystems;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Correction with reference spots")
class HrfCorrectionTest {
    private static final HrfCorrection CORRECTION = HrfCorrection.of(HrfSystems.builtIn());

    private static HrfAnswer corrected(double measured, double published, double spot) {
        return CORRECTION.correct(new HrfQuestion(
                Optional.empty(),
                List.of(new HrfQuestion.Standard("S", OptionalDouble.of(published), measured)),
                List.of(new HrfQuestion.Spot("U", spot))));
    }

    @Test
    void standardsMeasuredAsPublishedGiveBackEveryPublishedValue() {
        for (HrfSystem system : HrfSystems.builtIn().all()) {
            List<HrfQuestion.Standard> standards = system.standards().stream()
                    .map(each -> new HrfQuestion.Standard(each.name(), OptionalDouble.empty(), each.hrf()))
                    .toList();
            for (HrfSystem.HrfStandard each : system.standards()) {
                HrfAnswer answer = CORRECTION.correct(new HrfQuestion(
                        Optional.of(system.id()), standards, List.of(new HrfQuestion.Spot("U", each.hrf()))));
                assertEquals(each.hrf(), answer.corrected().get(0).hrf(), 1e-9, system.id());
            }
        }
    }

    // Clarke's Analysis of Drugs and Poisons, system TC, as at the address in sources.json
    @Test
    void theTableHoldsThePublishedSpots() {
        assertEquals(10, HrfSystems.builtIn().all().size());
        HrfSystem tc = HrfSystems.builtIn().byId("TC").orElseThrow();
        assertEquals(
                List.of(11.0, 36.0, 54.0, 71.0),
                tc.standards().stream().map(HrfSystem.HrfStandard::hrf).toList());
        assertTrue(tc.conditions().contains("potassium hydroxide"));
    }

    // by hand: (0,0), (40,50), (100,100): 20 -> 25; 70 -> 50 + 30 * 50/60 = 75
    @Test
    void straightLinesJoinTheEndsAndTheSpots() {
        assertEquals(25, corrected(40, 50, 20).corrected().get(0).hrf(), 1e-9);
        assertEquals(75, corrected(40, 50, 70).corrected().get(0).hrf(), 1e-9);
        assertEquals(0, corrected(40, 50, 0).corrected().get(0).hrf(), 1e-9);
        assertEquals(100, corrected(40, 50, 100).corrected().get(0).hrf(), 1e-9);
    }

    @Test
    void aSteeperLineHasTheWiderBand() {
        HrfAnswer.Corrected steep = corrected(20, 60, 10).corrected().get(0);
        HrfAnswer.Corrected flat = corrected(60, 20, 30).corrected().get(0);
        assertTrue(steep.high() - steep.low() > 3 * (flat.high() - flat.low()));
    }

    @Test
    void standardsInTheWrongOrderAreRefused() {
        HrfQuestion question = new HrfQuestion(
                Optional.of("TC"),
                List.of(
                        new HrfQuestion.Standard("desipramine", OptionalDouble.empty(), 40),
                        new HrfQuestion.Standard("physostigmine", OptionalDouble.empty(), 30)),
                List.of(new HrfQuestion.Spot("U", 50)));
        assertEquals(
                "standards[1].measured",
                HrfFaults.in(question, HrfSystems.builtIn()).get(0).field());
    }
}
