package midplate.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The JSON Schemas that other programs can hold requests and answers against. */
public final class Schemas {
    private static final Path FOLDER = Path.of("shared", "schemas");
    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, registry -> registry.schemas(Schemas::named));

    private Schemas() {}

    /** What a text breaks of a schema; empty when it keeps it. */
    public static List<String> broken(String schema, String json) throws IOException {
        return REGISTRY.getSchema(text(schema)).validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    static JsonNode read(String schema) throws IOException {
        return new ObjectMapper().readTree(text(schema));
    }

    /** A schema that another one names. */
    private static @Nullable String named(String iri) {
        Path file = FOLDER.resolve(iri);
        try {
            return Files.isRegularFile(file) ? Files.readString(file) : null;
        } catch (IOException e) {
            throw new UncheckedIOException(iri, e);
        }
    }

    private static String text(String schema) throws IOException {
        return Files.readString(FOLDER.resolve(schema + ".schema.json"));
    }
}
