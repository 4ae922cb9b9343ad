package midplate.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import midplate.chemistry.Solvent;
import midplate.words.Message;
import midplate.words.Texts;

/** What all writers of JSON share: how numbers, messages and faults look. */
final class JsonWriting {
    private static final ObjectMapper MAPPER = JsonMapper.builder().build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    /** Below this a double has all six decimals. */
    private static final long LARGE = 1_000_000_000_000_000L;

    private JsonWriting() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    static ArrayNode array() {
        return NODES.arrayNode();
    }

    /** A number with at most so many decimals; a whole one without a point. */
    static JsonNode number(double value, int decimals) {
        double scale = TENS[decimals];
        long parts = Math.round(value * scale);
        return parts > -LARGE && parts < LARGE ? exact(parts, decimals) : exact(parts / scale);
    }

    /** The digits come from a whole number, which is several times cheaper than from a double. */
    private static JsonNode exact(long parts, int decimals) {
        long digits = parts;
        int left = decimals;
        while (left > 0 && digits % 10 == 0) {
            digits /= 10;
            left--;
        }
        return left == 0 ? NODES.numberNode(digits) : DecimalNode.valueOf(BigDecimal.valueOf(digits, left));
    }

    /** A number as it is; a whole one without a point. */
    static JsonNode exact(double value) {
        long parts = Math.round(value * TENS[6]);
        if (parts > -LARGE && parts < LARGE && parts / TENS[6] == value) {
            return exact(parts, 6);
        }
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
        return whole ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }

    static ArrayNode numbers(List<Double> values, int decimals) {
        ArrayNode list = array();
        values.forEach(value -> list.add(number(value, decimals)));
        return list;
    }

    /** {@code {key, args, text}}. */
    static ObjectNode message(Message message, Texts texts) {
        ObjectNode node = object();
        node.put("key", message.key());
        ObjectNode args = node.putObject("args");
        message.args().forEach((name, value) -> args.set(name, argument(value, texts)));
        node.put("text", texts.render(message));
        return node;
    }

    private static JsonNode argument(Object value, Texts texts) {
        if (value instanceof Message inner) {
            return NODES.textNode(texts.render(inner));
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? number(number, 6) : NODES.textNode(number.toString());
        }
        return value instanceof Integer whole ? NODES.numberNode(whole) : NODES.textNode(value.toString());
    }

    static ArrayNode messages(List<Message> messages, Texts texts) {
        ArrayNode list = array();
        messages.forEach(message -> list.add(message(message, texts)));
        return list;
    }

    /** Messages, each with the place in the request that it is about where there is one. */
    static ArrayNode notes(List<Note> notes, Texts texts) {
        ArrayNode list = array();
        for (Note note : notes) {
            ObjectNode node = message(note.message(), texts);
            note.about().ifPresent(place -> node.put("about", place));
            list.add(node);
        }
        return list;
    }

    static ArrayNode faults(List<Fault> faults) {
        ArrayNode list = array();
        faults.forEach(fault -> list.add(object().put("field", fault.field())
                .put("code", fault.code())
                .put("came", fault.came())
                .put("allowed", fault.allowed())
                .put("todo", fault.todo())
                .put("message", fault.message())));
        return list;
    }

    static ObjectNode solvent(Solvent solvent, Texts texts) {
        return object().put("id", solvent.id()).put("name", texts.render(solvent.said()));
    }

    /** The id of a request, as it came. */
    static JsonNode id(Json id) {
        if (id instanceof Json.Text text) {
            return NODES.textNode(text.value());
        }
        return id instanceof Json.Numeral number ? exact(number.value()) : NODES.nullNode();
    }

    static String text(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A tree of plain values did not become text", e);
        }
    }
}
