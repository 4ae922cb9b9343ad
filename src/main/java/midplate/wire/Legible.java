package midplate.wire;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Map;

/**
 * JSON laid out for a person: two spaces a level, and on one line what fits there. Two objects in a list always stand on two lines,
 * so that one reading is one line.
 */
final class Legible {
    private static final int WIDTH = 150;

    private final StringBuilder out = new StringBuilder();

    private Legible() {}

    /** The text of a tree, with a line break at its end. */
    static String text(JsonNode node) {
        Legible text = new Legible();
        text.broken(node, 0);
        return text.out.append('\n').toString();
    }

    private void put(JsonNode node, int depth) {
        String line = line(node);
        if (line.length() <= WIDTH - 2 * depth && !listsObjects(node)) {
            out.append(line);
        } else {
            broken(node, depth);
        }
    }

    /** Whether a list with more than one object stands anywhere in it. */
    private static boolean listsObjects(JsonNode node) {
        if (node.isArray() && node.size() > 1 && node.get(0).isObject()) {
            return true;
        }
        for (JsonNode inner : node) {
            if (listsObjects(inner)) {
                return true;
            }
        }
        return false;
    }

    private static String line(JsonNode node) {
        StringBuilder line = new StringBuilder();
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                line.append(line.isEmpty() ? "" : ", ")
                        .append(name(field.getKey()))
                        .append(line(field.getValue()));
            }
            return "{" + line + "}";
        }
        if (node.isArray()) {
            for (JsonNode item : node) {
                line.append(line.isEmpty() ? "" : ", ").append(line(item));
            }
            return "[" + line + "]";
        }
        return JsonWriting.text(node);
    }

    private static String name(String name) {
        return JsonWriting.text(JsonWriting.object().textNode(name)) + ": ";
    }

    private void broken(JsonNode node, int depth) {
        if (!node.isContainerNode() || node.isEmpty()) {
            out.append(line(node));
            return;
        }
        out.append(node.isObject() ? '{' : '[');
        Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
        Iterator<JsonNode> items = node.elements();
        while (items.hasNext()) {
            out.append('\n').append("  ".repeat(depth + 1));
            if (node.isObject()) {
                out.append(name(fields.next().getKey()));
            }
            put(items.next(), depth + 1);
            out.append(items.hasNext() ? "," : "");
        }
        out.append('\n').append("  ".repeat(depth)).append(node.isObject() ? '}' : ']');
    }
}
