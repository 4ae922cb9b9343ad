package midplate.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import midplate.words.English;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("How evenly spots spread over a plate")
class SpotSpreadTest {
    // Komsta, Markowski, Misztal, J. Planar Chromatogr. 20 (2007) 27: printed values, cut off (not rounded) after four
    // digits, hence a tolerance of one unit of the last.
    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/spot-spread.csv", useHeadersInDisplayName = true)
    void printedValuesComeOut(
            String rf,
            double uniformity,
            double distance,
            double tolerance,
            String source,
            String locator,
            String basis) {
        double[] spots =
                Arrays.stream(rf.split(";")).mapToDouble(Double::parseDouble).toArray();
        assertEquals(uniformity, SpotSpread.uniformity(spots), tolerance, source + " " + locator + " " + basis);
        assertEquals(distance, SpotSpread.distance(spots), tolerance, source + " " + locator + " " + basis);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfTheSpotsDoesNotMatter(long seed) {
        double[] spots = spots(seed);
        List<Double> shuffled =
                new java.util.ArrayList<>(Arrays.stream(spots).boxed().toList());
        Collections.shuffle(shuffled, new Random(seed));
        double[] other = shuffled.stream().mapToDouble(Double::doubleValue).toArray();
        assertEquals(SpotSpread.uniformity(spots), SpotSpread.uniformity(other), 0);
        assertEquals(SpotSpread.distance(spots), SpotSpread.distance(other), 0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bothLieBetweenNoneAndFull(long seed) {
        double[] spots = spots(seed);
        for (double spread : new double[] {SpotSpread.uniformity(spots), SpotSpread.distance(spots)}) {
            assertTrue(spread >= -1e-12 && spread <= 1 + 1e-12, "spread " + spread);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPlateTurnedUpsideDownIsAsUniform(long seed) {
        double[] spots = spots(seed);
        double[] turned = Arrays.stream(spots).map(rf -> 1 - rf).toArray();
        assertEquals(SpotSpread.uniformity(spots), SpotSpread.uniformity(turned), 1e-12);
        assertEquals(SpotSpread.distance(spots), SpotSpread.distance(turned), 1e-9);
    }

    // Own algebra: with Rf_i = i/(n+1) every difference in R_U is 0 and every factor in R_D is 1/(n+1).
    @Test
    void equalGapsAreFullSpread() {
        for (int n = 1; n <= 12; n++) {
            double gaps = n + 1.0;
            double[] spots =
                    IntStream.rangeClosed(1, n).mapToDouble(i -> i / gaps).toArray();
            assertEquals(1, SpotSpread.uniformity(spots), 1e-12);
            assertEquals(1, SpotSpread.distance(spots), 1e-12);
        }
    }

    // Komsta 2007: all spots on the start line, or all at the front, is no spread.
    @Test
    void allSpotsAtOneEndAreNoSpread() {
        assertEquals(0, SpotSpread.uniformity(0, 0, 0), 1e-12);
        assertEquals(0, SpotSpread.uniformity(1, 1, 1, 1), 1e-12);
        assertEquals(0, SpotSpread.distance(0, 0, 0), 0);
    }

    @Test
    void theCallersArrayStaysAsItWas() {
        double[] spots = {0.7, 0.2, 0.5};
        SpotSpread.uniformity(spots);
        SpotSpread.distance(spots);
        assertEquals(List.of(0.7, 0.2, 0.5), Arrays.stream(spots).boxed().toList());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.001, 1.001})
    void whatIsNoRfIsRefusedWithItsPlace(double rf) {
        Refusal refusal = assertThrows(Refusal.class, () -> SpotSpread.uniformity(0.2, rf));
        assertEquals("rf[1]", refusal.field());
        assertEquals("[0, 1]", English.said(refusal.allowed()));
        assertThrows(Refusal.class, () -> SpotSpread.distance(0.2, rf));
    }

    @Test
    void noSpotIsRefused() {
        assertEquals(
                "spots", assertThrows(Refusal.class, SpotSpread::uniformity).field());
        assertEquals("spots", assertThrows(Refusal.class, SpotSpread::distance).field());
    }

    private static double[] spots(long seed) {
        Random random = new Random(seed);
        return DoubleStream.generate(random::nextDouble)
                .limit(1 + random.nextInt(8))
                .toArray();
    }

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }
}
