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
}
