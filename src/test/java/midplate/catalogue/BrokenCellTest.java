package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A broken cell is refused with its place")
class BrokenCellTest extends CopiedSolventData {
    @Test
    void theCopyItselfIsGood() {
        assertEquals(
                SolventCatalogue.builtIn().solvents(),
                SolventCatalogue.read(folder).solvents());
    }

    /** File, row as a spreadsheet counts it, column, what to put there, what the message allows and says to do. */
    static Stream<Arguments> brokenCells() {
        return Stream.of(
                cell("properties.csv", 2, "solvent", "pentan", "pentane, hexane, heptane,"),
                cell("properties.csv", 2, "property", "eluent-strength", "eluent_strength, molecular_area,"),
                cell("properties.csv", 2, "source", "Snyder1868", "sources.json"),
                cell("properties.csv", 2, "basis", "guess", "read, memory, own"),
                cell("properties.csv", 2, "confidence", "", "H, M or L where the basis is memory"),
                cell("properties.csv", 2, "condition", "silica", "silica older, silica newer, alumina"),
                cell("properties.csv", 2, "unit", "%", "(empty)"),
                cell("properties.csv", 2, "use", "best", "\"preferred: reason\""),
                cell("properties.csv", 2, "value", "0,38", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "0.3-0.6", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "NaN", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "1e-1", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "n/a", "a value that is not known is no row here"),
                cell("properties.csv", 2, "value", "", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "-1", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "value", "38", "one number in [0.0, 1.2]"),
                cell("properties.csv", 2, "note", " blank first", "no blanks at either end"),
                cell("solvents.csv", 2, "id", "Pentane", "lower case with hyphens"),
                cell("solvents.csv", 3, "id", "pentane", "an id that no other row has"),
                cell("solvents.csv", 2, "name", "", "a text"),
                cell("solvents.csv", 2, "cas", "109-66-1", "a CAS number whose last digit checks the others"),
                cell("solvents.csv", 2, "cas", "none", "a CAS number, or nothing"),
                cell("solvents.csv", 2, "formula", "c5h12", "a molecular formula"),
                cell("solvents.csv", 3, "synonyms", "pentane", "also means pentane"),
                cell("hazard-statements.csv", 2, "code", "224", "a code like H225"),
                cell("hazard-statements.csv", 2, "text", "", "a text"),
                cell("hazard-statements.csv", 3, "code", "H224", "each code once"),
                cell("hazard-statements.csv", 2, "source", "Nobody", "UneceGhs"),
                cell("miscibility.csv", 2, "solvent_a", "water", "pentane, hexane"),
                cell("miscibility.csv", 2, "solvent_b", "acetonitrile", "another solvent than solvent_a"),
                cell("miscibility.csv", 3, "solvent_b", "pentane", "each pair once"),
                cell("miscibility.csv", 2, "verdict", "no", "immiscible, partly-miscible"),
                cell("miscibility.csv", 2, "source", "Merck", "MerckIndex"),
                cell("miscibility.csv", 2, "basis", "Read", "read, memory, own"),
                cell("miscibility.csv", 2, "confidence", "H", "nothing unless the basis is memory"),
                cell("streakers.csv", 2, "group", "carbonic-acid", "groups.csv"),
                cell("streakers.csv", 3, "group", "carboxylic-acid", "each group once"),
                cell("streakers.csv", 2, "kind", "strong", "acceptor"),
                cell("streakers.csv", 2, "additive", "vinegar", "pentane, hexane"),
                cell("streakers.csv", 2, "least", "-1", "one number in [0.0, 10.0]"),
                cell("streakers.csv", 2, "most", "0.1", "one number in [0.5, 10.0]"),
                cell("streakers.csv", 2, "source", "Nobody", "sources.json"),
                cell("stand-ins.csv", 2, "solvent", "octane", "pentane, hexane"),
                cell("stand-ins.csv", 2, "stands_in_for", "heptane", "another solvent"),
                cell("stand-ins.csv", 3, "solvent", "heptane", "each solvent once"),
                cell("stand-ins.csv", 2, "note", "", "a text"),
                cell("cautions.csv", 2, "solvent", "all", "\"any\" means every one"),
                cell("cautions.csv", 3, "key", "sheet-first", "each key once for a solvent"),
                cell("cautions.csv", 2, "key", "Sheet first", "lower case with hyphens"),
                cell("cautions.csv", 2, "text", "", "a text"),
                cell("cautions.csv", 2, "source", "", "CommonPractice"),
                cell("gaps.csv", 2, "solvent", "decane", "pentane, hexane"),
                cell("gaps.csv", 2, "property", "colour", "eluent_strength, molecular_area"),
                cell("gaps.csv", 2, "property", "boiling_point", "what properties.csv lacks"),
                cell("gaps.csv", 2, "note", "", "a text"));
    }

