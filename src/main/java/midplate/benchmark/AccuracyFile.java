package midplate.benchmark;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The results as JSON: a figure a line, a fixed order, four significant digits. */
public final class AccuracyFile {
    private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private AccuracyFile() {}

    /** The text of the file. */
    public static String write(Accuracy accuracy) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("setting", object(2, accuracy.setting(), AccuracyFile::quoted));
        parts.put("contenders", object(2, accuracy.contenders(), AccuracyFile::figures));
        parts.put("ceilings", object(2, accuracy.ceilings(), AccuracyFile::figures));
        parts.put("neighboursLeftOut", object(2, accuracy.neighboursLeftOut(), AccuracyFile::figures));
        parts.put("plateError", object(2, accuracy.plateError(), AccuracyFile::figures));
        parts.put("structures", object(2, accuracy.structures(), AccuracyFile::figures));
        parts.put("scouting", object(2, accuracy.scouting(), AccuracyFile::figures));
        parts.put("theory", object(2, accuracy.theory(), AccuracyFile::figures));
        parts.put("columns", object(2, accuracy.columns(), AccuracyFile::figures));
        parts.put("differences", object(2, accuracy.differences(), AccuracyFile::figures));
        if (!accuracy.identity().isEmpty()) {
            parts.put("identity", object(2, accuracy.identity(), AccuracyFile::figures));
        }
        return object(1, parts, part -> part) + "\n";
    }

    /**
     * Results from the text of a file.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Accuracy read(String text) {
        try {
            JsonNode root = JSON.readTree(text);
            return new Accuracy(
                    map(root, "setting", AccuracyFile::plain),
                    map(root, "contenders", AccuracyFile::figures),
                    map(root, "ceilings", AccuracyFile::figures),
                    map(root, "neighboursLeftOut", AccuracyFile::figures),
                    map(root, "plateError", AccuracyFile::figures),
                    map(root, "structures", AccuracyFile::figures),
                    map(root, "scouting", AccuracyFile::figures),
                    map(root, "theory", AccuracyFile::figures),
                    root.has("columns") ? map(root, "columns", AccuracyFile::figures) : Map.of(),
                    map(root, "differences", AccuracyFile::figures),
                    root.has("identity") ? map(root, "identity", AccuracyFile::figures) : Map.of());
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("No results of a benchmark: " + e.getOriginalMessage(), e);
        }
    }

    private static String figures(Map<String, Figure> figures) {
        return object(3, figures, AccuracyFile::figure);
    }

    private static String figure(Figure figure) {
        return "{\"value\": " + number(figure.value()) + ", \"standardError\": " + number(figure.standardError())
                + ", \"count\": " + figure.count() + "}";
    }

    /** Four significant digits; {@code null} for what is no number. */
    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "null";
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        // a sum that is 0 but for its last bits is 0
        boolean nothing = rounded.abs().compareTo(new BigDecimal("1e-12")) < 0;
        return nothing ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static <T> String object(int depth, Map<String, T> entries, Function<T, String> text) {
        String indent = "  ".repeat(depth);
        return entries.entrySet().stream()
                .map(entry -> indent + quoted(entry.getKey()) + ": " + text.apply(entry.getValue()))
                .collect(Collectors.joining(",\n", "{\n", "\n" + "  ".repeat(depth - 1) + "}"));
    }

    private static String quoted(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A name that JSON cannot hold: " + value, e);
        }
    }

    private static <T> Map<String, T> map(JsonNode parent, String name, Function<JsonNode, T> value) {
        JsonNode node = parent.path(name);
        if (!node.isObject()) {
            throw new IllegalArgumentException("No results of a benchmark: " + name + " is missing or no object.");
        }
        Map<String, T> entries = new LinkedHashMap<>();
        node.properties().forEach(entry -> entries.put(entry.getKey(), value.apply(entry.getValue())));
        return entries;
    }

    private static Object plain(JsonNode node) {
        return node.isIntegralNumber() ? (Object) node.longValue() : node.asText();
    }

    private static Map<String, Figure> figures(JsonNode node) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        node.properties().forEach(entry -> {
            JsonNode figure = entry.getValue();
            figures.put(
                    entry.getKey(),
                    new Figure(
                            figure.path("value").asDouble(Double.NaN),
                            figure.path("standardError").asDouble(Double.NaN),
                            figure.path("count").asLong()));
        });
        return figures;
    }
}
