package midplate.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoleculeTest {
    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());

    private static Molecule read(String smiles) {
        return STRUCTURES.read("smiles", smiles);
    }

    /** Molar masses by hand from the standard atomic weights C 12.011, H 1.008, O 15.999, N 14.007, S 32.06, Cl 35.45. */
    @ParameterizedTest
    @CsvSource({
        "CC(=O)c1ccccc1, C8H8O, 120.151",
        "CCO, C2H6O, 46.069",
        "Clc1ccccc1, C6H5Cl, 112.556",
        "CS(C)=O, C2H6OS, 78.13",
        "N#N.c1ccncc1, C5H5N, 79.102",
        "C[N+](C)(C)C, C4H12N+, 74.147",
    })
    void knowsFormulaAndMolarMass(String smiles, String formula, double mass) {
        Molecule molecule = read(smiles);
        assertEquals(formula, molecule.formula());
        assertEquals(mass, molecule.molarMass(), 0.02);
    }

    @ParameterizedTest
    @CsvSource({
        "CC(=O)c1ccccc1, c1(ccccc1)C(C)=O",
        "CC(=O)c1ccccc1, O=C(C)C1=CC=CC=C1",
        "OC(=O)C=Cc1ccccc1, c1ccccc1C=CC(O)=O",
        "C[C@H](O)CC, CC[C@H](C)O",
        "Nc1ncnc2[nH]cnc12, [nH]1cnc2c1ncnc2N",
    })
    void oneCompoundHasOneCanonicalSmiles(String one, String other) {
        assertEquals(read(one).smiles(), read(other).smiles());
        assertEquals(read(one).smiles(), read(read(one).smiles()).smiles());
    }

    @Test
    void keepsWhatStereochemistryWasGiven() {
        assertTrue(read("C[C@H](O)CC").smiles().contains("@"));
        assertFalse(read("C/C=C/C").smiles().equals(read("C/C=C\\C").smiles()));
    }

    @Test
    void countsTheWholeMolecule() {
        assertEquals(GroupCounts.Detail.WHOLE, read("CCO").counts().detail());
        assertEquals(3, read("CCO").heavyAtoms());
    }

    @Test
    void theAtomsOfAGroupAreThoseOfTheCanonicalSmiles() {
        Molecule molecule = read("CCOC(C)=O");
        Molecule.Found ester = molecule.found().stream()
                .filter(found -> found.group().equals("ester"))
                .findFirst()
                .orElseThrow();
        String letters = molecule.smiles().replaceAll("[^A-Z]", "");
        List<Integer> atoms = ester.atoms().get(0);
        assertEquals(3, atoms.size()); // C, O and O
        assertEquals(
                "COO",
                atoms.stream()
                        .map(atom -> letters.substring(atom, atom + 1))
                        .sorted()
                        .reduce("", String::concat));
        assertEquals(2, ester.bonds().get(0).size());
    }

    @Test
    void drawsEveryBondOnceAndNothingThatAPageMayNotCarry() {
        Molecule molecule = read("CC(=O)c1ccc(C(=O)O)cc1");
        String svg = STRUCTURES.draw(molecule);
        assertTrue(svg.startsWith("<svg "), svg);
        assertFalse(
                svg.matches("(?s).*( style=| id=|#[0-9A-Fa-f]{6}|<rect|<style|<text|<\\?xml|<!DOCTYPE|href).*"), svg);
        assertTrue(svg.contains("currentColor"));
        Matcher bond = Pattern.compile("class='bond b([0-9]+)'").matcher(svg);
        List<Integer> bonds = new ArrayList<>();
        while (bond.find()) {
            bonds.add(Integer.valueOf(bond.group(1)));
        }
        assertEquals(12, bonds.size()); // 12 atoms and one ring
        assertEquals(12, new TreeSet<>(bonds).size());
        assertEquals(11, new TreeSet<>(bonds).last());
        Matcher atom = Pattern.compile("class='atom a([0-9]+)'").matcher(svg);
        int letters = 0;
        while (atom.find()) {
            letters++;
        }
        assertEquals(3, letters); // the oxygens
    }

    @Test
    void severalThreadsMayReadAtOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Structures shared = Structures.of(FunctionalGroups.builtIn());
            List<Future<List<GroupCounts>>> all = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                all.add(threads.submit(() -> LabelledStructuresTest.labelled().stream()
                        .map(structure -> shared.counts(structure.smiles()))
                        .toList()));
            }
            List<GroupCounts> first = all.get(0).get();
            for (Future<List<GroupCounts>> each : all) {
                assertEquals(first, each.get());
            }
        } finally {
            threads.shutdown();
        }
    }
}
