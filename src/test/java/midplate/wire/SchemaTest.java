package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readers, writers and schemas know the same fields. */
class SchemaTest {
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    private static Set<String> properties(JsonNode schema) {
        Set<String> names = new TreeSet<>();
        schema.get("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void schemaAndReaderKnowTheSameFields() throws IOException {
        JsonNode request = Schemas.read("advice-request");
        assertEquals(new TreeSet<>(QuestionReader.FIELDS), properties(request));
        assertEquals(new TreeSet<>(SpotReader.FIELDS), properties(request.at("/properties/spots/items")));
        assertEquals(new TreeSet<>(StructureQuestion.FIELDS), properties(Schemas.read("structure-request")));
        assertEquals(new TreeSet<>(RunReader.FIELDS), properties(request.at("/properties/runs/items")));
        assertEquals(new TreeSet<>(PlateReader.FIELDS), properties(request.at("/$defs/plate")));
        assertEquals(
                new TreeSet<>(PlateReader.SPOT_FIELDS), properties(request.at("/$defs/plate/properties/spots/items")));
        assertEquals(new TreeSet<>(PlateReader.FIELDS), properties(Schemas.read("reading-request")));
        assertTrue(properties(Schemas.read("scouting-request")).contains(ScoutingQuestion.JARS));
        assertTrue(properties(Schemas.read("other-eluents-request"))
                .containsAll(List.of(OthersQuestion.PERCENT, OthersQuestion.RANK)));
        JsonNode strength = Schemas.read("equal-strength-request");
        assertEquals(new TreeSet<>(StrengthQuestion.FIELDS), properties(strength));
        assertEquals(new TreeSet<>(StrengthQuestion.TO_FIELDS), properties(strength.at("/properties/to")));
    }

    @Test
    void listsOfPublicationsAndSolventsKeepTheirSchemas() throws IOException {
        assertEquals(List.of(), Schemas.broken("library", EXCHANGE.library()));
        assertEquals(List.of(), Schemas.broken("sources", EXCHANGE.sources()));
        assertEquals(List.of(), Schemas.broken("version", EXCHANGE.version()));
        assertEquals(List.of(), Schemas.broken("groups", EXCHANGE.groups()));
        assertEquals(List.of(), Schemas.broken("groups", Exchange.builtIn().groups()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{\"id\": 3}", "{\"id\": \"a\", \"weak\": 5}"})
    void badLinesKeepTheirSchema(String line) throws IOException {
        String answer = EXCHANGE.line(line.getBytes(StandardCharsets.UTF_8), slip -> {
            throw new AssertionError(slip);
        });
        assertEquals(List.of(), Schemas.broken("batch-error", answer));
        assertEquals(List.of(), Schemas.broken("batch-error", EXCHANGE.tooLongLine()));
    }

    @Test
    void aSchemaFindsWhatIsMissing() throws IOException {
        assertFalse(Schemas.broken("version", "{}").isEmpty());
        assertFalse(Schemas.broken("version", "{\"name\": \"Midplate\", \"version\": \"0.1.0\", \"x\": 1}")
                .isEmpty());
    }
}
