package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Possible samples of the same weight, each with the traits of every spot and a deviation of its own, standard normal before
 * anything is said of it, after evidence beyond plates has weighed all of them. Scenarios of the knowledge are respected: the spots
 * of a case are of one. Always the same for the same knowledge and evidence, in whatever order the spots stand.
 */
public final class TraitDraws {
    /** Points of a spot's cloud that are weighed with each deviation. */
    private static final int POINTS = 512;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double[] DEVIATIONS = evenly(31);
    private static final long SEED = 20_261_126;
    /** The stream that belongs to no spot. */
    private static final long COMMON = 999;

    private final double[][] traits;
    private final int cases;
    private final int spots;

    /** What is known beyond plates. */
    public interface Evidence {
        /** Nothing. */
        Evidence NONE = new Evidence() {
            @Override
            public Known known(int spot) {
                return Known.NOTHING;
            }

            @Override
            public double logLikelihood(int spot, double c, double s, double t, double deviation) {
                return 0;
            }
        };

        /** Whether anything is known of a spot. */
        Known known(int spot);

        /** Logarithm of how likely it is, up to a constant, for a spot with these traits and this deviation. */
        double logLikelihood(int spot, double c, double s, double t, double deviation);
    }

    /** How much is known of a spot beyond plates. */
    public enum Known {
        /** Nothing. */
        NOTHING,
        /** Something. */
        SOMETHING
    }

    /** A spot in one scenario: where it may be, with summed weights, or its cloud where nothing more is known. */
    private record Weighed(TraitCloud cloud, double @Nullable [] summed, double logEvidence) {}

    private TraitDraws(double[][] traits, int cases, int spots) {
        this.traits = traits;
        this.cases = cases;
        this.spots = spots;
    }

    /**
     * So many cases.
     *
     * @param knowledge what plates say
     * @param cases how many
     * @param evidence what is known beyond
     */
    public static TraitDraws of(Knowledge knowledge, int cases, Evidence evidence) {
        int spots = knowledge.spots();
        List<List<Weighed>> weighed = new ArrayList<>();
        double[] logs = new double[knowledge.scenarios().size()];
        for (int at = 0; at < logs.length; at++) {
            Knowledge.Scenario scenario = knowledge.scenarios().get(at);
            List<Weighed> each = new ArrayList<>();
            logs[at] = Math.log(scenario.weight());
            for (int spot = 0; spot < spots; spot++) {
                Weighed one = weighed(scenario.spots().get(spot), spot, evidence);
                logs[at] += one.logEvidence();
                each.add(one);
            }
            weighed.add(each);
        }
        double[] reached = summed(logs);
        double[][] places = new double[spots][];
        double[][] others = new double[spots][];
        int rank = 0;
        for (int spot : byHold(knowledge)) {
            places[spot] = shuffled(cases, 2L * rank);
            others[spot] = shuffled(cases, 2L * rank + 1);
            rank++;
        }
        double[][] traits = new double[cases * spots][];
        int at = 0;
        for (int k = 0; k < cases; k++) {
            while ((k + 0.5) / cases > reached[at] && at < reached.length - 1) {
                at++;
            }
            for (int spot = 0; spot < spots; spot++) {
                traits[k * spots + spot] = drawn(weighed.get(at).get(spot), places[spot][k], others[spot][k]);
            }
        }
        return new TraitDraws(traits, cases, spots);
    }

    private static Weighed weighed(TraitCloud all, int spot, Evidence evidence) {
        if (evidence.known(spot) == Known.NOTHING) {
            return new Weighed(all, null, 0);
        }
        TraitCloud cloud = all.thinned(POINTS, 0.5);
        double[] logs = new double[cloud.size() * DEVIATIONS.length];
        for (int i = 0; i < logs.length; i++) {
            int point = i / DEVIATIONS.length;
            double deviation = DEVIATIONS[i % DEVIATIONS.length];
            logs[i] = Math.log(cloud.weight(point))
                    + evidence.logLikelihood(spot, cloud.c(point), cloud.s(point), cloud.t(point), deviation);
        }
        double greatest = Arrays.stream(logs).max().orElse(0);
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - greatest);
        }
        return new Weighed(cloud, summed(logs), greatest + Math.log(sum));
    }

    private static double[] drawn(Weighed from, double place, double other) {
        double[] summed = from.summed();
        TraitCloud cloud = from.cloud();
        if (summed == null) {
            int point = cloud.pointAt(place);
            return new double[] {
                cloud.c(point), cloud.s(point), cloud.t(point), NORMAL.inverseCumulativeProbability(other)
            };
        }
        int found = Arrays.binarySearch(summed, place);
        int i = Math.min(summed.length - 1, found < 0 ? -found - 1 : found);
        int point = i / DEVIATIONS.length;
        return new double[] {cloud.c(point), cloud.s(point), cloud.t(point), DEVIATIONS[i % DEVIATIONS.length]};
    }

    /** Summed weights from their logarithms, the last one 1. */
    private static double[] summed(double[] logs) {
        double greatest = Arrays.stream(logs).max().orElse(0);
        double[] summed = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            sum += Math.exp(logs[i] - greatest);
            summed[i] = sum;
        }
        for (int i = 0; i < summed.length; i++) {
            summed[i] /= sum;
        }
        return summed;
    }

    /** The spots by how weakly they are held, whatever their order. */
    private static List<Integer> byHold(Knowledge knowledge) {
        List<Integer> order = new ArrayList<>();
        for (int spot = 0; spot < knowledge.spots(); spot++) {
            order.add(spot);
        }
        order.sort(Comparator.comparingDouble(knowledge::meanC));
        return order;
    }

    /**
     * Numbers that split (0, 1) evenly, in an order of their own for each stream: each stream is spread evenly, and streams have
     * nothing to do with each other.
     */
    static double[] shuffled(int count, long stream) {
        double[] places = new double[count];
        Random random = new Random(SEED + 7919 * stream);
        for (int i = 0; i < count; i++) {
            int other = random.nextInt(i + 1);
            places[i] = places[other];
            places[other] = (i + 0.5) / count;
        }
        return places;
    }

    /** So many points of the standard normal curve with the same weight. */
    private static double[] evenly(int count) {
        double[] points = new double[count];
        for (int i = 0; i < count; i++) {
            points[i] = NORMAL.inverseCumulativeProbability((i + 0.5) / count);
        }
        return points;
    }

    /** How many cases. */
    public int cases() {
        return cases;
    }

    /** How many spots. */
    public int spots() {
        return spots;
    }

    /** η [ln units] of a spot of a case in an eluent. */
    public double eta(int oneCase, int spot, Climb climb) {
        double[] each = traits[oneCase * spots + spot];
        return climb.eta(each[0], each[1], each[2]);
    }

    /** The deviation of a spot of a case [standard deviations]. */
    public double deviation(int oneCase, int spot) {
        return traits[oneCase * spots + spot][3];
    }

    /** Numbers in (0, 1), one for each case, spread evenly: what all spots of a case have in common. */
    public static double[] common(int cases) {
        return shuffled(cases, COMMON);
    }

    /** Numbers in (0, 1), one for each case, spread evenly: what scatters anew for a spot, its places by how weakly they are held. */
    public static double[] fresh(Knowledge knowledge, int spot, int cases, int which) {
        int rank = byHold(knowledge).indexOf(spot);
        return shuffled(cases, 1000L * (which + 1) + rank);
    }
}
