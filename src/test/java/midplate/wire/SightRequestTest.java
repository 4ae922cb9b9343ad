package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How to see compounds, and what a plate says of purity, over the wire; all samples invented. */
class SightRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String SEEN = """
            {"compounds": [{"name": "A", "smiles": "CC(=O)c1ccccc1"}, {"name": "B", "groups": {"alcohol": 1}},
              {"name": "C", "class": "ester", "rf": 0.4}, {"name": "D"}]}""";
    private static final String PURE = """
            {"name": "B", "rf": 0.42, "spotsSeen": 1, "smiles": "CCCCO", "seenBy": ["uv-254", "iodine"],
             "eluent": {"weak": "hexane", "strong": "ethyl acetate", "percentStrong": 20, "setting": "class"},
             "volumeUl": 2, "concentrationPercent": 0.5, "touches": 3, "sizeMm": 3, "runMm": 50, "startSpot": "weak"}""";

    private static List<String> told(UnaryOperator<String> asked, String request) {
        BadInput bad = assertThrows(BadInput.class, () -> asked.apply(request), () -> request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    private static String changed(String request, String good, String bad) {
        int at = request.indexOf(good);
        assertTrue(at >= 0, good);
        return request.substring(0, at) + bad + request.substring(at + good.length());
    }

    @Test
    void answersKeepTheirSchemasInEveryLanguage() throws IOException {
        assertEquals(List.of(), Schemas.broken("seeing-request", SEEN));
        assertEquals(List.of(), Schemas.broken("purity-request", PURE));
        for (Language language : Language.values()) {
            SightAnswers sight = EXCHANGE.in(language).sight();
            for (String request : List.of(SEEN, "{}", "{\"compounds\": []}")) {
                String answer = sight.seeing(request.getBytes(StandardCharsets.UTF_8));
                assertEquals(List.of(), Schemas.broken("seeing-answer", answer), answer);
            }
            for (String request : List.of(PURE, "{\"rf\": 0, \"spotsSeen\": 2}")) {
                String answer = sight.purity(request.getBytes(StandardCharsets.UTF_8));
                assertEquals(List.of(), Schemas.broken("purity-answer", answer), answer);
            }
        }
    }

    @Test
    void everyWayAnswersForEveryCompoundInTheOrderAsked() throws IOException {
        JsonNode answer = MAPPER.readTree(EXCHANGE.sight().seeing(SEEN));
        assertEquals(16, answer.get("ways").size());
        for (JsonNode way : answer.get("ways")) {
            assertEquals(List.of("A", "B", "C", "D"), way.get("answers").findValuesAsText("name"));
        }
        JsonNode lamp = answer.at("/ways/1");
        assertEquals("uv-254", lamp.get("id").asText());
        assertEquals("shows", lamp.at("/answers/0/answer").asText());
        assertEquals("not-known", lamp.at("/answers/2/answer").asText(), "only its class is known");
        assertEquals("practice", lamp.get("basis").asText(), "no book was read for it");
        assertEquals("CommonPractice", lamp.get("source").asText());
        assertEquals("practice", answer.at("/ways/4/basis").asText(), "permanganate: nobody's publication");
    }

    @Test
    void whatIsSaidOfAWayIsGermanInGerman() throws IOException {
        JsonNode way = MAPPER.readTree(EXCHANGE.in(Language.GERMAN).sight().seeing("{}"))
                .at("/ways/3");
        assertEquals("Ioddampf", way.at("/name/text").asText());
        assertTrue(way.at("/how/text").asText().contains("im Abzug"), way.toString());
        assertTrue(way.at("/negative/text").asText().startsWith("Die Verbindung"), way.toString());
    }

    /** Own algebra: three touches of 2 µl of 0.5 % hold 3 · 2 · 5 µg. */
    @Test
    void purityIsAnsweredWithAmountsAndEluents() throws IOException {
        JsonNode answer = MAPPER.readTree(EXCHANGE.sight().purity(PURE));
        assertEquals(30, answer.at("/amounts/appliedUg").asDouble(), 1e-9);
        assertEquals(0.3, answer.at("/amounts/onePercentUg").asDouble(), 1e-9);
        assertTrue(answer.get("next").size() > 0, "eluents that would show a hidden compound");
        double last = 1;
        for (JsonNode next : answer.get("next")) {
            assertTrue(next.get("chanceApart").asDouble() <= last, "the likeliest first");
            last = next.get("chanceApart").asDouble();
        }
        assertTrue(answer.at("/couldHide/0/chance").asDouble() > 0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"rf\": 0.42,               | ''                             | rf missing-field",
                "\"rf\": 0.42                | \"rf\": 1.2                    | rf rf-out-of-range",
                "\"rf\": 0.42                | \"rf\": -0.01                  | rf rf-out-of-range",
                "\"rf\": 0.42                | \"rf\": \"0.42\"               | rf wrong-type",
                "\"rf\": 0.42                | \"rf\": null                   | rf wrong-type",
                "\"spotsSeen\": 1,           | ''                             | spotsSeen missing-field",
                "\"spotsSeen\": 1            | \"spotsSeen\": 0               | spotsSeen number-out-of-range",
                "\"spotsSeen\": 1            | \"spotsSeen\": 1.5             | spotsSeen no-whole-number",
                "\"spotsSeen\": 1            | \"spotsSeen\": 51              | spotsSeen number-out-of-range",
                "\"uv-254\"                  | \"uv-255\"                     | seenBy[0] unknown-way",
                "\"uv-254\"                  | 254                            | seenBy[0] wrong-type",
                "\"uv-254\"                  | \"iodine\"                     | seenBy[1] way-twice",
                "\"volumeUl\": 2             | \"volumeUl\": 0                | volumeUl number-out-of-range",
                "\"volumeUl\": 2             | \"volumeUl\": -1               | volumeUl number-out-of-range",
                "\"volumeUl\": 2             | \"volumeUl\": 1000000          | volumeUl number-out-of-range",
                "\"volumeUl\": 2             | \"volumeUl\": \"2 µl\"         | volumeUl wrong-type",
                "\"concentrationPercent\": 0.5 | \"concentrationPercent\": 0  | concentrationPercent number-out-of-range",
                "\"concentrationPercent\": 0.5 | \"concentrationPercent\": 120 | concentrationPercent number-out-of-range",
                "\"touches\": 3              | \"touches\": 0                 | touches number-out-of-range",
                "\"sizeMm\": 3               | \"sizeMm\": 0                  | sizeMm number-out-of-range",
                "\"sizeMm\": 3               | \"sizeMm\": 50                 | sizeMm number-out-of-range",
                "\"runMm\": 50               | \"runMm\": 5                   | runMm number-out-of-range",
                "\"startSpot\": \"weak\"     | \"startSpot\": \"little\"      | startSpot unknown-choice",
                "\"CCCCO\"                   | \"CCCC(\"                      | smiles open-branch",
                "\"percentStrong\": 20       | \"percentStrong\": 120         | eluent.percentStrong percent-out-of-range",
                "\"ethyl acetate\"           | \"water\"                      | eluent.strong unknown-solvent",
                "\"setting\": \"class\"      | \"setting\": \"school\"        | eluent.setting unknown-choice",
                "\"startSpot\"               | \"start\": 1, \"startSpot\"    | start unknown-field",
            })
    void eachFaultOfPurityIsToldByItsField(String good, String bad, String told) {
        assertEquals(List.of(told), told(EXCHANGE.sight()::purity, changed(PURE, good, bad)));
    }

    @Test
    void allFaultsOfPurityAreToldAtOnce() {
        assertEquals(
                new TreeSet<>(List.of(
                        "rf rf-out-of-range",
                        "spotsSeen number-out-of-range",
                        "seenBy[0] unknown-way",
                        "volumeUl number-out-of-range",
                        "concentrationPercent number-out-of-range")),
                new TreeSet<>(
                        told(
                                EXCHANGE.sight()::purity,
                                "{\"rf\": 3, \"spotsSeen\": 0, \"seenBy\": [\"smell\"], \"volumeUl\": 0, \"concentrationPercent\": 101}")));
        assertEquals(
                new TreeSet<>(List.of("rf missing-field", "spotsSeen missing-field")),
                new TreeSet<>(told(EXCHANGE.sight()::purity, "{}")));
        assertEquals(List.of("request wrong-type"), told(EXCHANGE.sight()::purity, "[]"));
        assertEquals(List.of("request no-json"), told(EXCHANGE.sight()::purity, "{\"rf\": NaN}"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"rf\": 0.4             | \"rf\": 4                     | compounds[2].rf rf-out-of-range",
                "\"name\": \"D\"         | \"name\": \"\"                | compounds[3].name text-not-taken",
                "{\"name\": \"D\"}       | {}                            | compounds[3].name missing-field",
                "{\"name\": \"D\"}       | \"D\"                         | compounds[3] wrong-type",
                "\"alcohol\": 1          | \"alcohols\": 1               | compounds[1].groups.alcohols unknown-group",
                "\"class\": \"ester\"    | \"class\": \"wax\"            | compounds[2].class unknown-class",
                "\"class\": \"ester\"    | \"smiles\": \"C\", \"class\": \"ester\" | compounds[2].class two-structures",
            })
    void eachFaultOfACompoundIsToldByItsField(String good, String bad, String told) {
        assertEquals(List.of(told), told(EXCHANGE.sight()::seeing, changed(SEEN, good, bad)));
    }

    @Test
    void tooManyCompoundsAreTold() {
        String many = "{\"compounds\": [" + "{},".repeat(50) + "{}]}";
        assertEquals(List.of("compounds too-many"), told(EXCHANGE.sight()::seeing, many));
    }
}
