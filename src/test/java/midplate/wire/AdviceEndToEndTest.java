package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests through the real adviser: laws that every answer keeps; the readings are invented. */
class AdviceEndToEndTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange EXCHANGE = Exchange.builtIn();

    private static JsonNode answer(String json) throws IOException {
        String text = EXCHANGE.advice(json, Setting.BENCH).json();
        assertEquals(List.of(), Schemas.broken("advice-answer", text), text);
        return MAPPER.readTree(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"weak\": \"hexane\", \"strong\": \"ethyl acetate\"",
                "\"weak\": \"hexane\", \"strong\": \"diethyl ether\"",
                "\"weak\": \"dichloromethane\", \"strong\": \"methanol\"",
                "\"weak\": \"petroleum ether\", \"strong\": \"EtOAc\"",
            })
    void theMeasuredPairsAreAnswered(String pair) throws IOException {
        JsonNode answer = answer("{\"id\": 1, " + pair
                + ", \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}], \"predictAt\": [5, 40], \"curves\": true,"
                + " \"runs\": [{\"percentStrong\": 5, \"rf\": {\"A\": 0.2, \"B\": 0.3}}]}");
        String[] parts = answer.at("/advice/ratio").asText().split(":", -1);
        double weak = Double.parseDouble(parts[0]);
        double strong = Double.parseDouble(parts[1]);
        assertEquals(
                100 * strong / (weak + strong),
                answer.at("/advice/percentStrong").asDouble(),
                1e-4);
        double amount = answer.at("/advice/pour/weakMl").asDouble()
                + answer.at("/advice/pour/strongMl").asDouble();
        assertEquals(10, amount, 0.11); // the usual 10 ml, to the graduation
        double low = answer.at("/predictions/0/spots/A/rf").asDouble();
        double high = answer.at("/predictions/1/spots/A/rf").asDouble();
        assertTrue(low <= high, "a stronger eluent carries a spot no less far: " + answer.get("predictions"));
        int length = answer.at("/curves/percentStrong").size();
        assertEquals(length, answer.at("/curves/chance").size());
        assertEquals(length, answer.at("/curves/spots/A/rf").size());
    }

    @Test
    void withoutAnyPlateItNamesAFirstEluent() throws IOException {
        JsonNode answer = answer(
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}], \"runs\": []}");
        assertTrue(answer.at("/advice/probabilityAllInWindow").asDouble() > 0);
        assertTrue(answer.at("/advice/why").size() > 0);
    }

    @Test
    void theOrderOfRunsDoesNotMatter() throws IOException {
        String one = "{\"percentStrong\": 10, \"rf\": {\"A\": 0.11}}";
        String two = "{\"percentStrong\": 30, \"rf\": {\"A\": 0.42}}";
        String start =
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}], \"runs\": [";
        assertEquals(
                answer(start + one + "," + two + "]}").at("/advice/percentStrong"),
                answer(start + two + "," + one + "]}").at("/advice/percentStrong"));
    }
}
