package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a request must not hold: each fault with its field and code, and all faults of one request at once. */
class BadRequestTest {
    private static final Exchange EXCHANGE = FakeAdviser.exchange();
    private static final String PAIR = "\"weak\": \"hexane\", \"strong\": \"ethyl acetate\"";
    private static final String SPOTS = "\"spots\": [{\"name\": \"A\"}]";

    private static List<Fault> faults(String json) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(json, Setting.BENCH));
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank(), fault.toString());
            assertFalse(fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults();
    }

    private static String run(String run) {
        return "{" + PAIR + ", " + SPOTS + ", \"runs\": [" + run + "]}";
    }

    private static String with(String more) {
        return "{" + PAIR + ", " + SPOTS + ", " + more + "}";
    }

    private static void assertOne(String field, String code, String came, String json) {
        List<Fault> faults = faults(json);
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(
                List.of(field, code, came),
                List.of(
                        faults.get(0).field(),
                        faults.get(0).code(),
                        faults.get(0).came()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "-0.1   | rf-out-of-range  | -0.1",
                "1.2    | rf-out-of-range  | 1.2",
                "\"NaN\"| wrong-type       | \"NaN\"",
                "\"0.3\"| wrong-type       | \"0.3\"",
                "1e999  | number-too-large | 1e999",
                "null   | wrong-type       | null",
                "true   | wrong-type       | true",
                "[0.3]  | wrong-type       | [0.3]",
                "{}     | wrong-type       | {}",
            })
    void refusesAnRfThatIsNone(String rf, String code, String came) {
        assertOne("runs[0].rf.A", code, came, run("{\"percentStrong\": 10, \"rf\": {\"A\": " + rf + "}}"));
    }

    @ParameterizedTest
    @CsvSource({"101", "-1", "100.0001"})
    void refusesAPercentageOutsideZeroToHundred(String percent) {
        assertOne(
                "runs[0].percentStrong",
                "percent-out-of-range",
                percent,
                run("{\"percentStrong\": " + percent + ", \"rf\": {\"A\": 0.3}}"));
        assertOne("predictAt[1]", "percent-out-of-range", percent, with("\"predictAt\": [5, " + percent + "]"));
    }

    static Stream<Arguments> pairsThatAreNoEluent() {
        return Stream.of(
                Arguments.of("hexane", "hexane", "same-solvent"),
                Arguments.of("hexane", "n-Hexane", "same-solvent"),
                Arguments.of("hexane", "methanol", "pair-partly-miscible"),
                Arguments.of("heptane", "acetonitrile", "pair-immiscible"),
                Arguments.of("ethyl acetate", "hexane", "pair-reversed"),
                Arguments.of("ethyl acetate", "petroleum ether", "pair-reversed"));
    }

    @ParameterizedTest
    @MethodSource("pairsThatAreNoEluent")
    void refusesAPairThatIsNoEluent(String weak, String strong, String code) {
        String pair = "{\"weak\": \"" + weak + "\", \"strong\": \"" + strong + "\", ";
        List<Fault> faults = faults(pair + SPOTS + "}");
        assertEquals(1, faults.size(), faults.toString());
        assertEquals("strong", faults.get(0).field());
        assertEquals(code, faults.get(0).code());
    }

    @Test
    void refusesSuchAPairInARunToo() {
        String json =
                run("{\"weak\": \"methanol\", \"strong\": \"hexane\", \"percentStrong\": 10, \"rf\": {\"A\": 0.3}}");
        List<Fault> faults = faults(json);
        assertEquals(1, faults.size(), faults.toString());
        assertEquals("runs[0].strong", faults.get(0).field());
    }

    @Test
    void offersTheNearestNamesForAnUnknownSolvent() {
        List<Fault> faults = faults("{\"weak\": \"hexan\", \"strong\": \"ethil acetate\", " + SPOTS + "}");
        assertEquals(
                List.of("weak", "strong"), faults.stream().map(Fault::field).toList());
        assertEquals(
                List.of("unknown-solvent", "unknown-solvent"),
                faults.stream().map(Fault::code).toList());
        assertTrue(faults.get(0).todo().contains("hexane"), faults.toString());
        assertTrue(faults.get(1).todo().contains("ethyl acetate"), faults.toString());
    }

    @Test
    void refusesNoSpotAndMoreThanFifty() {
        assertOne("spots", "no-spots", "[]", "{" + PAIR + ", \"spots\": []}");
        assertOne("spots", "missing-field", "nothing", "{" + PAIR + "}");
        assertOne("spots", "too-many", "51 entries", "{" + PAIR + ", \"spots\": [" + spots(51) + "]}");
        assertOne("runs", "too-many", "51 entries", with("\"runs\": [" + runs(51) + "]"));
        EXCHANGE.advice("{" + PAIR + ", \"spots\": [" + spots(50) + "], \"runs\": []}", Setting.BENCH);
        EXCHANGE.advice(with("\"runs\": [" + runs(50) + "]"), Setting.BENCH);
    }

    private static String spots(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "{\"name\": \"S" + i + "\"}")
                .collect(Collectors.joining(","));
    }

    private static String runs(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "{\"percentStrong\": " + i + ", \"rf\": {\"A\": 0.4}}")
                .collect(Collectors.joining(","));
    }

    @Test
    void refusesARunWithoutReading() {
        assertOne("runs[0].rf", "no-reading", "{}", run("{\"percentStrong\": 10, \"rf\": {}}"));
        assertOne("runs[0].rf", "missing-field", "nothing", run("{\"percentStrong\": 10}"));
        assertOne("runs[0].percentStrong", "missing-field", "nothing", run("{\"rf\": {\"A\": 0.2}}"));
    }

    @Test
    void refusesASpotThatWasNotAskedAbout() {
        assertOne(
                "runs[0].rf.B",
                "unknown-spot",
                "\"B\"",
                run("{\"percentStrong\": 10, \"rf\": {\"A\": 0.1, \"B\": 0.2}}"));
        assertOne(
                "spots[1].name",
                "duplicate-spot",
                "A",
                "{" + PAIR + ", \"spots\": [{\"name\": \"A\"}, {\"name\": \"A\"}]}");
    }

    @Test
    void refusesANameThatStandsTwice() {
        assertOne("weak", "duplicate-field", "\"heptane\"", "{" + PAIR + ", \"weak\": \"heptane\", " + SPOTS + "}");
        assertOne(
                "runs[0].rf.A",
                "duplicate-field",
                "0.3",
                run("{\"percentStrong\": 10, \"rf\": {\"A\": 0.2, \"A\": 0.3}}"));
    }

    @Test
    void refusesAnUnknownFieldAndOffersTheNearest() {
        List<Fault> faults = faults(with("\"windw\": [0.2, 0.8], \"zzzzzzzz\": 1"));
        assertEquals(
                List.of("windw", "zzzzzzzz"), faults.stream().map(Fault::field).toList());
        assertEquals(
                Stream.of("unknown-field", "unknown-field").toList(),
                faults.stream().map(Fault::code).toList());
        assertEquals("Did you mean window?", faults.get(0).todo());
        assertEquals("Leave it out.", faults.get(1).todo());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"additive\": 3              | additive          | wrong-type",
                "\"additive\": \" \"          | additive          | text-not-taken",
                "\"window\": [0.8, 0.2]       | window            | window-out-of-range",
                "\"window\": [0.2]            | window            | wrong-type",
                "\"window\": [0.2, 0.5, 0.8]  | window            | too-many",
                "\"window\": [0.2, \"0.8\"]   | window[1]         | wrong-type",
                "\"window\": [-0.1, 0.8]      | window            | window-out-of-range",
                "\"setting\": \"banch\"       | setting           | unknown-choice",
                "\"sorbent\": \"cellulose\"   | sorbent           | unknown-choice",
                "\"curves\": 1                | curves            | wrong-type",
                "\"amountMl\": 0              | amountMl          | amount-out-of-range",
                "\"graduationMl\": 6          | graduationMl      | graduation-out-of-range",
                "\"id\": {}                   | id                | wrong-type",
                "\"predictAt\": 5             | predictAt         | wrong-type",
                "\"runs\": {}                 | runs              | wrong-type",
                "\"runs\": [3]                | runs[0]           | wrong-type",
            })
    void refusesOtherFieldsByName(String more, String field, String code) {
        List<Fault> faults = faults(with(more));
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(field, faults.get(0).field());
        assertEquals(code, faults.get(0).code());
    }

    @Test
    void checksTheTypeOfStructures() {
        List<Fault> faults = faults(
                "{" + PAIR
                        + ", \"spots\": [{\"name\": \"A\", \"smiles\": 5}, {\"name\": \"B\", \"groups\": {\"ester\": \"one\", \"OH\": -1}}]}");
        assertEquals(
                List.of("spots[0].smiles", "spots[1].groups.ester", "spots[1].groups.OH"),
                faults.stream().map(Fault::field).toList());
    }

    @Test
    void tellsTheFaultsOfAPlateAtTheirPlace() {
        String plate =
                "{\"heightMm\": 80, \"startMm\": 60, \"frontMm\": 40, \"spots\": [{\"spot\": \"A\", \"centreMm\": 50}]}";
        List<Fault> faults = faults(run("{\"percentStrong\": 10, \"plate\": " + plate + "}"));
        assertEquals("runs[0].plate.frontMm", faults.get(0).field());
        assertEquals("front-not-above-start", faults.get(0).code());
        assertOne(
                "runs[0].plate",
                "two-readings",
                "rf and plate",
                run("{\"percentStrong\": 10, \"rf\": {\"A\": 0.1}, \"plate\": " + plate + "}"));
    }

    @Test
    void tellsAllFaultsAtOnce() {
        List<Fault> faults = faults("""
                {"weak": "hexan", "strong": "ethyl acetate", "spots": [{"name": "A"}, {"nam": "B"}], "colour": 1,
                 "runs": [{"percentStrong": 101, "rf": {"A": 1.2, "A": 0.1}}, {"percentStrong": "10", "rf": {"C": -0.1}}],
                 "predictAt": [1e999], "window": [0.8, 0.2], "setting": "home"}""");
        List<String> said = faults.stream()
                .map(fault -> fault.field() + " " + fault.code())
                .sorted()
                .toList();
        assertEquals(
                List.of(
                        "colour unknown-field",
                        "predictAt[0] number-too-large",
                        "runs[0].percentStrong percent-out-of-range",
                        "runs[0].rf.A duplicate-field",
                        "runs[0].rf.A rf-out-of-range",
                        "runs[1].percentStrong wrong-type",
                        "runs[1].rf.C unknown-spot",
                        "setting unknown-choice",
                        "spots[1].nam unknown-field",
                        "spots[1].name missing-field",
                        "weak unknown-solvent",
                        "window window-out-of-range"),
                said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "nonsense",
                "{\"weak\": }",
                "{'weak': 1}",
                "{\"rf\": NaN}",
                "{\"rf\": Infinity}",
                "{\"a\": 01}",
                "{\"a\": 1,}",
                "{\"a\": +1}",
                "{\"a\": .5}",
                "// no\n{}"
            })
    void refusesWhatIsNoJson(String text) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(text, Setting.BENCH));
        assertEquals(BadInput.Kind.NO_JSON, bad.kind());
        assertEquals("request", bad.faults().get(0).field());
        assertEquals("no-json", bad.faults().get(0).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{} {}", "{} x", "{}]", "{}{"})
    void refusesTextAfterTheJson(String text) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(text, Setting.BENCH));
        assertEquals(BadInput.Kind.NO_JSON, bad.kind());
        assertEquals("trailing-text", bad.faults().get(0).code());
        assertTrue(bad.faults().get(0).came().length() > 0);
    }

    @Test
    void quotesTheRestThatItChokedOn() {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice("{\"weak\": hexane}", Setting.BENCH));
        assertTrue(bad.faults().get(0).came().contains("hexane"), bad.faults().toString());
    }

    @Test
    void refusesNestingWithoutEndAsNoJson() {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice("[".repeat(100_000), Setting.BENCH));
        assertEquals(BadInput.Kind.NO_JSON, bad.kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "3", "\"text\"", "null"})
    void refusesJsonThatIsNoObject(String text) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(text, Setting.BENCH));
        assertEquals(BadInput.Kind.FIELDS, bad.kind());
        assertEquals("request", bad.faults().get(0).field());
        assertEquals("wrong-type", bad.faults().get(0).code());
    }

    @Test
    void refusesTenMegabytesAndBytesThatAreNoText() {
        BadInput large = assertThrows(BadInput.class, () -> EXCHANGE.advice(new byte[10 * 1024 * 1024], Setting.BENCH));
        assertEquals(BadInput.Kind.TOO_LARGE, large.kind());
        byte[] latin = "{\"weak\": \"\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(latin, Setting.BENCH));
        assertEquals("not-utf8", bad.faults().get(0).code());
    }

    @Test
    void tellsTwoHundredFaultsAndThatThereAreMore() {
        String unknown =
                IntStream.range(0, 1000).mapToObj(i -> "\"x" + i + "\": 1").collect(Collectors.joining(","));
        List<Fault> faults = faults(with(unknown));
        assertEquals(FaultList.MOST + 1, faults.size());
        assertEquals("more-faults", faults.get(FaultList.MOST).code());
        assertTrue(
                faults.get(FaultList.MOST).message().contains("800"),
                faults.get(FaultList.MOST).message());
    }
}
