package midplate.wire;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import midplate.words.Message;

/** A piece of JSON as it came: numbers keep their digits, so that a fault can quote them. */
sealed interface Json {
    /** The longest quotation of what came [characters]. */
    int QUOTED = 80;

    /** What it is, in words: {@code a text}. */
    Message kind();

    /** How it was written, not shortened. */
    String written();

    /** How it was written, cut to what a person can read. */
    default String shown() {
        String text = written();
        return text.length() <= QUOTED ? text : text.substring(0, QUOTED) + "…";
    }

    /** An object; names in the order they came, a name that came twice with its first value. */
    record Fields(Map<String, Json> members) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.object");
        }

        @Override
        public String written() {
            return members.entrySet().stream()
                    .limit(QUOTED)
                    .map(member ->
                            quoted(member.getKey()) + ": " + member.getValue().shown())
                    .collect(Collectors.joining(", ", "{", "}"));
        }
    }

    /** An array. */
    record Items(List<Json> items) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.list");
        }

        @Override
        public String written() {
            return items.stream().limit(QUOTED).map(Json::shown).collect(Collectors.joining(", ", "[", "]"));
        }
    }

    /** A string. */
    record Text(String value) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.text");
        }

        @Override
        public String written() {
            return quoted(value);
        }
    }

    /** A number that is finite, with the digits it was written in. */
    record Numeral(double value, String written) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.number");
        }
    }

    /** {@code true} or {@code false}. */
    record Truth(boolean value) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.truth");
        }

        @Override
        public String written() {
            return Boolean.toString(value);
        }
    }

    /** {@code null}. */
    record Null() implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.null");
        }

        @Override
        public String written() {
            return "null";
        }
    }

    /** Something whose fault was already told; readers pass over it. */
    record Broken(String written) implements Json {
        @Override
        public Message kind() {
            return Message.of("kind.nothing");
        }
    }

    private static String quoted(String text) {
        return '"' + text + '"';
    }
}
