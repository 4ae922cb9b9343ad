package midplate.lesson;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Possible samples in which named compounds run as the model expects them: at every share each spot lies in the middle half of the possible
 * samples, and two spots whose middles are widely apart stand in the order of their middles. Any other sample is possible, too, and would teach
 * a wrong order under a true name. Everything is compared by thousandths of Rf, so that no last bit of a machine decides.
 */
final class CentralSamples {
    /** Of two spots whose middles differ by so much the order is kept [1 in Rf]. */
    static final double WIDE = 0.1;

    private static final double THOUSAND = 1000;
    /** The share of possible samples below the middle half, and above it [1]. */
    private static final double OUTSIDE = 0.25;

    private final long[][][] rf;
    private final long[][] low;
    private final long[][] middle;
    private final long[][] high;

    private CentralSamples(long[][][] rf, long[][] low, long[][] middle, long[][] high) {
        this.rf = rf;
        this.low = low;
        this.middle = middle;
        this.high = high;
    }

    /**
     * Of some spots at some shares.
     *
     * @param rf the true Rf [1] by the share, then by the spot, then by the sample
     */
    static CentralSamples of(double[][][] rf) {
        long[][][] rounded = new long[rf.length][][];
        long[][] low = new long[rf.length][];
        long[][] middle = new long[rf.length][];
        long[][] high = new long[rf.length][];
        for (int share = 0; share < rf.length; share++) {
            int spots = rf[share].length;
            rounded[share] = new long[spots][];
            low[share] = new long[spots];
            middle[share] = new long[spots];
            high[share] = new long[spots];
            for (int spot = 0; spot < spots; spot++) {
                rounded[share][spot] = Arrays.stream(rf[share][spot])
                        .mapToLong(each -> Math.round(each * THOUSAND))
                        .toArray();
                long[] sorted = rounded[share][spot].clone();
                Arrays.sort(sorted);
                int below = (int) (OUTSIDE * sorted.length);
                low[share][spot] = sorted[below];
                middle[share][spot] = sorted[sorted.length / 2];
                high[share][spot] = sorted[sorted.length - 1 - below];
            }
        }
        return new CentralSamples(rounded, low, middle, high);
    }

    /** Whether a sample runs as expected at every share. */
    boolean fits(int sample) {
        return IntStream.range(0, rf.length).allMatch(share -> isCentral(share, sample) && isOrdered(share, sample));
    }

    private boolean isCentral(int share, int sample) {
        return IntStream.range(0, rf[share].length)
                .allMatch(spot ->
                        rf[share][spot][sample] >= low[share][spot] && rf[share][spot][sample] <= high[share][spot]);
    }

    private boolean isOrdered(int share, int sample) {
        for (int upper = 0; upper < rf[share].length; upper++) {
            for (int lower = 0; lower < rf[share].length; lower++) {
                boolean wide = middle[share][upper] - middle[share][lower] >= Math.round(WIDE * THOUSAND);
                if (wide && rf[share][upper][sample] <= rf[share][lower][sample]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** One that fits, drawn; where none does, the one whose farthest spot lies nearest to its middle. */
    int draw(SeededDraws draws) {
        int samples = rf[0][0].length;
        int[] fitting = IntStream.range(0, samples).filter(this::fits).toArray();
        return fitting.length > 0
                ? fitting[draws.whole(0, fitting.length - 1)]
                : IntStream.range(0, samples)
                        .boxed()
                        .min(Comparator.comparingLong(this::farthest))
                        .orElseThrow();
    }

    /** By how much the spot that lies farthest from its middle does [thousandths of Rf]. */
    private long farthest(int sample) {
        return IntStream.range(0, rf.length)
                .mapToLong(share -> IntStream.range(0, rf[share].length)
                        .mapToLong(spot -> Math.abs(rf[share][spot][sample] - middle[share][spot]))
                        .max()
                        .orElse(0))
                .max()
                .orElse(0);
    }
}
