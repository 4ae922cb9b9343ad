package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.English;
import midplate.words.Nearest;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The catalogue answers")
class SolventCatalogueTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ethyl-acetate|ethyl acetate",
                "EtOAc|ethyl acetate",
                "ea|ethyl acetate",
                "  Ethyl  Acetate |ethyl acetate",
                "ETHYL-ACETATE|ethyl acetate",
                "DCM|dichloromethane",
                "ch2cl2|dichloromethane",
                "MeOH|methanol",
                "Et2O|diethyl ether",
                "ether|diethyl ether",
                "hexanes|hexane",
                "n-hexane|hexane",
                "N hexane|hexane",
                "THF|tetrahydrofuran",
                "IPA|2-propanol",
                "isopropanol|2-propanol",
                "ACN|acetonitrile",
                "MeCN|acetonitrile",
                "MTBE|methyl tert-butyl ether",
                "PE|petroleum ether 40-60",
                "petroleum ether 40–60|petroleum ether 40-60",
                "petroleum ether 60-80|petroleum ether 60-80",
                "1,4-dioxane|1,4-dioxane",
                "TEA|triethylamine",
                "AcOH|acetic acid"
            })
    void aSolventIsFoundByWhatChemistsCallIt(String typed, String name) {
        assertEquals(name, CATALOGUE.solvent(typed).name());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hexan|hexane",
                "ethylacetat|ethyl acetate",
                "methnol|methanol",
                "aceton|acetone",
                "tolune|toluene",
                "dichlormethane|dichloromethane",
                "chlorofrom|chloroform"
            })
    void aSlipOfThePenIsOfferedTheNearestName(String typed, String nearest) {
        Refusal refusal = assertThrows(Refusal.class, () -> CATALOGUE.solvent(typed));
        assertTrue(English.said(refusal.todo()).startsWith("Did you mean " + nearest), English.said(refusal.todo()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "x", "benzene sulfonic acid", "pyridine", "水"})
    void anUnknownNameIsRefusedWithTheListOfNames(String typed) {
        Refusal refusal = assertThrows(Refusal.class, () -> CATALOGUE.solventIn("weak", typed));
        assertEquals("unknown-solvent", refusal.code());
        assertEquals("weak", refusal.field());
        assertEquals(typed, refusal.came());
        assertTrue(
                English.said(refusal.allowed()).startsWith("pentane, hexane, heptane"),
                English.said(refusal.allowed()));
        assertEquals(
                "There is no solvent called \"" + typed + "\" here.",
                Texts.english().render(refusal.reason()));
    }

    @Test
    void aNameNearToNothingIsSentToTheList() {
        Refusal refusal = assertThrows(Refusal.class, () -> CATALOGUE.solvent("gasoline fuel"));
        assertEquals("Take a name from the list.", English.said(refusal.todo()));
        assertEquals("solvent", refusal.field());
    }

    // P. C. Sadek, Illustrated Pocket Dictionary of Chromatography, 2004, p. 70 (read).
    @ParameterizedTest
    @CsvSource({
        "ethyl acetate, SILICA, 0.48",
        "diethyl ether, SILICA, 0.43",
        "ethyl acetate, ALUMINA, 0.58",
        "diethyl ether, ALUMINA, 0.38"
    })
    void eluentStrengthsStandAsPrinted(String name, Sorbent sorbent, String printed) {
        PublishedValue value = CATALOGUE
                .strengthValue(CATALOGUE.solvent(name), sorbent, StrengthSeries.NEWER)
                .orElseThrow();
        assertEquals(printed, value.value());
        assertEquals("Sadek2004", value.source().key());
        assertEquals("p. 70", value.locator());
        assertEquals(Basis.READ, value.basis());
        assertEquals(Double.parseDouble(printed), value.number(), 0);
    }

    // Snyder, Kirkland, Dolan, Introduction to Modern Liquid Chromatography, 3rd ed. 2010, Fig. 8.15, p. 386 (read).
    @ParameterizedTest
    @CsvSource({
        "hexane, WEAK",
        "heptane, WEAK",
        "DCM, NON_LOCALIZING",
        "chloroform, NON_LOCALIZING",
        "MTBE, LOCALIZING_BASIC",
        "THF, LOCALIZING_BASIC",
        "ethyl acetate, LOCALIZING_NON_BASIC",
        "acetonitrile, LOCALIZING_NON_BASIC",
        "2-propanol, VERY_STRONG_LOCALIZING"
    })
    void localizationClassesStandAsShown(String name, LocalizationClass expected) {
        Solvent solvent = CATALOGUE.solvent(name);
        assertEquals(expected, CATALOGUE.localization(solvent));
        assertEquals(
                Basis.READ,
                CATALOGUE.values(solvent, "localization_class").get(0).basis());
    }

    @Test
    void aClassThatWasNotFoundIsUnknown() {
        assertEquals(LocalizationClass.UNKNOWN, CATALOGUE.localization(CATALOGUE.solvent("dioxane")));
    }

    @Test
    void theTwoSeriesOnSilicaAreKeptApart() {
        Solvent solvent = CATALOGUE.solvent("ethyl acetate");
        EluentComponent older = CATALOGUE
                .component(solvent, Sorbent.SILICA, StrengthSeries.OLDER)
                .orElseThrow();
        EluentComponent newer = CATALOGUE
                .component(solvent, Sorbent.SILICA, StrengthSeries.NEWER)
                .orElseThrow();
        assertNotEquals(older.strength(), newer.strength());
        assertNotEquals(older.molecularArea(), newer.molecularArea());
        assertEquals(older.molarVolume(), newer.molarVolume(), 0);
        assertEquals(
                Optional.empty(), CATALOGUE.strength(CATALOGUE.solvent("IPA"), Sorbent.SILICA, StrengthSeries.OLDER));
    }

    @Test
    void aluminaHasOneSeriesUnderBothNames() {
        for (Solvent solvent : CATALOGUE.solvents()) {
            assertEquals(
                    CATALOGUE.strengthValue(solvent, Sorbent.ALUMINA, StrengthSeries.OLDER),
                    CATALOGUE.strengthValue(solvent, Sorbent.ALUMINA, StrengthSeries.NEWER));
        }
    }

    @Test
    void pairsThatDoNotMixAreRefusedInEitherOrder() {
        List<String> alkanes = List.of("pentane", "hexane", "heptane", "cyclohexane", "PE 40-60", "PE 60-80");
        for (String alkane : alkanes) {
            for (String polar : List.of("methanol", "acetonitrile")) {
                Solvent one = CATALOGUE.solvent(alkane);
                Solvent other = CATALOGUE.solvent(polar);
                assertTrue(CATALOGUE.immiscible(one, other).isPresent(), alkane + " " + polar);
                assertEquals(CATALOGUE.immiscible(one, other), CATALOGUE.immiscible(other, one));
            }
        }
        assertTrue(CATALOGUE
                .immiscible(CATALOGUE.solvent("hexane"), CATALOGUE.solvent("ethyl acetate"))
                .isEmpty());
        assertTrue(CATALOGUE
                .immiscible(CATALOGUE.solvent("DCM"), CATALOGUE.solvent("methanol"))
                .isEmpty());
    }

    @Test
    void heptaneAndPetroleumEtherStandInForHexane() {
        for (String name : List.of("heptane", "PE 40-60", "PE 60-80")) {
            StandIn standIn = CATALOGUE.standIn(CATALOGUE.solvent(name)).orElseThrow();
            assertEquals("hexane", standIn.standsInFor().id());
        }
        assertTrue(CATALOGUE.standIn(CATALOGUE.solvent("pentane")).isEmpty());
        assertTrue(CATALOGUE.standIn(CATALOGUE.solvent("hexane")).isEmpty());
    }

    // CLP Regulation, Annex VI (memory H), and safety data sheets as named in the rows.
    @ParameterizedTest
    @CsvSource({
        "hexane, H361f, Suspected of damaging fertility.",
        "heptane, H410, Very toxic to aquatic life with long lasting effects.",
        "DCM, H351, Suspected of causing cancer.",
        "methanol, H301+H311+H331, 'Toxic if swallowed, in contact with skin or if inhaled.'",
        "ether, EUH019, May form explosive peroxides."
    })
    void hazardsComeWithTheirWording(String name, String code, String text) {
        assertTrue(
                CATALOGUE.hazards(CATALOGUE.solvent(name)).stream()
                        .anyMatch(hazard ->
                                hazard.code().equals(code) && hazard.text().equals(text)),
                name);
    }

    // The letter alone was recalled; the other codes stand in the sheet as they are.
    @Test
    void theNoteOnALetterStandsAtItsCodeAlone() {
        List<String> noted = CATALOGUE.hazards(CATALOGUE.solvent("hexane")).stream()
                .filter(hazard -> !hazard.value().note().isEmpty())
                .map(Hazard::code)
                .toList();
        assertEquals(List.of("H361f"), noted);
        assertEquals(7, CATALOGUE.hazards(CATALOGUE.solvent("hexane")).size());
    }

    @Test
    void theDataSheetIsTheFirstCaution() {
        assertEquals("sheet-first", CATALOGUE.generalCautions().get(0).key());
        assertTrue(CATALOGUE.cautions(CATALOGUE.solvent("chloroform")).stream()
                .anyMatch(caution -> caution.key().equals("base-and-acetone")));
        assertEquals(
                List.of("not-for-teaching"),
                CATALOGUE.cautions(CATALOGUE.solvent("diisopropyl ether")).stream()
                        .map(Caution::key)
                        .filter(key -> !key.equals("peroxides"))
                        .toList());
    }

    @Test
    void aWordIsNoNumberAndAnUnknownPropertyNoQuestion() {
        Solvent dichloromethane = CATALOGUE.solvent("DCM");
        PublishedValue flash =
                CATALOGUE.preferred(dichloromethane, "flash_point", "").orElseThrow();
        assertEquals("none", flash.value());
        assertThrows(IllegalStateException.class, flash::number);
        assertThrows(IllegalArgumentException.class, () -> CATALOGUE.values(dichloromethane, "flashpoint"));
    }

    // Own reasoning: the fewest letters to insert, remove or change.
    @ParameterizedTest
    @CsvSource({
        "hexane, hexane, 0",
        "hexan, hexane, 1",
        "hexane, heptane, 2",
        "'', ether, 5",
        "ether, '', 5",
        "ab, ba, 2"
    })
    void theDistanceOfNamesCountsLetters(String one, String other, int distance) {
        assertEquals(distance, Nearest.distance(one, other));
    }
}
