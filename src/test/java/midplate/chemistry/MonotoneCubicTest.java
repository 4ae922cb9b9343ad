package midplate.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A smooth curve that never overshoots")
class MonotoneCubicTest {
    // SciPy, scipy.interpolate.PchipInterpolator: the same method (Fritsch, Butland, SIAM J. Sci. Stat. Comput.
    // 5 (1984) 300) by other hands; points and places are invented, each row names the version that worked them
    // out.
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(files = "shared/reference/monotone-cubic.csv", numLinesToSkip = 1)
    void agreesWithAnotherProgram(
            String name,
            String x,
            String y,
            String at,
            String value,
            double tolerance,
            String source,
            String locator,
            String basis) {
        MonotoneCubic curve = MonotoneCubic.through(numbers(x), numbers(y));
        double[] places = numbers(at);
        double[] values = numbers(value);
        assertEquals(values.length, places.length);
        for (int i = 0; i < places.length; i++) {
            String where = name + " at " + places[i] + ", " + source + " " + locator + " " + basis;
            assertEquals(values[i], curve.at(places[i]), tolerance, where);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void passesThroughItsPoints(long seed) {
        Points points = Points.drawn(seed);
        for (int i = 0; i < points.x.length; i++) {
            assertEquals(points.y[i], points.curve().at(points.x[i]), 1e-12);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void staysBetweenNeighbouringPoints(long seed) {
        Points points = Points.drawn(seed);
        MonotoneCubic curve = points.curve();
        for (int i = 1; i < points.x.length; i++) {
            double low = Math.min(points.y[i - 1], points.y[i]);
            double high = Math.max(points.y[i - 1], points.y[i]);
            for (int step = 0; step <= 100; step++) {
                double value = curve.at(points.x[i - 1] + (points.x[i] - points.x[i - 1]) * step / 100);
                assertTrue(value >= low - 1e-12 && value <= high + 1e-12, value + " outside " + low + " to " + high);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void risesWhereThePointsRise(long seed) {
        Points points = Points.drawn(seed);
        Arrays.sort(points.y);
        MonotoneCubic curve = points.curve();
        double before = Double.NEGATIVE_INFINITY;
        for (int step = 0; step <= 1000; step++) {
            double value = curve.at(points.x[0] + (points.last() - points.x[0]) * step / 1000);
            assertTrue(value >= before - 1e-12, value + " after " + before);
            before = value;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readBackwardsItIsTheSameCurve(long seed) {
        Points points = Points.drawn(seed);
        int n = points.x.length;
        double[] x =
                IntStream.range(0, n).mapToDouble(i -> -points.x[n - 1 - i]).toArray();
        double[] y = IntStream.range(0, n).mapToDouble(i -> points.y[n - 1 - i]).toArray();
        MonotoneCubic turned = MonotoneCubic.through(x, y);
        for (int step = 0; step <= 100; step++) {
            double place = points.x[0] + (points.last() - points.x[0]) * step / 100;
            assertEquals(points.curve().at(place), turned.at(-place), 1e-9);
        }
    }

    @Test
    void throughPointsOnALineItIsTheLine() {
        double[] x = {-1, 0.5, 0.75, 4};
        double[] y = Arrays.stream(x).map(place -> 3 - 2 * place).toArray();
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        for (double place = -1; place <= 4; place += 0.1) {
            assertEquals(3 - 2 * place, curve.at(place), 1e-12);
        }
    }

    @Test
    void beyondItsEndsItKeepsTheEnd() {
        MonotoneCubic curve = MonotoneCubic.through(new double[] {0, 1, 2}, new double[] {5, 6, 9});
        assertEquals(5, curve.at(-1), 0);
        assertEquals(5, curve.at(Double.NEGATIVE_INFINITY), 0);
        assertEquals(9, curve.at(2.0001), 0);
        assertEquals(9, curve.at(Double.POSITIVE_INFINITY), 0);
    }

    @Test
    void theCallersArraysMayChangeAfterwards() {
        double[] x = {0, 1, 2};
        double[] y = {0, 1, 2};
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        x[1] = 1.9;
        y[1] = -7;
        assertEquals(1, curve.at(1), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void placesThatDoNotRiseAreRefusedByNumber(double second) {
        Exception refusal = assertThrows(
                IllegalArgumentException.class,
                () -> MonotoneCubic.through(new double[] {0, second, 2}, new double[] {0, 1, 2}));
        String message = refusal.getMessage();
        assertTrue(message.startsWith("Point ") && message.contains("rise strictly"), message);
    }

    @Test
    void aValueThatIsNoNumberIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> MonotoneCubic.through(new double[] {0, 1}, new double[] {0, Double.NaN}));
    }

    @Test
    void onePointAndUnequalCountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> MonotoneCubic.through(new double[] {0}, new double[] {0}));
        Exception refusal = assertThrows(
                IllegalArgumentException.class, () -> MonotoneCubic.through(new double[] {0, 1}, new double[] {0}));
        assertTrue(refusal.getMessage().contains("2 places and 1 values"), refusal.getMessage());
    }

    private static double[] numbers(String list) {
        return Arrays.stream(list.split(";", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    private record Points(double[] x, double[] y) {
        static Points drawn(long seed) {
            Random random = new Random(seed);
            int n = 2 + random.nextInt(8);
            double[] x = new double[n];
            double[] y = new double[n];
            double place = random.nextGaussian();
            for (int i = 0; i < n; i++) {
                place += 0.01 + random.nextDouble();
                x[i] = place;
                y[i] = random.nextInt(4) == 0 && i > 0 ? y[i - 1] : random.nextGaussian();
            }
            return new Points(x, y);
        }

        MonotoneCubic curve() {
            return MonotoneCubic.through(x, y);
        }

        double last() {
            return x[x.length - 1];
        }
    }
}