    @ParameterizedTest
    @MethodSource("brokenCells")
    void aBrokenCellIsNamedWithWhatIsAllowed(String file, int row, String column, String cell, String allowed)
            throws IOException {
        set(file, row, column, cell);
        String message = fault();
        String start = file + ", row " + row + ", column " + column + ": \"" + cell + "\". Allowed: ";
        assertTrue(message.startsWith(start), message);
        assertTrue(message.contains(allowed), message);
        assertTrue(message.endsWith("."), "ends with what to do: " + message);
    }

    @Test
    void aFlashPointMayBeNoneAndNoOtherWord() throws IOException {
        int row = rowOf("properties.csv", "dichloromethane", "flash_point");
        set("properties.csv", row, "value", "unknown");
        assertTrue(fault().startsWith(
                        "properties.csv, row " + row + ", column value: \"unknown\". Allowed: one number in"));
    }

    @Test
    void aBoilingPointInFahrenheitIsNoticedByItsUnit() throws IOException {
        int row = rowOf("properties.csv", "toluene", "boiling_point");
        set("properties.csv", row, "unit", "°F");
        assertTrue(fault().startsWith("properties.csv, row " + row + ", column unit: \"°F\". Allowed: °C."));
    }

    @Test
    void anUnknownHazardCodeIsNamed() throws IOException {
        int row = rowOf("properties.csv", "toluene", "hazard_statements");
        set("properties.csv", row, "value", "H225, H304");
        assertTrue(fault().contains(
                        "row " + row + ", column value: \"H225, H304\". Allowed: codes of hazard-statements.csv"));
        assertTrue(fault().contains("not \"H225,\""));
    }

    @Test
    void anUnknownClassOrGroupIsNamed() throws IOException {
        int row = rowOf("properties.csv", "toluene", "selectivity_group");
        set("properties.csv", row, "value", "VIc");
        assertTrue(fault().contains(
                        "row " + row + ", column value: \"VIc\". Allowed: I, II, III, IV, V, VIa, VIb, VII, VIII."));
    }

    @Test
    void ownReasoningMustBeTold() throws IOException {
        int row = rowOf("properties.csv", "hexane", "molecular_area");
        set("properties.csv", row, "note", "");
        assertTrue(fault().startsWith("properties.csv, row " + row + ", column note: \"\". Allowed: the reasoning"));
    }

    @Test
    void twoPreferredRowsAreOneTooMany() throws IOException {
        int first = rowOf("properties.csv", "hexane", "density");
        set("properties.csv", first + 1, "use", "preferred: this one too");
        String message = fault();
        assertTrue(
                message.startsWith("properties.csv, row " + (first + 1)
                        + ", column use: \"preferred: this one too\". Allowed: \"preferred: reason\" in exactly one of the"
                        + " rows [" + first + ", " + (first + 1) + "], here in 2."),
                message);
    }

    @Test
    void thePreferredRowIsTakenWhereverItStands() throws IOException {
        int first = rowOf("properties.csv", "hexane", "density");
        String other = rows("properties.csv").get(first).get(2);
        set("properties.csv", first, "use", "kept: for this test");
        set("properties.csv", first + 1, "use", "preferred: for this test");
        SolventCatalogue changed = SolventCatalogue.read(folder);
        PublishedValue taken =
                changed.preferred(changed.solvent("hexane"), "density", "20 °C").orElseThrow();
        assertEquals(other, taken.value());
    }

    @Test
    void rivalsWithoutAPreferredRowAreRefused() throws IOException {
        int first = rowOf("properties.csv", "hexane", "density");
        set("properties.csv", first, "use", "kept: nobody chose");
        assertTrue(
                fault().contains("exactly one of the rows [" + first + ", " + (first + 1) + "], here in 0."), fault());
    }

    private static Arguments cell(String file, int row, String column, String cell, String allowed) {
        return Arguments.of(file, row, column, cell, allowed);
    }
}
