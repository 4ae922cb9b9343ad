package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Ethyl acetate with ethanol 3:1, taken as one solvent")
class MixedSolventTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final Solvent MIXED = CATALOGUE.solvent("ethyl-acetate-ethanol-3-1");
    private static final double ETHANOL = 0.25;

    private static EluentComponent of(String solvent) {
        return CATALOGUE
                .component(CATALOGUE.solvent(solvent), Sorbent.SILICA, StrengthSeries.NEWER)
                .orElseThrow();
    }

    // Snyder's law, written anew; ethyl acetate 0.48 (read), ethanol 0.65 or 0.68 (memory L), n_b 8, α' 0.57 to 0.7.
    @ParameterizedTest
    @ValueSource(doubles = {0.57, 0.6, 0.7})
    void itsStrengthIsThatOfTheLaw(double activity) {
        double moles = ETHANOL / of("ethanol").molarVolume();
        double share = moles / (moles + (1 - ETHANOL) / of("ethyl acetate").molarVolume());
        double scale = 8 * activity;
        for (double ethanol : new double[] {0.65, 0.68}) {
            double strength = 0.48 + Math.log10(share * Math.pow(10, scale * (ethanol - 0.48)) + 1 - share) / scale;
            assertEquals(of(MIXED.id()).strength(), strength, 0.031, "ethanol " + ethanol);
        }
    }

    // Own arithmetic: three volumes and one; the mean molecule.
    @Test
    void itsDensityAndMassAreThoseOfItsParts() {
        double density = number("ethanol", "density", "20 °C") * ETHANOL
                + number("ethyl acetate", "density", "20 °C") * (1 - ETHANOL);
        assertEquals(density, number(MIXED.id(), "density", "20 °C"), 0.001);
        double moles = ETHANOL * number("ethanol", "density", "20 °C") / number("ethanol", "molar_mass", "");
        double others =
                (1 - ETHANOL) * number("ethyl acetate", "density", "20 °C") / number("ethyl acetate", "molar_mass", "");
        assertEquals(density / (moles + others), number(MIXED.id(), "molar_mass", ""), 0.05);
    }

    // Own algebra: Snyder's law for three solvents, all with the area n of the strongest,
    // 10^(α'·n·ε) = Σ N_i·10^(α'·n·ε_i), is the law for hexane and the mixture, if that has the area n.
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.5, 0.9})
    void inHexaneItIsTheLawForThreeSolvents(double fraction) {
        double activity = 0.57;
        double hexane = (1 - fraction) / of("hexane").molarVolume();
        double acetate = (1 - ETHANOL) * fraction / of("ethyl acetate").molarVolume();
        double ethanol = ETHANOL * fraction / of("ethanol").molarVolume();
        double scale = 8 * activity;
        double sum = hexane * Math.pow(10, scale * 0.01)
                + acetate * Math.pow(10, scale * 0.48)
                + ethanol * Math.pow(10, scale * 0.65);
        double three = Math.log10(sum / (hexane + acetate + ethanol)) / scale;
        assertEquals(three, EluentStrength.binary(of("hexane"), of(MIXED.id()), fraction, activity), 0.005);
    }

    @Test
    void itsStrengthIsToldAsOurOwnAndEveryPairWithItIsAGuess() {
        PublishedValue value = CATALOGUE
                .strengthValue(MIXED, Sorbent.SILICA, StrengthSeries.NEWER)
                .orElseThrow();
        assertEquals(Basis.OWN, value.basis());
        assertTrue(value.note().contains("the strength of ethanol is uncertain"), value.note());
        MeasuredPairs measured = MeasuredPairs.builtIn(CATALOGUE);
        TheoryPairs pairs =
                TheoryPairs.of(CATALOGUE, measured, measured.theory().orElseThrow());
        long found = CATALOGUE.solvents().stream()
                .flatMap(other ->
                        Stream.of(pairs.find(Sorbent.SILICA, other, MIXED), pairs.find(Sorbent.SILICA, MIXED, other)))
                .flatMap(Optional::stream)
                .peek(pair -> assertEquals(PairBasis.GUESS, pair.pair().basis()))
                .count();
        assertTrue(found > 8, found + " pairs");
    }

    // Own arithmetic with the law for the share of the surface (Snyder 1968): K = 10^(0.57·8·0.17) = 5.96, N = 0.359,
    // so
    // θ = 0.359·5.96/(0.359·5.96 + 0.641) = 0.77.
    @Test
    void ethanolCoversThreeQuartersOfTheSurfaceSoThatItCountsAsAnAlcohol() {
        assertEquals(0.77, EluentStrength.coverage(of("ethyl acetate"), of("ethanol"), ETHANOL, 0.57), 0.02);
        assertEquals(LocalizationClass.VERY_STRONG_LOCALIZING, CATALOGUE.localization(MIXED));
    }

    @Test
    void itWarnsOfBothItsPartsAndSaysHowItIsMade() {
        assertTrue(CATALOGUE.hazards(MIXED).stream()
                .anyMatch(hazard -> hazard.code().equals("H225")));
        assertTrue(CATALOGUE.cautions(MIXED).stream()
                .anyMatch(caution -> caution.key().equals("made-beforehand")));
    }

    private static double number(String solvent, String property, String condition) {
        return CATALOGUE
                .preferred(CATALOGUE.solvent(solvent), property, condition)
                .orElseThrow()
                .number();
    }
}
