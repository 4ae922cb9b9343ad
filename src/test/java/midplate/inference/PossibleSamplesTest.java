package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Samples whose traits are known, so that the answer can be worked out by hand: all spots have the same area, and c is one
 * number or one of two. Between Rf 0.2 and 0.8 lie 2·ln 4 = 2.7726 in ln(Rf/(1 − Rf)).
 */
@DisplayName("Possible samples")
class PossibleSamplesTest {
    private static final double HALF_WINDOW = Math.log(4);
    private static final PairModel MODEL =
            PairModel.of(logistic(Plates.CURVES.pairs().get(0)));
    /** The eluent of strength 0, in which η is c. */
    private static final Climb MIDDLE = new Climb(1, 0, 0);

    /** A pair in which Rf is 1/(1 + e^(−η)) without a stretch; its curve and noise are not asked for. */
    private static PlatePair logistic(PlatePair pair) {
        return new PlatePair(
                PairBasis.MEASURED,
                pair.sorbent(),
                pair.weak(),
                pair.strong(),
                pair.trustedFrom(),
                pair.trustedTo(),
                pair.percentStrong(),
                pair.strength(),
                pair.strengthError(),
                pair.hold(),
                pair.early(),
                pair.noiseScale(),
                pair.noiseLeftAtLines(),
                pair.atLines(),
                0,
                0,
                pair.prior(),
                pair.compounds(),
                pair.readings(),
                pair.residual(),
                pair.provenance());
    }

    /** Each c of a spot equally likely. */
    private static TraitPrior spot(double... c) {
        TraitGrid grid = TraitGrid.spots(TraitGrid.Trait.ALIKE, TraitGrid.Trait.ALIKE);
        double[] density = new double[grid.cCount()];
        for (double each : c) {
            density[(int) Math.round((each - grid.cAt(0)) / grid.cStep())] += 1.0 / c.length;
        }
        return TraitPrior.of(grid, density);
    }

    private static PossibleSamples samples(TraitPrior... spots) {
        List<List<Trial>> none = new ArrayList<>();
        for (int i = 0; i < spots.length; i++) {
            none.add(List.of());
        }
        return PossibleSamples.of(Knowledge.from(MODEL, PlateScatter.of(Setting.AUTOMATED), 0, none, List.of(spots)));
    }

    private static double without(double weakest, double strongest, TraitPrior... spots) {
        return samples(spots).shareWithoutRatio(0.2, 0.8, weakest, strongest);
    }

    // By hand: two spots fit at one strength when their c differ by less than 2.7726.
    @ParameterizedTest
    @CsvSource({"2.72, 0", "2.8, 1", "0, 0", "-2.72, 0", "-2.8, 1"})
    void spotsFartherApartThanTheWindowHaveNoRatio(double difference, double share) {
        assertEquals(share, without(-20, 20, spot(0), spot(difference)));
    }

    // By hand: c + G must reach ln(0.2/0.8) = −1.3863 and stay below 1.3863.
    @ParameterizedTest
    @CsvSource({"-4, -5, 2.6, 1", "-4, -5, 2.62, 0", "4, -2.6, 5, 1", "4, -2.62, 5, 0"})
    void aSpotThatTheStrengthsDoNotReachHasNoRatio(double c, double weakest, double strongest, double share) {
        assertEquals(share, without(weakest, strongest, spot(c)));
    }

    // By hand: 1 of 2, 1 of 4 and 1 of 8 possibilities are out; 256 samples give these to within a few of them.
    @Test
    void theShareIsThatOfThePossibilities() {
        assertEquals(0.5, without(-20, 20, spot(0), spot(0, 3.2)), 3 / 256.0);
        assertEquals(0.25, without(-20, 20, spot(0, 1.6), spot(1.6, 3.2)), 8 / 256.0);
        assertEquals(0.125, without(-20, 20, spot(0, 1.6), spot(1.6), spot(1.6, 1.6, 1.6, 3.2)), 8 / 256.0);
    }

    // By hand: between the lower two |Δ ln k| is 1.6 and Rf midway 1/2; between the upper two 3.2 and 1/(1 + e^(−2.4)).
    @Test
    void resolutionAndGapAreThoseOfTheClosestTwo() {
        assertEquals(1.6 * Math.sqrt(0.5) * 0.5, samples(spot(-0.8), spot(0.8)).smallestResolution(MIDDLE), 0.002);
        PossibleSamples samples = samples(spot(-0.8), spot(0.8), spot(4));
        double midway = 1 / (1 + Math.exp(-2.4));
        assertEquals(3.2 * Math.sqrt(midway) * (1 - midway), samples.smallestResolution(MIDDLE), 0.002);
        double lower = 1 / (1 + Math.exp(0.8));
        double top = 1 / (1 + Math.exp(-4));
        assertEquals(top - (1 - lower), samples.smallestGap(MIDDLE), 0.003, "0.982 − 0.690 is less than 0.690 − 0.310");
    }

    @Test
    void aSpotAloneHasNoNeighbour() {
        assertEquals(0, samples(spot(0)).smallestResolution(MIDDLE));
        assertEquals(0, samples(spot(0)).smallestGap(MIDDLE));
    }

    @Test
    void areTheSameForTheSameKnowledge() {
        List<PlateRun> runs = List.of(Plates.run(Plates.ACETATE, 10, Map.of("A", 0.2, "B", 0.3)));
        double once = gap(runs);
        assertTrue(once > 0);
        assertEquals(once, gap(runs));
    }

    private static double gap(List<PlateRun> runs) {
        return Plates.outlook(Plates.ACETATE, Setting.BENCH, List.of("A", "B"), runs)
                .possibleSamples()
                .smallestGap(new Climb(1, 0.5, 0));
    }

    // By hand: in the middle of the window half the width is left on each side.
    @Test
    void theEdgesAreThoseOfTheWindowAsked() {
        PossibleSamples one = samples(spot(0));
        assertEquals(0, one.shareWithoutRatio(0.2, 0.8, HALF_WINDOW - 0.01, HALF_WINDOW + 1));
        assertEquals(1, one.shareWithoutRatio(0.2, 0.8, HALF_WINDOW + 0.01, HALF_WINDOW + 1));
        assertEquals(0, one.shareWithoutRatio(0.2, 1, HALF_WINDOW + 0.01, HALF_WINDOW + 1), "no upper edge");
    }
}
