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
import midplate.plate.Setting;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions about other eluents, answered by the program or with an invented answer; all readings are invented. */
class OthersRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String request(String more) {
        return "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}],"
                + " \"runs\": [{\"percentStrong\": 20, \"rf\": {\"A\": 0.3, \"B\": 0.35}}]" + more + "}";
    }

    private static Fault fault(String request) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.otherEluents(request, Setting.BENCH), () -> request);
        assertEquals(1, bad.faults().size(), bad.faults().toString());
        return bad.faults().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ", \"rank\": \"safety\"",
                ", \"rank\": \"drying\", \"percentStrong\": 0",
                ", \"rank\": \"measured\", \"percentStrong\": 100",
                ", \"shelf\": [\"hexane\", \"EtOAc\", \"ether\", \"DCM\", \"MeOH\", \"toluene\"]",
                ", \"shelf\": [\"hexane\", \"EtOAc\"], \"id\": 7",
                ", \"additive\": \"acetic acid 1 %\", \"window\": [0.2, 0.35]",
            })
    void anAnswerKeepsItsSchemaInEveryLanguage(String more) throws IOException {
        for (Language language : Language.values()) {
            String answer =
                    EXCHANGE.in(language).otherEluents(request(more).getBytes(StandardCharsets.UTF_8), Setting.BENCH);
            assertEquals(List.of(), Schemas.broken("other-eluents-request", request(more)));
            assertEquals(List.of(), Schemas.broken("other-eluents-answer", answer), answer);
        }
    }

    @Test
    void theWishComesThroughTheDoor() throws IOException {
        JsonNode answer = MAPPER.readTree(new FakeAdviser()
                .withSolvents()
                .otherEluents(request(", \"percentStrong\": 33, \"rank\": \"drying\", \"id\": \"o\""), Setting.BENCH)
                .json());
        assertEquals("o", answer.get("id").asText());
        assertEquals(33, answer.at("/of/percentStrong").asDouble());
        assertEquals("4:1", answer.at("/of/ratio").asText());
        assertEquals("drying", answer.get("rank").asText());
        assertEquals(0, answer.get("others").size());
    }

    @Test
    void whatTheProgramFoundIsWritten() throws IOException {
        JsonNode answer = MAPPER.readTree(EXCHANGE.otherEluents(request(", \"percentStrong\": 20"), Setting.AUTOMATED)
                .json());
        JsonNode ether = null;
        for (JsonNode other : answer.get("others")) {
            ether = other.at("/strong/id").asText().equals("diethyl-ether") ? other : ether;
        }
        assertTrue(ether != null, answer.toString());
        assertEquals("other", ether.get("class").asText());
        assertEquals("measured", ether.get("basis").asText());
        assertEquals(68.7, ether.get("boilingPoint").asDouble());
        assertTrue(ether.at("/equal/low").asDouble() < ether.at("/equal/high").asDouble());
        assertEquals(List.of("A", "B"), MAPPER.convertValue(ether.at("/apart/spots"), List.class));
        assertTrue(ether.at("/spots/A/rf").asDouble() > 0.1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "101", "1e9"})
    void aPercentageThatIsNoneIsRefused(String percent) {
        Fault fault = fault(request(", \"percentStrong\": " + percent));
        assertEquals("percentStrong", fault.field());
        assertEquals("[0, 100]", fault.allowed());
    }

    @Test
    void anUnknownOrderIsRefusedWithTheNearest() {
        Fault fault = fault(request(", \"rank\": \"safty\""));
        assertEquals("rank", fault.field());
        assertEquals("apart, safety, drying, measured", fault.allowed());
        assertTrue(fault.todo().contains("safety"), fault.todo());
        assertEquals("rank", fault(request(", \"rank\": 3")).field());
    }

    @Test
    void anEmptyShelfIsRefused() {
        Fault fault = fault(request(", \"shelf\": []"));
        assertEquals("shelf", fault.field());
        assertFalse(fault.todo().isBlank());
    }

    @ParameterizedTest
    @CsvSource({"hexane, methanol, strong", "hexane, hexane, strong", "hexane, acetonitrile, strong"})
    void twoSolventsThatAreNoEluentAreRefused(String weak, String strong, String field) {
        assertEquals(
                field,
                fault("{\"weak\": \"" + weak + "\", \"strong\": \"" + strong + "\", \"spots\": [{\"name\": \"A\"}]}")
                        .field());
    }

    @Test
    void aluminaIsRefusedAsForAdvice() {
        Fault fault = fault("{\"weak\": \"hexane\", \"strong\": \"ether\", \"sorbent\": \"alumina\","
                + " \"spots\": [{\"name\": \"A\"}]}");
        assertEquals("sorbent", fault.field());
    }

    @Test
    void faultsOfTheOrderAndOfTheRestAreToldTogether() {
        BadInput bad = assertThrows(
                BadInput.class,
                () -> EXCHANGE.otherEluents(request(", \"rank\": \"x\", \"window\": [0.8, 0.2]"), Setting.BENCH));
        assertEquals(
                List.of("rank", "window"),
                bad.faults().stream().map(Fault::field).toList());
        assertThrows(BadInput.class, () -> EXCHANGE.otherEluents("[]", Setting.BENCH));
    }

    @Test
    void adviceSaysWhatItRestsOn() throws IOException {
        assertEquals(
                "measured",
                MAPPER.readTree(EXCHANGE.advice(request(""), Setting.BENCH).json())
                        .at("/advice/basis")
                        .asText());
    }
}
