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
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worksheets as they are asked for and answered. */
class WorksheetAnswersTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();

    private static String asked(Exchange exchange, String json) {
        return exchange.lessons().worksheet(json.getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode told(String json) throws IOException {
        String answer = asked(EXCHANGE, json);
        assertEquals(List.of(), Schemas.broken("lesson-worksheet-request", json));
        assertEquals(List.of(), Schemas.broken("lesson-worksheet-answer", answer));
        return new ObjectMapper().readTree(answer);
    }

    /** The code of an answer, typed carelessly into another program, gives the same bytes. */
    @Test
    void theCodeGivesTheSameBytesInAnotherProgram() throws IOException {
        String json = "{\"seed\": 41, \"variants\": 3, \"pair\": \"heptane/ethyl-acetate\"}";
        String code = told(json).get("code").asText();
        String careless = code.toLowerCase(Locale.ROOT).replace("-", " ").replace('0', 'o');
        assertEquals(asked(EXCHANGE, json), asked(Exchange.builtIn(), "{\"code\": \"" + careless + "\"}"));
    }

    /** No sheet holds a word or number of its key but the title. */
    @Test
    void whatIsAskedHoldsNothingOfTheAnswers() throws IOException {
        JsonNode told = told("{\"seed\": 3, \"variants\": 6}");
        Set<String> asked = new TreeSet<>();
        told.get("sheets").findValues("asked").forEach(each -> asked.addAll(each.findValuesAsText("key")));
        Set<String> said = new TreeSet<>();
        told.get("answers").findValues("says").forEach(each -> said.addAll(each.findValuesAsText("key")));
        assertFalse(said.isEmpty());
        said.retainAll(asked);
        assertEquals(Set.of(), said);
        assertTrue(told.get("sheets").findValues("figures").isEmpty());
        for (JsonNode table : told.get("sheets").findValues("table")) {
            for (JsonNode row : table.get("rows")) {
                assertEquals("", row.get(row.size() - 1).asText(), "the last cell is to be found");
            }
        }
    }

    @Test
    void cautionsStandOnItAndTheDataSheetFirst() throws IOException {
        JsonNode cautions = told("{\"seed\": 3}").get("cautions");
        assertEquals("sheet-first", cautions.get(0).get("key").asText());
        String all = cautions.toString();
        for (String what : List.of("hood", "UV", "cabinet", "Silica", "Gloves", "n-Hexane")) {
            assertTrue(all.contains(what), what);
        }
        assertFalse(all.contains("acetone"), "only what concerns this pair");
        assertTrue(told("{\"seed\": 3, \"pair\": \"hexane/acetone\"}")
                .get("cautions")
                .toString()
                .contains("chloroform and a base"));
    }

    @Test
    void speaksGerman() {
        String german = asked(EXCHANGE.in(Language.GERMAN), "{\"seed\": 3, \"variants\": 6}");
        assertTrue(german.contains("Kieselgelplatte") && german.contains("Ethylacetat"));
        assertFalse(german.contains("A silica plate") || german.contains(" to 0."), "English words");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{}                                     | seed         | missing-field",
                "{\"seed\": 1.5}                        | seed         | worksheet-number",
                "{\"seed\": 1048576}                    | seed         | worksheet-number",
                "{\"seed\": 1, \"variants\": 0}         | variants     | worksheet-number",
                "{\"seed\": 1, \"variants\": 7}         | variants     | worksheet-number",
                "{\"seed\": 1, \"questions\": []}       | questions    | no-worksheet-question",
                "{\"seed\": 1, \"questions\": \"rf\"}   | questions    | wrong-type",
                "{\"seed\": 1, \"questions\": [\"x\"]}  | questions[0] | unknown-choice",
                "{\"seed\": 1, \"pair\": \"hexane\"}    | pair         | unknown-choice",
                "{\"code\": \"\"}                       | code         | text-not-taken",
                "{\"code\": \"5Z40\"}                   | code         | code-form",
                "{\"code\": \"9Z40-001W\", \"seed\": 1} | seed         | worksheet-code-says",
                "{\"seed\": 1, \"sheet\": 1}            | sheet        | unknown-field",
            })
    void refusesWithTheFieldAndTheReason(String json, String field, String code) {
        BadInput bad = assertThrows(BadInput.class, () -> asked(EXCHANGE, json));
        assertEquals(field, bad.faults().get(0).field());
        assertEquals(code, bad.faults().get(0).code());
    }
}
