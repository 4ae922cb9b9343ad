package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Sorbent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Mixtures of equal strength in pentane on alumina")
class EquiEluotropicTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    // Benzene is a test fixture and never offered. Strength 0.32, area 6.0 (Snyder 1968, memory H), molar mass
    // 78.11 and density 0.8765 at 20 °C (CRC Handbook, memory H).
    private static final EluentComponent BENZENE = EluentComponent.of(0.32, 78.11, 0.8765, 6.0);

    // Snyder, Principles of Adsorption Chromatography, 1968, table of equi-eluotropic mixtures (memory, H and
    // M). The columns agree with the equation at an activity of 0.60, from which the author very probably
    // worked them out: so they check the code with its step from volume to mole fraction, and the tabulated
    // strengths and areas, not nature.
    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/equi-eluotropic-alumina.csv", useHeadersInDisplayName = true)
    void thePrintedMixturesHaveThePrintedStrength(
            String strong,
            double percent,
            double strength,
            String source,
            String locator,
            String basis,
            String confidence) {
        double found = EluentStrength.binary(component("pentane"), component(strong), percent / 100, 0.60);
        assertEquals(strength, found, 0.01, source + ", " + locator + ", " + basis + " " + confidence);
    }

    // Scott, The Mechanism of Chromatographic Retention (read): on silica the layer of chloroform is nearly
    // complete above 40 % v/v in heptane. "Nearly complete" is taken as at least 0.85; the activities are those
    // of the law's range.
    @ParameterizedTest
    @ValueSource(doubles = {0.57, 0.7, 1.0})
    void chloroformNearlyCoversSilicaAtFortyPercent(double activity) {
        double covered = EluentStrength.coverage(onSilica("heptane"), onSilica("chloroform"), 0.40, activity);
        assertTrue(covered >= 0.85 && covered < 1, "covered " + covered);
    }

    @Test
    void benzeneIsNeverOffered() {
        assertTrue(CATALOGUE.find("benzene").isEmpty());
    }

    private static EluentComponent component(String id) {
        return id.equals("benzene")
                ? BENZENE
                : CATALOGUE
                        .component(CATALOGUE.solvent(id), Sorbent.ALUMINA, StrengthSeries.OLDER)
                        .orElseThrow();
    }

    private static EluentComponent onSilica(String id) {
        return CATALOGUE
                .component(CATALOGUE.solvent(id), Sorbent.SILICA, StrengthSeries.OLDER)
                .orElseThrow();
    }
}
