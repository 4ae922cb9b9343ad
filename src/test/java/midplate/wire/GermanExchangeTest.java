package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.plate.Setting;
import midplate.words.EnglishWords;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Answers and refusals in German: the same numbers, other words. Readings are invented. */
class GermanExchangeTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange ENGLISH = Exchange.builtIn();
    private static final Exchange GERMAN = ENGLISH.in(Language.GERMAN);

    private static String asked(String weak, String strong, String runs) {
        return String.format(
                "{\"weak\": \"%s\", \"strong\": \"%s\", \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}], \"runs\": [%s]}",
                weak, strong, runs);
    }

    static List<String> questions() {
        return List.of(
                asked("hexane", "ethyl acetate", ""),
                asked("hexane", "ethyl acetate", "{\"percentStrong\": 10, \"rf\": {\"A\": 0.05, \"B\": 0.31}}"),
                asked("heptane", "ether", "{\"percentStrong\": 30, \"rf\": {\"A\": 0, \"B\": 1}}"),
                asked("hexane", "ethyl acetate", "{\"percentStrong\": 0, \"rf\": {\"A\": 0.9, \"B\": 0.95}}"),
                asked("DCM", "MeOH", "{\"percentStrong\": 9, \"rf\": {\"A\": 0.01, \"B\": 0.9}}"),
                asked(
                        "hexane",
                        "ethyl acetate",
                        "{\"weak\": \"DCM\", \"strong\": \"MeOH\", \"percentStrong\": 5, \"rf\": {\"A\": 0.3, \"B\": 0.3}}"));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void answersWithTheSameNumbersAndWithoutAnEnglishWord(String question) throws IOException {
        JsonNode english =
                MAPPER.readTree(ENGLISH.advice(question, Setting.BENCH).json());
        JsonNode german = MAPPER.readTree(GERMAN.advice(question, Setting.BENCH).json());
        assertEquals(numbers(english), numbers(german));
        assertEquals(List.of(), Schemas.broken("advice-answer", german.toString()));
        Map<String, String> left = new TreeMap<>();
        for (JsonNode text : german.findValues("text")) {
            EnglishWords.in(text.asText()).ifPresent(word -> left.put(text.asText(), word));
        }
        for (JsonNode args : german.findValues("args")) {
            args.forEach(arg -> EnglishWords.in(arg.asText()).ifPresent(word -> left.put(arg.asText(), word)));
        }
        assertEquals(Map.of(), left);
        assertFalse(german.findValues("text").isEmpty());
    }

    private static List<String> numbers(JsonNode node) {
        List<String> numbers = new ArrayList<>();
        if (node.isNumber()) {
            numbers.add(node.asText());
        }
        node.forEach(inner -> numbers.addAll(numbers(inner)));
        return numbers;
    }

    @Test
    void callsSolventsByTheirGermanNamesInFieldsAndInSentences() throws IOException {
        JsonNode advice = MAPPER.readTree(GERMAN.advice(
                                asked("heptane", "ether", "{\"percentStrong\": 30, \"rf\": {\"A\": 0.2}}"),
                                Setting.BENCH)
                        .json())
                .get("advice");
        assertEquals("Heptan", advice.at("/weak/name").asText());
        assertEquals("heptane", advice.at("/weak/id").asText());
        assertEquals("Diethylether", advice.at("/strong/name").asText());
        JsonNode why = advice.findParents("key").stream()
                .filter(message -> message.get("key").asText().startsWith("advice.why-stronger"))
                .findFirst()
                .orElseThrow();
        assertEquals("Diethylether", why.at("/args/strong").asText());
    }

    @Test
    void refusesInGermanWithTheFieldsAndCodesOfEnglish() {
        String bad = "{\"weak\": \"hexane\", \"strong\": \"methanol\", \"amountMl\": 10, \"graduationMl\": 7,"
                + " \"spots\": [{\"name\": \"A\"}], \"wek\": 1, \"window\": [0.8, 0.2]}";
        List<Fault> english = faults(ENGLISH, bad);
        List<Fault> german = faults(GERMAN, bad);
        assertEquals(
                english.stream().map(Fault::field).toList(),
                german.stream().map(Fault::field).toList());
        assertEquals(
                english.stream().map(Fault::code).toList(),
                german.stream().map(Fault::code).toList());
        assertEquals(4, german.size(), german.toString());
        assertEquals(
                "ein Lösungsmittel, das sich mit Hexan in jedem Verhältnis mischt",
                find(german, "strong").allowed());
        assertEquals("(0; 5,0]", find(german, "graduationMl").allowed());
        assertEquals("Gemeint vielleicht: weak?", find(german, "wek").todo());
        assertEquals(
                "Ein Fenster von 0,8 bis 0,2 fasst keinen Fleck.",
                find(german, "window").message());
    }

    private static Fault find(List<Fault> faults, String field) {
        return faults.stream()
                .filter(fault -> fault.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private static List<Fault> faults(Exchange exchange, String json) {
        return assertThrows(BadInput.class, () -> exchange.advice(json, Setting.BENCH))
                .faults();
    }

    @Test
    void understandsTheSolventNamesOfItsLanguage() throws IOException {
        String german =
                GERMAN.advice(asked("Hexan", "ethylacetat", ""), Setting.BENCH).json();
        assertEquals(
                "ethyl-acetate", MAPPER.readTree(german).at("/advice/strong/id").asText());
        assertEquals(
                "unknown-solvent",
                faults(ENGLISH, asked("Hexan", "ethyl acetate", "")).get(0).code());
        assertEquals(
                "Gemeint vielleicht: Hexan?",
                faults(GERMAN, asked("hexon", "ethyl acetate", "")).get(0).todo());
    }

    @Test
    void tellsAPlateInMillimetresWithACommaAndKeepsItsNumbers() throws IOException {
        String plate = "{\"heightMm\": 100, \"startMm\": 3.5, \"frontMm\": 90, \"solventLevelMm\": 2,"
                + " \"spots\": [{\"spot\": \"A\", \"centreMm\": 30}]}";
        JsonNode answer = MAPPER.readTree(GERMAN.reading(plate));
        assertEquals(0.3064, answer.at("/readings/A/rf").asDouble()); // (30 − 3.5) / (90 − 3.5)
        assertEquals(1.5, answer.at("/warnings/0/args/roomMm").asDouble());
        assertEquals(
                "Die Startlinie lag nur 1,5 mm über dem Laufmittel. Kriecht es beim ersten Kontakt hoch, kann es die"
                        + " Flecken auswaschen. Mindestens 3 mm Abstand halten.",
                answer.at("/warnings/0/text").asText());
    }

    @Test
    void namesTheTablesOfEqualStrength() throws IOException {
        String question = "{\"weak\": \"heptane\", \"strong\": \"ethyl acetate\", \"percentStrong\": 20}";
        StrengthAnswer answer = GERMAN.equalStrength(question);
        assertEquals(
                "Nach der Tabelle für Kieselgel, ältere Reihe: Elutionskraft ε",
                GERMAN.texts().render(answer.lines().get(0)).replaceFirst(" [0-9],[0-9]+\\.$", ""));
        JsonNode json = MAPPER.readTree(answer.json());
        assertEquals(List.of(), Schemas.broken("equal-strength-answer", answer.json()));
        assertEquals("silica older", json.at("/series/0/series").asText());
        assertEquals(
                "Kieselgel, ältere Reihe",
                json.at("/series/0/inputs/0/conditionText").asText());
    }

    @Test
    void aLanguageAlreadySpokenIsTheSameExchange() {
        assertSame(ENGLISH, ENGLISH.in(Language.ENGLISH));
        assertEquals(Language.ENGLISH, Language.byTag("en-GB").orElseThrow());
    }
}
