package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import midplate.words.EnglishWords;
import midplate.words.Language;
import org.junit.jupiter.api.Test;

/** The library, the groups and the compounds of lessons in German: what a page shows of it is no English, what a program reads of it is the same. */
class GermanLibraryTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange ENGLISH = Exchange.builtIn();
    private static final Exchange GERMAN = ENGLISH.in(Language.GERMAN);

    /** Fields that a page shows; all others must not change with the language. */
    private static final Set<String> SHOWN = Set.of(
            "name",
            "text",
            "unit",
            "value",
            "conditionText",
            "uncertainty",
            "locator",
            "derivedFrom",
            "use",
            "note",
            "leftOut");
    /** Shown and the same in both: units, names of files, a trade name. */
    private static final Set<String> ALIKE =
            Set.of("g/mol", "mPa s", "g/mL", "BHT", "acetonitrile.html", "Methyl-tert-Butyl-Ether.html");

    private static final Pattern WORD = Pattern.compile("[A-Za-z]{3}");
    private static final Pattern HAZARD_CODES = Pattern.compile("(EU)?H[0-9].*");
    private static final List<String> CODES = List.of("localization_class", "selectivity_group");

    private final Map<String, String> english = new TreeMap<>();
    private final Map<String, String> german = new TreeMap<>();

    private static void gather(String at, String code, JsonNode node, Map<String, String> texts) {
        if (node.isTextual()) {
            texts.put(at + (code.isEmpty() ? "" : "#code"), node.asText());
            return;
        }
        Iterator<String> names = node.fieldNames();
        String property = node.path("property").asText();
        while (names.hasNext()) {
            String name = names.next();
            boolean coded = name.equals("value") && CODES.contains(property);
            gather(at + "/" + name, coded ? property : "", node.get(name), texts);
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            gather(at + "/" + i, "", node.get(i), texts);
        }
    }

    private void gatherBoth() throws IOException {
        gather("", "", MAPPER.readTree(ENGLISH.library()), english);
        gather("", "", MAPPER.readTree(GERMAN.library()), german);
        gather("/of-groups", "", MAPPER.readTree(ENGLISH.groups()), english);
        gather("/of-groups", "", MAPPER.readTree(GERMAN.groups()), german);
        gather("/of-lessons", "", MAPPER.readTree(ENGLISH.lessons().tables()), english);
        gather("/of-lessons", "", MAPPER.readTree(GERMAN.lessons().tables()), german);
        String nothing = "{\"compounds\": []}";
        gather(
                "/of-seeing",
                "",
                MAPPER.readTree(ENGLISH.sight().seeing(nothing)).get("ways"),
                english);
        gather("/of-seeing", "", MAPPER.readTree(GERMAN.sight().seeing(nothing)).get("ways"), german);
    }

    private static boolean shown(String at) {
        return SHOWN.contains(at.substring(at.lastIndexOf('/') + 1));
    }

    @Test
    void keepsItsSchemaAndWhatProgramsReadOfIt() throws IOException {
        gatherBoth();
        assertEquals(List.of(), Schemas.broken("library", GERMAN.library()));
        assertEquals(english.keySet(), german.keySet());
        english.forEach((at, text) -> {
            if (!shown(at)) {
                assertEquals(text, german.get(at), at);
            }
            if (at.endsWith("/use") && !text.isEmpty()) {
                String word = text.substring(0, text.indexOf(": ") + 2);
                assertTrue(german.getOrDefault(at, "").startsWith(word), at);
            }
        });
    }

    @Test
    void everyWordThatAPageShowsIsTranslated() throws IOException {
        gatherBoth();
        Set<String> left = new TreeSet<>();
        english.forEach((at, text) -> {
            boolean word =
                    WORD.matcher(text).find() && !HAZARD_CODES.matcher(text).matches();
            if (shown(at) && word && !ALIKE.contains(text) && text.equals(german.get(at))) {
                left.add(text);
            }
        });
        left.removeAll(Set.of("Chloroform")); // never: English names are in lower case
        assertEquals(Set.of(), left);
        assertTrue(english.keySet().stream().filter(GermanLibraryTest::shown).count() > 1000, "the library was read");
    }

    @Test
    void noEnglishWordIsLeftInWhatAPageShows() throws IOException {
        gatherBoth();
        Map<String, String> left = new TreeMap<>();
        german.forEach((at, text) -> {
            if (shown(at)) {
                EnglishWords.in(text.replaceFirst("^(preferred|kept): ", "")).ifPresent(word -> left.put(at, word));
            }
        });
        assertEquals(Map.of(), left);
    }

    @Test
    void everyPhraseTranslatedIsOneOfTheLibrary() throws IOException {
        gatherBoth();
        JsonNode phrases = MAPPER.readTree(Files.readString(Path.of("shared", "texts", "phrases.de.json")));
        Set<String> unused = new TreeSet<>();
        phrases.fieldNames().forEachRemaining(unused::add);
        for (String text : english.values()) {
            unused.remove(text);
            unused.remove(text.replaceFirst("^(preferred|kept): ", ""));
            unused.remove(text.split(": ", 2)[0]);
        }
        assertEquals(Set.of(), unused);
    }

    @Test
    void structuresLeftOutKeepTheirFormulasAndGetGermanFigures() throws IOException {
        JsonNode pair = MAPPER.readTree(GERMAN.library()).at("/pairs/0");
        String leftOut = pair.get("leftOut").asText();
        assertTrue(leftOut.startsWith("Strukturen, deren Messreihen"), leftOut);
        assertTrue(leftOut.contains("Nc1cc(Br)ccc1O (0,52), O=C(O)c1ccccc1 (0,36)"), leftOut);
    }
}
