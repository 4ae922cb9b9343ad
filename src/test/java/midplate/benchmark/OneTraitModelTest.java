package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.chemistry.Sorbent;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Published models as contenders")
class OneTraitModelTest {
    private static final PairName ACETATE = PairName.HEXANE_ETHYL_ACETATE;
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    private final OneTraitModel model = new OneTraitModel("law", (pair, percent) -> Invented.strength(percent));

    @ParameterizedTest
    @ValueSource(doubles = {-5, -4, -2.5})
    void aTrialTellsTheOtherRatios(double c) {
        List<TrialReading> trials = List.of(
                new TrialReading(ACETATE, 4, Invented.rf(c, 4)), new TrialReading(ACETATE, 20, Invented.rf(c, 20)));
        for (double percent : new double[] {2, 10, 50}) {
            Guess guess = model.guess(ACETATE, trials, percent);
            double truth = Invented.rf(c, percent);
            assertEquals(truth, guess.rf(), 0.02);
            assertTrue(guess.low() < truth && truth < guess.high());
            // the scatter of the reading alone makes the band this wide
            assertTrue(guess.high() - guess.rf() >= 1.645 * 0.035 - 1e-9 || guess.high() == 1);
        }
    }

    // Own algebra: before any trial the forecast for c + G = c is 1/2 by symmetry.
    @Test
    void withoutATrialItSaysTheMiddleOfItsPrior() {
        Guess guess = model.guess(ACETATE, List.of(), 0);
        assertEquals(0.5, guess.rf(), 1e-9);
        assertEquals(1, guess.low() + guess.high(), 1e-9);
    }

    @Test
    void theChanceIsHighWhereOneTrialSettlesItAndLowWhereNoRatioSuitsAll() {
        List<TrialReading> middle = List.of(new TrialReading(ACETATE, 10, 0.5));
        Choice sure = model.choose(List.of(middle));
        assertTrue(sure.chance() > 0.99, sure.toString());
        List<TrialReading> low = List.of(new TrialReading(ACETATE, 10, 0.05));
        List<TrialReading> high = List.of(new TrialReading(ACETATE, 10, 0.95));
        assertTrue(model.choose(List.of(low, high)).chance() < 0.05);
        assertEquals(model.choose(List.of(low, high)), model.choose(List.of(high, low)));
    }

    @Test
    void aSpotAtTheStartLineAsksForMoreAndOneAtTheFrontForLess() {
        assertTrue(model.choose(List.of(List.of(new TrialReading(ACETATE, 10, 0.01))))
                        .percent()
                > 10);
        assertTrue(model.choose(List.of(List.of(new TrialReading(ACETATE, 10, 0.99))))
                        .percent()
                < 10);
    }

    @Test
    void aShiftBetweenPairsIsTaken() {
        StrengthLaw law = new StrengthLaw() {
            @Override
            public double strength(PairName pair, double percent) {
                return 0;
            }

            @Override
            public double shift(PairName asked, PairName trial) {
                return asked == trial ? 0 : -1;
            }

            @Override
            public double noise(PairName pair, double percent) {
                return 0.005;
            }
        };
        Guess guess = new OneTraitModel("shifted", law)
                .guess(PairName.DICHLOROMETHANE_METHANOL, List.of(new TrialReading(ACETATE, 10, 0.5)), 5);
        // own algebra: the trial says c − 1 = 0, so Rf = 1/(1 + e⁻¹) = 0.731; nodes of c are 0.125 apart
        assertEquals(0.731, guess.rf(), 0.01);
    }

    // Snyder 1968, the law at its ends: ln(10)·α'·A_s·ε of the pure solvents, α' 0.7 and A_s 10 as taken here.
    @ParameterizedTest
    @EnumSource
    void publishedStrengthsStandAtTheEnds(PairName pair) {
        for (StrengthSeries series : StrengthSeries.values()) {
            SnyderLaw law = new SnyderLaw(CATALOGUE, series);
            double scale = Math.log(10) * 0.7 * 10;
            assertEquals(scale * strength(pair.weak(), series), law.strength(pair, 0), 1e-9);
            assertEquals(scale * strength(pair.strong(), series), law.strength(pair, 100), 1e-9);
            assertTrue(law.strength(pair, 10) > law.strength(pair, 1));
        }
    }

    private static double strength(String solvent, StrengthSeries series) {
        return CATALOGUE
                .strength(CATALOGUE.solvent(solvent), Sorbent.SILICA, series)
                .orElseThrow();
    }

    // Soczewiński, Anal. Chem. 41 (1969) 179, the straight line: ten times as much of the strong solvent takes 1.3 off
    // R_M, with m = 1.3 as taken here.
    @Test
    void theLogLogLineIsStraight() {
        LogLogLaw law = new LogLogLaw();
        assertEquals(0, law.strength(ACETATE, 100), 1e-12);
        assertEquals(-1.3 * Math.log(10), law.strength(ACETATE, 10), 1e-12);
        assertEquals(-2.6 * Math.log(10), law.strength(ACETATE, 1), 1e-12);
        assertEquals(law.strength(ACETATE, 0.2), law.strength(ACETATE, 0), 1e-12);
    }

    @Test
    void peersHaveNamesOfTheirOwn() {
        List<String> names = Peers.uncalibrated(CATALOGUE).stream()
                .map(ContenderFactory::name)
                .distinct()
                .toList();
        assertEquals(3, names.size());
    }
}
