package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Study;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the checks of a study may not hold is told with its place. */
class StudyChecksTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static ObjectNode kept() throws IOException {
        return (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
    }

    private static Study read(String json) {
        FaultList faults = new FaultList(Texts.of(Language.ENGLISH));
        return new StudyReader(SolventCatalogue.builtIn(), FunctionalGroups.builtIn(), faults)
                .read(JsonText.read(json, faults));
    }

    private static List<String> told(String json) {
        return assertThrows(BadInput.class, () -> read(json), json).faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    /** The kept study with other JSON at a place; nothing there where it is said to be gone. */
    private static String with(String pointer, String json) throws IOException {
        ObjectNode study = kept();
        int slash = pointer.lastIndexOf('/');
        JsonNode parent = study.at(pointer.substring(0, slash));
        String name = pointer.substring(slash + 1);
        if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(name), JSON.readTree(json));
        } else if (json.equals("gone")) {
            ((ObjectNode) parent).remove(name);
        } else {
            ((ObjectNode) parent).set(name, JSON.readTree(json));
        }
        return study.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/checks | 7 | checks wrong-type",
                "/checks/colour | 1 | checks.colour unknown-field",
                "/checks/identity/candidates | gone | checks.identity.candidates missing-field",
                "/checks/identity/references/1/id | \"k1\" | checks.identity.references[1].id id-twice",
                "/checks/identity/references/1/class | \"rock\" | checks.identity.references[1].class unknown-class",
                "/checks/identity/references/0/by | gone | checks.identity.references[0].smiles by-missing",
                "/checks/identity/candidates/0/rf | [0.4] | checks.identity.candidates[0].rf wrong-type",
                "/checks/identity/candidates/0/colour | 1 | checks.identity.candidates[0].colour unknown-field",
                "/checks/identity/plates/0/weak | \"hexanes\" | checks.identity.plates[0].weak unknown-choice",
                "/checks/identity/plates/0/percentStrong | \"20\" | checks.identity.plates[0].percentStrong wrong-type",
                "/checks/identity/plates/0/additive | gone | checks.identity.plates[0].additive missing-field",
                "/checks/identity/plates/1/id | \"i1\" | checks.identity.plates[1].id id-twice",
                "/checks/identity/plates/0/lanes/0/role | \"both\" | checks.identity.plates[0].lanes[0].role unknown-choice",
                "/checks/identity/plates/0/lanes/1/reference | gone | checks.identity.plates[0].lanes[1].reference missing-field",
                "/checks/identity/plates/0/lanes/2/reference | gone | checks.identity.plates[0].lanes[2].reference missing-field",
                "/checks/identity/plates/0/lanes/1/reference | \"s1\" | checks.identity.plates[0].lanes[1].reference no-such-spot",
                "/checks/identity/plates/0/lanes/1/id | \"l1\" | checks.identity.plates[0].lanes[1].id id-twice",
                "/checks/identity/plates/0/lanes/1/readings/0/id | \"e1\" | checks.identity.plates[0].lanes[1].readings[0].id id-twice",
                "/checks/identity/plates/0/lanes/1/readings/0/rf | 0.5 | checks.identity.plates[0].lanes[1].readings[0].rf two-places",
                "/checks/identity/plates/0/lanes/1/readings/1/rf | gone | checks.identity.plates[0].lanes[1].readings[1].centreMm missing-field",
                "/checks/identity/plates/0/lanes/1/readings/0/shape | \"oval\" | checks.identity.plates[0].lanes[1].readings[0].shape unknown-choice",
                "/checks/purity/spot | \"s9\" | checks.purity.spot no-such-spot",
                "/checks/purity/touches | gone | checks.purity.touches missing-field",
                "/checks/purity/seenBy/1 | \"uv-254\" | checks.purity.seenBy[1] id-twice",
                "/checks/purity/seenBy/1 | \"a lamp\" | checks.purity.seenBy[1] no-id",
                "/checks/purity/startSpot | \"some\" | checks.purity.startSpot unknown-choice",
                "/checks/hrf/system | null | checks.hrf.system wrong-type",
                "/checks/hrf/measured | [] | checks.hrf.measured wrong-type",
                "/checks/hrf/measured/lidocaine | [] | checks.hrf.measured.lidocaine wrong-type",
                "/checks/hrf/measured/a\u0007b | 1 | checks.hrf.measured line-not-taken",
                "/checks/hrf/spots/1/id | \"h1\" | checks.hrf.spots[1].id id-twice",
                "/checks/reaction/species/1/id | \"x1\" | checks.reaction.species[1].id id-twice",
                "/checks/reaction/species/0/part | \"solvent\" | checks.reaction.species[0].part unknown-choice",
                "/checks/reaction/species/0/spot | \"x1\" | checks.reaction.species[0].spot no-such-spot",
                "/checks/reaction/plates/1/id | \"t1\" | checks.reaction.plates[1].id id-twice",
                "/checks/reaction/plates/1/minutes | gone | checks.reaction.plates[1].minutes missing-field",
                "/checks/reaction/plates/0/baseline | 5 | checks.reaction.plates[0].baseline number-out-of-range",
                "/checks/reaction/plates/1/marks/0/species | \"s1\" | checks.reaction.plates[1].marks[0].species no-such-spot",
                "/checks/reaction/plates/1/marks/1/species | \"x1\" | checks.reaction.plates[1].marks[1].species id-twice",
                "/checks/reaction/plates/1/marks/0/strength | 2.5 | checks.reaction.plates[1].marks[0].strength number-out-of-range",
                "/checks/reaction/plates/1/marks/0/strength | \"2\" | checks.reaction.plates[1].marks[0].strength wrong-type"
            })
    void eachFaultOfChecksIsToldWithItsPlace(String pointer, String json, String told) throws IOException {
        assertEquals(List.of(told), told(with(pointer, json)));
    }

    @Test
    void aReferenceThatALaneNamesCannotBeTakenOut() throws IOException {
        assertEquals(
                List.of("checks.identity.plates[0].lanes[3].reference no-such-spot"),
                told(with("/checks/identity/references/1", "{\"id\": \"k9\", \"name\": \"\"}")));
        assertEquals(
                List.of("checks.purity.spot no-such-spot", "checks.reaction.species[0].spot no-such-spot"),
                told(with("/spots/0", "{\"id\": \"s9\", \"name\": \"A\"}")).stream()
                        .filter(each -> each.startsWith("checks"))
                        .toList());
    }

    @Test
    void whereAnIdOfAReferenceIsFaultyNothingThatRefersToItIsBlamed() throws IOException {
        assertEquals(
                List.of("checks.identity.references[0].id no-id"),
                told(with("/checks/identity/references/0/id", "\"k 1\"")));
    }

    @Test
    void aLaneOfTheSampleNeedsNoReferenceAndNoPartNeedsAnother() throws IOException {
        assertEquals(
                4,
                read(kept().toString())
                        .checks()
                        .orElseThrow()
                        .identity()
                        .orElseThrow()
                        .plates()
                        .get(0)
                        .lanes()
                        .size());
        assertTrue(read(with("/checks", "{}")).checks().orElseThrow().identity().isEmpty());
    }

    @Test
    void listsOfChecksAreBounded() throws IOException {
        for (String[] list : new String[][] {
            {"/checks/identity/references", "50"},
            {"/checks/identity/candidates", "50"},
            {"/checks/identity/plates", "20"},
            {"/checks/identity/plates/0/lanes", "30"},
            {"/checks/identity/plates/0/lanes/0/readings", "50"},
            {"/checks/hrf/spots", "50"},
            {"/checks/reaction/species", "30"},
            {"/checks/reaction/plates", "200"},
            {"/checks/reaction/plates/0/marks", "30"}
        }) {
            int most = Integer.parseInt(list[1]);
            String field = list[0].substring(1).replaceAll("/([0-9]+)", "[$1]").replace('/', '.');
            assertTrue(told(with(list[0], JSON.writeValueAsString(new int[most + 1])))
                    .contains(field + " too-many"));
            List<String> told = told(with(list[0], JSON.writeValueAsString(new int[most])));
            assertTrue(told.contains(field + "[0] wrong-type"), told.toString());
            assertTrue(told.stream().noneMatch(each -> each.endsWith("too-many")), told.toString());
        }
        String many = IntStream.range(0, 51)
                .mapToObj(i -> "\"standard " + i + "\": 1")
                .collect(Collectors.joining(", ", "{", "}"));
        assertEquals(List.of("checks.hrf.measured too-many"), told(with("/checks/hrf/measured", many)));
    }

    @Test
    void version3KnewNoChecks() throws IOException {
        ObjectNode study = (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-3.json")));
        study.putObject("checks");
        assertEquals(List.of("checks unknown-field"), told(study.toString()));
    }

    // nothing entered is lost: what makes no sense yet is kept as it was typed
    @Test
    void whatMakesNoSenseYetIsRead() throws IOException {
        for (String[] odd : new String[][] {
            {"/checks/identity/plates/0/frontMm", "5"},
            {"/checks/identity/plates/0/lanes/0/readings/0/centreMm", "-1e9"},
            {"/checks/identity/plates/0/lanes", "[]"},
            {"/checks/identity/references/1/name", "\"acetophenone\""},
            {"/checks/identity/candidates/0/rf", "\"NaN\""},
            {"/checks/purity/spotsSeen", "0"},
            {"/checks/hrf/system", "\"of a later table\""},
            {"/checks/reaction/plates/1/minutes", "0"},
            {"/checks/reaction/plates/2/minutes", "-30"}
        }) {
            assertTrue(read(with(odd[0], odd[1])).checks().isPresent(), odd[0]);
        }
    }
}
