package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import midplate.catalogue.FunctionalGroups;
import midplate.plate.Setting;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions about plates to run at once, answered with invented plates or by the program. */
class ScoutingRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String request(String more) {
        return "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}]" + more + "}";
    }

    private static Fault fault(String more) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.scouting(request(more), Setting.BENCH), () -> more);
        assertEquals(1, bad.faults().size(), bad.faults().toString());
        return bad.faults().get(0);
    }

    @Test
    void anAnswerKeepsItsSchemaInEveryPairAndLanguage() throws IOException {
        String methanol =
                "{\"weak\": \"dichloromethane\", \"strong\": \"methanol\", \"spots\": [{\"name\": \"A\"}], \"jars\": 1}";
        for (Language language : Language.values()) {
            for (String asked : List.of(methanol, request(", \"jars\": 2"))) {
                String answer = EXCHANGE.in(language).scouting(asked.getBytes(StandardCharsets.UTF_8), Setting.BENCH);
                assertEquals(List.of(), Schemas.broken("scouting-request", asked));
                assertEquals(List.of(), Schemas.broken("scouting-answer", answer), answer);
            }
        }
    }

    @Test
    void whatThePlanHoldsIsWritten() throws IOException {
        JsonNode answer = MAPPER.readTree(new FakeAdviser()
                .withSolvents()
                .scouting(request(", \"id\": \"s\""), Setting.BENCH)
                .json());
        assertEquals("s", answer.get("id").asText());
        assertEquals(10, answer.at("/jars/0/percentStrong").asDouble());
        assertEquals(9, answer.at("/jars/0/weakMl").asDouble());
        assertEquals("1:1", answer.at("/jars/1/ratio").asText());
        assertEquals(0.93, answer.get("chance").asDouble());
        assertEquals(0.9, answer.at("/straight/chance").asDouble());
        assertEquals("scout", answer.get("worth").asText());
        assertTrue(answer.get("habit") == null);
    }

    @Test
    void twoJarsAreTakenWhereNothingIsSaid() {
        ScoutingQuestion asked = ScoutingQuestion.read(
                JsonText.read(request(""), new FaultList(EXCHANGE.texts())),
                EXCHANGE.catalogue(),
                new Compounds(FunctionalGroups.builtIn()),
                Setting.BENCH,
                new FaultList(EXCHANGE.texts()));
        assertEquals(2, asked.jars());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "4", "-1", "1.5", "1e9"})
    void aNumberOfJarsThatIsNoneIsRefusedWithWhatIsAllowed(String jars) {
        Fault fault = fault(", \"jars\": " + jars);
        assertEquals("jars", fault.field());
        assertEquals(jars, fault.came());
        assertEquals("a whole number in [1, 3]", fault.allowed());
        assertEquals("Say how many plates may run at once: 1, 2 or 3.", fault.todo());
    }

    @Test
    void aTextInPlaceOfANumberIsRefused() {
        assertEquals("jars", fault(", \"jars\": \"two\"").field());
    }

    @Test
    void faultsOfJarsAndOfTheRestAreToldTogether() {
        BadInput bad = assertThrows(
                BadInput.class,
                () -> EXCHANGE.scouting(request(", \"jars\": 7, \"window\": [0.8, 0.2]"), Setting.BENCH));
        assertEquals(
                List.of("jars", "window"),
                bad.faults().stream().map(Fault::field).toList());
    }

    @Test
    void whatIsNoObjectIsRefused() {
        assertThrows(BadInput.class, () -> EXCHANGE.scouting("[]", Setting.BENCH));
    }
}
