package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Draws that are the same on every machine. */
class SeededDrawsTest {
    /**
     * The first outputs of the Mersenne Twister begun by the array 0x123, 0x234, 0x345, 0x456, as the authors' reference program
     * prints them in {@code mt19937ar.out}; from memory, well recalled.
     */
    private static final long[] PUBLISHED = {1067595299L, 955945823L, 477289528L, 4107218783L, 4228976476L};

    private static SeededDraws published() {
        return SeededDraws.of(0x123, 0x234, 0x345, 0x456);
    }

    // of a number of choices that is a power of two the generator takes the highest bits
    @Test
    void wholeNumbersAreTheHighestBitsOfThePublishedOutputs() {
        SeededDraws draws = published();
        for (long output : PUBLISHED) {
            assertEquals(output >> 2, draws.whole(0, (1 << 30) - 1));
        }
    }

    // 26 bits of one output and 26 of the next
    @Test
    void numbersBetweenAreMadeOfTwoPublishedOutputs() {
        double expected = ((PUBLISHED[0] >> 6) * (double) (1 << 26) + (PUBLISHED[1] >> 6)) / Math.pow(2, 52);
        assertEquals(expected, published().even(0, 1), 0);
        assertEquals(-3 + 10 * expected, published().even(-3, 7), 1e-14);
    }

    @Test
    void theSameSeedAndPlaceGiveTheSame() {
        List<Integer> one = IntStream.range(0, 50)
                .map(i -> SeededDraws.of(7, 1, i).whole(0, 999))
                .boxed()
                .toList();
        List<Integer> other = IntStream.range(0, 50)
                .map(i -> SeededDraws.of(7, 1, i).whole(0, 999))
                .boxed()
                .toList();
        assertEquals(one, other);
        assertTrue(new HashSet<>(one).size() > 40, "places differ: " + one);
    }

    @Test
    void seedsPlacesAndTheirOrderMakeADifference() {
        double here = SeededDraws.of(7, 1, 2).even(0, 1);
        assertNotEquals(here, SeededDraws.of(7, 2, 1).even(0, 1));
        assertNotEquals(here, SeededDraws.of(8, 1, 2).even(0, 1));
        assertNotEquals(here, SeededDraws.of(7, 1).even(0, 1));
        assertNotEquals(here, SeededDraws.of(7, 1, 2, 0).even(0, 1));
    }

    // 60 000 throws of a die: chi square with 5 degrees of freedom is above 20.5 in one of 1000 cases (common tables)
    @Test
    void wholeNumbersAreEachAsLikelyAndReachBothEnds() {
        SeededDraws draws = SeededDraws.of(3, 3);
        int[] thrown = new int[6];
        for (int i = 0; i < 60_000; i++) {
            thrown[draws.whole(1, 6) - 1]++;
        }
        double chiSquare = IntStream.of(thrown)
                .mapToDouble(n -> Math.pow(n - 10_000, 2) / 10_000)
                .sum();
        assertTrue(chiSquare < 20.5, "chi square " + chiSquare);
        assertEquals(4, SeededDraws.of(1).whole(4, 4));
    }

    // of 40 000 draws the mean scatters by 0.005, the mean square by 0.007
    @Test
    void normalNumbersHaveMeanZeroAndVarianceOne() {
        SeededDraws draws = SeededDraws.of(4, 4);
        double sum = 0;
        double squares = 0;
        int beyondTwo = 0;
        int count = 40_000;
        for (int i = 0; i < count; i++) {
            double drawn = draws.normal();
            sum += drawn;
            squares += drawn * drawn;
            beyondTwo += Math.abs(drawn) > 2 ? 1 : 0;
        }
        assertEquals(0, sum / count, 4 * 0.005);
        assertEquals(1, squares / count, 4 * 0.0071);
        assertEquals(0.0455, beyondTwo / (double) count, 4 * 0.001);
    }

    @Test
    void someOfAListAreNoneTwiceAndAllOfThemInTheEnd() {
        List<String> all = List.of("a", "b", "c", "d", "e");
        int[] first = new int[5];
        for (int seed = 0; seed < 2000; seed++) {
            List<String> three = SeededDraws.of(seed).some(all, 3);
            assertEquals(3, new HashSet<>(three).size());
            first[all.indexOf(three.get(0))]++;
            assertEquals(new HashSet<>(all), new HashSet<>(SeededDraws.of(seed).some(all, 5)));
        }
        // 400 of 2000 each, standard deviation 18
        for (int times : first) {
            assertEquals(400, times, 5 * 18);
        }
        assertEquals(List.of(), SeededDraws.of(1).some(all, 0));
    }
}
