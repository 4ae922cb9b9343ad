package midplate.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Groups of structures of daily use, against {@code structure/labelled.csv}: common practice, labelled by hand from the structural
 * formulas, not by the program.
 */
class LabelledStructuresTest {
    private static final FunctionalGroups GROUPS = FunctionalGroups.builtIn();
    private static final Structures STRUCTURES = Structures.of(GROUPS);
    private static final int LEAST_LABELLED = 60;

    record Labelled(String name, String smiles, Map<String, Integer> groups) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Labelled> labelled() throws IOException {
        List<Labelled> all = new ArrayList<>();
        try (Reader file = new InputStreamReader(
                LabelledStructuresTest.class.getResourceAsStream("/structure/labelled.csv"), StandardCharsets.UTF_8)) {
            for (CSVRecord row : CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(file)) {
                String[] words = row.get("groups").split(" ", -1);
                Map<String, Integer> groups = new TreeMap<>();
                for (int i = 0; i < words.length; i += 2) {
                    groups.put(words[i], Integer.valueOf(words[i + 1]));
                }
                all.add(new Labelled(row.get("name"), row.get("smiles"), groups));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("labelled")
    void everyGroupIsFoundAndNoOther(Labelled structure) {
        assertEquals(structure.groups(), STRUCTURES.counts(structure.smiles()).counts());
    }

    @ParameterizedTest
    @MethodSource("labelled")
    void noAtomBelongsToTwoGroups(Labelled structure) {
        Map<Integer, String> owners = new HashMap<>();
        for (Molecule.Found found :
                STRUCTURES.read("smiles", structure.smiles()).found()) {
            if (GROUPS.find(found.group()).orElseThrow().kind() == FunctionalGroup.Kind.GROUP) {
                for (List<Integer> atoms : found.atoms()) {
                    for (int atom : atoms) {
                        String before = owners.put(atom, found.group());
                        assertTrue(
                                before == null || before.equals(found.group()),
                                "atom " + atom + ": " + before + " and " + found.group());
                    }
                }
            }
        }
    }

    @Test
    void theTableIsLongEnoughAndNamesOnlyGroupsThatExist() throws IOException {
        List<Labelled> all = labelled();
        assertTrue(all.size() >= LEAST_LABELLED);
        for (Labelled structure : all) {
            structure.groups().keySet().forEach(group -> assertTrue(GROUPS.ids().contains(group), group));
        }
    }
}
