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
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The texts of one language: turns a {@link Message} into a sentence.
 *
 * <p>A text file is one flat JSON object from key to text. In a text <code>{name}</code> shows a value plainly and <code>
 * {name:2}</code> shows a number with exactly two decimals. Each language is one file, and holds its
 * decimal mark under {@value #MARK}.
 */
public final class Texts {
    static final String MARK = "number.decimal-mark";

    private final String file;
    private final Map<String, Template> templates;
    private final String decimalMark;
    /** A line of the file with a text: the first word of its key, and all of it but the comma after it. */
    private static final Pattern LINE = Pattern.compile("(?m)^ *(\"([a-z]+)\\.[^\\n]*\"),?$");

    /** First word of what the page says only where somebody opens what is fetched later. */
    private static final String LATER = "later";

    /** First words of what no page says by itself: it is the terminal's, or comes from the server in whole sentences. */
    private static final Set<String> NOT_OF_PAGE = Set.of(
            "terminal",
            "fault",
            "todo",
            "allowed",
            "came",
            "kind",
            "group",
            "catalogue",
            "chemistry",
            "other",
            "scouting",
            "structure",
            "lesson",
            "compound",
            "outcome",
            "folder",
            "import",
            "study",
            "column",
            "same",
            "pure",
            "done",
            "seeing",
            "plate",
            "hrf");

    private final String json;

    private Texts(String file, Map<String, Template> templates, String decimalMark, String json) {
        this.file = file;
        this.templates = Collections.unmodifiableMap(templates);
        this.decimalMark = decimalMark;
        this.json = json;
    }

    /**
     * The English texts, as packed with the program.
     *
     * @throws IllegalStateException when the file is missing or a text in it cannot be read
     */
    public static Texts english() {
        return of(Language.ENGLISH);
    }

    /**
     * The texts of a language, as packed with the program.
     *
     * @throws IllegalStateException when the file is missing or a text in it cannot be read
     */
    public static Texts of(Language language) {
        return packed(language.file());
    }

    private static Texts packed(String file) {
        return of(file, read(file));
    }

    /** A text file as packed with the program. */
    static String read(String file) {
        try (InputStream in = Texts.class.getResourceAsStream("/" + file)) {
            if (in == null) {
                throw new IllegalStateException(
                        "The texts " + file + " are not packed with the program: build it again.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The texts " + file + " cannot be read", e);
        }
    }

    /** Texts from the content of a text file; the name is for messages only. */
    static Texts of(String file, String json) {
        Map<String, Template> templates = new TreeMap<>();
        Map<String, String> entries = FlatJson.read(file, json);
        entries.forEach((key, text) -> templates.put(key, Template.of(key, text)));
        return new Texts(file, templates, entries.getOrDefault(MARK, "."), json);
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
        return template.fill(message, this);
    }

    /** What stands before the decimals of a number. */
    String decimalMark() {
        return decimalMark;
    }

    /** What the page says on a first visit, as one flat JSON object. */
    public String jsonOfPage() {
        return json(word -> !word.equals(LATER) && !NOT_OF_PAGE.contains(word));
    }

    /** What the page says only once somebody opens what is fetched later: the keys that begin with {@code later.}. */
    public String jsonForLater() {
        return json(LATER::equals);
    }

    private String json(Predicate<String> wanted) {
        return LINE.matcher(json)
                .results()
                .filter(line -> wanted.test(line.group(2)))
                .map(line -> line.group(1))
                .collect(Collectors.joining(",\n", "{\n", "\n}\n"));
    }

    /** All keys, sorted. */
    public Set<String> keys() {
        return templates.keySet();
    }
}
