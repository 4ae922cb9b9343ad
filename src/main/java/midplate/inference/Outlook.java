package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What plates yet to be run will show: expectations, bands and chances, all from one {@link Knowledge}. It remembers the
 * chances that were asked; for one thread.
 */
public final class Outlook {
    private static final double TAIL = 0.05;
    private static final double MIDDLE = 0.5;
    /** A combination of scenario and plate error that adds less to a chance is not looked into for pairs. */
    private static final double NEGLIGIBLE = 1e-6;

    private static final double ROUNDING = 1e-12;

    private static final double[] EVERYWHERE = new double[LogitScale.SIZE];

    static {
        Arrays.fill(EVERYWHERE, 1);
    }

    private final Knowledge knowledge;
    private final WindowChances window;
    private final double[] shifts;
    private final double[] shiftWeights;
    /** Of each scenario and each error of the next plate. */
    private final double[] weights;
    /** The errors of the next plate, the likeliest first. */
    private final int[] likeliestShifts;

    private final List<ByShare<double[]>> insideChances = new ArrayList<>();
    private final Map<Goal, Double> goalChances = new HashMap<>();
    private final Map<Parting, ApartShares> apartShares = new HashMap<>();
    /** The spot that was too unlikely to read inside when last more was needed. */
    private int hardest = -1;

    private record Goal(double percent, List<Integer> spots, Parting parting) {}

    private Outlook(Knowledge knowledge, WindowChances window) {
        this.knowledge = knowledge;
        this.window = window;
        this.shifts = knowledge.nextShifts();
        this.shiftWeights = knowledge.nextShiftWeights();
        this.weights = new double[knowledge.scenarios().size() * shifts.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = knowledge.scenarios().get(i / shifts.length).weight() * shiftWeights[i % shifts.length];
        }
        this.likeliestShifts = likeliest(shiftWeights);
        for (int spot = 0; spot < knowledge.spots(); spot++) {
            insideChances.add(
                    knowledge.scatter().isShared() || knowledge.scenarios().size() > 1
                            ? new ByShare<>()
                            : knowledge.scenarios().get(0).spots().get(spot).chances(window.window()));
        }
    }

    /** The places of weights, the greatest first. */
    private static int[] likeliest(double[] weights) {
        int[] places = new int[weights.length];
        for (int i = 0; i < places.length; i++) {
            int at = i;
            while (at > 0 && weights[places[at - 1]] < weights[i]) {
                places[at] = places[at - 1];
                at--;
            }
            places[at] = i;
        }
        return places;
    }

    /**
     * An outlook on a window.
     *
     * @param knowledge the spots
     * @param window the chances for the same pair and setting
     */
    static Outlook of(Knowledge knowledge, WindowChances window) {
        return new Outlook(knowledge, window);
    }

    /** The spots. */
    public Knowledge knowledge() {
        return knowledge;
    }

    /**
     * One spot on one plate.
     *
     * @param rf it reads below and above with the same probability [1]
     * @param low lower end of the band that holds the reading with a probability of 0.9 or more: it reads below with probability
     *     0.05, up to 0.1 where it may well read at the front, since nothing lies above a band that ends there
     * @param high upper end of the band [1], likewise of what lies above it and the start line
     * @param percentile5 it reads below with probability 0.05 [1]; the lower end but where the band reaches the front
     * @param percentile95 it reads above with probability 0.05 [1]; the upper end but where the band reaches the start line
     * @param below chance to read below the window [1]
     * @param above chance to read above it [1]
     */
    public record Spot(
            double rf, double low, double high, double percentile5, double percentile95, double below, double above) {}

    /**
     * The chance that every spot of some reads inside the window on one plate [1]; the plate's own shared error moves all of
     * them alike, so it is no product of chances unless the setting has none.
     */
    public double chance(double percent, List<Integer> spots) {
        return summed(insideTogether(percent, spots));
    }

