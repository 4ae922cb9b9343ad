package midplate.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import midplate.catalogue.FunctionalGroups;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read as a structure, and what is told of one that can. */
class BadStructureTest {
    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());

    private static Refusal refusal(String smiles) {
        return assertThrows(Refusal.class, () -> STRUCTURES.read("spots[1].smiles", smiles), smiles);
    }

    private static List<String> notes(String smiles) {
        return STRUCTURES.read("smiles", smiles).notes().stream()
                .map(Message::key)
                .toList();
    }

    /** The place is counted by hand, from 1. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "CC(=O                | open-branch          | 3  | CC",
                "CC)C                 | closed-branch        | 3  | CC",
                "C1CCCC               | open-ring            | 2  | C",
                "CC[NH3               | open-bracket         | 3  | CC",
                "CC(=O)Xx             | bad-character        | 7  | CC(=O)",
                "'CCO CC'             | blank                | 4  | CCO",
                "C%1CC                | bad-ring             | 2  | C",
                "*CC(=O)O             | polymer              | 1  | ''",
                "CC[*]                | polymer              | 3  | CC",
                "CCO>>CC=O            | reaction             | 4  | CCO",
                "CC[C@H@]C            | bad-atom             | 3  | CC",
                "c1cccc1              | no-double-bonds-at   | 1  | ''",
                "CC==O                | open-bond            | 3  | CC",
                "CC(=O)C=             | open-bond            | 8  | CC(=O)C",
                "=CC                  | open-bond            | 1  | ''",
                "C(=)C                | open-bond            | 3  | C(",
                "CC..C                | not-read             | 4  | CC.",
            })
    void aSlipIsToldWithItsPlace(String smiles, String code, int at, String before) {
        Refusal refusal = refusal(smiles);
        assertEquals("spots[1].smiles", refusal.field());
        assertEquals(code, refusal.code());
        assertEquals(at, refusal.reason().args().get("at"));
        Message told = (Message) refusal.reason().args().get("before");
        assertEquals(before, told.args().getOrDefault("text", ""));
        assertEquals(smiles, refusal.came());
    }

    @ParameterizedTest
    @CsvSource({
        "'', empty",
        "'   ', empty",
        "[Na+].[Cl-], no-carbon",
        "O, no-carbon",
        "C(C)(C)(C)(C)C, too-many-bonds",
        "F(C)C, too-many-bonds",
        "C[Qq], bad-atom",
    })
    void whatIsNoOrganicCompoundIsRefused(String smiles, String code) {
        assertEquals(code, refusal(smiles).code());
    }

    @Test
    void anAromaticNitrogenWithoutItsHydrogenIsToldWithWhatWasMeant() {
        Refusal refusal = refusal("CC(=O)c1cccn1");
        assertEquals("no-double-bonds", refusal.code());
        assertEquals(12, refusal.reason().args().get("at"));
        assertEquals("CC(=O)c1ccc[nH]1", refusal.todo().args().get("smiles"));
    }

    @Test
    void whatIsTooLongOrTooLargeIsRefusedByItsSize() {
        assertEquals("too-long", refusal("C".repeat(4001)).code());
        assertEquals("too-large", refusal("C".repeat(201)).code());
        assertEquals(200, STRUCTURES.counts("C".repeat(200)).of("alkyl-carbon")); // the limit itself is read
    }

    /** Vanillin's number is printed on every bottle; the other one is water's. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "121-33-5      | is-cas",
                "7732-18-5     | is-cas",
                "CAS 121-33-5  | is-cas",
                "vanillin      | is-name",
                "Vanillin      | is-name",
                "VANILLIN      | is-name",
                "benzene       | is-name",
                "phenol        | is-name",
                "benzoic acid  | is-name",
                "2-naphthol    | is-name",
                "4-methoxyphenol | is-name",
                "Essigsäure    | is-name",
            })
    void numbersAndNamesAreNotLookedUp(String text, String code) {
        Refusal refusal = refusal(text);
        assertEquals(code, refusal.code());
        assertEquals(Message.of("structure.paste-line"), refusal.todo());
    }

    @ParameterizedTest
    @CsvSource({"CCO ethanol, blank", "c1ccccx1, bad-character", "CCOCCXN, bad-character", "123, open-ring"})
    void aSlipInASmilesIsNoName(String text, String code) {
        assertEquals(code, refusal(text).code());
    }

    /** Structures of ferrocene, palladium(II) acetate and butyllithium as they are usually drawn. */
    @ParameterizedTest
    @CsvSource({
        "[Fe+2].c1ccc[cH-]1.c1ccc[cH-]1, C10H10Fe",
        "[Fe].CC(=O)c1ccccc1, C8H8FeO",
        "CC(=O)[O-].CC(=O)[O-].[Pd+2], C4H6O4Pd",
        "[Li+].CCC[CH2-], C4H9Li",
    })
    void aMetalInAnyPartBelongsToTheCompound(String smiles, String formula) {
        Molecule molecule = STRUCTURES.read("smiles", smiles);
        assertEquals(formula, molecule.formula());
        assertTrue(molecule.counts().of(FunctionalGroups.UNRECOGNISED) >= 1, "the band is widened");
        assertEquals(
                List.of("structure.foreign"),
                molecule.notes().stream().map(Message::key).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"CC(=O)[O-].[Na+]", "[K+].[O-]c1ccccc1", "CC(=O)[O-].CC(=O)[O-].[Ca+2]"})
    void aMetalThatMakesSaltsIsACounterIon(String smiles) {
        assertEquals(List.of("structure.salt"), notes(smiles));
        assertEquals(0, STRUCTURES.counts(smiles).of(FunctionalGroups.UNRECOGNISED));
    }

    @Test
    void everyRefusalCanBeSaidInEveryLanguage() {
        for (String smiles : List.of(
                "",
                "C(",
                "C)",
                "C1",
                "[C",
                "X",
                "C C",
                "%",
                "*",
                "C>",
                "[C@H@]",
                "c1cccc1",
                "c1cccn1",
                "C==C",
                "[Qq]C",
                "FFC",
                "121-33-5",
                "vanillin",
                "O",
                "C".repeat(300),
                "C".repeat(5000))) {
            Refusal refusal = refusal(smiles);
            for (Language language : Language.values()) {
                Texts texts = Texts.of(language);
                for (Message said : List.of(refusal.reason(), refusal.allowed(), refusal.todo())) {
                    assertFalse(texts.render(said).isBlank());
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "NCc1ccccc1.Cl, structure.salt",
        "[Na+].[O-]C(=O)c1ccccc1, structure.salt",
        "CCOC(C)=O.CCCCCC, structure.mixture",
        "[O-]C(=O)c1ccccc1, structure.discharged",
        "NC(C)C(=O)O, structure.zwitterion",
        "[NH3+]C(C)C(=O)[O-], structure.zwitterion",
        "C[N+](C)(C)Cc1ccccc1, structure.charged",
        "[2H]C([2H])([2H])c1ccccc1, structure.isotopes",
        "[CH2]c1ccccc1, structure.radical",
        "CC[Sn](CC)(CC)CC, structure.foreign",
        "CN(C)N=O, structure.unrecognised",
    })
    void whatIsOutOfTheOrdinaryIsTold(String smiles, String key) {
        assertEquals(List.of(key), notes(smiles));
    }

    @ParameterizedTest
    @ValueSource(strings = {"CC(=O)c1ccccc1", "C[N+]([O-])=O", "[O-][n+]1ccccc1", "CN=[N+]=[N-]", "C[C@H](O)CC"})
    void nothingIsToldOfAnUsualCompound(String smiles) {
        assertEquals(List.of(), notes(smiles));
    }

    @Test
    void aSaltIsJudgedAsTheFreeBase() {
        Molecule salt = STRUCTURES.read("smiles", "[NH3+]Cc1ccccc1.[Cl-]");
        Molecule base = STRUCTURES.read("smiles", "NCc1ccccc1");
        assertEquals(base.smiles(), salt.smiles());
        assertEquals("C7H9N", salt.formula());
        assertEquals(base.counts(), salt.counts());
    }

    /** Random signs of SMILES, and the labelled structures cut off and with one sign changed: a refusal or a structure. */
    @Test
    void nothingButARefusalComesOfNonsense() throws IOException {
        Random random = new Random(5);
        String signs = "CCCcccNnOos[]()=#123%+-@H/\\.lBrF*>$:~&{}?! é😀\u0000";
        int refused = 0;
        int read = 0;
        for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder();
            int length = 1 + random.nextInt(7);
            for (int j = 0; j < length; j++) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            if (isRead(text.toString())) {
                read++;
            } else {
                refused++;
            }
        }
        for (LabelledStructuresTest.Labelled structure : LabelledStructuresTest.labelled()) {
            String smiles = structure.smiles();
            for (int i = 0; i < 6; i++) {
                int at = random.nextInt(smiles.length());
                isRead(smiles.substring(0, at));
                isRead(smiles.substring(0, at)
                        + signs.charAt(random.nextInt(signs.length()))
                        + smiles.substring(at + 1));
            }
        }
        assertTrue(refused > 1000 && read > 40, refused + " refused, " + read + " read");
    }

    private static boolean isRead(String smiles) {
        try {
            Molecule molecule = STRUCTURES.read("smiles", smiles);
            assertTrue(molecule.molarMass() > 12, smiles);
            return true;
        } catch (Refusal refusal) {
            assertFalse(Texts.english().render(refusal.reason()).isBlank());
            return false;
        }
    }
}
