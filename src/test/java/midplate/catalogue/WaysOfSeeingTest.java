package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.words.English;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The ways to see what is colourless")
class WaysOfSeeingTest extends CopiedSolventData {
    private static final WaysOfSeeing WAYS = WaysOfSeeing.builtIn();

    // A tripwire: a row lost or doubled shows here. Change it together with the files.
    @Test
    void theFilesHaveTheRowsTheyShouldHave() {
        assertEquals(16, WAYS.all().size());
        assertEquals(
                273, WAYS.all().stream().mapToInt(way -> way.groups().size()).sum());
    }

    @Test
    void whatLeavesThePlateAsItIsComesFirst() {
        List<Leaves> order = WAYS.all().stream().map(WayOfSeeing::leaves).toList();
        assertEquals(order.stream().sorted().toList(), order);
        assertEquals(
                List.of("daylight", "uv-254", "uv-366", "iodine"), WAYS.ids().subList(0, 4));
    }

    @Test
    void everyRowOfMemorySaysSoWithItsConfidence() {
        for (WayOfSeeing way : WAYS.all()) {
            assertEquals(way.basis() == Basis.MEMORY, !way.confidence().isEmpty(), way.id());
            for (WayOfSeeing.Row row : way.groups()) {
                assertEquals(row.basis() == Basis.MEMORY, !row.confidence().isEmpty(), way.id() + " " + row.group());
            }
        }
    }

    @Test
    void everyWayIsCalledInEnglishAsItsFileCallsIt() {
        Set<String> keys = new TreeSet<>();
        for (WayOfSeeing way : WAYS.all()) {
            assertEquals(way.name(), English.said(way.said()));
            keys.add(way.said().key());
        }
        assertEquals(keys, saidOf("seeing.way-"));
    }

    @Test
    void everyCautionHasItsText() {
        Set<String> keys = WayOfSeeing.CAUTIONS.stream()
                .map(key -> "seeing.caution-" + key)
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(saidOf("seeing.caution-").containsAll(keys), keys.toString());
        Set<String> used = WAYS.all().stream()
                .flatMap(way -> way.cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(WayOfSeeing.CAUTIONS), used);
    }

    private static Set<String> saidOf(String beginning) {
        return Texts.english().keys().stream()
                .filter(key -> key.startsWith(beginning))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Common practice: lamps and chambers need a cabinet or the hood, and every stain a dry plate. */
    @Test
    void noWayLacksItsUsualCaution() {
        for (WayOfSeeing way : WAYS.all()) {
            if (way.leaves() == Leaves.DESTROYED) {
                assertTrue(way.cautions().contains("dry"), way.id());
            }
            assertEquals(way.id().startsWith("uv-"), way.cautions().contains("cabinet"), way.id());
            assertEquals(way.heat() != WayOfSeeing.Heat.NONE, way.cautions().contains("heat"), way.id());
        }
        assertTrue(WAYS.find("dinitrophenylhydrazine").orElseThrow().cautions().contains("dnph"));
        for (String metal : List.of("phosphomolybdic-acid", "cerium-molybdate", "dragendorff")) {
            assertTrue(WAYS.find(metal).orElseThrow().cautions().contains("metal"), metal);
        }
        assertTrue(WAYS.find("iron-chloride").orElseThrow().cautions().contains("iron"));
        assertTrue(WAYS.find("permanganate").orElseThrow().cautions().contains("oxidizer"));
        assertFalse(WAYS.find("no-such-way").isPresent());
    }

    private String broken(String file, int row, String column, String cell) throws IOException {
        set(file, row, column, cell);
        DataFolder copy = DataFolder.of(folder);
        return String.valueOf(assertThrows(BadSolventData.class, () -> WaysOfSeeing.read(copy, SourceReader.read(copy)))
                .getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "seeing.csv        | 2 | id                | UV 254     | lower case and digits with hyphens",
                "seeing.csv        | 3 | id                | daylight   | each id once",
                "seeing.csv        | 2 | name              | ''         | a text",
                "seeing.csv        | 2 | leaves            | gone       | unchanged",
                "seeing.csv        | 2 | leaves            | destroyed  | stands before",
                "seeing.csv        | 2 | heat              | hot        | gentle",
                "seeing.csv        | 2 | how               | ''         | a text",
                "seeing.csv        | 2 | negative          | ''         | a text",
                "seeing.csv        | 2 | cautions          | beware     | cabinet, dry",
                "seeing.csv        | 3 | cautions          | dry dry    | each once",
                "seeing.csv        | 2 | least_ug          | 0          | one number in",
                "seeing.csv        | 2 | least_ug          | NaN        | one number in",
                "seeing.csv        | 2 | most_ug           | 0.01       | one number in [0.1",
                "seeing.csv        | 2 | amount_confidence | sure       | H, M or L",
                "seeing.csv        | 2 | source            | Nobody1900 | sources.json",
                "seeing.csv        | 2 | basis             | guess      | read, memory, own",
                "seeing.csv        | 2 | confidence        | ''         | H, M or L",
                "seeing.csv        | 2 | note              | ''         | a text",
                "seeing-groups.csv | 2 | way               | moonlight  | daylight, uv-254",
                "seeing-groups.csv | 2 | group             | azos       | aromatic-carbon",
                "seeing-groups.csv | 3 | group             | azo        | each group once",
                "seeing-groups.csv | 2 | answer            | perhaps    | may-show",
                "seeing-groups.csv | 2 | least             | 0          | a whole number in [1, 99]",
                "seeing-groups.csv | 2 | least             | 1.5        | a whole number in [1, 99]",
                "seeing-groups.csv | 2 | source            | Nobody1900 | sources.json",
                "seeing-groups.csv | 2 | confidence        | X          | H, M or L",
            })
    void aBrokenCellIsNamedWithItsPlace(String file, int row, String column, String cell, String allowed)
            throws IOException {
        String message = broken(file, row, column, cell);
        // an order that is broken is told of the row after it
        String place = file + ", row " + (cell.equals("destroyed") ? row + 1 : row) + ", column " + column + ": ";
        assertTrue(message.startsWith(place), message);
        assertTrue(message.contains(allowed), message);
    }

    @Test
    void aWayOfWhichNothingIsSaidIsNamed() throws IOException {
        edit("seeing-groups.csv", text -> text.replaceAll("(?m)^bromocresol-green,.*\\n", ""));
        DataFolder copy = DataFolder.of(folder);
        String message = String.valueOf(
                assertThrows(BadSolventData.class, () -> WaysOfSeeing.read(copy, SourceReader.read(copy)))
                        .getMessage());
        assertTrue(message.startsWith("seeing.csv, row 13, column id: \"bromocresol-green\""), message);
    }

    @Test
    void anUnknownColumnIsNamed() throws IOException {
        edit("seeing.csv", text -> text.replaceFirst("least_ug", "least"));
        DataFolder copy = DataFolder.of(folder);
        String message = String.valueOf(
                assertThrows(BadSolventData.class, () -> WaysOfSeeing.read(copy, SourceReader.read(copy)))
                        .getMessage());
        assertTrue(message.startsWith("seeing.csv, row 1, column least"), message);
    }
}
