package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import midplate.chemistry.GroupCounts;
import midplate.plate.Setting;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compounds in requests: by SMILES, by groups, by class. */
class CompoundRequestTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final String PAIR = "\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": ";

    private static JsonNode structure(String json) throws IOException {
        return MAPPER.readTree(EXCHANGE.structure(json));
    }

    private static JsonNode advice(String spots) throws IOException {
        return MAPPER.readTree(
                EXCHANGE.advice("{" + PAIR + spots + "}", Setting.BENCH).json());
    }

    private static List<Fault> faults(String spots) {
        return assertThrows(BadInput.class, () -> EXCHANGE.advice("{" + PAIR + spots + "}", Setting.BENCH))
                .faults();
    }

    private static List<String> texts(JsonNode list, String field) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.path(field).asText()));
        return texts;
    }

    @Test
    void threeWaysToSayItReachTheQuestion() {
        FakeAdviser adviser = new FakeAdviser();
        adviser.withSolvents()
                .advice(
                        "{" + PAIR
                                + "[{\"name\": \"A\", \"smiles\": \"CCOC(C)=O\"}, {\"name\": \"B\", \"groups\": {\"ester\": 2}},"
                                + " {\"name\": \"C\", \"class\": \"ester\"}, {\"name\": \"D\", \"class\": \"hydrocarbon\"},"
                                + " {\"name\": \"E\"}]}",
                        Setting.BENCH);
        assertEquals(
                Map.of(
                        "A", new GroupCounts(Map.of("ester", 1, "alkyl-carbon", 3), GroupCounts.Detail.WHOLE),
                        "B", new GroupCounts(Map.of("ester", 2), GroupCounts.Detail.GROUPS),
                        "C", new GroupCounts(Map.of("ester", 1), GroupCounts.Detail.CLASS),
                        "D", new GroupCounts(Map.of(), GroupCounts.Detail.CLASS)),
                adviser.lastAsked().structures());
    }

    @Test
    void anAnswerTellsTheGroupsOfEachSpotThatIsKnown() throws IOException {
        JsonNode answer = advice("[{\"name\": \"A\", \"smiles\": \"CC(=O)c1ccccc1\"}, {\"name\": \"B\"}]");
        assertEquals(List.of("A"), texts(answer.get("structures"), "spot"));
        JsonNode spot = answer.at("/structures/0");
        assertEquals(List.of("aromatic-carbon", "alkyl-carbon", "aryl-ketone"), texts(spot.get("groups"), "id"));
        assertEquals("aryl-ketone", spot.get("heldBy").asText());
        assertEquals("whole", spot.get("detail").asText());
        assertTrue(spot.at("/groups/2/effect").asDouble() < 0);
        assertFalse(advice("[{\"name\": \"B\"}]").has("structures"));
    }

    @Test
    void whatIsToldOfAStructureStandsInTheNotesWithTheSpotsName() throws IOException {
        JsonNode answer = advice("[{\"name\": \"B\"}, {\"name\": \"A1\", \"smiles\": \"NCc1ccccc1.Cl\"}]");
        List<String> notes = texts(answer.get("notes"), "text");
        assertTrue(
                notes.stream()
                        .anyMatch(note -> note.startsWith("A1: Read as the uncharged acid or base, without HCl.")),
                notes.toString());
        assertTrue(texts(answer.get("notes"), "about").contains("spots[1]"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"name\": \"B\", \"smiles\": \"CC(=O\"}                     | spots[1].smiles              | open-branch",
                "{\"name\": \"B\", \"smiles\": \" \"}                         | spots[1].smiles              | empty",
                "{\"name\": \"B\", \"smiles\": 5}                             | spots[1].smiles              | wrong-type",
                "{\"name\": \"B\", \"groups\": {\"ester\": -1}}               | spots[1].groups.ester        | group-count",
                "{\"name\": \"B\", \"groups\": {\"ester\": 0}}                | spots[1].groups.ester        | group-count",
                "{\"name\": \"B\", \"groups\": {\"ester\": 1.5}}              | spots[1].groups.ester        | group-count",
                "{\"name\": \"B\", \"groups\": {\"ester\": 99}}               | spots[1].groups.ester        | group-count",
                "{\"name\": \"B\", \"groups\": {\"ester\": \"one\"}}          | spots[1].groups.ester        | wrong-type",
                "{\"name\": \"B\", \"groups\": {\"alkyl-carbon\": 91}}        | spots[1].groups.alkyl-carbon | group-count",
                "{\"name\": \"B\", \"groups\": {\"estre\": 1}}                | spots[1].groups.estre        | unknown-group",
                "{\"name\": \"B\", \"groups\": {}}                            | spots[1].groups              | no-groups",
                "{\"name\": \"B\", \"groups\": []}                            | spots[1].groups              | wrong-type",
                "{\"name\": \"B\", \"class\": \"keton\"}                      | spots[1].class               | unknown-class",
                "{\"name\": \"B\", \"class\": \"tert-butyl\"}                 | spots[1].class               | unknown-class",
                "{\"name\": \"B\", \"smiles\": \"CCO\", \"class\": \"ester\"} | spots[1].class               | two-structures",
            })
    void aFaultNamesItsField(String spot, String field, String code) {
        List<Fault> faults = faults("[{\"name\": \"A\"}, " + spot + "]");
        assertEquals(
                List.of(field + " " + code),
                faults.stream().map(fault -> fault.field() + " " + fault.code()).toList());
    }

    @Test
    void anUnknownGroupIsAnsweredWithThoseItMayMean() {
        assertEquals(
                "Did you mean imide, sulfonamide, sulfinamide?",
                faults("[{\"name\": \"A\", \"groups\": {\"amide\": 1}}]").get(0).todo());
        assertEquals(
                "Did you mean ester?",
                faults("[{\"name\": \"A\", \"groups\": {\"estre\": 1}}]").get(0).todo());
    }

    @Test
    void aCompoundByItselfIsDrawnAndItsGroupsArePlaced() throws IOException {
        JsonNode answer = structure("{\"smiles\": \"OC(=O)c1ccccc1\"}");
        assertEquals("C7H6O2", answer.get("formula").asText());
        assertEquals(122.12, answer.get("molarMass").asDouble(), 0.01); // 7 C, 6 H, 2 O by standard atomic weights
        assertTrue(answer.get("svg").asText().startsWith("<svg "));
        JsonNode acid = answer.at("/groups/1");
        assertEquals("carboxylic-acid", acid.get("id").asText());
        assertEquals(3, acid.at("/atoms/0").size());
        assertEquals(2, acid.at("/bonds/0").size());
        assertEquals(7.0, acid.get("energy").asDouble()); // groups.csv
    }

    @Test
    void withoutAFormulaThereIsNoDrawing() throws IOException {
        JsonNode answer = structure("{\"class\": \"ester\"}");
        assertEquals("class", answer.get("detail").asText());
        for (String field : List.of("smiles", "formula", "molarMass", "svg")) {
            assertFalse(answer.has(field), field);
        }
        assertFalse(structure("{\"class\": \"hydrocarbon\"}").has("heldBy"));
    }

    /** The open measurements have 2 aliphatic amines, and no azide at all. */
    @Test
    void groupsOfFewCompoundsAreTold() throws IOException {
        JsonNode rare = structure("{\"groups\": {\"azide\": 1, \"primary-amine\": 1, \"aryl-ketone\": 1}}");
        assertEquals(
                List.of(
                        "Few compounds with this were measured, which widens the band: primary amine.",
                        "No compound with this was measured; its effect is an estimate: azide."),
                texts(rare.get("notes"), "text"));
        assertEquals(List.of(), texts(structure("{\"class\": \"aryl-ketone\"}").get("notes"), "text"));
    }

    /** Its OH is bound inside, so that the ketone meets the silica: why salicylates run high is in every textbook. */
    @Test
    void aPhenolBoundInsideDoesNotHoldTheCompound() throws IOException {
        assertEquals(
                "aryl-ketone",
                structure("{\"smiles\": \"CC(=O)c1ccccc1O\"}").get("heldBy").asText());
        assertEquals(
                "phenol",
                structure("{\"smiles\": \"CC(=O)c1ccc(O)cc1\"}").get("heldBy").asText());
    }

    @Test
    void theEffectsAreThoseOfThePairAskedAbout() throws IOException {
        JsonNode usual = structure("{\"class\": \"ester\"}");
        JsonNode named = structure("{\"class\": \"ester\", \"weak\": \"heptane\", \"strong\": \"EtOAc\"}");
        JsonNode other = structure("{\"class\": \"ester\", \"weak\": \"DCM\", \"strong\": \"methanol\"}");
        assertEquals(usual.at("/groups/0/effect"), named.at("/groups/0/effect")); // heptane stands for hexane
        assertFalse(usual.at("/groups/0/effect").equals(other.at("/groups/0/effect")));
        BadInput bad = assertThrows(
                BadInput.class,
                () -> EXCHANGE.structure("{\"class\": \"ester\", \"weak\": \"toluene\", \"strong\": \"NEt3\"}"));
        assertEquals("pair-not-measured", bad.faults().get(0).code());
    }

    @Test
    void namesAndFaultsAreSaidInGermanToo() throws IOException {
        Exchange german = EXCHANGE.in(Language.GERMAN);
        assertEquals(
                "Arylketon",
                MAPPER.readTree(german.structure("{\"class\": \"aryl-ketone\"}"))
                        .at("/groups/0/name")
                        .asText());
        BadInput bad = assertThrows(BadInput.class, () -> german.structure("{\"smiles\": \"CC(=O\"}"));
        assertEquals(
                "Zeichen 3, hinter „CC“: Der Zweig, der hier mit ( beginnt, wird nie geschlossen.",
                bad.faults().get(0).message());
    }

    @Test
    void everyGroupAndClassIsListedWithItsEffectsInEachPair() throws IOException {
        JsonNode list = MAPPER.readTree(EXCHANGE.groups());
        assertTrue(list.get("groups").size() > 60);
        for (JsonNode group : list.get("groups")) {
            assertEquals(3, group.get("pairs").size(), group.get("id").asText());
        }
        List<String> classes = texts(list.get("classes"), "id");
        assertEquals("hydrocarbon", classes.get(0));
        for (String name : classes) {
            assertEquals(
                    "class",
                    structure("{\"class\": \"" + name + "\"}").get("detail").asText());
        }
    }
}
