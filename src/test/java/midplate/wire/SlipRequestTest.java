package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import midplate.lesson.Slip;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Slips over the wire: what the adviser itself makes of numbers gone wrong. Samples invented. */
class SlipRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String request(String further) {
        return "{\"compounds\": [{\"name\": \"A\", \"compound\": \"benzophenone\"}, {\"name\": \"B\", \"compound\": \"benzhydrol\"}],"
                + " \"weak\": \"hexane\", \"strong\": \"ethyl acetate\"" + further + "}";
    }

    private static JsonNode asked(String further) throws IOException {
        return MAPPER.readTree(EXCHANGE.lessons().slips(request(further)));
    }

    private static JsonNode one(String slip, String further) throws IOException {
        return MAPPER.readTree(EXCHANGE.lessons()
                .slips("{\"compounds\": [{\"name\": \"A\", \"compound\": \"benzhydrol\"}], \"weak\": \"hexane\","
                        + " \"strong\": \"ethyl acetate\", \"slip\": \"" + slip + "\"" + further + "}"));
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void everySlipKeepsItsSchemaInEveryLanguageAndSaysWhatItRestsOn(Slip slip) throws IOException {
        String request = request(", \"slip\": \"" + slip.id() + "\"");
        assertEquals(List.of(), Schemas.broken("lesson-slips-request", request));
        Set<String> words = new HashSet<>();
        for (Language language : Language.values()) {
            String answer = EXCHANGE.in(language).lessons().slips(request);
            assertEquals(List.of(), Schemas.broken("lesson-slips-answer", answer), answer);
            JsonNode told = MAPPER.readTree(answer);
            assertEquals(slip.kind().id(), told.get("kind").asText());
            assertEquals(slip.field(), told.at("/size/field").asText());
            for (String part : List.of("what", "formula", "now", "next")) {
                assertTrue(words.add(told.at("/" + part + "/text").asText()), part);
            }
        }
        if (slip.kind() == Slip.Kind.ILLUSTRATION) {
            String formula = asked(", \"slip\": \"" + slip.id() + "\"")
                    .at("/formula/text")
                    .asText();
            assertTrue(formula.startsWith("Illustration, an own rough choice"), formula);
        }
    }

    /** What is noted too high is advised weaker, what is noted too low stronger. */
    @ParameterizedTest
    @CsvSource({
        "from-edge, weak",
        "front-to-top, weak",
        "front-not-marked, weak",
        "unlined-jar, weak",
        "overload, weak",
        "acid-streaking, strong",
    })
    void theAdviceErrsAgainstTheReading(String slip, String errs) throws IOException {
        JsonNode told = one(slip, "");
        double error = told.at("/noted/0/advice/error/bestPercentStrong").asDouble();
        double off = told.at("/noted/0/spots/0/rf").asDouble()
                - told.at("/careful/spots/0/rf").asDouble();
        assertTrue(Math.abs(off) > 0.005, told.toString());
        assertEquals(errs.equals("weak") ? -1 : 1, Math.signum(error), told.toString());
        assertEquals(-Math.signum(off), Math.signum(error), told.toString());
        double percent = told.at("/noted/0/advice/error/percentStrong").asDouble();
        assertEquals(percent == 0 ? "same" : errs, told.get("errs").asText());
    }

    @Test
    void aSampleAboveTheLineErrsWeakAndBelowItStrong() throws IOException {
        double above = one("start-line-off", ", \"offMm\": 8")
                .at("/noted/0/advice/error/bestPercentStrong")
                .asDouble();
        double below = one("start-line-off", ", \"offMm\": -3")
                .at("/noted/0/advice/error/bestPercentStrong")
                .asDouble();
        assertTrue(above < 0 && below > 0, above + " " + below);
    }

    @Test
    void aShortRunErrsToBothSidesAndLessTheLongerItIs() throws IOException {
        double before = Double.POSITIVE_INFINITY;
        for (int run : new int[] {8, 20, 52}) {
            JsonNode told = one("stopped-short", ", \"runMm\": " + run);
            double low = told.at("/noted/0/advice/bestPercentStrong").asDouble();
            double high = told.at("/noted/1/advice/bestPercentStrong").asDouble();
            assertTrue(low >= high, "read too low, more of the strong solvent is advised: " + low + " " + high);
            assertTrue(low - high <= before, run + " mm: " + (low - high));
            before = low - high;
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Slip.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"STOPPED_SHORT", "FRONT_TO_TOP"})
    void aSlipWithoutSizeChangesNoAdvice(Slip slip) throws IOException {
        double none = slip.size(midplate.lesson.SlipPlate.USUAL).none();
        JsonNode told = asked(", \"slip\": \"" + slip.id() + "\", \"" + slip.field() + "\": " + none);
        assertEquals("same", told.get("errs").asText(), told.toString());
        assertEquals(0, told.at("/noted/0/advice/error/bestPercentStrong").asDouble(), told.toString());
        assertEquals(told.at("/careful/advice"), told.at("/noted/0/advice"));
    }

    @Test
    void anEluentTooWeakOrTooStrongLeavesBounds() throws IOException {
        JsonNode weak = one("too-weak", ", \"percentStrong\": 10, \"timesWeaker\": 20");
        assertEquals(0.5, weak.at("/seen/percentStrong").asDouble());
        assertTrue(weak.at("/seen/spots/0/mm").asDouble()
                < weak.at("/right/spots/0/mm").asDouble());
        JsonNode strong = asked(", \"slip\": \"too-strong\", \"timesStronger\": 5");
        assertEquals(100, strong.at("/seen/percentStrong").asDouble());
        assertEquals("at-front", strong.at("/noted/0/spots/0/limit").asText());
        assertTrue(strong.get("does").toString().contains("lesson.slip-does-lies"));
    }

    @Test
    void whatTheProgramNoticesIsToldAndWhatItDoesNotIsNot() throws IOException {
        assertTrue(asked("").get("noticed").toString().contains("plate.start-at-edge"));
        assertTrue(
                asked(", \"slip\": \"front-to-top\"").get("noticed").toString().contains("plate.front-at-top"));
        assertEquals(0, asked(", \"slip\": \"start-line-off\"").get("noticed").size());
        JsonNode refused = asked(", \"slip\": \"front-not-marked\", \"lowerMm\": 15");
        assertEquals("refused", refused.get("errs").asText());
        assertFalse(refused.at("/noted/0").has("advice"));
    }

    @Test
    void schemaAndReaderKnowTheSameFields() throws IOException {
        JsonNode schema = Schemas.read("lesson-slips-request");
        Set<String> known = new TreeSet<>();
        schema.get("properties").fieldNames().forEachRemaining(known::add);
        assertEquals(new TreeSet<>(SlipReader.FIELDS), known);
        Set<String> slips = new TreeSet<>();
        schema.at("/properties/slip/enum").forEach(each -> slips.add(each.asText()));
        assertEquals(new TreeSet<>(Slip.ids()), slips);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"offMm\": 3 | offMm size-of-another-slip",
                "\"edgeMm\": -1 | edgeMm slip-size-out-of-range",
                "\"edgeMm\": 11 | edgeMm slip-size-out-of-range",
                "\"edgeMm\": \"10\" | edgeMm wrong-type",
                "\"slip\": \"in-the-pool\", \"surfaceMm\": 80 | surfaceMm slip-size-out-of-range",
                "\"slip\": \"stopped-short\", \"runMm\": 53 | runMm slip-size-out-of-range",
                "\"slip\": \"pool\" | slip unknown-choice",
                "\"percentStrong\": 101 | percentStrong percent-out-of-range",
                "\"plate\": {\"startMm\": -1} | plate.startMm length-out-of-range",
                "\"plate\": {\"startMm\": 62} | plate.frontMm front-not-above-start",
                "\"plate\": {\"frontMm\": 71} | plate.frontMm front-beyond-top",
                "\"plate\": {\"levelMm\": 5} | plate.levelMm unknown-field",
                "\"plate\": [] | plate wrong-type",
            })
    void eachFaultIsToldByItsField(String further, String told) {
        BadInput bad =
                assertThrows(BadInput.class, () -> EXCHANGE.lessons().slips(request(", " + further)), () -> further);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith("."), fault.toString());
        }
        assertEquals(
                List.of(told),
                bad.faults().stream()
                        .map(fault -> fault.field() + " " + fault.code())
                        .toList());
    }

    @Test
    void allFaultsAreToldAtOnce() {
        BadInput bad = assertThrows(
                BadInput.class,
                () -> EXCHANGE.lessons()
                        .slips(
                                "{\"slip\": \"x\", \"percentStrong\": -1, \"weak\": \"hexane\", \"plate\": {\"startMm\": -1}}"));
        assertEquals(
                Set.of("slip", "percentStrong", "compounds", "strong", "plate.startMm"),
                new HashSet<>(bad.faults().stream().map(Fault::field).toList()));
    }
}
