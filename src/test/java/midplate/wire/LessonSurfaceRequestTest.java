package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plates that develop and surfaces, over the wire; all samples invented. */
class LessonSurfaceRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String SAMPLE = """
            "compounds": [{"name": "A", "compound": "biphenyl"}, {"name": "B", "smiles": "CC(=O)c1ccccc1"},
              {"name": "C", "class": "ester"}], "weak": "hexane", "strong": "ethyl acetate", "percentStrong": 20""";
    private static final String CLIMB =
            "{" + SAMPLE + ", \"plate\": {\"heightMm\": 80, \"startMm\": 12, \"levelMm\": 4, \"stopMm\": 70}}";
    private static final String WHY = "{" + SAMPLE + ", \"percents\": [0, 50, 100]}";

    private static String climb(String request) {
        return EXCHANGE.lessons().climb(request.getBytes(StandardCharsets.UTF_8));
    }

    private static String why(String request) {
        return EXCHANGE.lessons().why(request.getBytes(StandardCharsets.UTF_8));
    }

    private static TreeSet<String> told(Function<String, String> asked, String request) {
        BadInput bad = assertThrows(BadInput.class, () -> asked.apply(request), () -> request);
        TreeSet<String> told = new TreeSet<>();
        for (Fault fault : bad.faults()) {
            assertTrue(!fault.message().isBlank()
                    && !fault.allowed().isBlank()
                    && !fault.todo().isBlank());
            told.add(fault.field() + " " + fault.code());
        }
        return told;
    }

    @Test
    void answersKeepTheirSchemasInEveryLanguage() throws IOException {
        assertEquals(List.of(), Schemas.broken("lesson-climb-request", CLIMB));
        assertEquals(List.of(), Schemas.broken("lesson-why-request", WHY));
        for (Language language : Language.values()) {
            LessonAnswers lessons = EXCHANGE.in(language).lessons();
            for (String strong : List.of("ethyl acetate", "acetone", "chloroform")) {
                byte[] climb = CLIMB.replace("ethyl acetate", strong).getBytes(StandardCharsets.UTF_8);
                byte[] why = WHY.replace("ethyl acetate", strong).getBytes(StandardCharsets.UTF_8);
                assertEquals(List.of(), Schemas.broken("lesson-climb-answer", lessons.climb(climb)));
                assertEquals(List.of(), Schemas.broken("lesson-why-answer", lessons.why(why)));
            }
        }
    }

    @Test
    void readersAndSchemasKnowTheSameFields() throws IOException {
        assertEquals(new TreeSet<>(ClimbReader.FIELDS), fields("lesson-climb-request", "/properties"));
        assertEquals(
                new TreeSet<>(ClimbReader.PLATE_FIELDS),
                fields("lesson-climb-request", "/properties/plate/properties"));
        assertEquals(new TreeSet<>(WhyReader.FIELDS), fields("lesson-why-request", "/properties"));
    }

    private static TreeSet<String> fields(String schema, String at) throws IOException {
        TreeSet<String> names = new TreeSet<>();
        Schemas.read(schema).at(at).fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void theAnswerHoldsTheMomentsThatMatterExactly() throws IOException {
        JsonNode answer = MAPPER.readTree(climb(CLIMB));
        int last = answer.get("minutes").size() - 1;
        assertEquals(70, answer.get("frontMm").get(last).asDouble());
        assertEquals(12, answer.get("frontMm").get(1).asDouble(), "the start line is passed at a moment told");
        assertEquals(
                answer.at("/events/0/minutes").asDouble(),
                answer.get("minutes").get(1).asDouble());
        double rf = answer.at("/compounds/0/rf").asDouble();
        double end = answer.at("/compounds/0/centreMm").get(last).asDouble();
        assertEquals(12 + rf * 58, end, 58 * 5e-5 + 1e-5, "Rf of four decimals");
    }

    @Test
    void whatIsOnlyAClassHasEnergiesAndNoBalance() throws IOException {
        JsonNode answer = MAPPER.readTree(why(WHY));
        assertTrue(answer.at("/compounds/1").has("hold"));
        assertTrue(!answer.at("/compounds/2").has("hold")
                && answer.at("/compounds/2").has("strongest"));
        for (JsonNode input : answer.get("inputs")) {
            assertTrue(EXCHANGE.sources().contains("\"" + input.get("source").asText() + "\""), input.toString());
        }
        assertEquals(8, answer.get("inputs").size(), "strength, area, molar mass, density of two solvents");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"levelMm\": 4         | \"levelMm\": 12      | plate.levelMm climb-in-pool",
                "\"levelMm\": 4         | \"levelMm\": -1      | plate.levelMm length-out-of-range",
                "\"levelMm\": 4         | \"levelMm\": \"4\"   | plate.levelMm wrong-type",
                "\"levelMm\": 4         | \"depthMm\": 4       | plate.depthMm unknown-field",
                "\"stopMm\": 70         | \"stopMm\": 81       | plate.stopMm front-beyond-top",
                "\"stopMm\": 70         | \"stopMm\": 13       | plate.stopMm run-too-short",
                "\"percentStrong\": 20  | \"percentStrong\": 101 | percentStrong percent-out-of-range",
                "\"percentStrong\": 20  | \"setting\": \"class\" | percentStrong missing-field",
                "\"biphenyl\"           | \"biphenol\"         | compounds[0].compound unknown-lesson-compound",
                "\"ethyl acetate\"      | \"water\"            | strong unknown-solvent",
            })
    void eachFaultOfAPlateIsToldByItsField(String good, String bad, String told) {
        assertTrue(CLIMB.contains(good), good);
        assertEquals(new TreeSet<>(List.of(told)), told(LessonSurfaceRequestTest::climb, CLIMB.replace(good, bad)));
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertEquals(
                new TreeSet<>(List.of(
                        "percentStrong percent-out-of-range",
                        "percents[1] wrong-type",
                        "percents[2] percent-out-of-range")),
                told(LessonSurfaceRequestTest::why, WHY.replace("20", "-1").replace("0, 50, 100", "0, \"x\", 200")));
        assertEquals(
                new TreeSet<>(List.of("percents too-many")),
                told(LessonSurfaceRequestTest::why, WHY.replace("0, 50, 100", "0, ".repeat(101) + "1")));
        assertEquals(new TreeSet<>(List.of("request wrong-type")), told(LessonSurfaceRequestTest::climb, "[]"));
    }
}
