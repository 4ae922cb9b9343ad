package midplate.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The file of English texts itself, and that the program and the file know the same keys. */
class TextFileTest {
    private static final Path FILE = Path.of("shared", "texts", "en.json");
    private static final Pattern LINE = Pattern.compile("  \"([^\"]+)\": \"((?:[^\"\\\\]|\\\\.)*)\",?");
    private static final Pattern KEY = Pattern.compile("\"([a-z][a-z0-9-]*\\.[a-z0-9.-]*)\"");
    private static final Pattern SAID = Pattern.compile("(?:Message\\.of|new Message)\\(\\s*\"([^\"]+)\"\\s*([,)])");

    private static List<String> keysInFileOrder() throws IOException {
        List<String> lines = Files.readAllLines(FILE);
        assertEquals("{", lines.get(0), "first line");
        assertEquals("}", lines.get(lines.size() - 1), "last line");
        List<String> keys = new ArrayList<>();
        for (String line : lines.subList(1, lines.size() - 1)) {
            Matcher entry = LINE.matcher(line);
            assertTrue(entry.matches(), "one text a line, two spaces before it: " + line);
            keys.add(entry.group(1));
        }
        return keys;
    }

    @Test
    void holdsOneTextALineSortedByKey() throws IOException {
        List<String> keys = keysInFileOrder();
        assertFalse(keys.isEmpty());
        assertEquals(List.copyOf(new TreeSet<>(keys)), keys);
    }

    @Test
    void everyTextParsesAndEveryKeyIsAKey() throws IOException {
        Texts english = Texts.english();
        assertEquals(new TreeSet<>(keysInFileOrder()), new TreeSet<>(english.keys()));
        for (String key : english.keys()) {
            assertTrue(Message.KEY.matcher(key).matches(), key);
        }
    }

    @Test
    void noTextIsEmptyOrHasSpacesAtItsEnds() throws IOException {
        FlatJson.read(FILE.toString(), Files.readString(FILE)).forEach((key, text) -> {
            assertFalse(text.isBlank(), key);
            assertEquals(text.strip(), text, key);
        });
    }

    @Test
    void everyKeyThatTheProgramSaysHasAText() throws IOException {
        TreeMap<String, String> said = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher call = SAID.matcher(Files.readString(file));
                while (call.find()) {
                    said.put(call.group(1), file.toString());
                }
            }
        }
        assertTrue(said.containsKey("plate.front-near-top"), "finds the calls at all");
        Set<String> known = Texts.english().keys();
        said.keySet().removeAll(known);
        assertEquals(new TreeMap<>(), said, "keys without a text in " + FILE + ", and where they are said");
    }

    // The page has a test of its own. A key that is put together begins with a text that ends in a dot or a hyphen;
    // these beginnings are named here, so that none of them lets idle texts pass unnoticed.
    @Test
    void everyTextOfTheServerIsSaidSomewhere() throws IOException {
        Set<String> said = new TreeSet<>();
        Set<String> begun = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher key = KEY.matcher(Files.readString(file));
                while (key.find()) {
                    boolean beginning =
                            key.group(1).endsWith(".") || key.group(1).endsWith("-");
                    (beginning ? begun : said).add(key.group(1));
                }
            }
        }
        Set<String> known = new TreeSet<>(Texts.english().keys());
        known.removeIf(key -> key.startsWith("page.") || key.startsWith("later."));
        begun.removeIf(beginning -> known.stream().noneMatch(key -> key.startsWith(beginning)));
        assertEquals(
                Set.of(
                        "advice.streaks-",
                        "same.basis-",
                        "same.class-",
                        "lesson.series-basis-",
                        "lesson.series-other-",
                        "lesson.series-table-",
                        "lesson.slip-",
                        "same.co-",
                        "advice.why-",
                        "answer.setting-",
                        "condition.",
                        "done.state-",
                        "group.",
                        "lesson.climb-event-",
                        "compound.",
                        "seeing.caution-",
                        "seeing.way-",
                        "solvent.",
                        "sorbent."),
                begun);
        known.removeAll(said);
        known.removeIf(key -> begun.stream().anyMatch(key::startsWith));
        assertEquals(Set.of(), known, "texts that nothing says");
    }
}
