package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.English;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The notes beside an advice")
class NotesTest {
    private static List<String> codes(Asking asking) {
        return Asking.codes(asking.advice().notes());
    }

    // science.md: below about 5 % of a localizing solvent the eluent demixes on the dry layer.
    @Test
    void aLittleEthylAcetateDemixes() {
        Advice advice = Asking.acetate().run(5, Map.of("A", 0.75)).advice();
        double percent = advice.forecast().percentStrong();
        assertTrue(percent > 0 && percent < 5, percent + " %");
        assertEquals(
                percent, (double) Asking.find(advice.notes(), "demixing").args().get("percent"), 0.05, "to a decimal");
    }

    // Own arithmetic: 20 : 1 is 4.7619… %.
    @Test
    void theShareThatDemixesHasOneDecimal() {
        Advice advice = Asking.acetate().run(8, Map.of("A", 0.55)).advice();
        assertTrue(advice.forecast().percentStrong() % 1 > 0, advice.ratio().toString());
        double said = (double) Asking.find(advice.notes(), "demixing").args().get("percent");
        assertEquals(said, Math.round(10 * said) / 10.0);
    }

    @Test
    void moreOfItOrNoneOrAPairWithoutAlkaneDoesNot() {
        Asking more = Asking.acetate().run(10, Map.of("A", 0.35));
        assertTrue(more.advice().forecast().percentStrong() >= 5);
        assertFalse(codes(more).contains("demixing"));
        Asking none = Asking.acetate()
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6))
                .run(0, Map.of("A", 0.6));
        assertEquals(0, none.advice().forecast().percentStrong());
        assertFalse(codes(none).contains("demixing"));
        Asking methanol = Asking.about("dichloromethane", "methanol").run(3, Map.of("A", 0.4));
        assertTrue(methanol.advice().forecast().percentStrong() < 5);
        assertFalse(codes(methanol).contains("demixing"));
    }

    // science.md: hexane with ether has a trustworthy curve from 33 to 50 % only.
    @ParameterizedTest
    @CsvSource({"40, 0.4, 33.33, 50", "50, 0.45, 33.33, 50"})
    void etherBetweenAThirdAndAHalfIsTrusted(double percent, double rf, double from, double to) {
        Asking asking = Asking.about("hexane", "ether").run(percent, Map.of("A", rf));
        double advised = asking.advice().forecast().percentStrong();
        assertTrue(advised >= from && advised <= to, advised + " %");
        assertFalse(codes(asking).contains("untrusted-range"));
    }

    @ParameterizedTest
    @CsvSource({"40, 0.75", "50, 0.08"})
    void etherOutsideOfThatIsNot(double percent, double rf) {
        Advice advice =
                Asking.about("hexane", "ether").run(percent, Map.of("A", rf)).advice();
        double advised = advice.forecast().percentStrong();
        assertTrue(advised < 33 || advised > 50, advised + " %");
        Message note = Asking.find(advice.notes(), "untrusted-range");
        assertEquals(advised, (double) note.args().get("percent"), 0.05, "to a decimal");
        assertEquals(33.33, note.args().get("from"));
        assertEquals(50.0, note.args().get("to"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heptane", "petroleum ether 40-60", "petroleum ether 60-80"})
    void whatStandsInForHexaneGetsItsNumbersAndANote(String weak) {
        Advice hexane = Asking.acetate().run(12, Map.of("A", 0.31)).advice();
        Advice other =
                Asking.about(weak, "ethyl acetate").run(12, Map.of("A", 0.31)).advice();
        assertEquals(hexane.forecast(), other.forecast());
        assertEquals(hexane.bestPercentStrong(), other.bestPercentStrong());
        assertEquals(hexane.ratio(), other.ratio());
        Message note = Asking.find(other.notes(), "stand-in");
        assertEquals(weak, English.said((Message) note.args().get("solvent")));
        assertEquals(Message.of("solvent.hexane"), note.args().get("measured"));
        assertFalse(Asking.codes(hexane.notes()).contains("stand-in"));
    }

    @Test
    void aPlateInHeptaneCountsForHexaneAndIsNoted() {
        Advice hexane = Asking.acetate().run(12, Map.of("A", 0.31)).advice();
        Advice heptane = Asking.acetate()
                .run(Asking.silica("heptane", "ethyl acetate", 12), Map.of("A", 0.31))
                .advice();
        assertEquals(hexane.forecast(), heptane.forecast());
        assertTrue(Asking.codes(heptane.notes()).contains("stand-in"));
    }

    @Test
    void aSpotLowerInTheStrongerEluentIsAContradiction() {
        Advice advice = Asking.acetate()
                .run(30, Map.of("A", 0.25))
                .run(10, Map.of("A", 0.45))
                .advice();
        Message note = Asking.find(advice.notes(), "runs-backwards");
        assertEquals(
                Map.of("spot", "A", "weakPercent", 10.0, "weakRf", 0.45, "strongPercent", 30.0, "strongRf", 0.25),
                note.args());
    }

    @Test
    void twoReadingsFarApartInOneEluentAreAContradiction() {
        Advice advice = Asking.acetate()
                .run(20, Map.of("A", 0.25))
                .run(20, Map.of("A", 0.55))
                .advice();
        Message note = Asking.find(advice.notes(), "readings-differ");
        assertEquals(20.0, note.args().get("percent"));
        assertEquals(0.25, note.args().get("one"));
        assertEquals(0.55, note.args().get("other"));
    }

    // Near misses: a noise of about 0.025 midway makes differences of 0.035; 2.5 of those are 0.09.
    @Test
    void whatScatterExplainsIsNone() {
        for (Asking asking : List.of(
                Asking.acetate().run(10, Map.of("A", 0.33)).run(15, Map.of("A", 0.30)),
                Asking.acetate().run(20, Map.of("A", 0.40)).run(20, Map.of("A", 0.44)),
                Asking.acetate().run(10, Map.of("A", 0.2)).run(30, Map.of("A", 0.5)),
                Asking.acetate().spots("A", "B").run(10, Map.of("A", 0.5)).run(30, Map.of("B", 0.2)))) {
            List<String> codes = codes(asking);
            assertFalse(codes.contains("runs-backwards") || codes.contains("readings-differ"), codes.toString());
        }
    }

    @Test
    void whatIsTooMuchForTheMachineMayBeUsualByHand() {
        Asking asking = Asking.acetate().run(20, Map.of("A", 0.40)).run(20, Map.of("A", 0.53));
        assertTrue(codes(asking).contains("readings-differ"));
        assertFalse(codes(asking.in(Setting.CLASS)).contains("readings-differ"));
    }

    // Own algebra: at most 0.5 and at least 0.4 leave room for one Rf between; at most 0.1 and at least 0.4 do not.
    @Test
    void aBoundThatAllowsOtherwiseIsNoContradiction() {
        Asking open = Asking.acetate().read(10, "A", Reading.atStart(0.3)).run(30, Map.of("A", 0.05));
        assertFalse(codes(open).contains("runs-backwards"), "at most 0.3 may be 0.02");
        Asking shut = Asking.acetate().read(10, "A", Reading.atFront(0.9)).run(30, Map.of("A", 0.3));
        assertTrue(codes(shut).contains("runs-backwards"), "at least 0.9 is more than 0.3");
    }

    @Test
    void aSpotOnlySeenAtALineIsSaid() {
        assertTrue(codes(Asking.acetate().run(10, Map.of("A", 0.02))).contains("only-baseline"));
        assertTrue(codes(Asking.acetate().run(90, Map.of("A", 0.98))).contains("only-front"));
        List<String> seen = codes(Asking.acetate().run(10, Map.of("A", 0.02)).run(40, Map.of("A", 0.3)));
        assertFalse(seen.contains("only-baseline") || seen.contains("only-front"), seen.toString());
    }

    @Test
    void aSpotThatWasNotReadIsSaid() {
        assertTrue(codes(Asking.acetate()).contains("spot-unread-first"));
        Advice advice =
                Asking.acetate().spots("A", "B").run(10, Map.of("A", 0.3)).advice();
        assertEquals("B", Asking.find(advice.notes(), "spot-unread").args().get("spot"));
        assertFalse(codes(Asking.acetate().run(10, Map.of("A", 0.3))).contains("spot-unread"));
    }

    @Test
    void nothingIsSaidTwice() {
        Advice advice = Asking.about("heptane", "ethyl acetate")
                .run(10, Map.of("A", 0.3))
                .run(20, Map.of("A", 0.45))
                .advice();
        assertEquals(
                advice.notes().size(),
                List.copyOf(new java.util.HashSet<>(advice.notes())).size());
    }
}
