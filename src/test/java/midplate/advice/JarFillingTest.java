package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.words.English;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The card for the jar; the readings are invented. */
@DisplayName("The card for the jar")
class JarFillingTest {
    private static Asking asking(NextPlate next) {
        return Asking.acetate().run(15, Map.of("A", 0.3)).next(next);
    }

    private static PourCard card(double jarMm, double heightMm, double startMm, double stopMm) {
        return asking(new NextPlate(jarMm, heightMm, startMm, stopMm)).advice().card();
    }

    private static List<String> warnings(PourCard card) {
        return Asking.codes(card.warnings());
    }

    // By hand: 10 ml over π/4 · 50² mm² = 1963.5 mm² stand 5.09 mm high; 62 − 10 = 52.
    @Test
    void tellsLevelAndRun() {
        PourCard card = asking(NextPlate.USUAL).advice().card();
        assertEquals(5.093, card.levelMm(), 0.001);
        assertEquals(10, card.startMm());
        assertEquals(62, card.stopMm());
        assertEquals(52, card.runMm());
        assertEquals(List.of(), card.warnings());
    }

    // By hand: from 5.093 to 62 mm, z = 56.907 mm, z² = 3238.4 mm². Hexane 18.4 mN/m, 0.31 mPa s: κ 8.547 mm²/s; ethyl
    // acetate 24.0, 0.45: 7.680. Earliest 3238.4/(1.3·8.547)/60 = 4.858 min, latest 3238.4/(0.7·7.680)/60 = 10.040 min.
    @Test
    void theTimeLiesBetweenThoseOfTheTwoSolvents() {
        PourCard.Time time = asking(NextPlate.USUAL).advice().card().time().orElseThrow();
        assertEquals(4.858, time.lowMinutes(), 0.005);
        assertEquals(10.040, time.highMinutes(), 0.005);
    }

    // By hand: hexane alone, 3238.4/(0.7·8.547)/60 = 9.021 min.
    @Test
    void oneSolventPouredAloneIsNotMixedWithAnother() {
        Asking asking = Asking.acetate()
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6));
        Advice advice = asking.advice();
        assertEquals(0, advice.pour().strongMl());
        assertEquals("order-pure", advice.card().order().code());
        assertEquals("hexane", English.value(advice.card().order(), "solvent"));
        assertEquals(9.021, advice.card().time().orElseThrow().highMinutes(), 0.005);
    }

    @Test
    void whatStandsInForHexaneTakesItsTime() {
        PourCard card = Asking.about("petroleum ether", "ethyl acetate")
                .run(15, Map.of("A", 0.3))
                .advice()
                .card();
        assertEquals(4.858, card.time().orElseThrow().lowMinutes(), 0.005);
        assertEquals("petroleum ether 40-60", English.value(card.order(), "weak"));
    }

    // The weaker solvent first: common practice, no source.
    @Test
    void theWeakerSolventIsMeasuredFirst() {
        Advice advice = asking(NextPlate.USUAL).advice();
        assertEquals(
                List.of("weakMl", "weak", "strongMl", "strong"),
                List.copyOf(advice.card().order().args().keySet()));
        assertEquals(advice.pour().weakMl(), advice.card().order().args().get("weakMl"));
        assertEquals(advice.pour().strongMl(), advice.card().order().args().get("strongMl"));
    }

    // By hand: 10 ml stand 14.15 mm high in a jar of 30 mm, 7.96 in one of 40, 1.99 in one of 80; the right
    // depth is the lesser of 5 mm and 3 mm below the line, so 5 mm below a line at 10: π/4 · d² · 5.
    @ParameterizedTest
    @CsvSource({
        "30, 10, level-over-start, 14.147, 3.534, 5",
        "40, 10, level-near-start, 7.958, 6.283, 5",
        "40, 9, level-near-start, 7.958, 6.283, 5",
        "40, 7, level-over-start, 7.958, 5.027, 4",
        "80, 10, level-low, 1.989, 25.133, 5"
    })
    void aLevelThatDoesNotFitIsSaidWithTheRightAmount(
            double jarMm, double startMm, String code, double levelMm, double rightMl, double rightMm) {
        PourCard card = card(jarMm, 70, startMm, 62);
        Map<String, Object> said = Asking.find(card.warnings(), code).args();
        assertEquals(levelMm, (double) said.get("levelMm"), 0.001);
        assertEquals(rightMl, (double) said.get("rightMl"), 0.001);
        assertEquals(rightMm, (double) said.get("rightMm"), 1e-9);
        assertEquals(1, card.warnings().size(), card.warnings().toString());
    }

    // Law: poured as told, nothing more is said of the level.
    @ParameterizedTest
    @CsvSource({"30, 10", "40, 10", "40, 7", "80, 10", "90, 6"})
    void theAmountToldIsRight(double jarMm, double startMm) {
        NextPlate next = new NextPlate(jarMm, 70, startMm, 62);
        double right =
                (double) asking(next).advice().card().warnings().get(0).args().get("rightMl");
        PourCard again = asking(next).poured(right, 0.01).advice().card();
        assertFalse(warnings(again).stream().anyMatch(code -> code.startsWith("level")), again.toString());
    }

    @Test
    void aLineTooLowForAnyEluentIsSaid() {
        assertTrue(warnings(card(50, 70, 4, 62)).contains("start-low"));
        assertFalse(warnings(card(50, 70, 5, 62)).contains("start-low"));
    }

    @Test
    void aNarrowJarAShortRunAndAStopNearTheTopAreSaid() {
        assertTrue(warnings(card(28, 70, 10, 62)).contains("jar-narrow"));
        assertFalse(warnings(card(30, 70, 10, 62)).contains("jar-narrow"));
        assertTrue(warnings(card(50, 70, 10, 49)).contains("run-short"));
        assertFalse(warnings(card(50, 70, 10, 50)).contains("run-short"));
        assertTrue(warnings(card(50, 66, 10, 62)).contains("stop-near-top"));
        assertFalse(warnings(card(50, 67, 10, 62)).contains("stop-near-top"));
    }

    // 100 ml stand 141 mm high in a jar of 30 mm: above the stop, so there is no time to wait.
    @Test
    void aJarFilledAboveTheStopHasNoTime() {
        PourCard card =
                asking(new NextPlate(30, 70, 10, 62)).poured(100, 1).advice().card();
        assertTrue(card.time().isEmpty());
        assertTrue(warnings(card).contains("level-over-start"));
    }

    @ParameterizedTest
    @CsvSource({
        "10, 70, 10, 62, nextPlate.jarDiameterMm",
        "301, 70, 10, 62, nextPlate.jarDiameterMm",
        "NaN, 70, 10, 62, nextPlate.jarDiameterMm",
        "50, 0, 10, 62, nextPlate.plate.heightMm",
        "50, 70, NaN, 62, nextPlate.plate.startMm",
        "50, 70, 62, 10, nextPlate.plate.frontMm",
        "50, 60, 10, 62, nextPlate.plate.frontMm"
    })
    void whatIsNoJarOrPlateIsRefused(double jarMm, double heightMm, double startMm, double stopMm, String field) {
        Refusal refusal = assertThrows(Refusal.class, () -> new NextPlate(jarMm, heightMm, startMm, stopMm));
        assertEquals(field, refusal.field());
    }
}
