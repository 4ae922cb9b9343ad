package midplate.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The climb of a front. No κ of these solvents was found in print, so the values are own algebra. */
@DisplayName("The front")
class FrontMigrationTest {
    // By hand: 2 · 0.0072 · 0.01 mm · γ/η; hexane 18.4/0.31 = 59.35 m/s = 59 355 mm/s, and so on.
    @ParameterizedTest
    @CsvSource({"18.4, 0.31, 8.547", "24.0, 0.45, 7.680", "22.5, 0.59, 5.492", "16, 0.1, 23.04"})
    void theCoefficientFollowsFromTensionAndViscosity(double tension, double viscosity, double coefficient) {
        assertEquals(coefficient, FrontMigration.coefficient(tension, viscosity), 0.001);
    }

    // By hand: 50 mm at 8.547 mm²/s are 2500/8.547 = 292.5 s; z² = κt: twice as high takes four times as long.
    @Test
    void theTimeGrowsWithTheSquareOfTheHeight() {
        assertEquals(292.5, FrontMigration.seconds(50, 8.547), 0.1);
        assertEquals(4 * FrontMigration.seconds(25, 8), FrontMigration.seconds(50, 8), 1e-9);
        assertEquals(0, FrontMigration.seconds(0, 8));
    }

    // PlanarFlow: P0 of plain silica 6.7e-3 (Stahl), 8.15e-3 (Guiochon and Siouffi), 6.7e-3 (Ripphahn and Halpaap).
    // Own algebra: (6.7 + 8.15 + 6.7)/3 = 7.183. PlanarFlow itself says "about 8e-3".
    @Test
    void thePermeabilityIsTheMeanOfThosePublished() {
        assertEquals((6.7e-3 + 8.15e-3 + 6.7e-3) / 3, FrontMigration.PERMEABILITY, 0.05e-3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {6.7e-3, 8.15e-3, 8e-3})
    void thePublishedPermeabilitiesLieWithinTheUncertainty(double published) {
        double off = Math.abs(published - FrontMigration.PERMEABILITY) / FrontMigration.PERMEABILITY;
        assertTrue(off < FrontMigration.UNCERTAINTY, "off by " + off);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoNumberAboveZero(double wrong) {
        assertEquals(
                "surfaceTension",
                assertThrows(Refusal.class, () -> FrontMigration.coefficient(wrong, 1))
                        .field());
        assertEquals(
                "viscosity",
                assertThrows(Refusal.class, () -> FrontMigration.coefficient(20, wrong))
                        .field());
        assertEquals(
                "coefficient",
                assertThrows(Refusal.class, () -> FrontMigration.seconds(50, wrong))
                        .field());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN})
    void refusesAHeightBelowZero(double wrong) {
        assertEquals(
                "heightMm",
                assertThrows(Refusal.class, () -> FrontMigration.seconds(wrong, 8))
                        .field());
    }
}
