package midplate.catalogue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads {@code sources.json}: one object from key to {@code citation}, {@code year} and, if there is one, {@code address}. */
final class SourceReader {
    static final String FILE = "sources.json";

    private static final Set<String> FIELDS = Set.of("citation", "year", "address");
    private static final Pattern KEY = Pattern.compile("[A-Z][A-Za-z0-9]*");
    private static final Pattern ADDRESS = Pattern.compile("https?://\\S+");
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private SourceReader() {}

    static Map<String, Source> read(DataFolder folder) {
        JsonNode tree;
        try {
            tree = JSON.readTree(folder.text(FILE));
        } catch (JsonProcessingException e) {
            String row = e.getLocation() == null
                    ? "-"
                    : Integer.toString(e.getLocation().getLineNr());
            throw DataFolder.because(
                    e,
                    new BadSolventData(
                            FILE, row, "-", e.getOriginalMessage(), "JSON, each key once", "Mend it there."));
        }
        if (!tree.isObject() || tree.isEmpty()) {
            throw new BadSolventData(
                    FILE, "1", "-", tree.toString(), "one object from key to source", "Mend it there.");
        }
        Map<String, Source> sources = new LinkedHashMap<>();
        tree.properties().forEach(entry -> sources.put(entry.getKey(), source(entry.getKey(), entry.getValue())));
        return Collections.unmodifiableMap(sources);
    }

    private static Source source(String key, JsonNode node) {
        if (!KEY.matcher(key).matches()) {
            throw new BadSolventData(FILE, key, "-", key, "a key like Author2004", "Rename it.");
        }
        if (!node.isObject()) {
            throw new BadSolventData(
                    FILE, key, "-", node.toString(), "an object with citation and year", "Mend it there.");
        }
        node.fieldNames().forEachRemaining(field -> {
            if (!FIELDS.contains(field)) {
                throw new BadSolventData(FILE, key, field, field, "citation, year, address", "Remove the field.");
            }
        });
        Optional<String> address = node.has("address") ? Optional.of(text(key, node, "address")) : Optional.empty();
        address.filter(text -> !ADDRESS.matcher(text).matches()).ifPresent(text -> {
            throw new BadSolventData(FILE, key, "address", text, "an http or https address", "Correct it.");
        });
        return new Source(key, text(key, node, "citation"), text(key, node, "year"), address);
    }

    private static String text(String key, JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isTextual() || value.textValue().isBlank()) {
            throw new BadSolventData(FILE, key, field, value.toString(), "a text that is not empty", "Fill it.");
        }
        return value.textValue();
    }
}
