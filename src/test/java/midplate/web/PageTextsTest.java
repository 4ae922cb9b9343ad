package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** The page's own files: what they say, and what they must not do. */
class PageTextsTest {
    private static final Path WEB = Path.of("web");
    private static final Pattern KEY = Pattern.compile("[\"`]((?:page|later)\\.[a-z0-9-]+)[\"`$]");

    private static List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(WEB)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    private static String all(String ending) throws IOException {
        StringBuilder text = new StringBuilder();
        for (Path file : files(ending)) {
            text.append(Files.readString(file));
        }
        return text.toString();
    }

    @Test
    void saysEveryTextOfThePageAndNoOther() throws IOException {
        Set<String> said = new TreeSet<>();
        Set<String> begun = new TreeSet<>();
        Matcher key = KEY.matcher(all(".js") + all(".html"));
        while (key.find()) {
            boolean beginning = key.group().endsWith("$") || key.group(1).endsWith("-");
            (beginning ? begun : said).add(key.group(1));
        }
        Set<String> known = Texts.english().keys().stream()
                .filter(each -> each.startsWith("page.") || each.startsWith("later."))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), without(said, known), "said, and no text");
        Set<String> idle = without(known, said);
        idle.removeIf(text -> begun.stream().anyMatch(text::startsWith));
        assertEquals(Set.of(), idle, "texts that nothing says");
        begun.removeIf(beginning -> known.stream().anyMatch(text -> text.startsWith(beginning)));
        assertEquals(Set.of(), begun, "beginnings of no text");
    }

    private static Set<String> without(Set<String> some, Set<String> others) {
        Set<String> left = new TreeSet<>(some);
        left.removeAll(others);
        return left;
    }

    @Test
    void holdsNoInlineScriptOrStyleAndPutsNoDataIntoMarkup() throws IOException {
        String html = all(".html");
        assertFalse(html.contains("style="), "inline style");
        assertFalse(html.contains("<style"), "inline style");
        assertFalse(Pattern.compile("<script(?![^>]*\\bsrc=)").matcher(html).find(), "inline script");
        assertFalse(Pattern.compile("\\son[a-z]+=").matcher(html).find(), "inline handler");
        String js = all(".js");
        assertFalse(js.contains("innerHTML") || js.contains("insertAdjacentHTML") || js.contains("document.write"));
        assertTrue(js.contains("textContent"), "the files are read at all");
    }

    @Test
    void asksNothingOutsideItsOrigin() throws IOException {
        for (String ending : List.of(".js", ".html", ".css")) {
            String text = all(ending).replace("http://www.w3.org/2000/svg", "");
            assertFalse(
                    Pattern.compile("(https?:)?//[a-z0-9.-]+\\.[a-z]{2,}")
                            .matcher(text)
                            .find(),
                    ending);
        }
    }
}
