package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.catalogue.WaysOfSeeing;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.GroupCounts.Detail;
import midplate.structure.Structures;
import midplate.words.English;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What shows which compound; the expectations are common practice, no source, unless something else is named. */
class SeeingTest {
    private static final Seeing SEEING = Seeing.of(WaysOfSeeing.builtIn());
    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());

    private static Compound molecule(String name, String smiles) {
        return new Compound(
                name,
                OptionalDouble.empty(),
                Optional.of(STRUCTURES.read("smiles", smiles).counts()));
    }

    private static Compound unknown(String name) {
        return new Compound(name, OptionalDouble.empty(), Optional.empty());
    }

    private static Compound counted(String name, Map<String, Integer> groups, Detail detail) {
        return new Compound(name, OptionalDouble.empty(), Optional.of(new GroupCounts(groups, detail)));
    }

    private static Sight sight(String way, Compound compound) {
        return SEEING.look(List.of(compound)).ways().stream()
                .filter(each -> each.way().id().equals(way))
                .map(each -> each.answers().get(0).sight())
                .findFirst()
                .orElseThrow();
    }

    private static List<String> enough(Compound... compounds) {
        return SEEING.look(Arrays.asList(compounds)).enough().stream()
                .map(WayOfSeeing::id)
                .toList();
    }

    private static String order(Compound... compounds) {
        return English.said(SEEING.look(Arrays.asList(compounds)).order());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // quenching needs a conjugated system that absorbs near 254 nm
                "uv-254                 | CC(=O)c1ccccc1          | SHOWS",
                "uv-254                 | c1ccccc1                | SHOWS",
                "uv-254                 | CC(=O)C=C               | SHOWS",
                "uv-254                 | c1ccncc1                | SHOWS",
                "uv-254                 | O=[N+]([O-])c1ccccc1    | SHOWS",
                "uv-254                 | CCCCCC                  | BLIND",
                "uv-254                 | CCCCO                   | BLIND",
                "uv-254                 | CCOC(C)=O               | BLIND",
                "uv-254                 | C1CCCC=C1               | BLIND",
                "uv-254                 | CC(C)=O                 | MAY_SHOW",
                "uv-254                 | C=CC=C                  | MAY_SHOW",
                "uv-366                 | c1ccc2cc3ccccc3cc2c1    | MAY_SHOW",
                "uv-366                 | c1ccccc1                | BLIND",
                "daylight               | c1ccccc1N=Nc1ccccc1     | SHOWS",
                "daylight               | CCO                     | BLIND",
                "iodine                 | CCCCCC                  | MAY_SHOW",
                "iodine                 | C1CCCC=C1               | SHOWS",
                "iodine                 | CCN(CC)CC               | SHOWS",
                "permanganate           | C1CCCC=C1               | SHOWS",
                "permanganate           | CCCCO                   | SHOWS",
                "permanganate           | CCOC(C)=O               | BLIND",
                "permanganate           | CCCCCC                  | BLIND",
                "anisaldehyde           | CCCCO                   | SHOWS",
                "anisaldehyde           | CC(C)=O                 | SHOWS",
                "anisaldehyde           | c1ccccc1                | BLIND",
                "ninhydrin              | CCCN                    | SHOWS",
                "ninhydrin              | CCNCC                   | MAY_SHOW",
                "ninhydrin              | CCN(CC)CC               | BLIND",
                "ninhydrin              | NCC(=O)O                | SHOWS",
                "dinitrophenylhydrazine | CC(C)=O                 | SHOWS",
                "dinitrophenylhydrazine | CC=O                    | SHOWS",
                "dinitrophenylhydrazine | CCOC(C)=O               | BLIND",
                "bromocresol-green      | CCCC(=O)O               | SHOWS",
                "bromocresol-green      | CCCCO                   | BLIND",
                "iron-chloride          | Oc1ccccc1               | SHOWS",
                "iron-chloride          | CCCCO                   | BLIND",
                "dragendorff            | CCN(CC)CC               | SHOWS",
                "dragendorff            | CCCCO                   | BLIND",
                "sulfuric-acid          | CCCCCCCCCCCCCCCC        | MAY_SHOW",
            })
    void aWayAnswersToWhatItIsKnownToAnswerTo(String way, String smiles, Sight expected) {
        assertEquals(expected, sight(way, molecule("X", smiles)));
    }

    @Test
    void whereTooLittleIsKnownNothingIsCalledBlind() {
        Compound nothing = unknown("U");
        Compound ester = counted("E", Map.of("ester", 1), Detail.CLASS);
        Compound groups = counted("G", Map.of("ester", 1), Detail.GROUPS);
        assertEquals(Sight.NOT_KNOWN, sight("uv-254", nothing));
        assertEquals(Sight.MAY_SHOW, sight("iodine", nothing));
        assertEquals(Sight.NOT_KNOWN, sight("uv-254", ester));
        assertEquals(Sight.NOT_KNOWN, sight("uv-254", groups), "its rings were not counted");
        assertEquals(Sight.BLIND, sight("ninhydrin", groups), "amines were looked for");
        assertEquals(Sight.NOT_KNOWN, sight("ninhydrin", ester), "a class does not tell of amines");
        Compound strange = counted("S", Map.of("unrecognised", 1), Detail.WHOLE);
        assertEquals(Sight.NOT_KNOWN, sight("ninhydrin", strange));
    }

    @Test
    void aHydrocarbonIsSeenByNoneForSureAndThatIsSaid() {
        Compound hexadecane = molecule("H", "CCCCCCCCCCCCCCCC");
        assertEquals(List.of(), enough(hexadecane));
        String order = order(hexadecane);
        assertTrue(order.contains("iodine vapour") && order.contains("sulfuric acid and heat"), order);
        assertFalse(order.contains("permanganate"), order);
    }

    @Test
    void whatSparesThePlateIsTakenBeforeWhatDestroysIt() {
        Compound phenol = molecule("P", "Oc1ccccc1");
        assertEquals(List.of("uv-254"), enough(phenol), "permanganate would show it as well");
        Compound alcohol = molecule("B", "CCCCO");
        Compound ketone = molecule("A", "CC(=O)c1ccccc1");
        List<String> both = enough(ketone, alcohol);
        assertEquals("uv-254", both.get(0));
        assertEquals(2, both.size(), both.toString());
        Compound amine = molecule("N", "CCCCN");
        assertEquals(List.of("uv-254", "iodine"), enough(ketone, amine));
    }

    /** The lamp for the one, iodine tried before a stain for the other. */
    @Test
    void whatTheLampShowsIsMarkedBeforeAStainIsTakenForTheRest() {
        Compound menthol = molecule("menthol", "CC1CCC(C(C)C)C(O)C1");
        Compound benzaldehyde = molecule("benzaldehyde", "O=Cc1ccccc1");
        assertEquals(List.of("uv-254", "permanganate"), enough(menthol, benzaldehyde));
        String order = order(menthol, benzaldehyde);
        int lamp = order.indexOf("First UV light at 254 nm for benzaldehyde: mark with pencil");
        int iodine = order.indexOf("look for menthol by iodine vapour");
        int stain = order.indexOf("Then permanganate for menthol.");
        assertTrue(lamp == 0 && lamp < iodine && iodine < stain, order);
    }

    @Test
    void oneWayIsNoOrder() {
        String order = order(molecule("P", "Oc1ccc(C(=O)NC)cc1"));
        assertTrue(order.startsWith("UV light at 254 nm is enough to see P"), order);
        assertFalse(order.contains("First") || order.contains("Then"), order);
    }

    /** Whatever a way that spares the plate shows for sure is not left to a stain. */
    @Test
    void noStainIsTakenForWhatASparingWayShows() {
        List<Compound> some = List.of(
                molecule("1", "O=Cc1ccccc1"),
                molecule("2", "CC1=CCC(C(C)=C)CC1"),
                molecule("3", "CCN(CC)CC"),
                molecule("4", "c1ccccc1N=Nc1ccccc1"),
                molecule("5", "CCCCO"));
        SeeingAnswer answer = SEEING.look(some);
        for (int i = 0; i < some.size(); i++) {
            int at = i;
            SeeingAnswer.Way first = answer.ways().stream()
                    .filter(way -> answer.enough().contains(way.way()))
                    .filter(way -> way.answers().get(at).sight() == Sight.SHOWS)
                    .findFirst()
                    .orElseThrow();
            boolean spared = answer.ways().stream()
                    .filter(way -> way.way().leaves() != Leaves.DESTROYED)
                    .anyMatch(way -> way.answers().get(at).sight() == Sight.SHOWS);
            assertEquals(
                    spared,
                    first.way().leaves() != Leaves.DESTROYED,
                    some.get(i).name());
        }
    }

    /** Boiling points from memory: limonene 176, benzaldehyde 178, menthol 214 °C; vanillin 285 °C, hexadecane 287 °C. */
    @ParameterizedTest
    @CsvSource({
        "O=Cc1ccccc1, true",
        "CC1CCC(C(C)C)C(O)C1, true",
        "CC1=CCC(C(C)=C)CC1, true",
        "CC(=O)c1ccccc1, true",
        "COc1cc(C=O)ccc1O, false",
        "CCCCCCCCCCCCCCCC, false",
        "Cn1cnc2c1c(=O)n(C)c(=O)n2C, false",
        "CCCC(=O)O, false"
    })
    void whatMayLeaveThePlateOnWarmingIsNamed(String smiles, boolean leaves) {
        String order = order(molecule("X", smiles));
        assertEquals(leaves, order.contains("X: small enough to leave the plate"), order);
    }

    @Test
    void aCompoundOfWhichTheCarbonsWereNotCountedIsNotCalledSmall() {
        String order = order(counted("G", Map.of("alcohol", 1), Detail.GROUPS));
        assertFalse(order.contains("small enough"), order);
    }

    @Test
    void enoughShowsEveryCompoundThatCanBeShown() {
        List<Compound> compounds = List.of(
                molecule("1", "CCCCO"),
                molecule("2", "CC(C)=O"),
                molecule("3", "CCCC(=O)O"),
                molecule("4", "CCN(CC)CC"),
                molecule("5", "c1ccccc1"),
                molecule("6", "CCCCCC"),
                unknown("7"));
        SeeingAnswer answer = SEEING.look(compounds);
        for (int i = 0; i < compounds.size(); i++) {
            int at = i;
            boolean can =
                    answer.ways().stream().anyMatch(way -> way.answers().get(at).sight() == Sight.SHOWS);
            boolean does = answer.ways().stream()
                    .filter(way -> answer.enough().contains(way.way()))
                    .anyMatch(way -> way.answers().get(at).sight() == Sight.SHOWS);
            assertEquals(can, does, compounds.get(i).name());
        }
    }

    @Test
    void theOrderOfTheCompoundsChangesNothing() {
        List<Compound> some = Arrays.asList(
                molecule("1", "CCCCO"), molecule("2", "CC(C)=O"), molecule("3", "CCN(CC)CC"), unknown("4"));
        List<WayOfSeeing> forwards = SEEING.look(some).enough();
        Collections.reverse(some);
        assertEquals(forwards, SEEING.look(some).enough());
    }

    @Test
    void withNothingKnownTheGeneralOrderIsTold() {
        SeeingAnswer answer = SEEING.look(List.of());
        assertEquals(List.of(), answer.enough());
        String order = English.said(answer.order());
        int lamp = order.indexOf("UV light at 254 nm");
        int iodine = order.indexOf("iodine");
        int stain = order.indexOf("permanganate");
        assertTrue(lamp >= 0 && lamp < iodine && iodine < stain, order);
    }

    @Test
    void theSafetyDataSheetComesFirst() {
        SeeingAnswer answer = SEEING.look(List.of());
        assertEquals("seeing.caution-sheet-first", answer.cautions().get(0).key());
        String all = answer.cautions().stream().map(English::said).reduce("", String::concat);
        for (String word : List.of(
                "closed cabinet",
                "explodes when dry",
                "heat gun",
                "dips in alcohol burn",
                "oxidize",
                "hood",
                "sharps",
                "bismuth, cerium or molybdenum",
                "Iron(III) chloride stains")) {
            assertTrue(all.contains(word), word);
        }
    }

    @Test
    void thatThePlateIsToBeDryIsSaidOnceForAll() {
        SeeingAnswer answer = SEEING.look(List.of());
        assertEquals(
                1,
                answer.cautions().stream()
                        .filter(each -> each.key().equals("seeing.caution-dry"))
                        .count());
        for (WayOfSeeing way : WaysOfSeeing.builtIn().all()) {
            assertTrue(
                    Seeing.cautions(way).stream().noneMatch(each -> each.key().equals("seeing.caution-dry")), way.id());
        }
    }
}
