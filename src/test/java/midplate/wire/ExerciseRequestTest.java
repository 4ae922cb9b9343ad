package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exercises as they are asked for: the same code the same answer, schemas kept, slips told. */
class ExerciseRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static byte[] bytes(String json) {
        return json.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    }

    private static String made(int seed, String level) throws IOException {
        String answer = EXCHANGE.lessons()
                .exercises()
                .exercise(bytes("{'level': '" + level + "', 'weak': 'hexane', 'strong': 'ethyl-acetate', 'seed': "
                        + seed + "}"));
        return MAPPER.readTree(answer).get("code").asText();
    }

    private static Map<String, String> asked(String code) {
        return Map.of(
                "exercise", "{'code': '" + code + "'}",
                "run", "{'code': '" + code + "', 'percentStrong': 12.5, 'plate': 2}",
                "hint", "{'code': '" + code + "', 'plates': [2, 60], 'count': 4}",
                "placed", "{'code': '" + code + "', 'placed': [0.1, 0.5, 0.9]}",
                "program", "{'code': '" + code + "'}",
                "key", "{'code': '" + code + "'}");
    }

    private static String answer(Exchange exchange, String what, String request) {
        ExerciseAnswers answers = exchange.lessons().exercises();
        Function<byte[], String> answer = switch (what) {
            case "exercise" -> answers::exercise;
            case "run" -> answers::run;
            case "hint" -> answers::hint;
            case "placed" -> answers::placed;
            case "program" -> answers::program;
            case "key" -> answers::key;
            default -> throw new IllegalArgumentException(what);
        };
        return answer.apply(bytes(request));
    }

    @Test
    void twoFreshInstallationsAnswerTheSameToTheByte() throws IOException {
        Exchange other = Exchange.builtIn();
        for (String level : List.of("groups-told", "number-told", "hard-to-part")) {
            for (Map.Entry<String, String> each : asked(made(77, level)).entrySet()) {
                assertArrayEquals(
                        answer(EXCHANGE, each.getKey(), each.getValue()).getBytes(StandardCharsets.UTF_8),
                        answer(other, each.getKey(), each.getValue()).getBytes(StandardCharsets.UTF_8),
                        each.getValue());
            }
        }
        assertNotEquals(
                answer(EXCHANGE, "run", asked(made(1, "groups-told")).get("run")),
                answer(EXCHANGE, "run", asked(made(2, "groups-told")).get("run")));
    }

    @Test
    void answersKeepTheirSchemasInEveryLanguage() throws IOException {
        for (String level : List.of("groups-told", "number-told", "hard-to-part")) {
            for (Map.Entry<String, String> each : asked(made(5, level)).entrySet()) {
                String what = each.getKey();
                String name = what.equals("exercise") ? "exercise" : "exercise-" + what;
                String request = List.of("program", "key").contains(what) ? "exercise-code" : name;
                assertEquals(
                        List.of(),
                        Schemas.broken(
                                "lesson-" + request + "-request",
                                each.getValue().replace('\'', '"')));
                for (Language language : Language.values()) {
                    String answer = answer(EXCHANGE.in(language), what, each.getValue());
                    assertEquals(List.of(), Schemas.broken("lesson-" + name + "-answer", answer), answer);
                }
            }
        }
    }

    @Test
    void schemasAndReaderKnowTheSameFields() throws IOException {
        Map<String, List<String>> all = Map.of(
                "exercise", ExerciseReader.NEW,
                "exercise-run", ExerciseReader.RUN,
                "exercise-hint", ExerciseReader.HINT,
                "exercise-placed", ExerciseReader.PLACED,
                "exercise-code", ExerciseReader.CODE);
        for (Map.Entry<String, List<String>> each : all.entrySet()) {
            TreeSet<String> names = new TreeSet<>();
            Schemas.read("lesson-" + each.getKey() + "-request")
                    .get("properties")
                    .fieldNames()
                    .forEachRemaining(names::add);
            assertEquals(new TreeSet<>(each.getValue()), names);
        }
    }

    @Test
    void studentsAreToldNoCompound() throws IOException {
        for (String level : List.of("groups-told", "number-told", "hard-to-part")) {
            String code = made(9, level);
            Map<String, String> asked = asked(code);
            JsonNode key = MAPPER.readTree(answer(EXCHANGE, "key", asked.get("key")));
            List<String> secret = Stream.concat(
                            key.get("unknowns").findValuesAsText("smiles").stream(),
                            key.get("unknowns").findValuesAsText("id").stream())
                    .toList();
            assertFalse(secret.isEmpty());
            for (String what : List.of("exercise", "run", "hint", "placed", "program")) {
                String answer = answer(EXCHANGE, what, asked.get(what));
                for (String each : secret) {
                    assertFalse(answer.contains("\"" + each + "\""), what + " " + each);
                }
            }
        }
    }

    private static List<String> told(String what, String request) {
        BadInput bad = assertThrows(BadInput.class, () -> answer(EXCHANGE, what, request), request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().matches("(?s).*[.?}]"), fault.toString());
        }
        return bad.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            exercise | {} | code missing-field
            exercise | {'code': '4000'} | code code-form
            exercise | {'code': '8000-001F', 'seed': 3} | seed exercise-code-and-choice
            exercise | {'level': 'easy', 'weak': 'water', 'seed': 1048576} | level unknown-choice, weak unknown-choice, strong missing-field, seed exercise-whole
            exercise | {'level': 'groups-told', 'weak': 'hexane', 'strong': 'methanol', 'seed': 0.5} | strong unknown-choice, seed exercise-whole
            run | {'percentStrong': 101, 'plate': 31} | code missing-field, percentStrong percent-out-of-range, plate exercise-whole
            run | {'code': 7, 'plate': 'x', 'more': 1} | more unknown-field, code wrong-type, percentStrong missing-field, plate wrong-type
            hint | {'code': '8000-001F', 'plates': [-1, 'x'], 'count': 5} | plates[0] percent-out-of-range, plates[1] wrong-type, count exercise-whole
            placed | {'code': '8000-001F', 'placed': [1.2, 'x']} | placed[0] rf-out-of-range, placed[1] wrong-type, placed exercise-placed
            placed | {'code': '8000-001F'} | placed missing-field
            key | {'code': '8000-001C'} | code code-mistyped
            program | {'code': ''} | code text-not-taken
            """)
    void everyFaultIsToldAtOnce(String what, String request, String faults) {
        assertEquals(faults, String.join(", ", told(what, request)));
    }

    @Test
    void everySingleSlipOfACodeIsTold() throws IOException {
        String code = made(12_345, "hard-to-part").replace("-", "");
        String signs = "0123456789ABCDEFGHJKMNPQRSTVWXY";
        for (int at = 0; at < code.length(); at++) {
            for (char sign : signs.toCharArray()) {
                if (sign != code.charAt(at) && code.charAt(at) != 'Z') {
                    String slipped = code.substring(0, at) + sign + code.substring(at + 1);
                    assertEquals(
                            1, told("exercise", "{'code': '" + slipped + "'}").size(), slipped);
                }
            }
        }
    }
}
