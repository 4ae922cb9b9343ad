package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings of a class as they are asked about; all of them are invented. */
class ClassRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String SAMPLE =
            "\"compounds\": [{\"name\": \"A\", \"compound\": \"benzophenone\"}, {\"name\": \"B\", \"compound\": \"benzhydrol\"}],"
                    + " \"weak\": \"hexane\", \"strong\": \"ethyl-acetate\", \"percentStrong\": 20";
    private static final String ONE = "{\"pair\": \"1\", \"spot\": \"A\", \"rf\": 0.5}";
    private static final String HEIGHTS =
            "{\"pair\": \"1\", \"plate\": 2, \"spot\": \"B\", \"centreMm\": 30, \"startMm\": 10, \"frontMm\": 60}";

    private static String asked(String... readings) {
        return "{" + SAMPLE + ", \"readings\": [" + String.join(", ", readings) + "]}";
    }

    private static JsonNode answer(Language language, String request) throws IOException {
        String answer = EXCHANGE.in(language).lessons().classReadings(request.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of(), Schemas.broken("lesson-class-answer", answer), answer);
        return MAPPER.readTree(answer);
    }

    private static String example(Language language, String drawn) {
        return EXCHANGE.in(language)
                .lessons()
                .classExample(("{" + SAMPLE + ", " + drawn + "}").getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> told(Runnable asking) {
        BadInput bad = assertThrows(BadInput.class, asking::run);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().matches("(?s).*[.?}]"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    private static List<String> told(String request) {
        return told(() -> EXCHANGE.lessons().classReadings(request.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void schemaAndReaderKnowTheSameFields() throws IOException {
        JsonNode request = Schemas.read("lesson-class-request");
        assertEquals(new TreeSet<>(ClassAnswers.FIELDS), properties(request));
        assertEquals(new TreeSet<>(ClassReadingsReader.READING), properties(request.at("/properties/readings/items")));
        assertEquals(
                ClassReadingsReader.MOST_READINGS,
                request.at("/properties/readings/maxItems").asInt());
        assertEquals(new TreeSet<>(ClassAnswers.EXAMPLE), properties(Schemas.read("lesson-class-example-request")));
    }

    private static Set<String> properties(JsonNode schema) {
        Set<String> names = new TreeSet<>();
        schema.get("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    // by hand: (30 − 10)/(60 − 10) = 0.4
    @Test
    void heightsBecomeAnRfAndAnswersKeepTheirSchemaInEveryLanguage() throws IOException {
        assertEquals(List.of(), Schemas.broken("lesson-class-request", asked(ONE, HEIGHTS)));
        for (Language language : Language.values()) {
            JsonNode answer = answer(language, asked(ONE, HEIGHTS));
            assertEquals(0.4, answer.at("/readings/1/rf").asDouble(), 1e-12);
            assertEquals(0.4, answer.at("/spots/1/mean").asDouble(), 1e-12);
            assertEquals(2, answer.get("plates").size());
            assertTrue(answer.at("/spots/0/model/low").asDouble()
                    < answer.at("/spots/0/model/high").asDouble());
        }
    }

    @Test
    void withoutCompoundsNothingIsForetold() throws IOException {
        JsonNode answer = answer(Language.ENGLISH, "{\"readings\": [" + ONE + "]}");
        assertTrue(answer.at("/spots/0/model").isMissingNode());
        assertEquals(
                "lesson.class-spot-unforetold", answer.at("/spots/0/text/key").asText());
        JsonNode further = answer(Language.ENGLISH, asked(ONE, ONE.replace("\"A\"", "\"Z\"")));
        assertEquals("Z", further.at("/spots/1/spot").asText());
        assertTrue(further.at("/spots/1/model").isMissingNode());
    }

    @Test
    void aClassOfOneCodeIsTheSameClass() throws IOException {
        String made = example(Language.ENGLISH, "\"seed\": 12345, \"pairs\": 30");
        assertEquals(List.of(), Schemas.broken("lesson-class-example-answer", made), made);
        JsonNode first = MAPPER.readTree(made);
        assertEquals(30, first.get("rows").size());
        String code = first.get("code").asText();
        assertEquals(made, example(Language.ENGLISH, "\"code\": \"" + code.toLowerCase(java.util.Locale.ROOT) + "\""));
        JsonNode german = MAPPER.readTree(example(Language.GERMAN, "\"code\": \"" + code + "\""));
        for (int i = 0; i < 30; i++) {
            assertEquals(first.at("/rows/" + i + "/rf"), german.at("/rows/" + i + "/rf"));
        }
        assertNotEquals(made, example(Language.ENGLISH, "\"seed\": 12346, \"pairs\": 30"));
        assertEquals("lesson.class-invented", first.at("/invented/key").asText());
    }

    // the pair named as hidden divided from the edge: behind its Rf lies (Rf − σ)/(1 − σ) with σ = start/front, never
    // below 0 by more than
    // rounding, which other pairs' low spots are not held to
    @Test
    void aPairThatMeasuresFromTheEdgeReadsHighInLowSpots() throws IOException {
        for (int seed = 1; seed <= 20; seed++) {
            JsonNode made = MAPPER.readTree(example(Language.ENGLISH, "\"seed\": " + seed));
            String hidden = made.at("/hidden/pair").asText();
            for (JsonNode row : made.get("rows")) {
                double part = row.get("startMm").asDouble() / row.get("frontMm").asDouble();
                if (row.get("pair").asText().equals(hidden)
                        && made.at("/hidden/slip").asText().equals("edge")) {
                    row.get("rf").forEach(rf -> assertTrue(rf.asDouble() >= part - 0.005, row.toString()));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.5 | 1.2 | readings[0].rf rf-out-of-range",
                "0.5 | \"0.5\" | readings[0].rf wrong-type",
                "0.5 | null | readings[0].rf wrong-type",
                "\"rf\": 0.5 | \"lane\": 1 | readings[0].rf class-height-or-rf",
                "\"rf\": 0.5 | \"rf\": 0.5, \"centreMm\": 30 | readings[0].centreMm class-height-or-rf",
                "\"centreMm\": 30 | \"centreMm\": 70 | readings[1].centreMm spot-beyond-front",
                "\"centreMm\": 30 | \"centreMm\": 3 | readings[1].centreMm spot-below-start",
                "\"frontMm\": 60 | \"frontMm\": 12 | readings[1].frontMm front-not-above-start",
                "\"startMm\": 10 | \"startMm\": -1 | readings[1].startMm length-out-of-range",
                "\"plate\": 2 | \"plate\": 5 | readings[1].plate number-out-of-range",
                "\"plate\": 2 | \"plate\": 1.5 | readings[1].plate number-out-of-range",
                "\"plate\": 2 | \"lane\": 9 | readings[1].lane number-out-of-range",
                "\"pair\": \"1\", \"spot\" | \"spot\" | readings[0].pair missing-field",
                "\"spot\": \"A\" | \"spot\": \"\" | readings[0].spot text-not-taken",
                "\"percentStrong\": 20 | \"percentStrong\": 120 | percentStrong percent-out-of-range",
                "\"percentStrong\": 20, | '' | percentStrong missing-field"
            })
    void eachFaultIsToldOnceWithItsPlace(String from, String to, String fault) {
        String request = asked(ONE, HEIGHTS);
        assertTrue(request.contains(from), from);
        assertEquals(List.of(fault), told(request.replaceFirst(java.util.regex.Pattern.quote(from), to)));
    }

    @Test
    void theSameCellTwiceIsToldAndAnotherLaneIsNot() throws IOException {
        assertEquals(List.of("readings[1].lane class-reading-twice"), told(asked(ONE, ONE)));
        JsonNode twice = answer(Language.ENGLISH, asked(ONE, ONE.replace("0.5", "0.52, \"lane\": 2")));
        assertEquals(1, twice.get("plates").size());
        assertEquals(2, twice.at("/spots/0/readings").asInt());
    }

    @Test
    void moreThanAClassIsToldAsOne() {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < 41; i++) {
            pairs.add(ONE.replace("\"1\"", "\"p" + i + "\""));
        }
        assertEquals(List.of("readings class-pairs"), told(asked(pairs.toArray(String[]::new))));
        List<String> spots = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            spots.add(ONE.replace("\"A\"", "\"s" + i + "\""));
        }
        assertEquals(List.of("readings class-spots"), told("{\"readings\": [" + String.join(", ", spots) + "]}"));
        List<String> plates = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            plates.add(ONE.replace("\"spot\"", "\"plate\": \"P" + i + "\", \"spot\""));
        }
        assertEquals(List.of("readings[4].plate class-plates"), told(asked(plates.toArray(String[]::new))));
        assertEquals(List.of("readings no-class-readings"), told(asked()));
        assertEquals(List.of("readings missing-field"), told("{}"));
    }

    @Test
    void faultsOfAnExampleAreToldTogether() {
        assertEquals(
                List.of("pairs number-out-of-range", "code class-code-or-seed"),
                told(() -> example(Language.ENGLISH, "\"pairs\": 41")));
        assertEquals(List.of("code code-form"), told(() -> example(Language.ENGLISH, "\"code\": \"ABC\"")));
        assertEquals(
                List.of("code class-code-or-seed"),
                told(() -> example(Language.ENGLISH, "\"code\": \"ABC\", \"seed\": 1")));
        String exercise = new midplate.lesson.LessonCode(midplate.lesson.LessonCode.Kind.EXERCISE, 20, 1).text();
        assertEquals(
                List.of("code code-kind"), told(() -> example(Language.ENGLISH, "\"code\": \"" + exercise + "\"")));
    }
}
