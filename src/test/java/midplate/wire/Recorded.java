package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A recorded pair of request and answer in {@code shared/contract}. The recorded answer shows what an answer looks like; a
 * replay holds a new answer to the schema, to the same fields, and to the values under {@code holds}, each of which says
 * where it comes from.
 *
 * @param file its name
 * @param pair its content
 */
public record Recorded(String file, JsonNode pair) {
    private static final Path FOLDER = Path.of("shared", "contract");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** All of them. */
    public static Stream<Recorded> all() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> found = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            assertFalse(found.isEmpty(), FOLDER + " holds no pairs");
            return found.stream().map(Recorded::read);
        }
    }

    private static Recorded read(Path file) {
        try {
            return new Recorded(String.valueOf(file.getFileName()), MAPPER.readTree(Files.readString(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** Where it is asked: {@code /api/advice}. */
    public String route() {
        return pair.get("route").asText();
    }

    /** What is asked. */
    public String request() {
        return pair.get("request").toString();
    }

    /** The same in UTF-8. */
    public byte[] bytes() {
        return request().getBytes(StandardCharsets.UTF_8);
    }

    /** The status over HTTP. */
    public int status() {
        return pair.get("status").asInt();
    }

    /** Holds an answer to everything recorded here. */
    public void hold(String answer) throws IOException {
        String schema = pair.get("schema").asText();
        assertEquals(List.of(), Schemas.broken(schema, pair.get("answer").toString()), file + ": recorded answer");
        assertEquals(List.of(), Schemas.broken(schema, answer), file + ": " + answer);
        JsonNode said = MAPPER.readTree(answer);
        for (JsonNode hold : pair.get("holds")) {
            String at = hold.get("at").asText();
            assertFalse(hold.get("from").asText().isBlank(), file + " " + at + ": say where the value comes from");
            JsonNode value = said.at(at);
            if (hold.has("tolerance")) {
                assertEquals(
                        hold.get("value").asDouble(),
                        value.asDouble(Double.NaN),
                        hold.get("tolerance").asDouble(),
                        file + " " + at);
            } else {
                assertEquals(hold.get("value"), value, file + " " + at);
            }
        }
    }

    @Override
    public String toString() {
        return file;
    }
}