    /**
     * The same; or, where the chance of one of the spots alone is below what is needed, that chance, which is no smaller. It
     * spares the other spots: at most ratios the same spot as at the last one is what fails.
     */
    public double chance(double percent, List<Integer> spots, double needed) {
        int first = Math.max(0, spots.indexOf(hardest));
        for (int i = 0; needed > 0 && i < spots.size(); i++) {
            int spot = spots.get((first + i) % spots.size());
            double alone = inside(spot, percent, needed);
            if (alone < needed) {
                hardest = spot;
                return alone;
            }
        }
        return chance(percent, spots);
    }

    /**
     * The chance that every spot of some reads inside the window and the named pairs lie apart on one plate [1]; without
     * pairs it is {@link #chance(double, List)}, and each pair can only lower it. A pair may have spots that need not read
     * inside.
     */
    public double chance(double percent, List<Integer> spots, Parting parting) {
        if (parting.pairs().isEmpty()) {
            return chance(percent, spots);
        }
        return goalChances.computeIfAbsent(
                new Goal(percent, spots, parting), goal -> summed(insideAndApart(percent, spots, parting)));
    }

    private double[] insideAndApart(double percent, List<Integer> spots, Parting parting) {
        double[] all = insideTogether(percent, spots);
        for (int i = 0; i < all.length; i++) {
            all[i] = weights[i] * all[i] < NEGLIGIBLE ? 0 : all[i];
        }
        double[][] counts = new double[knowledge.spots()][];
        Arrays.fill(counts, EVERYWHERE);
        for (int spot : spots) {
            counts[spot] = window.at(percent).inside();
        }
        apartShares
                .computeIfAbsent(parting, pairs -> new ApartShares(knowledge, pairs))
                .multiply(all, knowledge.model().climb(percent), counts);
        return all;
    }

    /** The chance of some spots to read inside together, for each scenario and each error of the next plate. */
    private double[] insideTogether(double percent, List<Integer> spots) {
        double[] all = new double[weights.length];
        Arrays.fill(all, 1);
        for (int spot : spots) {
            double[] inside = inside(spot, percent);
            for (int i = 0; i < all.length; i++) {
                all[i] *= inside[i];
            }
        }
        return all;
    }

    private double[] inside(int spot, double percent) {
        double[] chances = insideChances.get(spot).get(percent);
        if (chances == null) {
            chances = insideChances(spot, percent);
            insideChances.get(spot).put(percent, chances);
        }
        return chances;
    }

    private double summed(double[] all) {
        double chance = 0;
        for (int i = 0; i < all.length; i++) {
            chance += weights[i] * all[i];
        }
        return Math.min(1, chance);
    }

    /**
     * The chance of one spot to read inside, or a bound below what is needed that it does not reach: the likeliest errors of the
     * next plate come first, and when the rest cannot make up for them it is left.
     */
    private double inside(int spot, double percent, double needed) {
        double[] known = insideChances.get(spot).get(percent);
        if (known != null || shifts.length == 1) {
            return summed(known != null ? known : inside(spot, percent));
        }
        double open = 1;
        double bound = 0;
        WindowChances.Row row = window.at(percent);
        double[] chances = new double[weights.length];
        for (int h : likeliestShifts) {
            open -= shiftWeights[h];
            for (int i = h; i < chances.length; i += shifts.length) {
                chances[i] = insideChance(spot, row, i);
                bound += weights[i] * chances[i];
            }
            if (bound + open + ROUNDING < needed) {
                return bound + open + ROUNDING;
            }
        }
        insideChances.get(spot).put(percent, chances);
        return summed(chances);
    }

    /** The chance of one spot to read inside, for each scenario and each error of the next plate. */
    private double[] insideChances(int spot, double percent) {
        WindowChances.Row row = window.at(percent);
        double[] chances = new double[weights.length];
        for (int i = 0; i < chances.length; i++) {
            chances[i] = insideChance(spot, row, i);
        }
        return chances;
    }

