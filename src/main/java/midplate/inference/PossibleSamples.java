package midplate.inference;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.primes.Primes;

/**
 * A fixed number of possible samples, each a pair of traits for every spot, spread evenly over what is known (a Kronecker
 * sequence: the fractional parts of multiples of square roots of primes). Always the same for the same knowledge.
 */
public final class PossibleSamples {
    /** Samples drawn. */
    static final int COUNT = 256;

    private final double[][] c;
    private final double[][] s;
    private final PairModel model;

    private PossibleSamples(PairModel model, double[][] c, double[][] s) {
        this.model = model;
        this.c = c;
        this.s = s;
    }

    static PossibleSamples of(Knowledge knowledge) {
        int spots = knowledge.spots();
        double[][] c = new double[COUNT][spots];
        double[][] s = new double[COUNT][spots];
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        double[] irrational = irrational(knowledge);
        int at = 0;
        double reached = scenarios.get(0).weight();
        for (int k = 0; k < COUNT; k++) {
            while ((k + 0.5) / COUNT > reached && at < scenarios.size() - 1) {
                reached += scenarios.get(++at).weight();
            }
            for (int spot = 0; spot < spots; spot++) {
                TraitCloud cloud = scenarios.get(at).spots().get(spot);
                double place = (k + 1) * irrational[spot];
                int point = cloud.pointAt(place - Math.floor(place));
                c[k][spot] = cloud.c(point);
                s[k][spot] = cloud.s(point);
            }
        }
        return new PossibleSamples(knowledge.model(), c, s);
    }

    /** A square root of a prime for each spot; the spots take them by how weakly they are held, whatever their order. */
    static double[] irrational(Knowledge knowledge) {
        List<Integer> order = IntStream.range(0, knowledge.spots())
                .boxed()
                .sorted(Comparator.comparingDouble(knowledge::meanC))
                .toList();
        double[] irrational = new double[order.size()];
        int prime = 2;
        for (int spot : order) {
            irrational[spot] = Math.sqrt(prime);
            prime = Primes.nextPrime(prime + 1);
        }
        return irrational;
    }

    /**
     * The share of samples for which no strength between two limits has the true Rf of every spot in a window [1].
     *
     * @param lowRf lower edge of the window [1]
     * @param highRf upper edge [1]
     * @param weakest G of the weakest eluent allowed [ln units]
     * @param strongest G of the strongest [ln units]
     */
    public double shareWithoutRatio(double lowRf, double highRf, double weakest, double strongest) {
        double low = model.eta(lowRf);
        double high = model.eta(highRf);
        int without = 0;
        for (int k = 0; k < COUNT; k++) {
            double from = weakest;
            double to = strongest;
            for (int spot = 0; spot < c[k].length; spot++) {
                from = Math.max(from, (low - c[k][spot]) / s[k][spot]);
                to = Math.min(to, (high - c[k][spot]) / s[k][spot]);
            }
            if (from > to) {
                without++;
            }
        }
        return (double) without / COUNT;
    }

    /**
     * Mean over the samples of the smallest resolution between neighbours at a strength [1, relative]: {@code
     * |Δ ln k|·√Rf·(1 − Rf)} with Rf midway, the form of resolution on a plate without its constant factor.
     *
     * @see "Geiss1987"
     */
    public double smallestResolution(double strength) {
        return overNeighbours(strength, (lower, upper) -> {
            double rf = rf((lower + upper) / 2);
            return (upper - lower) * Math.sqrt(rf) * (1 - rf);
        });
    }

    /** Mean over the samples of the smallest distance in Rf between neighbours at a strength [1]. */
    public double smallestGap(double strength) {
        return overNeighbours(strength, (lower, upper) -> rf(upper) - rf(lower));
    }

    private double rf(double eta) {
        return model.rf()[LogitScale.mark(eta)];
    }

    private interface Distance {
        double between(double lowerEta, double upperEta);
    }

    private double overNeighbours(double strength, Distance distance) {
        double sum = 0;
        for (int k = 0; k < COUNT; k++) {
            double[] eta = new double[c[k].length];
            for (int spot = 0; spot < eta.length; spot++) {
                eta[spot] = c[k][spot] + s[k][spot] * strength;
            }
            Arrays.sort(eta);
            double smallest = eta.length > 1 ? Double.POSITIVE_INFINITY : 0;
            for (int i = 1; i < eta.length; i++) {
                smallest = Math.min(smallest, distance.between(eta[i - 1], eta[i]));
            }
            sum += smallest;
        }
        return sum / COUNT;
    }
}
