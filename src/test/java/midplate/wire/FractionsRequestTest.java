package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import midplate.plate.Setting;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was found in the tubes of a column; all of it invented. */
class FractionsRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String RUN = """
            {"spots": ["A", "B"], "target": "B", "massMg": 250, "fractionMl": 8, "collectedFromMl": 0,
             "bed": {"cartridgeGrams": 12}, "steps": [{"percentStrong": 10, "volumeMl": 120}],
             "tubes": [{"marks": []}, {"marks": [{"spot": "A", "strength": 3}]},
              {"marks": [{"spot": "A", "strength": 1}, {"spot": "B", "strength": 2}]},
              {"marks": [{"spot": "B", "strength": 4}]}, {"marks": [{"spot": "B", "strength": 2}]}, {"marks": []},
              {"marks": null}],
             "flasks": [{"fromTube": 4, "toTube": 5, "tareGrams": 25.1034, "grossGrams": 25.2201}]}""";

    private static JsonNode answer(String request) throws IOException {
        return MAPPER.readTree(EXCHANGE.columns().fractions(request));
    }

    private static List<String> told(String request) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.columns().fractions(request), () -> request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @Test
    void anAnswerKeepsItsSchemaInEveryLanguage() throws IOException {
        assertEquals(List.of(), Schemas.broken("fractions-request", RUN));
        for (Language language : Language.values()) {
            String answer = EXCHANGE.in(language).columns().fractions(RUN.getBytes(StandardCharsets.UTF_8));
            assertEquals(List.of(), Schemas.broken("fractions-answer", answer), answer);
        }
    }

    @Test
    void poolsAndMassesAreWritten() throws IOException {
        JsonNode answer = answer(RUN);
        JsonNode pure = null;
        for (JsonNode pool : answer.get("pools")) {
            if (pool.get("kind").asText().equals("pure")
                    && pool.at("/spots/0").asText().equals("B")) {
                pure = pool;
            }
        }
        assertTrue(pure != null, answer.toString());
        assertEquals(4, pure.get("fromTube").asInt());
        assertEquals(5, pure.get("toTube").asInt());
        assertEquals(16, pure.get("volumeMl").asDouble());
        // 25.2201 g − 25.1034 g = 0.1167 g
        assertEquals(116.7, pure.get("massMg").asDouble(), 1e-9);
        assertEquals(116.7, answer.at("/balance/foundMg").asDouble(), 1e-9);
        assertEquals(0.4668, answer.at("/balance/ofLoaded").asDouble(), 1e-9, "116.7 mg of 250 mg");
        assertFalse(answer(RUN.replaceAll("(?s),\\s*\"flasks\".*", "}")).has("balance"));
    }

    @Test
    void whatWasObservedGoesIntoTheNextPlanAsItCame() throws IOException {
        JsonNode observed = answer(RUN).get("observed");
        assertTrue(observed.size() > 0, "something was observed");
        JsonNode b = observed.get(observed.size() - 1);
        assertEquals("B", b.get("spot").asText());
        // B first in tube 3, which begins after 16 ml, last in tube 5, which ends at 40 ml
        assertEquals(16, b.get("startMl").asDouble());
        assertEquals(40, b.get("endMl").asDouble());
        assertEquals(MAPPER.readTree(RUN).get("bed"), b.get("bed"));
        assertEquals(MAPPER.readTree(RUN).get("steps"), b.get("steps"));
        ObjectNode plan = (ObjectNode) MAPPER.readTree("{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\","
                + " \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}],"
                + " \"runs\": [{\"percentStrong\": 10, \"rf\": {\"A\": 0.35, \"B\": 0.22}}],"
                + " \"column\": {\"target\": \"B\", \"massMg\": 250}}");
        ((ObjectNode) plan.get("column")).set("earlier", observed);
        assertEquals(List.of(), Schemas.broken("column-plan-request", plan.toString()));
        assertEquals(
                "B",
                EXCHANGE.columns()
                        .plan(plan.toString(), Setting.BENCH)
                        .question()
                        .target());
    }

    @Test
    void withoutBedAndStepsNothingIsMadeUp() throws IOException {
        String bare = RUN.replaceAll("\"bed\".*\\],\\s*(?=\"tubes\")", "").replaceAll("(?m)^ \"bed\".*$", "");
        JsonNode b = answer(bare).at("/observed/0");
        assertFalse(b.has("bed") || b.has("steps"), b.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"target\": \"B\",     | ''                         | target missing-field",
                "\"target\": \"B\"      | \"target\": \"C\"          | target unknown-target",
                "[\"A\", \"B\"]         | [\"A\", \"B\", \"B\"]      | spots[2] duplicate-spot",
                "[\"A\", \"B\"]         | [\"A\", \"B\", 5]          | spots[2] wrong-type",
                "\"massMg\": 250        | \"massMg\": 0              | massMg mass-out-of-range",
                "\"massMg\": 250,       | ''                         | massMg missing-field",
                "\"fractionMl\": 8      | \"fractionMl\": -8         | fractionMl number-out-of-range",
                "\"collectedFromMl\": 0 | \"collectedFromMl\": -1    | collectedFromMl number-out-of-range",
                "\"cartridgeGrams\": 12 | \"cartridgeGrams\": 13     | bed.cartridgeGrams no-such-cartridge",
                "\"volumeMl\": 120      | \"volumeMl\": 0            | steps[0].volumeMl step-volume-out-of-range",
                "\"A\", \"strength\": 3 | \"C\", \"strength\": 3     | tubes[1].marks[0].spot unknown-target",
                "\"A\", \"strength\": 3 | \"A\", \"strength\": 5     | tubes[1].marks[0].strength strength-out-of-range",
                "\"A\", \"strength\": 3 | \"A\", \"strength\": 2.5   | tubes[1].marks[0].strength no-whole-number",
                "\"A\", \"strength\": 3 | \"A\", \"strength\": \"3\" | tubes[1].marks[0].strength wrong-type",
                "\"A\", \"strength\": 3 | \"A\"                      | tubes[1].marks[0].strength missing-field",
                "\"spot\": \"B\", \"strength\": 2} | \"spot\": \"A\", \"strength\": 2} | tubes[2].marks[1].spot mark-twice",
                "25.2201                | 25.1                       | flasks[0].grossGrams gross-below-tare",
                "25.1034                | \"25,1\"                   | flasks[0].tareGrams wrong-type",
                "\"toTube\": 5          | \"toTube\": 3              | flasks[0].toTube tube-out-of-range",
                "\"fromTube\": 4        | \"fromTube\": 0            | flasks[0].fromTube tube-out-of-range",
                "\"toTube\": 5          | \"toTube\": 8              | flasks[0].toTube tube-out-of-range",
                "\"fromTube\": 4        | \"from\": 4, \"fromTube\": 4 | flasks[0].from unknown-field",
            })
    void eachFaultIsToldByItsField(String good, String bad, String told) {
        int at = RUN.indexOf(good);
        assertTrue(at >= 0, good);
        assertEquals(List.of(told), told(RUN.substring(0, at) + bad + RUN.substring(at + good.length())));
    }

    @Test
    void allFaultsAreToldAtOnce() {
        String json = RUN.replace("\"massMg\": 250", "\"massMg\": \"much\"")
                .replace("\"strength\": 4", "\"strength\": 9")
                .replace("25.2201", "25")
                .replace("\"volumeMl\": 120", "\"volumeMl\": 0");
        assertEquals(
                new TreeSet<>(List.of(
                        "massMg wrong-type",
                        "tubes[3].marks[0].strength strength-out-of-range",
                        "flasks[0].grossGrams gross-below-tare",
                        "steps[0].volumeMl step-volume-out-of-range")),
                new TreeSet<>(told(json)));
    }

    @Test
    void whatIsNoRunAtAllIsTold() {
        assertEquals(
                new TreeSet<>(List.of(
                        "spots missing-field",
                        "massMg missing-field",
                        "fractionMl missing-field",
                        "tubes missing-field")),
                new TreeSet<>(told("{}")));
        assertEquals(List.of("request wrong-type"), told("[]"));
        assertEquals(
                List.of("tubes tubes-out-of-range"),
                told("{\"spots\": [\"A\"], \"massMg\": 1, \"fractionMl\": 1, \"tubes\": []}"));
        assertEquals(
                List.of("tubes too-many"),
                told("{\"spots\": [\"A\"], \"massMg\": 1, \"fractionMl\": 1, \"tubes\": [" + "{},".repeat(400)
                        + "{}]}"));
    }
}
