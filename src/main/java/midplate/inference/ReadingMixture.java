package midplate.inference;

import java.util.Arrays;

/** The readings to expect of one spot: weighted Student curves around the Rf that it may have. */
final class ReadingMixture {
    private static final int RF_BINS = 250;
    private static final double NO_WEIGHT = 1e-5;
    /** Quantiles are looked for between marks so many to the Rf scale, then on a straight line. */
    private static final int MARKS = 512;
    /** The first step away from where a quantile is guessed [marks]. */
    private static final int FIRST_STEP = 6;

    private final double[] weight = new double[RF_BINS + 1];
    private final double[] centre = new double[RF_BINS + 1];
    private final double[] perSigma = new double[RF_BINS + 1];
    private final double[] reached = new double[RF_BINS + 1];
    private final int count;
    private final double belowStart;
    private final double belowFront;

    private ReadingMixture(double[] bins, Knowledge knowledge, double percent) {
        Noise noise = knowledge.model().noise();
        double middle = noise.middle(percent);
        int filled = 0;
        for (int bin = 0; bin < bins.length; bin++) {
            if (bins[bin] > NO_WEIGHT) {
                weight[filled] = bins[bin];
                reached[filled] = filled == 0 ? bins[bin] : reached[filled - 1] + bins[bin];
                centre[filled] = (double) bin / RF_BINS;
                perSigma[filled] = 1
                        / noise.sigmaFrom(
                                middle, centre[filled], knowledge.scatter().readingError());
                filled++;
            }
        }
        count = filled;
        belowStart = below(0);
        belowFront = below(MARKS);
    }

    /** An empty set of bins over Rf. */
    static double[] bins() {
        return new double[RF_BINS + 1];
    }

    /** The bin of an Rf [1]. */
    static int bin(double rf) {
        return (int) (rf * RF_BINS + 0.5);
    }

    /** Curves around the Rf of the bins that have weight, as wide as readings scatter there at a share [% v/v]. */
    static ReadingMixture of(double[] bins, Knowledge knowledge, double percent) {
        return new ReadingMixture(bins, knowledge, percent);
    }

    /** The chance to read at the start line [1]. */
    double atStart() {
        return belowStart;
    }

    /** The chance to read at the front [1]. */
    double atFront() {
        return 1 - belowFront;
    }

    /** The chance to read below a mark [1]. */
    private double below(int mark) {
        double rf = (double) mark / MARKS;
        double below = 0;
        for (int i = 0; i < count; i++) {
            below += weight[i] * StudentTable.below((rf - centre[i]) * perSigma[i]);
        }
        return below;
    }

    /**
     * The Rf [1] below which the reading lies with a probability, held between 0 and 1: a straight line between the two marks
     * around it. From a guess it is gone up or down by ever longer steps until both sides are known, then halved.
     */
    double quantile(double probability) {
        if (belowStart >= probability) {
            return 0;
        }
        if (belowFront <= probability) {
            return 1;
        }
        int low = 0;
        int high = MARKS;
        double belowLow = belowStart;
        double belowHigh = belowFront;
        int mark = guess(probability);
        int step = FIRST_STEP;
        while (high - low > 1) {
            if (mark <= low || mark >= high) {
                mark = (low + high) / 2;
            }
            double belowMark = below(mark);
            boolean lies = belowMark < probability;
            if (lies) {
                low = mark;
                belowLow = belowMark;
                mark = high == MARKS ? low + step : 0;
            } else {
                high = mark;
                belowHigh = belowMark;
                mark = low == 0 ? high - step : 0;
            }
            step *= 2;
        }
        return (low + (high - low) * (probability - belowLow) / (belowHigh - belowLow)) / MARKS;
    }

    /** The mark at which the weights alone reach a probability. */
    private int guess(double probability) {
        int found = Arrays.binarySearch(reached, 0, count, probability);
        int at = Math.min(count - 1, found >= 0 ? found : -found - 1);
        return (int) (centre[at] * MARKS);
    }
}
