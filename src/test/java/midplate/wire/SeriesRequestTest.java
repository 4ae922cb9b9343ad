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
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A series of plates over the wire; all samples invented. */
class SeriesRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String GOOD = """
            {"compounds": [{"name": "A", "compound": "biphenyl"}, {"name": "B", "smiles": "OCc1ccccc1"},
              {"name": "C", "class": "ester"}], "weak": "hexane", "strong": "ethyl acetate", "setting": "bench",
             "percents": [0, 20, 100], "against": {"weak": "hexane", "strong": "diethyl ether"},
             "otherLayer": "alumina"}""";

    private static byte[] bytes(String request) {
        return request.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> told(String request) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.lessons().series(bytes(request)), () -> request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @Test
    void answersKeepTheirSchemaInEveryLanguage() throws IOException {
        String plain = """
                {"compounds": [{"name": "A", "groups": {"alcohol": 1}}], "weak": "hexane", "strong": "acetone"}""";
        for (Language language : Language.values()) {
            for (String request : List.of(GOOD, plain)) {
                assertEquals(List.of(), Schemas.broken("lesson-series-request", request));
                String answer = EXCHANGE.in(language).lessons().series(bytes(request));
                assertEquals(List.of(), Schemas.broken("lesson-series-answer", answer), answer);
            }
        }
    }

    @Test
    void schemaAndReaderKnowTheSameFields() throws IOException {
        JsonNode schema = Schemas.read("lesson-series-request");
        TreeSet<String> names = new TreeSet<>();
        schema.get("properties").fieldNames().forEachRemaining(names::add);
        assertEquals(new TreeSet<>(SeriesReader.FIELDS), names);
    }

    @Test
    void platesStandWhereTheyWereAskedForAndTheLayerIsMarkedAsIllustration() throws IOException {
        JsonNode answer = MAPPER.readTree(EXCHANGE.lessons().series(bytes(GOOD)));
        assertEquals(3, answer.get("plates").size());
        assertEquals(20, answer.at("/plates/1/percentStrong").asDouble(), 1e-9);
        assertEquals("4:1", answer.at("/plates/1/ratio").asText());
        assertEquals("measured", answer.get("basis").asText());
        assertEquals("illustration", answer.at("/otherLayer/basis").asText());
        assertTrue(answer.at("/otherLayer/spots/A/low").isMissingNode(), "no band where nothing was measured");
        // newer series on silica: ethyl acetate 0.48 (Sadek 2004, p. 70, read)
        assertEquals(0.48, answer.at("/plates/2/strength").asDouble(), 1e-9);
        assertTrue(answer.at("/against/equalPercent")
                .get(answer.at("/against/equalPercent").size() - 1)
                .isNull());
        assertFalse(answer.at("/strengths/values/0/source").asText().isBlank());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "[0, 20, 100]     | [20]                     | percents too-few-series-percents",
                "[0, 20, 100]     | []                       | percents too-few-series-percents",
                "[0, 20, 100]     | [20, 20]                 | percents[1] series-percent-falls",
                "[0, 20, 100]     | [20, 10]                 | percents[1] series-percent-falls",
                "[0, 20, 100]     | [0, 101]                 | percents[1] percent-out-of-range",
                "[0, 20, 100]     | [0, \"20\"]              | percents[1] wrong-type",
                "[0, 20, 100]     | [0,1,2,3,4,5,6,7]        | percents too-many",
                "[0, 20, 100]     | 20                       | percents wrong-type",
                "\"diethyl ether\" | \"ethyl acetate\"       | against.strong series-same-pair",
                "\"diethyl ether\" | \"ethr\"                | against.strong unknown-solvent",
                "\"diethyl ether\" | \"hexane\"              | against.strong same-solvent",
                "\"alumina\"      | \"silica\"               | otherLayer unknown-choice",
                "\"biphenyl\"     | \"biphenol\"             | compounds[0].compound unknown-lesson-compound",
                "\"setting\"      | \"sett\": 1, \"setting\" | sett unknown-field",
            })
    void eachFaultIsToldByItsField(String good, String bad, String told) {
        int at = GOOD.indexOf(good);
        assertTrue(at >= 0, good);
        assertEquals(List.of(told), told(GOOD.substring(0, at) + bad + GOOD.substring(at + good.length())));
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertEquals(
                new TreeSet<>(List.of(
                        "compounds missing-field",
                        "weak missing-field",
                        "strong missing-field",
                        "percents[1] series-percent-falls",
                        "otherLayer unknown-choice")),
                new TreeSet<>(told("{\"percents\": [5, 4], \"otherLayer\": \"paper\"}")));
        assertEquals(List.of("request wrong-type"), told("[]"));
        assertEquals(List.of("request no-json"), told("{\"percents\": NaN}"));
    }
}