    private double insideChance(int spot, WindowChances.Row row, int combination) {
        return knowledge
                .scenarios()
                .get(combination / shifts.length)
                .spots()
                .get(spot)
                .expect(row.inside(), row.climb(), shifts[combination % shifts.length]);
    }

    /** The mean Rf [1] of one spot at a share of the strong solvent [% v/v]. */
    public double rf(int spot, double percent) {
        return expect(spot, percent, knowledge.model().rf());
    }

    /** The chance that one spot reads below the window [1]. */
    public double below(int spot, double percent) {
        return expect(spot, percent, window.at(percent).below());
    }

    /** The chance that one spot reads above the window [1]. */
    public double above(int spot, double percent) {
        return expect(spot, percent, window.at(percent).above());
    }

    private double expect(int spot, double percent, double[] onMarks) {
        Climb climb = knowledge.model().climb(percent);
        double sum = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            for (int h = 0; h < shifts.length; h++) {
                sum += scenario.weight()
                        * shiftWeights[h]
                        * scenario.spots().get(spot).expect(onMarks, climb, shifts[h]);
            }
        }
        return Math.min(1, sum); // the weights sum to 1 but for rounding
    }

    /** What one spot will do at a share of the strong solvent [% v/v]. */
    public Spot spot(int spot, double percent) {
        double[] onMarks = new double[LogitScale.SIZE];
        WindowChances.Row row = window.at(percent);
        Climb climb = row.climb();
        double[] belows = row.below();
        double[] aboves = row.above();
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            for (int h = 0; h < shifts.length; h++) {
                scenario.spots().get(spot).spread(onMarks, climb, shifts[h], scenario.weight() * shiftWeights[h]);
            }
        }
        double[] bins = ReadingMixture.bins();
        double[] rfs = knowledge.model().rf();
        double below = 0;
        double above = 0;
        for (int mark = 0; mark < onMarks.length; mark++) {
            double weight = onMarks[mark];
            if (weight > 0) {
                below += weight * belows[mark];
                above += weight * aboves[mark];
                bins[ReadingMixture.bin(rfs[mark])] += weight;
            }
        }
        ReadingMixture mixture = ReadingMixture.of(bins, knowledge, percent);
        double percentile5 = mixture.quantile(TAIL);
        double percentile95 = mixture.quantile(1 - TAIL);
        double lower = tail(mixture.atFront());
        double upper = tail(mixture.atStart());
        return new Spot(
                mixture.quantile(MIDDLE),
                lower > TAIL ? mixture.quantile(lower) : percentile5,
                upper > TAIL ? mixture.quantile(1 - upper) : percentile95,
                percentile5,
                percentile95,
                Math.min(1, below),
                Math.min(1, above));
    }

    /**
     * What may lie outside a band at one of its ends [1]. A band that reaches a line misses nothing there, so that what is spared at one
     * end is spent at the other: otherwise it would hold 95 of 100 and not 90. It rises smoothly from 0.05 to 0.1 while the chance to read
     * at that line rises from 0.05 to 0.15, so that no end of a band leaps or bends as the ratio is changed.
     *
     * @param atOtherLine the chance to read at the line of the other end [1]
     */
    private static double tail(double atOtherLine) {
        double on = Math.max(0, Math.min(1, (atOtherLine - TAIL) / (2 * TAIL)));
        return TAIL * (1 + on * on * (3 - 2 * on));
    }

    /**
     * Rehearses rounds of plates, to tell what they are worth.
     *
     * @param parting the pairs that must come apart
     * @param next shares that the plate after the round may have [% v/v], at least one
     * @param draws what is drawn
     */
    public PreposteriorAnalysis preposterior(Parting parting, List<Double> next, PreposteriorAnalysis.Draws draws) {
        return new PreposteriorAnalysis(knowledge, window, parting, next, draws);
    }

    /** Possible samples, drawn evenly: for questions that no sum over single spots answers. */
    public PossibleSamples possibleSamples() {
        return PossibleSamples.of(knowledge);
    }
}
