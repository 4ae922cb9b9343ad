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
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Samples beside references, and reference spots, as they are asked about; all readings are invented. */
class IdentityRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String U = "{\"role\": \"unknown\", \"spots\": [{\"centreMm\": 35.5, \"sizeMm\": 3}]}";
    private static final String C = "{\"role\": \"co-spot\", \"reference\": \"a\", \"spots\": [{\"centreMm\": 35}]}";
    private static final String R = "{\"role\": \"reference\", \"reference\": \"a\", \"spots\": [{\"centreMm\": 35}]}";

    private static String asked(String... lanes) {
        return "{\"plates\": [{\"startMm\": 10, \"frontMm\": 60, \"lanes\": [" + String.join(", ", lanes)
                + "]}], \"references\": [{\"name\": \"a\"}]}";
    }

    private static List<String> told(String request) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.checks().identity(request), request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().matches("(?s).*[.?}]"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @Test
    void answersKeepTheirSchemasInEveryLanguage() throws IOException {
        String request = asked(U, C, R);
        assertEquals(List.of(), Schemas.broken("identity-request", request));
        for (Language language : Language.values()) {
            CheckAnswers checks = EXCHANGE.in(language).checks();
            String answer = checks.identity(request.getBytes(StandardCharsets.UTF_8));
            assertEquals(List.of(), Schemas.broken("identity-answer", answer), answer);
            assertEquals(List.of(), Schemas.broken("check-tables", checks.tables()));
        }
    }

    @Test
    void withoutAnEluentNothingIsAdvised() throws IOException {
        JsonNode answer =
                MAPPER.readTree(EXCHANGE.checks().identity(asked(U, C, R)).json());
        assertEquals(0, answer.get("next").size());
        assertEquals("not-told-apart", answer.at("/verdicts/0/verdict").asText());
    }

    // caffeine written in two ways, read at Rf 0.50 where its structure does not lead one to expect it (reading
    // invented)
    @Test
    void candidatesAreForetoldByWhatTheReferenceOnThePlateTeaches() throws IOException {
        String request = asked(U, R)
                .replace("{\"name\": \"a\"}", "{\"name\": \"a\", \"smiles\": \"Cn1c(=O)c2c(ncn2C)n(C)c1=O\"}")
                .replaceFirst(
                        "}$",
                        ", \"candidates\": [" + candidate("same", "CN1C=NC2=C1C(=O)N(C)C(=O)N2C")
                                + ", " + candidate("kin", "Cn1c(=O)c2[nH]cnc2n(C)c1=O")
                                + "], \"eluent\": {\"weak\": \"dichloromethane\", \"strong\": \"methanol\", \"percentStrong\": 5}}");
        JsonNode answer = MAPPER.readTree(EXCHANGE.checks().identity(request).json());
        assertEquals("reference", answer.at("/candidates/each/0/basis").asText());
        assertEquals(0.5, answer.at("/candidates/each/0/rf/value").asDouble(), 1e-9);
        assertEquals("model", answer.at("/candidates/each/1/basis").asText());
        assertTrue(answer.at("/candidates/each/1/rf/high").asDouble() > 0.5, answer.toString());
        assertEquals(2, answer.at("/candidates/within").asInt());
        assertTrue(answer.get("warnings").findValuesAsText("key").contains("same.reading-against-structure"));
        assertEquals(List.of(), Schemas.broken("identity-answer", answer.toString()));
    }

    private static String candidate(String name, String smiles) {
        return "{\"name\": \"" + name + "\", \"smiles\": \"" + smiles + "\"}";
    }

    // the page sends them back: their names are never translated
    @Test
    void referenceSpotsHaveOneNameInEveryLanguage() throws IOException {
        JsonNode english = MAPPER.readTree(EXCHANGE.checks().tables()).get("hrfSystems");
        JsonNode german =
                MAPPER.readTree(EXCHANGE.in(Language.GERMAN).checks().tables()).get("hrfSystems");
        for (int i = 0; i < english.size(); i++) {
            assertEquals(english.get(i).get("standards"), german.get(i).get("standards"));
        }
    }

    @Test
    void lanesThatSayNothingGetAPlainAnswer() {
        assertEquals(List.of("plates co-spot-alone"), told(asked(C)));
        assertEquals(List.of("plates no-unknown"), told(asked(R)));
        assertEquals(List.of("references[0] reference-not-spotted"), told(asked(U, C)));
        assertEquals(
                List.of("plates[0].lanes[1].spots lane-without-spots"), told(asked(U, R.replaceAll("\\[.*]", "[]"))));
        assertEquals(List.of("references missing-field", "plates missing-field"), told("{}"));
        assertEquals(List.of("plates no-unknown"), told("{\"plates\": [], \"references\": [{\"name\": \"a\"}]}"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"frontMm\": 60 | \"frontMm\": 9 | plates[0].frontMm front-not-above-start",
                "\"frontMm\": 60 | \"frontMm\": \"6o\" | plates[0].frontMm wrong-type",
                "35.5 | 70 | plates[0].lanes[0].spots[0].centreMm spot-above-front",
                "35.5 | 4 | plates[0].lanes[0].spots[0].centreMm spot-below-start",
                "35.5 | 30, \"rf\": 0.4 | plates[0].lanes[0].spots[0].centreMm height-or-rf",
                "\"sizeMm\": 3 | \"sizeMm\": 0 | plates[0].lanes[0].spots[0].sizeMm number-out-of-range",
                "\"sizeMm\": 3 | \"sizeMm\": \"NaN\" | plates[0].lanes[0].spots[0].sizeMm wrong-type",
                "\"sizeMm\": 3 | \"shape\": \"oval\" | plates[0].lanes[0].spots[0].shape unknown-choice",
                "\"unknown\" | \"both\" | plates[0].lanes[0].role unknown-choice",
                "\"reference\": \"a\" | \"reference\": \"b\" | plates[0].lanes[1].reference unknown-reference",
                "[{\"name\": \"a\"}] | [{\"name\": \"a\"}, {\"name\": \"a\"}] | references[1].name duplicate-compound",
                "[{\"name\": \"a\"}] | [{\"name\": \"a\"}], \"candidates\": [{\"name\": \"c\", \"hrf\": 120}] | candidates[0].hrf number-out-of-range",
                "[{\"name\": \"a\"}] | [{\"name\": \"a\", \"smiles\": \"C\", \"class\": \"ester\"}] | references[0].class two-structures"
            })
    void eachFaultIsToldOnceWithItsPlace(String from, String to, String fault) {
        String request = asked(U, R);
        assertTrue(request.contains(from), from);
        assertEquals(List.of(fault), told(request.replace(from, to)));
    }

    @Test
    void whatIsTooLargeOrNoNumberIsRefusedAsAWhole() {
        BadInput large =
                assertThrows(BadInput.class, () -> EXCHANGE.checks().identity(new byte[Exchange.MOST_BYTES + 1]));
        assertEquals(BadInput.Kind.TOO_LARGE, large.kind());
        BadInput noNumber =
                assertThrows(BadInput.class, () -> EXCHANGE.checks().identity(asked(U.replace("35.5", "NaN"), R)));
        assertEquals(BadInput.Kind.NO_JSON, noNumber.kind());
    }
}
