package midplate.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.words.Allowed;
import midplate.words.Message;
import org.jspecify.annotations.Nullable;

/**
 * Turns bytes or text into {@link Json}, stricter than the library does by itself: UTF-8 only, one value and nothing after
 * it, no NaN and no Infinity, no number beyond a double, no name twice. Names that came twice and endless numbers are told
 * with their place while the reading goes on.
 */
final class JsonText {
    private static final int DEEPEST = 40;
    private static final int LONGEST_NUMBER = 400;
    private static final int CONTEXT = 30;

    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();

    private final String text;
    private final FaultList faults;

    private JsonText(String text, FaultList faults) {
        this.text = text;
        this.faults = faults;
    }

    /**
     * UTF-8 bytes as text.
     *
     * @throws BadInput when they are too many or no UTF-8
     */
    static String decoded(byte[] bytes, FaultList faults) {
        return decoded(bytes, faults, Exchange.MOST_BYTES);
    }

    /**
     * At most so many UTF-8 bytes as text.
     *
     * @throws BadInput when they are too many or no UTF-8
     */
    static String decoded(byte[] bytes, FaultList faults, int most) {
        if (bytes.length > most) {
            faults.add(
                    "request",
                    Message.of("fault.too-large", "most", most),
                    Message.of("came.bytes", "count", bytes.length),
                    Message.of("allowed.bytes", "interval", Allowed.closed(0, most)),
                    Message.of("todo.fewer-plates"));
            throw new BadInput(BadInput.Kind.TOO_LARGE, faults.faults());
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            faults.add(
                    "request",
                    Message.of("fault.not-utf8"),
                    Message.of("came.no-utf8"),
                    Allowed.words("UTF-8"),
                    Message.of("todo.send-utf8"));
            throw new BadInput(BadInput.Kind.NO_JSON, faults.faults());
        }
    }

    /**
     * The one value in a text.
     *
     * @throws BadInput when the text is no JSON
     */
    static Json read(String text, FaultList faults) {
        return new JsonText(text, faults).whole();
    }

    private Json whole() {
        Json value;
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw noJson(Message.of("fault.no-json", "detail", Message.of("fault.nothing-came")), -1);
            }
            value = value(parser, first, "");
            nothingMore(parser);
        } catch (JsonProcessingException e) {
            long at = e.getLocation() == null ? -1 : e.getLocation().getCharOffset();
            throw noJson(noJson(e), at);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return value;
    }

    private void nothingMore(JsonParser parser) throws IOException {
        long end = parser.currentLocation().getCharOffset();
        boolean more;
        try {
            more = parser.nextToken() != null;
        } catch (JsonProcessingException e) {
            more = true;
        }
        if (more) {
            throw noJson(Message.of("fault.trailing-text"), end);
        }
    }

    private Json value(JsonParser parser, JsonToken token, String path) throws IOException {
        return switch (token) {
            case START_OBJECT -> object(parser, path);
            case START_ARRAY -> array(parser, path);
            case VALUE_STRING -> new Json.Text(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser.getText(), path);
            case VALUE_TRUE -> new Json.Truth(true);
            case VALUE_FALSE -> new Json.Truth(false);
            default -> new Json.Null();
        };
    }

    private Json object(JsonParser parser, String path) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            String place = joined(path, name);
            Json value = value(parser, parser.nextToken(), place);
            if (members.putIfAbsent(name, value) != null) {
                faults.add(
                        place,
                        Message.of("fault.duplicate-field", "name", name),
                        value.shown(),
                        Message.of("allowed.each-name-once"),
                        Message.of("todo.keep-one"));
            }
        }
        return new Json.Fields(members);
    }

    private Json array(JsonParser parser, String path) throws IOException {
        List<Json> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(value(parser, token, path + "[" + items.size() + "]"));
        }
        return new Json.Items(items);
    }

    private Json number(String written, String path) {
        double value = Double.parseDouble(written);
        if (Double.isFinite(value)) {
            return new Json.Numeral(value, written);
        }
        Json broken = new Json.Broken(written);
        faults.add(
                path.isEmpty() ? "request" : path,
                Message.of("fault.number-too-large"),
                broken.shown(),
                Allowed.open("-1.8e308", "1.8e308"),
                Message.of("todo.give-ordinary-number"));
        return broken;
    }

    static String joined(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private BadInput noJson(Message reason, long at) {
        faults.add(
                "request",
                reason,
                context(at),
                Message.of("allowed.one-object"),
                reason.code().equals("no-json") ? Message.of("todo.check-json") : Message.of("todo.remove-rest"));
        return new BadInput(BadInput.Kind.NO_JSON, faults.faults());
    }

    private static Message noJson(JsonProcessingException e) {
        String detail = firstLine(e.getOriginalMessage());
        return e.getLocation() == null
                ? Message.of("fault.no-json", "detail", detail)
                : Message.of(
                        "fault.at.no-json",
                        "line",
                        e.getLocation().getLineNr(),
                        "column",
                        e.getLocation().getColumnNr(),
                        "detail",
                        detail);
    }

    /** The rest that could not be read, cut to what a person can read. */
    private String context(long at) {
        int from = (int) Math.max(0, Math.min(at < 0 ? 0 : at - 1, text.length()));
        String rest = text.substring(from).strip();
        return rest.length() <= CONTEXT ? rest : rest.substring(0, CONTEXT) + "…";
    }

    /** What the parser says of the text, without what it says of its own settings and insides. */
    private static String firstLine(@Nullable String message) {
        if (message == null) {
            return "";
        }
        return message.lines()
                .findFirst()
                .orElse("")
                .replaceFirst(" \\(start marker at.*", "")
                .replaceFirst(": enable `.*", "");
    }
}
