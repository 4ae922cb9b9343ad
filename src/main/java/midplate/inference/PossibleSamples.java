package midplate.inference;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.primes.Primes;

/**
 * A fixed number of possible samples, each with the traits of every spot, spread evenly over what is known (a Kronecker
 * sequence: the fractional parts of multiples of square roots of primes). Always the same for the same knowledge.
 */
public final class PossibleSamples {
    /** Samples drawn. */
    static final int COUNT = 256;

    /** By sample, then by spot. */
    private final double[] c;

    private final double[] s;
    private final double[] t;
    private final int count;
    private final int spots;
    private final PairModel model;

    private PossibleSamples(PairModel model, int spots, double[] c, double[] s, double[] t) {
        this.count = c.length / spots;
        this.spots = spots;
        this.model = model;
        this.c = c;
        this.s = s;
        this.t = t;
    }

    /** As many as are usual. */
    public static PossibleSamples of(Knowledge knowledge) {
        return of(knowledge, COUNT, 0);
    }

    /**
     * So many samples.
     *
     * @param start how many of the sequence are left out first, so that other samples come
     */
    static PossibleSamples of(Knowledge knowledge, int count, int start) {
        int spots = knowledge.spots();
        double[] c = new double[count * spots];
        double[] s = new double[count * spots];
        double[] t = new double[count * spots];
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        double[] irrational = irrational(knowledge);
        int at = 0;
        double reached = scenarios.get(0).weight();
        for (int k = 0; k < count; k++) {
            while ((k + 0.5) / count > reached && at < scenarios.size() - 1) {
                reached += scenarios.get(++at).weight();
            }
            for (int spot = 0; spot < spots; spot++) {
                TraitCloud cloud = scenarios.get(at).spots().get(spot);
                double place = (start + k + 1.0) * irrational[spot];
                int point = cloud.pointAt(place - Math.floor(place));
                c[k * spots + spot] = cloud.c(point);
                s[k * spots + spot] = cloud.s(point);
                t[k * spots + spot] = cloud.t(point);
            }
        }
        return new PossibleSamples(knowledge.model(), spots, c, s, t);
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    /** The true Rf [1] of a spot of a sample in an eluent: what a plate without any error shows. */
    public double rf(int sample, int spot, Climb climb) {
        return rf(eta(sample, spot, climb));
    }

    /** η [1] of a spot of a sample in an eluent. */
    double eta(int sample, int spot, Climb climb) {
        int i = sample * spots + spot;
        return climb.eta(c[i], s[i], t[i]);
    }

    /** A square root of a prime for each spot; the spots take them by how weakly they are held, whatever their order. */
    static double[] irrational(Knowledge knowledge) {
        int spots = knowledge.spots();
        double[] meanC = new double[spots];
        Integer[] order = new Integer[spots];
        for (int spot = 0; spot < spots; spot++) {
            meanC[spot] = knowledge.meanC(spot);
            order[spot] = spot;
        }
        Arrays.sort(order, Comparator.comparingDouble(spot -> meanC[spot]));
        double[] irrational = new double[spots];
        int prime = 2;
        for (int spot : order) {
            irrational[spot] = Math.sqrt(prime);
            prime = Primes.nextPrime(prime + 1);
        }
        return irrational;
    }

    /**
     * The share of samples for which no strength between two limits has the true Rf of every spot in a window [1], all spots
     * climbing alike: days differ at few ratios only, and there by little.
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
        for (int k = 0; k < count; k++) {
            double from = weakest;
            double to = strongest;
            for (int i = k * spots; i < (k + 1) * spots; i++) {
                from = Math.max(from, (low - c[i]) / s[i]);
                to = Math.min(to, (high - c[i]) / s[i]);
            }
            if (from > to) {
                without++;
            }
        }
        return (double) without / count;
    }

    /**
     * Mean over the samples of the smallest resolution between neighbours in an eluent [1, relative]: {@code
     * |Δ ln k|·√Rf·(1 − Rf)} with Rf midway, the form of resolution on a plate without its constant factor.
     *
     * @see "Geiss1987"
     */
    public double smallestResolution(Climb climb) {
        return overNeighbours(climb, (lower, upper) -> {
            double rf = rf((lower + upper) / 2);
            return (upper - lower) * Math.sqrt(rf) * (1 - rf);
        });
    }

    /** Mean over the samples of the smallest distance in Rf between neighbours in an eluent [1]. */
    public double smallestGap(Climb climb) {
        return overNeighbours(climb, (lower, upper) -> rf(upper) - rf(lower));
    }

    private double rf(double eta) {
        return model.rf()[LogitScale.mark(eta)];
    }

    private interface Distance {
        double between(double lowerEta, double upperEta);
    }

    private double overNeighbours(Climb climb, Distance distance) {
        if (spots < 2) {
            return 0;
        }
        double[] eta = new double[spots];
        double sum = 0;
        for (int k = 0; k < count; k++) {
            sort(k, climb, eta);
            double smallest = Double.POSITIVE_INFINITY;
            for (int i = 1; i < spots; i++) {
                smallest = Math.min(smallest, distance.between(eta[i - 1], eta[i]));
            }
            sum += smallest;
        }
        return sum / count;
    }

    /** The η of a sample's spots in an eluent, rising; spots are few, so each is put into its place. */
    private void sort(int sample, Climb climb, double[] eta) {
        for (int spot = 0; spot < spots; spot++) {
            int i = sample * spots + spot;
            double each = climb.eta(c[i], s[i], t[i]);
            int at = spot;
            while (at > 0 && eta[at - 1] > each) {
                eta[at] = eta[at - 1];
                at--;
            }
            eta[at] = each;
        }
    }
}
