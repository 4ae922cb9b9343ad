package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EqualStrengthTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    private static JsonNode ask(String json) throws IOException {
        return MAPPER.readTree(EXCHANGE.equalStrength(json).json());
    }

    private static Fault fault(String json) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.equalStrength(json));
        assertEquals(1, bad.faults().size(), bad.faults().toString());
        return bad.faults().get(0);
    }

    /** Mixtures in pentane on alumina, α' 0.60, tolerance 0.01: Snyder 1968 (recalled, confidence M/H). */
    @ParameterizedTest
    @CsvSource({
        "diethyl ether, 4, 0.05",
        "diethyl ether, 25, 0.20",
        "diethyl ether, 81, 0.35",
        "chloroform, 15, 0.20",
        "chloroform, 65, 0.35",
        "dichloromethane, 13, 0.20",
        "dichloromethane, 84, 0.40",
        "acetone, 19, 0.35",
    })
    void givesThePublishedStrengthOnAlumina(String strong, double percent, double strength) throws IOException {
        JsonNode answer = ask(String.format(
                Locale.ROOT,
                "{\"sorbent\": \"alumina\", \"weak\": \"pentane\", \"strong\": \"%s\", \"percentStrong\": %s, \"activity\": 0.6}",
                strong,
                percent));
        assertEquals(1, answer.get("series").size());
        assertEquals(strength, answer.at("/series/0/strength").asDouble(), 0.01);
        assertEquals("theory", answer.at("/series/0/basis").asText());
        assertFalse(answer.at("/series/0").has("coverage"), "alumina: strength only");
    }

    /** Own algebra: the mixture called equally strong must have that strength. */
    @ParameterizedTest
    @CsvSource({"5", "20", "60"})
    void findsAnotherPairOfTheSameStrength(double percent) throws IOException {
        JsonNode answer = ask(String.format(
                Locale.ROOT,
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"percentStrong\": %s, \"to\": {\"weak\": \"hexane\", \"strong\": \"acetone\"}}",
                percent));
        assertEquals(2, answer.get("series").size());
        for (JsonNode series : answer.get("series")) {
            double other = series.at("/to/percentStrong").asDouble();
            JsonNode back = ask(String.format(
                    Locale.ROOT,
                    "{\"weak\": \"hexane\", \"strong\": \"acetone\", \"percentStrong\": %s, \"series\": \"%s\"}",
                    other,
                    series.get("series").asText().replace("silica ", "")));
            assertEquals(
                    series.get("strength").asDouble(),
                    back.at("/series/0/strength").asDouble(),
                    0.0005);
        }
    }

    @Test
    void namesTheSourceOfEveryValueItUses() throws IOException {
        JsonNode answer = ask("{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"percentStrong\": 20}");
        assertEquals("theory", answer.get("basis").asText());
        for (JsonNode series : answer.get("series")) {
            assertTrue(series.get("inputs").size() >= 8, series.toString());
            for (JsonNode value : series.get("inputs")) {
                assertFalse(value.get("source").asText().isEmpty(), value.toString());
                assertFalse(value.get("basis").asText().isEmpty(), value.toString());
            }
        }
    }

    @Test
    void saysWhatStandsInForWhat() throws IOException {
        JsonNode answer = ask("{\"weak\": \"petroleum ether\", \"strong\": \"ethyl acetate\", \"percentStrong\": 20}");
        List<String> keys = StreamSupport.stream(answer.get("notes").spliterator(), false)
                .map(note -> note.get("key").asText())
                .toList();
        assertEquals(List.of("note.calculated-as", "note.theory-only", "note.activity"), keys);
    }

    @Test
    void tellsWhetherTheOtherSolventHoldsOnInTheSameWay() throws IOException {
        // classes as read in Snyder, Kirkland, Dolan 2010, Fig. 8.15
        String json =
                "{\"weak\": \"hexane\", \"strong\": \"MTBE\", \"percentStrong\": 10, \"to\": {\"weak\": \"hexane\", \"strong\": \"%s\"}}";
        assertTrue(ask(String.format(Locale.ROOT, json, "THF")).toString().contains("note.same-class"));
        assertTrue(ask(String.format(Locale.ROOT, json, "ethyl acetate"))
                .toString()
                .contains("note.other-class"));
        assertTrue(ask(String.format(Locale.ROOT, json, "dioxane")).toString().contains("note.unknown-class"));
    }

    @Test
    void showsBothStrengthsOfAReversedPair() {
        Fault fault = fault("{\"weak\": \"ethyl acetate\", \"strong\": \"hexane\", \"percentStrong\": 20}");
        assertEquals("strong", fault.field());
        assertEquals("pair-reversed", fault.code());
        // newer series: ethyl acetate 0.48 (read: Sadek 2004, p. 70), hexane 0.00 to 0.01
        assertTrue(fault.message().contains("0.48") && fault.message().contains("0.01"), fault.message());
    }

    @Test
    void refusesAPairThatDoesNotMixAndAStrengthOutOfReach() {
        assertEquals(
                "pair-immiscible",
                fault("{\"weak\": \"hexane\", \"strong\": \"acetonitrile\", \"percentStrong\": 20}")
                        .code());
        assertEquals(
                "to.strong",
                fault(
                                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"percentStrong\": 20, \"to\": {\"weak\": \"hexane\", \"strong\": \"methanol\"}}")
                        .field());
        String pure =
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"percentStrong\": 100, \"series\": \"newer\", \"to\": {\"weak\": \"hexane\", \"strong\": \"chloroform\"}}";
        assertEquals("to", fault(pure).field());
        assertEquals("strength-not-reached", fault(pure).code());
    }

    @Test
    void refusesAnActivityOutsideItsInterval() {
        Fault fault = fault("{\"weak\": \"hexane\", \"strong\": \"ether\", \"percentStrong\": 20, \"activity\": 1.5}");
        assertEquals(List.of("activity", "(0, 1]", "1.5"), List.of(fault.field(), fault.allowed(), fault.came()));
    }
}
