package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.HrfSystem;
import midplate.catalogue.HrfSystems;
import midplate.words.Language;
import midplate.words.Texts;
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
        HrfAnswer.Corrected steep = corrected(20, 29, 20).corrected().get(0);
        HrfAnswer.Corrected flat = corrected(29, 20, 29).corrected().get(0);
        assertTrue(steep.high() - steep.low() > flat.high() - flat.low());
    }

    // by hand: reading 1.5 in two spots and 3 between laboratories: 1.645 * sqrt(2 * 2.25 + 9) = 6.044
    @Test
    void theBandHoldsReadingAndWhatLaboratoriesDifferBy() {
        HrfAnswer.Corrected spot = corrected(50, 50, 50).corrected().get(0);
        assertEquals(50 - 6.044, spot.low(), 0.001);
        assertEquals(50 + 6.044, spot.high(), 0.001);
    }

    // by hand for 20: slope 11/45, 1.645 * sqrt(0.134 * 1.198 + 9 + 17 * 17) = 28.4, so 4.9 + 28.4 = 33.3
    @Test
    void standardsFarOffGiveAWideBandAndAreNamed() {
        HrfAnswer answer = CORRECTION.correct(new HrfQuestion(
                Optional.of("TC"),
                List.of(
                        new HrfQuestion.Standard("desipramine", OptionalDouble.empty(), 45),
                        new HrfQuestion.Standard("lidocaine", OptionalDouble.empty(), 50)),
                List.of(new HrfQuestion.Spot("U", 20))));
        assertEquals(33.3, answer.corrected().get(0).high(), 0.05);
        List<String> said = answer.warnings().stream()
                .map(each -> Texts.of(Language.ENGLISH).render(each))
                .toList();
        assertTrue(said.stream().anyMatch(each -> each.startsWith("desipramine ran at 45.0")), said::toString);
        assertTrue(said.stream().anyMatch(each -> each.startsWith("lidocaine ran at 50.0")), said::toString);
        assertTrue(answer.warnings().stream().anyMatch(each -> each.key().equals("hrf.slope")));
    }

    @Test
    void allOfItCanBeSaidInBothLanguagesWithItsCautions() {
        for (HrfSystem system : HrfSystems.builtIn().all()) {
            HrfSystem.HrfStandard first = system.standards().get(0);
            HrfAnswer answer = CORRECTION.correct(new HrfQuestion(
                    Optional.of(system.id()),
                    List.of(new HrfQuestion.Standard(first.name(), OptionalDouble.empty(), 40)),
                    List.of(new HrfQuestion.Spot("U", 20))));
            boolean dipped = system.conditions().contains("dipped");
            assertEquals(dipped ? 4 : 3, answer.cautions().size(), system.id());
            for (Language language : Language.values()) {
                Texts texts = Texts.of(language);
                assertTrue(texts.render(answer.text()).length() > 40);
                answer.warnings().forEach(texts::render);
                answer.cautions().forEach(each -> assertTrue(texts.render(each).length() > 40));
                String said = texts.render(answer.corrected().get(0).text());
                assertTrue(said.startsWith("U: ") && !said.contains("{"), said);
            }
        }
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
