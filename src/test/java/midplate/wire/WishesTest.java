package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.advice.ApartNames;
import midplate.advice.NextPlate;
import midplate.advice.Question;
import midplate.advice.Wishes;
import midplate.chemistry.Solvent;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fields {@code shelf}, {@code apart} and {@code nextPlate} of a request, and what they add to its answer. */
class WishesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String START = "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": "
            + "[{\"name\": \"Alpha\"}, {\"name\": \"Beta\"}]";

    private static String with(String more) {
        return START + ", " + more + "}";
    }

    private static Question asked(String more) {
        FakeAdviser adviser = new FakeAdviser();
        adviser.withSolvents().advice(with(more), Setting.BENCH);
        return adviser.lastAsked();
    }

    private static List<Fault> faults(String more) {
        BadInput bad = assertThrows(BadInput.class, () -> FakeAdviser.exchange().advice(with(more), Setting.BENCH));
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.toString());
        }
        return bad.faults();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"shelf\": \"hexane\"                          | shelf    | wrong-type",
                "\"shelf\": null                                | shelf    | wrong-type",
                "\"shelf\": []                                  | shelf    | empty-shelf",
                "\"shelf\": [\"hexane\", 5]                     | shelf[1] | wrong-type",
                "\"shelf\": [\"hexane\", \"ethil acetate\"]     | shelf[1] | unknown-solvent",
                "\"shelf\": [\"\"]                              | shelf[0] | text-not-taken",
                "\"shelf\": [\"ethyl acetate\", \"heptane\"]    | weak     | not-on-shelf",
                "\"shelf\": [\"hexane\", \"ether\"]             | strong   | not-on-shelf",
                "\"apart\": \"Alpha\"                           | apart    | wrong-type",
                "\"apart\": [\"Alpha\"]                         | apart[0] | wrong-type",
                "\"apart\": [[\"Alpha\"]]                       | apart[0] | wrong-type",
                "\"apart\": [[\"Alpha\", \"Beta\", \"Alpha\"]]  | apart[0] | wrong-type",
                "\"apart\": [[\"Alpha\", \"Alpha\"]]            | apart[0] | apart-from-itself",
                "\"apart\": [[\"Alpha\", \"Betta\"]]            | apart[0][1] | unknown-spot",
                "\"apart\": [[7, \"Beta\"]]                     | apart[0][0] | wrong-type",
                "\"nextPlate\": 50                              | nextPlate | wrong-type",
                "\"nextPlate\": {\"jar\": 50}                   | nextPlate.jar | unknown-field",
                "\"nextPlate\": {\"jarDiameterMm\": 0}          | nextPlate.jarDiameterMm | jar-out-of-range",
                "\"nextPlate\": {\"jarDiameterMm\": 10}         | nextPlate.jarDiameterMm | jar-out-of-range",
                "\"nextPlate\": {\"jarDiameterMm\": 301}        | nextPlate.jarDiameterMm | jar-out-of-range",
                "\"nextPlate\": {\"jarDiameterMm\": \"NaN\"}    | nextPlate.jarDiameterMm | wrong-type",
                "\"nextPlate\": {\"jarDiameterMm\": 1e999}      | nextPlate.jarDiameterMm | number-too-large",
                "\"nextPlate\": {\"plate\": [70, 10, 62]}       | nextPlate.plate | wrong-type",
                "\"nextPlate\": {\"plate\": {\"widthMm\": 50}}  | nextPlate.plate.widthMm | unknown-field",
                "\"nextPlate\": {\"plate\": {\"startMm\": \"1\"}} | nextPlate.plate.startMm | wrong-type",
                "\"nextPlate\": {\"plate\": {\"startMm\": -1}}  | nextPlate.plate.startMm | length-out-of-range",
                "\"nextPlate\": {\"plate\": {\"heightMm\": 2000}} | nextPlate.plate.heightMm | length-out-of-range",
                "\"nextPlate\": {\"plate\": {\"frontMm\": 8}}   | nextPlate.plate.frontMm | front-not-above-start",
                "\"nextPlate\": {\"plate\": {\"frontMm\": 12}}  | nextPlate.plate.frontMm | run-too-short",
                "\"nextPlate\": {\"plate\": {\"frontMm\": 71}}  | nextPlate.plate.frontMm | front-beyond-top",
            })
    void whatCannotBeTakenIsToldAtItsField(String more, String field, String code) {
        List<Fault> faults = faults(more);
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(
                List.of(field, code),
                List.of(faults.get(0).field(), faults.get(0).code()));
    }

    @Test
    void theNearestNameIsOfferedAndTheShelfIsNamed() {
        assertTrue(faults("\"apart\": [[\"Alpha\", \"Betta\"]]").get(0).todo().contains("Beta"));
        assertTrue(faults("\"shelf\": [\"hexan\"]").get(0).todo().contains("hexane"));
        assertEquals(
                "ethyl acetate, heptane",
                faults("\"shelf\": [\"EtOAc\", \"heptane\"]").get(0).allowed());
    }

    @Test
    void allFaultsAreToldAtOnce() {
        List<Fault> faults = faults("\"shelf\": [\"x1x\"], \"apart\": [[\"Alpha\"], [\"Gamma\", \"Beta\"]], "
                + "\"nextPlate\": {\"jarDiameterMm\": 5, \"plate\": {\"frontMm\": 8}}");
        assertEquals(
                List.of("shelf[0]", "apart[0]", "apart[1][0]", "nextPlate.jarDiameterMm", "nextPlate.plate.frontMm"),
                faults.stream().map(Fault::field).toList());
    }

    @Test
    void moreThanTheMostIsRefused() {
        String many = IntStream.range(0, 51).mapToObj(i -> "\"hexane\"").collect(Collectors.joining(", "));
        assertEquals("too-many", faults("\"shelf\": [" + many + "]").get(0).code());
        String pairs =
                IntStream.range(0, 11).mapToObj(i -> "[\"Alpha\", \"Beta\"]").collect(Collectors.joining(", "));
        assertEquals("too-many", faults("\"apart\": [" + pairs + "]").get(0).code());
    }

    @Test
    void namesIdsAndSynonymsAreTakenEachOnce() {
        Question question = asked("\"shelf\": [\"n-Hexane\", \"hexane\", \"EtOAc\", \"diethyl-ether\"], "
                + "\"apart\": [[\"Alpha\", \" Beta \"], [\"Beta\", \"Alpha\"]]");
        assertEquals(
                List.of("hexane", "ethyl-acetate", "diethyl-ether"),
                question.wishes().shelf().solvents().stream().map(Solvent::id).toList());
        assertEquals(List.of(new ApartNames("Alpha", "Beta")), question.wishes().apart());
    }

    @Test
    void whatIsNotSaidIsUsual() {
        assertEquals(Wishes.NONE, asked("\"runs\": []").wishes());
        assertEquals(Wishes.NONE, asked("\"apart\": [], \"nextPlate\": {}").wishes());
        assertEquals(
                new NextPlate(40, 70, 12, 62),
                asked("\"nextPlate\": {\"jarDiameterMm\": 40, \"plate\": {\"startMm\": 12}}")
                        .wishes()
                        .nextPlate());
    }

    private static JsonNode answer(String more) throws IOException {
        String text = Exchange.builtIn().advice(with(more), Setting.BENCH).json();
        assertEquals(List.of(), Schemas.broken("advice-answer", text), text);
        return MAPPER.readTree(text);
    }

    private static final String RUN = "\"runs\": [{\"percentStrong\": 15, \"rf\": {\"Alpha\": 0.16, \"Beta\": 0.27}}]";

    @Test
    void theAnswerTellsTheGoalAndEachPair() throws IOException {
        JsonNode answer = answer(RUN + ", \"curves\": true, \"apart\": [[\"Beta\", \"Alpha\"]]");
        double goal = answer.at("/advice/probabilityGoal").asDouble();
        assertTrue(goal <= answer.at("/advice/probabilityAllInWindow").asDouble());
        assertEquals("[\"Beta\",\"Alpha\"]", answer.at("/advice/apart/0/spots").toString());
        assertTrue(answer.at("/advice/apart/0/probability").asDouble() >= goal);
        assertEquals(
                "answer.chance-goal",
                answer.at("/advice/probabilityInWords/key").asText());
        String words = answer.at("/advice/probabilityInWords/text").asText();
        assertTrue(words.contains("about " + Math.round(100 * goal) + " of 100"), words);
        assertTrue(words.contains("Beta from Alpha") && words.contains("0.1"), words);
        assertEquals(
                answer.at("/curves/percentStrong").size(),
                answer.at("/curves/goal").size());
        assertEquals(
                answer.at("/curves/percentStrong").size(),
                answer.at("/curves/smallestResolution").size());
    }

    @Test
    void withoutPairsTheGoalIsTheWindow() throws IOException {
        JsonNode answer = answer(RUN + ", \"curves\": true");
        assertEquals(answer.at("/advice/probabilityAllInWindow"), answer.at("/advice/probabilityGoal"));
        assertEquals(
                "answer.chance-all", answer.at("/advice/probabilityInWords/key").asText());
        assertFalse(answer.get("advice").has("apart"));
        assertFalse(answer.get("curves").has("goal"));
    }

    // By hand: 10 ml in a jar of 40 mm stand 7.96 mm high, over a line at 7 mm.
    @Test
    void theCardStandsInTheAnswer() throws IOException {
        JsonNode card = answer(RUN + ", \"nextPlate\": {\"jarDiameterMm\": 40, \"plate\": {\"startMm\": 7}}")
                .at("/advice/card");
        List<String> names = new ArrayList<>();
        card.fieldNames().forEachRemaining(names::add);
        assertEquals(
                List.of(
                        "levelMm",
                        "startMm",
                        "stopMm",
                        "runMm",
                        "lowMinutes",
                        "highMinutes",
                        "time",
                        "order",
                        "paper",
                        "warnings"),
                names);
        assertEquals(8.0, card.get("levelMm").asDouble());
        String about = Math.round(card.get("lowMinutes").asDouble()) + " to "
                + Math.round(card.get("highMinutes").asDouble()) + " min";
        assertTrue(card.at("/time/text").asText().contains("about " + about), card.toString());
        assertEquals(55, card.get("runMm").asInt());
        assertEquals("card.level-over-start", card.at("/warnings/0/key").asText());
        assertTrue(card.at("/warnings/0/text").asText().contains("5.0 ml, 4.0 mm deep"), card.toString());
    }
}
