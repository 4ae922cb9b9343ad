package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Spots whose error and shape were worked out elsewhere. All readings are invented. */
class SpotOfPhotoRequestTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Exchange EXCHANGE = Exchange.builtIn();

    private static JsonNode read(String spots) throws IOException {
        return JSON.readTree(
                EXCHANGE.reading("{\"heightMm\": 70, \"startMm\": 10, \"frontMm\": 60, \"spots\": [" + spots + "]}"));
    }

    private static double error(String spots) throws IOException {
        return read(spots).at("/readings/A/standardError").asDouble(-1);
    }

    private static String asked(double centreMm, String further) {
        return String.format(
                Locale.ROOT,
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}], \"predictAt\": [20], \"runs\":"
                        + " [{\"percentStrong\": 20, \"plate\": {\"heightMm\": 70, \"startMm\": 10, \"frontMm\": 60, \"spots\":"
                        + " [{\"spot\": \"A\", \"centreMm\": %s%s}]}}]}",
                centreMm,
                further);
    }

    private static JsonNode advised(double centreMm, String further) throws IOException {
        return JSON.readTree(
                EXCHANGE.advice(asked(centreMm, further), Setting.BENCH).json());
    }

    private static double band(JsonNode answer) {
        JsonNode spot = answer.at("/predictions/0/spots").iterator().next();
        return spot.get("high").asDouble() - spot.get("low").asDouble();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"errorMm\": 0         | errorMm | height-error-out-of-range",
                "\"errorMm\": -0.1      | errorMm | height-error-out-of-range",
                "\"errorMm\": 100.01    | errorMm | height-error-out-of-range",
                "\"errorMm\": \"0.2\"   | errorMm | wrong-type",
                "\"errorMm\": null      | errorMm | wrong-type",
                "\"errorMm\": 1e999     | errorMm | number-too-large",
                "\"shape\": \"round\"   | shape   | unknown-choice",
                "\"shape\": \"Streak\"  | shape   | unknown-choice",
                "\"shape\": \"sharp_head\" | shape | unknown-choice",
                "\"shape\": 1           | shape   | unknown-choice",
            })
    void aFaultIsToldWithItsPlace(String member, String field, String code) {
        BadInput reading =
                assertThrows(BadInput.class, () -> read("{\"spot\": \"A\", \"centreMm\": 30, " + member + "}"));
        assertEquals("spots[0]." + field, reading.faults().get(0).field());
        assertEquals(code, reading.faults().get(0).code());
        BadInput advice = assertThrows(BadInput.class, () -> advised(30, ", " + member));
        assertEquals("runs[0].plate.spots[0]." + field, advice.faults().get(0).field());
        assertEquals(1, advice.faults().size());
    }

    @Test
    void aSpotWithoutANameIsCalledByItsPlaceInWhatIsToldOfIt() throws IOException {
        JsonNode answer = read("{\"centreMm\": 30, \"shape\": \"sharp-head\"}");
        assertTrue(answer.at("/warnings/0/text").asText().startsWith("Spot no. 1"), answer.toString());
    }

    // own algebra: at Rf 0.5 and a run of 50 mm √(1.2² + 0.125)/50 = 0.02502, rounded to four decimals
    @Test
    void anRfHasTheErrorThatWasWorkedOutForItAndElseNone() throws IOException {
        assertEquals(0.025, error("{\"spot\": \"A\", \"rf\": 0.5, \"errorMm\": 1.2}"), 5e-5);
        assertEquals(-1, error("{\"spot\": \"A\", \"rf\": 0.5, \"shape\": \"streak\"}"));
        assertEquals(
                "at-start",
                read("{\"spot\": \"A\", \"rf\": 0, \"errorMm\": 1.2}")
                        .at("/readings/A/limit")
                        .asText());
    }

    @ParameterizedTest
    @ValueSource(doubles = {16, 25, 35, 47, 55})
    void halfAMillimetreAnswersAsARulerDoes(double centreMm) throws IOException {
        assertEquals(advised(centreMm, ""), advised(centreMm, ", \"errorMm\": 0.5"));
        assertEquals(advised(centreMm, ""), advised(centreMm, ", \"errorMm\": 0.5, \"shape\": \"compact\""));
    }

    /** Where the reading is nothing odd: a reading that contradicts what compounds are like may be sure of it when it is heard less. */
    @ParameterizedTest
    @ValueSource(doubles = {16, 25, 35, 47, 55})
    void aLargerErrorNeverNarrowsWhatIsKnown(double centreMm) throws IOException {
        double before = 0;
        for (double errorMm : new double[] {0.05, 0.5, 1, 2, 3, 5, 8}) {
            double band = band(advised(centreMm, ", \"errorMm\": " + errorMm));
            assertTrue(band >= before - 0.002, errorMm + " mm: " + band + " after " + before);
            before = Math.max(before, band);
        }
        double ruler = band(advised(centreMm, ""));
        assertTrue(before > 1.5 * ruler, before + " beside " + ruler);
    }

    @Test
    void anAdviceTellsThatASpotWasOverloadedAndWidensWhatItSays() throws IOException {
        JsonNode plain = advised(30, ", \"sizeMm\": 6");
        JsonNode head = advised(30, ", \"sizeMm\": 6, \"shape\": \"sharp-head\"");
        assertTrue(head.get("notes").findValuesAsText("key").contains("plate.spot-overloaded"), head.toString());
        assertEquals(List.of("runs[0]"), head.get("notes").findValuesAsText("about"));
        assertTrue(band(head) > band(plain), band(head) + " beside " + band(plain));
    }
}
