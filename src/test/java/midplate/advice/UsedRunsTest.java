package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.words.English;
import midplate.words.Message;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Which plates count")
class UsedRunsTest {
    private static final Map<String, Double> READ = Map.of("A", 0.62);
    private static final Forecast UNREAD = Asking.acetate().forecast(20);

    private static Eluent with(String additive) {
        Eluent plain = Asking.silica("hexane", "ethyl acetate", 20);
        return new Eluent(plain.sorbent(), plain.weak(), plain.strong(), 20, Optional.of(additive));
    }

    @Test
    void plainPlatesDoNotCountForAnEluentWithAdditive() {
        Asking asking = Asking.acetate().with("acetic acid 1 %").run(20, READ);
        assertEquals(UNREAD.spots(), asking.forecast(20).spots());
        Advice advice = asking.advice();
        assertEquals(1, Asking.find(advice.notes(), "run-other-additive").args().get("run"));
        assertEquals(
                "acetic acid 1 %",
                Asking.find(advice.notes(), "additive").args().get("additive"));
    }

    @Test
    void platesWithAdditiveDoNotCountForAPlainEluent() {
        Asking asking = Asking.acetate().run(with("acetic acid 1 %"), READ);
        assertEquals(UNREAD.spots(), asking.forecast(20).spots());
        assertTrue(Asking.codes(asking.advice().notes()).contains("run-other-additive"));
        assertFalse(Asking.codes(asking.advice().notes()).contains("additive"));
    }

    @ParameterizedTest
    @CsvSource({"acetic acid 1 %", "Acetic Acid 1 %", "' acetic  acid 1 %'"})
    void theSameAdditiveCountsHoweverItIsWritten(String written) {
        Asking asking = Asking.acetate().with("acetic acid 1 %").run(with(written), READ);
        assertEquals(
                Asking.acetate().run(20, READ).forecast(20).spots(),
                asking.forecast(20).spots());
        assertFalse(Asking.codes(asking.advice().notes()).contains("run-other-additive"));
    }

    @ParameterizedTest
    @CsvSource({"acetic acid 2 %", "triethylamine 1 %"})
    void anotherAdditiveDoesNot(String written) {
        Asking asking = Asking.acetate().with("acetic acid 1 %").run(with(written), READ);
        assertEquals(UNREAD.spots(), asking.forecast(20).spots());
    }

    // A plate in one pure solvent counts for every pair that has it in the same place.
    @ParameterizedTest
    @CsvSource({"hexane, diethyl ether, 0", "hexane, chloroform, 0", "cyclohexane, ethyl acetate, 100"})
    void aPlateInAPureSolventOfTheSamePlaceIsOnesOwn(String weak, String strong, double percent) {
        Asking asking = Asking.acetate().run(Asking.silica(weak, strong, percent), READ);
        assertEquals(Asking.acetate().run(percent, READ).forecast(20), asking.forecast(20));
        assertFalse(Asking.codes(asking.advice().notes()).contains("run-other-pair"));
    }

    @Test
    void aLittleOfTheOtherSolventMakesItAnotherPair() {
        Asking asking = Asking.acetate().run(Asking.silica("hexane", "diethyl ether", 40), READ);
        assertNotEquals(UNREAD.spots(), asking.forecast(20).spots(), "it says something");
        assertNotEquals(
                Asking.acetate().run(40, READ).forecast(20), asking.forecast(20), "and not what one's own would");
        assertEquals(
                1, Asking.find(asking.advice().notes(), "run-other-pair").args().get("run"));
    }

    @Test
    void aPairWithoutMeasurementsIsNotUsedAndSaidSo() {
        Asking asking = Asking.acetate().run(Asking.silica("hexane", "triethylamine", 20), READ);
        assertEquals(UNREAD.spots(), asking.forecast(20).spots());
        assertTrue(Asking.codes(asking.advice().notes()).contains("run-not-measured"));
    }

    @Test
    void aPlateOnAluminaIsNotUsedAndSaidSo() {
        Eluent silica = Asking.silica("hexane", "ethyl acetate", 20);
        Asking asking = Asking.acetate().run(Eluent.of(Sorbent.ALUMINA, silica.weak(), silica.strong(), 20), READ);
        assertEquals(UNREAD.spots(), asking.forecast(20).spots());
        assertEquals(
                Message.of("sorbent.alumina"),
                Asking.find(asking.advice().notes(), "run-other-sorbent").args().get("sorbent"));
    }

    @Test
    void aPlateThatIsNoEluentIsRefusedByItsPlace() {
        Asking asking = Asking.acetate().run(10, READ).run(Asking.silica("hexane", "methanol", 5), READ);
        Refusal refusal = assertThrows(Refusal.class, asking::advice);
        assertEquals("runs[1].strong", refusal.field());
        assertEquals("pair-partly-miscible", refusal.code());
    }

    @Test
    void adviceOnAluminaIsRefused() {
        Refusal refusal = assertThrows(
                Refusal.class, () -> Asking.acetate().on(Sorbent.ALUMINA).advice());
        assertEquals("sorbent", refusal.field());
        assertEquals("sorbent-not-measured", refusal.code());
        assertEquals("silica", English.said(refusal.allowed()));
        assertTrue(English.said(refusal.todo()).contains("strength"), English.said(refusal.todo()));
    }

    @Test
    void aPairWithoutMeasurementsIsRefusedWithThoseThatHaveSome() {
        Refusal refusal = assertThrows(
                Refusal.class, () -> Asking.about("hexane", "triethylamine").advice());
        assertEquals("strong", refusal.field());
        assertEquals("pair-not-measured", refusal.code());
        assertEquals("hexane with triethylamine", refusal.came());
        String allowed = English.said(refusal.allowed());
        assertTrue(
                allowed.startsWith(
                        "hexane with ethyl-acetate; hexane with diethyl-ether; dichloromethane with methanol; hexane with "),
                allowed);
    }

    @Test
    void aQuestionWithoutASpotIsRefused() {
        Refusal refusal =
                assertThrows(Refusal.class, () -> Asking.acetate().spots().advice());
        assertEquals("spots", refusal.field());
    }

    // One liquid: pure dichloromethane is the strong end of one pair and the weak end of another.
    @Test
    void aPlateInAPureSolventCountsInEveryPairThatHasIt() {
        Asking elsewhere = Asking.about("dichloromethane", "methanol")
                .spots("A")
                .run(Asking.silica("hexane", "dichloromethane", 100), Map.of("A", 0.7));
        Asking own = Asking.about("dichloromethane", "methanol").spots("A").run(0, Map.of("A", 0.7));
        assertEquals(
                Asking.ADVISER.predict(own.question(), List.of(2.0)),
                Asking.ADVISER.predict(elsewhere.question(), List.of(2.0)));
    }
}
