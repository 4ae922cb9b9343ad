package midplate.words;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Reads one flat JSON object whose values are all strings, the form of the text files.
 *
 * <p>Written out here so that this room needs no library; whatever is not of that form is refused with its line.
 */
final class FlatJson {
    private final String file;
    private final String json;
    private int at;

    private FlatJson(String file, String json) {
        this.file = file;
        this.json = json;
    }

    /**
     * The entries in the order of the file.
     *
     * @throws IllegalStateException naming the file, the line and what was expected
     */
    static Map<String, String> read(String file, String json) {
        return new FlatJson(file, json).object();
    }

    private Map<String, String> object() {
        Map<String, String> entries = new LinkedHashMap<>();
        expect('{');
        boolean more = peek() != '}';
        while (more) {
            String key = string();
            expect(':');
            if (entries.put(key, string()) != null) {
                throw wrong("the key \"" + key + "\" stands twice; keep one");
            }
            more = peek() == ',';
            if (more) {
                expect(',');
            }
        }
        expect('}');
        if (peek() != 0) {
            throw wrong("something follows the closing brace; remove it");
        }
        return entries;
    }

    private String string() {
        expect('"');
        StringBuilder text = new StringBuilder();
        while (true) {
            char c = next();
            if (c == '"') {
                return text.toString();
            } else if (c == '\\') {
                text.append(escaped(next()));
            } else if (c < ' ') {
                throw wrong(
                        "a control character or the file's end stands inside a string; close the string or escape it");
            } else {
                text.append(c);
            }
        }
    }

    private char escaped(char c) {
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'n' -> '\n';
            case 't' -> '\t';
            case 'u' -> unicode();
            default -> throw wrong("\\" + c + " is not read here; use \\\" \\\\ \\/ \\n \\t or \\u and four digits");
        };
    }

    private char unicode() {
        int code = 0;
        for (int i = 0; i < 4; i++) {
            int digit = Character.digit(next(), 16);
            if (digit < 0) {
                throw wrong("\\u needs four hexadecimal digits");
            }
            code = 16 * code + digit;
        }
        return (char) code;
    }

    private void expect(char wanted) {
        char c = peek();
        if (c != wanted) {
            throw wrong("expected " + wanted + " and found " + (c == 0 ? "the end" : String.valueOf(c)));
        }
        at++;
    }

    /** The next character that is not white space, 0 at the end; stays before it. */
    private char peek() {
        while (at < json.length() && " \t\r\n".indexOf(json.charAt(at)) >= 0) {
            at++;
        }
        return at < json.length() ? json.charAt(at) : 0;
    }

    private char next() {
        return at < json.length() ? json.charAt(at++) : 0;
    }

    private IllegalStateException wrong(String what) {
        long line = 1
                + json.substring(0, Math.min(at, json.length()))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        return new IllegalStateException(String.format(Locale.ROOT, "%s, line %d: %s.", file, line, what));
    }
}
