package midplate.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Something the program has to say, before it is put into words: the key of a text and the values that the text shows.
 *
 * <p>Two messages with the same key and values are equal, so a test can ask what was said and not how it was worded.
 *
 * @param key names the text, in lower case, grouped by room with dots: {@code plate.front-near-top}
 * @param args the values by name, in the order given; each a {@link String}, an {@link Integer}, a {@link Double}, or
 *     a message of its own that is put into words when this one is
 * @see Texts#render(Message)
 */
public record Message(String key, Map<String, Object> args) {
    static final Pattern KEY = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9][a-z0-9-]*)+");
    static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9]*");
    private static final int MOST_GOOD = 1000;
    private static final Set<String> GOOD_KEYS = ConcurrentHashMap.newKeySet();
    private static final Set<String> GOOD_NAMES = ConcurrentHashMap.newKeySet();

    /** Checks key, names and kinds of value; a wrong one is a slip in the program, hence no {@link Refusal}. */
    public Message {
        if (!isKnown(KEY, key)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "Message key \"%s\": allowed are parts in lower case with digits and hyphens, joined by dots, at"
                            + " least two. Rename it like \"plate.front-near-top\".",
                    key));
        }
        Map<String, Object> copy = new LinkedHashMap<>(args);
        copy.forEach((name, value) -> checkArgument(key, name, value));
        args = Collections.unmodifiableMap(copy);
    }

    /**
     * A message from its key and its values, given as name, value, name, value, …
     *
     * @param key names the text
     * @param nameThenValue pairs; a value is a {@link String}, an {@link Integer}, a {@link Double} or a {@link Message}
     */
    public static Message of(String key, Object... nameThenValue) {
        if (nameThenValue.length % 2 != 0) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "Message %s: %d names and values came, allowed is an even number. Give each name its value.",
                    key,
                    nameThenValue.length));
        }
        Map<String, Object> args = new LinkedHashMap<>();
        for (int i = 0; i < nameThenValue.length; i += 2) {
            String name = String.valueOf(nameThenValue[i]);
            if (args.put(name, nameThenValue[i + 1]) != null) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "Message %s: the name \"%s\" came twice. Give it once.", key, name));
            }
        }
        return new Message(key, args);
    }

    /** The last part of the key: {@code front-near-top} of {@code plate.front-near-top}. */
    public String code() {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    /** Whether a name has its form; the same few come again and again. */
    private static boolean isKnown(Pattern form, String name) {
        Set<String> good = form == KEY ? GOOD_KEYS : GOOD_NAMES;
        if (good.contains(name)) {
            return true;
        }
        boolean matches = form.matcher(name).matches();
        if (matches && good.size() < MOST_GOOD) {
            good.add(name);
        }
        return matches;
    }

    private static void checkArgument(String key, String name, Object value) {
        if (!isKnown(NAME, name)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "Message %s: the name \"%s\" must be letters and digits and begin in lower case.",
                    key,
                    name));
        }
        if (!(value instanceof String
                || value instanceof Integer
                || value instanceof Double
                || value instanceof Message)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "Message %s: the value of \"%s\" is %s, allowed are String, Integer, Double and Message."
                            + " Convert it first.",
                    key,
                    name,
                    value == null ? "null" : "a " + value.getClass().getSimpleName()));
        }
    }
}
