package midplate.catalogue;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;

/** A JSON file of {@code solvent-data/curves}, read field by field; each wrong field is named with file and place. */
final class CurveJson {
    private static final String REMAKE = "Make the file again with the command calibrate, or put the packed one back.";
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String file;
    private final String place;
    private final JsonNode node;

    private CurveJson(String file, String place, JsonNode node) {
        this.file = file;
        this.place = place;
        this.node = node;
    }

    static CurveJson read(DataFolder folder, String file) {
        try {
            JsonNode node = MAPPER.readTree(folder.text(file));
            if (node == null || !node.isObject()) {
                throw new BadSolventData(file, "-", "-", "no object", "one JSON object", REMAKE);
            }
            return new CurveJson(file, "", node);
        } catch (JacksonException e) {
            throw DataFolder.because(
                    e, new BadSolventData(file, "-", "-", e.getOriginalMessage(), "one JSON object", REMAKE));
        }
    }

    /** Whether the field is there at all. */
    boolean has(String field) {
        return node.has(field);
    }

    CurveJson object(String field) {
        JsonNode child = child(field);
        if (!child.isObject()) {
            throw fault(field, child, "an object");
        }
        return new CurveJson(file, place + field + ".", child);
    }

    List<CurveJson> objects(String field) {
        JsonNode child = child(field);
        if (!child.isArray()) {
            throw fault(field, child, "a list");
        }
        List<CurveJson> objects = new ArrayList<>();
        for (int i = 0; i < child.size(); i++) {
            if (!child.get(i).isObject()) {
                throw fault(field + "[" + i + "]", child.get(i), "an object");
            }
            objects.add(new CurveJson(file, place + field + "[" + i + "].", child.get(i)));
        }
        return objects;
    }

    String text(String field) {
        JsonNode child = child(field);
        if (!child.isTextual() || child.textValue().isBlank()) {
            throw fault(field, child, "a text");
        }
        return child.textValue();
    }

    /** A text that is one of some. */
    String oneOf(String field, List<String> allowed) {
        String came = text(field);
        if (!allowed.contains(came)) {
            throw fault(field, came, "one of " + allowed);
        }
        return came;
    }

    List<String> texts(String field) {
        JsonNode child = child(field);
        if (!child.isArray()) {
            throw fault(field, child, "a list of texts");
        }
        List<String> texts = new ArrayList<>();
        for (JsonNode each : child) {
            if (!each.isTextual()) {
                throw fault(field, each, "a list of texts");
            }
            texts.add(each.textValue());
        }
        return texts;
    }

    double number(String field, double least, double most) {
        return number(field, child(field), least, most);
    }

    int count(String field) {
        return whole(field, 1);
    }

    /** A whole number, so many or more. */
    int whole(String field, int least) {
        JsonNode child = child(field);
        if (!child.isInt() || child.intValue() < least) {
            throw fault(field, child, "a whole number of " + least + " or more");
        }
        return child.intValue();
    }

    /** A list of numbers in an interval. */
    List<Double> numbers(String field, double least, double most) {
        JsonNode child = child(field);
        if (!child.isArray() || child.isEmpty()) {
            throw fault(field, child, "a list of numbers");
        }
        List<Double> numbers = new ArrayList<>();
        for (int i = 0; i < child.size(); i++) {
            numbers.add(number(field + "[" + i + "]", child.get(i), least, most));
        }
        return numbers;
    }

    /** A list of numbers as long as another and never falling. */
    List<Double> rising(String field, double least, double most) {
        List<Double> numbers = numbers(field, least, most);
        for (int i = 1; i < numbers.size(); i++) {
            if (!(numbers.get(i) >= numbers.get(i - 1))) {
                throw fault(field + "[" + i + "]", child(field).get(i), "not below the number before it");
            }
        }
        return numbers;
    }

    BadSolventData fault(String field, Object came, String allowed) {
        return new BadSolventData(file, place + field, "-", String.valueOf(came), allowed, REMAKE);
    }

    private double number(String field, JsonNode value, double least, double most) {
        if (!value.isNumber() || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            throw fault(field, value, "a number in [" + least + ", " + most + "]");
        }
        return value.doubleValue();
    }

    private JsonNode child(String field) {
        JsonNode child = node.get(field);
        if (child == null) {
            throw fault(field, "nothing", "this field");
        }
        return child;
    }
}
