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
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.plate.Setting;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions about columns; all readings are invented. */
class ColumnRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String TWO = "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\","
            + " \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}],"
            + " \"runs\": [{\"percentStrong\": 10, \"rf\": {\"A\": 0.35, \"B\": 0.22}}]";
    private static final String EARLIER =
            "{\"spot\": \"B\", \"bed\": {\"cartridgeGrams\": 12}, \"steps\": [{\"percentStrong\": 10, \"volumeMl\": 240}],"
                    + " \"startMl\": 120, \"endMl\": 200, \"errorMl\": 4}";

    private static String request(String column) {
        return TWO + ", \"column\": {" + column + "}}";
    }

    private static String wanted(String more) {
        return request("\"target\": \"B\", \"massMg\": 250" + more);
    }

    private static List<Fault> faults(String request) {
        BadInput bad =
                assertThrows(BadInput.class, () -> EXCHANGE.columns().plan(request, Setting.BENCH), () -> request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults();
    }

    private static List<String> told(String request) {
        return faults(request).stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    private static JsonNode answer(String request) throws IOException {
        return MAPPER.readTree(EXCHANGE.columns().plan(request, Setting.BENCH).json());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ", \"bed\": {\"cartridgeGrams\": 12}",
                ", \"bed\": {\"diameterMm\": 20}, \"elution\": \"isocratic\"",
                ", \"bed\": {\"diameterMm\": 30, \"bedMm\": 200}, \"loading\": \"dry\", \"flowMlMin\": 20, \"fractionMl\": 12",
                ", \"percentStrong\": 12.5, \"loadMl\": 0.5",
                ", \"steps\": [{\"percentStrong\": 5, \"volumeMl\": 60}, {\"percentStrong\": 20, \"volumeMl\": 120}]",
                ", \"elution\": \"steps\", \"predictAt\": [0, 5, 10, 100]",
                ", \"earlier\": [" + EARLIER + "]",
            })
    void anAnswerKeepsItsSchemaInEveryLanguage(String more) throws IOException {
        assertEquals(List.of(), Schemas.broken("column-plan-request", wanted(more)));
        for (Language language : Language.values()) {
            String answer =
                    EXCHANGE.in(language).columns().plan(wanted(more).getBytes(StandardCharsets.UTF_8), Setting.BENCH);
            assertEquals(List.of(), Schemas.broken("column-plan-answer", answer), answer);
        }
    }

    @Test
    void whatIsAskedComesThroughTheDoor() throws IOException {
        JsonNode plan = answer(wanted(", \"bed\": {\"diameterMm\": 20}, \"loading\": \"dry\", \"fractionMl\": 8,"
                        + " \"flowMlMin\": 18, \"steps\": [{\"percentStrong\": 5, \"volumeMl\": 60},"
                        + " {\"percentStrong\": 20, \"volumeMl\": 120}]"))
                .get("plan");
        assertEquals("B", plan.get("target").asText());
        assertEquals(
                "{\"diameterMm\":20,\"bedMm\":150}",
                MAPPER.createObjectNode()
                        .<com.fasterxml.jackson.databind.node.ObjectNode>set("diameterMm", plan.at("/bed/diameterMm"))
                        .set("bedMm", plan.at("/bed/bedMm"))
                        .toString());
        assertFalse(plan.get("advised").asBoolean());
        assertEquals("dry", plan.at("/load/loading").asText());
        assertEquals(0, plan.at("/load/loadMl").asDouble());
        assertEquals(8, plan.get("fractionMl").asDouble());
        assertEquals(18, plan.get("flowMlMin").asDouble());
        assertEquals(5, plan.at("/steps/0/percentStrong").asDouble());
        assertEquals("19:1", plan.at("/steps/0/ratio").asText());
        assertEquals(60, plan.at("/steps/0/volumeMl").asDouble());
        assertEquals(List.of("A", "B"), plan.get("spots").findValuesAsText("spot"));
        assertEquals(plan.get("fractions").asInt(), plan.at("/shares/B").size(), "one share a fraction");
        assertTrue(plan.at("/spots/0/middleMl/value").asDouble()
                < plan.at("/spots/1/middleMl/value").asDouble());
    }

    @Test
    void aBedIsAdvisedAndAloneASpotIsTheTarget() throws IOException {
        JsonNode plan = answer("{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}],"
                        + " \"runs\": [{\"percentStrong\": 10, \"rf\": {\"A\": 0.35}}], \"column\": {\"massMg\": 20}}")
                .get("plan");
        assertEquals("A", plan.get("target").asText());
        assertTrue(plan.get("advised").asBoolean());
        assertTrue(plan.at("/bed/cartridgeGrams").asDouble() > 0, plan.toString());
    }

    @Test
    void predictionsAreOnTheBedOfThePlanAndAgreeWithIt() throws IOException {
        JsonNode answer =
                answer(wanted(", \"bed\": {\"cartridgeGrams\": 25}, \"percentStrong\": 10, \"predictAt\": [10, 20]"));
        assertEquals(2, answer.get("predictions").size());
        JsonNode same = answer.at("/predictions/0/spots/B");
        assertEquals(answer.at("/plan/spots/1/middleMl"), same.get("middleMl"));
        assertTrue(
                answer.at("/predictions/1/spots/B/middleMl/value").asDouble()
                        < same.at("/middleMl/value").asDouble(),
                "a stronger eluent brings it out earlier");
    }

    @Test
    void anEarlierColumnNarrowsTheBand() throws IOException {
        String bed = ", \"bed\": {\"cartridgeGrams\": 12}, \"percentStrong\": 10";
        JsonNode before = answer(wanted(bed)).at("/plan/spots/1/middleMl");
        JsonNode after =
                answer(wanted(bed + ", \"earlier\": [" + EARLIER + "]")).at("/plan/spots/1/middleMl");
        assertTrue(width(after) < width(before), before + " " + after);
    }

    private static double width(JsonNode range) {
        return Math.log(range.get("high").asDouble() / range.get("low").asDouble());
    }

    // columns were run in petroleum ether with ethyl acetate; in any other eluent that must be said
    @Test
    void anEluentInWhichNoColumnWasMeasuredIsTold() throws IOException {
        String bed = ", \"bed\": {\"cartridgeGrams\": 12}, \"percentStrong\": 10";
        String key = "column.pair-not-measured";
        assertFalse(answer(wanted(bed)).at("/plan/reasons").toString().contains(key));
        String other = wanted(bed).replace("\"hexane\"", "\"toluene\"").replace("\"ethyl acetate\"", "\"acetone\"");
        assertTrue(answer(other).at("/plan/reasons").toString().contains(key));
    }

    // two spots that ran alike: there is a plan all the same, the best there is, and it says so
    @Test
    void spotsWithoutAGapGetTheBestThereIs() throws IOException {
        String column = "\"target\": \"B\", \"massMg\": 50, \"bed\": {\"cartridgeGrams\": 40}";
        JsonNode plan = answer(request(column).replace("0.22", "0.35")).get("plan");
        assertFalse(plan.has("cut"), "no fractions are pure where every band lies in its middle");
        double parted = answer(request(column)).at("/plan/chancePure").asDouble();
        double fartherParted = answer(request(column).replace("0.22", "0.12"))
                .at("/plan/chancePure")
                .asDouble();
        assertTrue(plan.get("chancePure").asDouble() < parted && parted < fartherParted, plan.toString());
        assertTrue(plan.get("warnings").size() > 0 && plan.get("reasons").size() > 0, plan.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"massMg\": 250                             | column.target missing-field",
                "\"target\": \"C\", \"massMg\": 250          | column.target unknown-target",
                "\"target\": 2, \"massMg\": 250              | column.target wrong-type",
                "\"target\": \"B\"                           | column.massMg missing-field",
                "\"target\": \"B\", \"massMg\": 0            | column.massMg mass-out-of-range",
                "\"target\": \"B\", \"massMg\": 5000000      | column.massMg mass-out-of-range",
                "\"target\": \"B\", \"massMg\": -1           | column.massMg mass-out-of-range",
                "\"target\": \"B\", \"massMg\": \"250\"      | column.massMg wrong-type",
                "\"target\": \"B\", \"massMg\": 1e999        | column.massMg number-too-large",
                "\"target\": \"B\", \"massMg\": null         | column.massMg wrong-type",
            })
    void whatMustBeSaidIsToldByItsField(String column, String told) {
        assertEquals(List.of(told), told(request(column)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"bed\": {\"cartridgeGrams\": 13}           | column.bed.cartridgeGrams no-such-cartridge",
                "\"bed\": {\"cartridgeGrams\": \"12\"}       | column.bed.cartridgeGrams wrong-type",
                "\"bed\": {\"cartridgeGrams\": 12, \"diameterMm\": 20} | column.bed two-beds",
                "\"bed\": {}                                 | column.bed no-bed",
                "\"bed\": 12                                 | column.bed wrong-type",
                "\"bed\": {\"bedMm\": 150}                   | column.bed.diameterMm missing-field",
                "\"bed\": {\"diameterMm\": 5}                | column.bed.diameterMm diameter-out-of-range",
                "\"bed\": {\"diameterMm\": 20, \"bedMm\": 20} | column.bed.bedMm height-out-of-range",
                "\"bed\": {\"grams\": 12}                    | column.bed.grams unknown-field; column.bed no-bed",
                "\"loading\": \"damp\"                       | column.loading unknown-choice",
                "\"loadMl\": 0                               | column.loadMl number-out-of-range",
                "\"flowMlMin\": -1                           | column.flowMlMin number-out-of-range",
                "\"fractionMl\": \"8\"                       | column.fractionMl wrong-type",
                "\"fractionMl\": 0                           | column.fractionMl number-out-of-range",
                "\"elution\": \"gradient\"                   | column.elution unknown-choice",
                "\"elution\": \"steps\", \"percentStrong\": 5 | column.elution elution-beside-program",
                "\"percentStrong\": 101                      | column.percentStrong percent-out-of-range",
                "\"percentStrong\": 5, \"steps\": [{\"percentStrong\": 5, \"volumeMl\": 60}] | column.steps two-programs",
                "\"steps\": []                               | column.steps steps-out-of-range",
                "\"steps\": [{\"percentStrong\": 5, \"volumeMl\": 0}] | column.steps[0].volumeMl step-volume-out-of-range",
                "\"steps\": [{\"percentStrong\": 5}]         | column.steps[0].volumeMl missing-field",
                "\"steps\": [{\"percentStrong\": -5, \"volumeMl\": 9}] | column.steps[0].percentStrong percent-out-of-range",
                "\"steps\": [5]                              | column.steps[0] wrong-type",
                "\"predictAt\": [5, 101]                     | column.predictAt[1] percent-out-of-range",
                "\"massmg\": 3                               | column.massmg unknown-field",
            })
    void eachFaultOfWhatMayBeSaidIsToldByItsField(String more, String told) {
        assertEquals(List.of(told.split("; ", -1)), told(wanted(", " + more)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"endMl\": 200   | \"endMl\": 119       | endMl band-out-of-order",
                "\"startMl\": 120 | \"startMl\": -1      | startMl band-out-of-order",
                "\"errorMl\": 4   | \"errorMl\": 0       | errorMl band-out-of-order",
                "\"errorMl\": 4   | \"errorMl\": \"4\"   | errorMl wrong-type",
                "\"spot\": \"B\"  | \"spot\": \"C\"      | spot unknown-target",
                "\"spot\": \"B\", | ''                   | spot missing-field",
                "12}              | 13}                  | bed.cartridgeGrams no-such-cartridge",
                "240}             | 0}                   | steps[0].volumeMl step-volume-out-of-range",
            })
    void eachFaultOfAnEarlierColumnIsToldByItsField(String good, String bad, String told) {
        String earlier = EARLIER.replace(good, bad);
        assertFalse(earlier.equals(EARLIER), good);
        assertEquals(
                List.of("column.earlier[1]." + told),
                told(wanted(", \"earlier\": [" + EARLIER + ", " + earlier + "]")));
    }

    @Test
    void allFaultsOfARequestAreToldAtOnce() {
        String json = request(
                        "\"target\": \"C\", \"massMg\": 0, \"bed\": {\"cartridgeGrams\": 13}, \"flowMlMin\": \"fast\"")
                .replace("\"hexane\"", "\"hexan\"")
                .replace("0.35", "1.35");
        assertEquals(
                new TreeSet<>(List.of(
                        "weak unknown-solvent",
                        "runs[0].rf.A rf-out-of-range",
                        "column.target unknown-target",
                        "column.massMg mass-out-of-range",
                        "column.bed.cartridgeGrams no-such-cartridge",
                        "column.flowMlMin wrong-type")),
                new TreeSet<>(told(json)));
    }

    @Test
    void aRequestWithoutAColumnOrOnAluminaIsTold() {
        assertEquals(List.of("column missing-field"), told(TWO + "}"));
        assertEquals(List.of("column wrong-type"), told(TWO + ", \"column\": 5}"));
        assertEquals(
                List.of("sorbent column-not-on-silica"),
                told(wanted("").replace("\"weak\"", "\"sorbent\": \"alumina\", \"weak\"")));
        assertEquals(List.of("request wrong-type"), told("[]"));
    }

    @Test
    void whatIsFarTooLargeIsRefusedAtOnce() {
        String long1 = wanted(", \"predictAt\": ["
                + IntStream.range(0, 101).mapToObj(i -> "5").collect(Collectors.joining(",")) + "]");
        assertEquals(List.of("column.predictAt too-many"), told(long1));
        byte[] megabyte = (wanted("") + " ".repeat(Exchange.MOST_BYTES)).getBytes(StandardCharsets.UTF_8);
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.columns().plan(megabyte, Setting.BENCH));
        assertEquals("too-large", bad.faults().get(0).code());
    }

    @Test
    void aLineOfABatchSaysWhatKindItIs() throws IOException {
        assertEquals(
                "r7",
                line(wanted("").replaceFirst("\\{", "{\"id\": \"r7\", \"kind\": \"column\", "))
                        .get("id")
                        .asText());
        assertTrue(
                line(wanted("").replaceFirst("\\{", "{\"kind\": \"column\", ")).has("plan"));
        assertTrue(line(TWO + ", \"kind\": \"advice\"}").has("advice"));
        assertEquals(line(TWO + "}"), line(TWO + ", \"kind\": \"advice\"}"));
        JsonNode unknown = line(TWO + ", \"id\": 3, \"kind\": \"colum\"}");
        assertEquals(3, unknown.get("id").asInt());
        assertEquals("kind", unknown.at("/error/field").asText());
        assertEquals("advice, column", unknown.at("/errors/0/allowed").asText());
        assertEquals("Did you mean column?", unknown.at("/errors/0/todo").asText());
        assertEquals("kind", line(TWO + ", \"kind\": 5}").at("/error/field").asText());
        JsonNode faulty = line(request("\"massMg\": 0").replaceFirst("\\{", "{\"id\": 4, \"kind\": \"column\", "));
        assertEquals(4, faulty.get("id").asInt());
        assertEquals(2, faulty.get("errors").size(), faulty.toString());
    }

    private static JsonNode line(String json) throws IOException {
        return MAPPER.readTree(EXCHANGE.line(json.getBytes(StandardCharsets.UTF_8), slip -> {
            throw new AssertionError(slip);
        }));
    }
}
