package midplate.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The texts of one language: turns a {@link Message} into a sentence.
 *
 * <p>A text file is one flat JSON object from key to text. In a text <code>{name}</code> shows a value plainly and <code>
 * {name:2}</code> shows a number with exactly two decimals. A second language is one more file.
 */
public final class Texts {
    private static final String ENGLISH = "texts/en.json";

    private final String file;
    private final Map<String, Template> templates;

    private Texts(String file, Map<String, Template> templates) {
        this.file = file;
        this.templates = Collections.unmodifiableMap(templates);
    }

    /**
     * The English texts, as packed with the program.
     *
     * @throws IllegalStateException when the file is missing or a text in it cannot be read
     */
    public static Texts english() {
        return packed(ENGLISH);
    }

    private static Texts packed(String file) {
        try (InputStream in = Texts.class.getResourceAsStream("/" + file)) {
            if (in == null) {
                throw new IllegalStateException(
                        "The texts " + file + " are not packed with the program: build it again.");
            }
            return of(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("The texts " + file + " cannot be read", e);
        }
    }

    /** Texts from the content of a text file; the name is for messages only. */
    static Texts of(String file, String json) {
        Map<String, Template> templates = new TreeMap<>();
        FlatJson.read(file, json).forEach((key, text) -> templates.put(key, Template.of(key, text)));
        return new Texts(file, templates);
    }

    /**
     * The message in words.
     *
     * @throws IllegalStateException when there is no text of that key, or the text shows a value that the message lacks
     */
    public String render(Message message) {
        Template template = templates.get(message.key());
        if (template == null) {
            throw new IllegalStateException(
                    String.format(Locale.ROOT, "There is no text \"%s\" in %s. Add it there.", message.key(), file));
        }
        return template.fill(message);
    }

    /** All keys, sorted. */
    public Set<String> keys() {
        return templates.keySet();
    }
}
