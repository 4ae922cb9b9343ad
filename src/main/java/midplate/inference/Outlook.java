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
    private static final int RF_BINS = 250;
    private static final double TAIL = 0.05;
    private static final double QUANTILE_STEP = 0.002;
    private static final double NO_WEIGHT = 1e-5;
    /** A combination of scenario and plate error that adds less to a chance is not looked into for pairs. */
    private static final double NEGLIGIBLE = 1e-6;

    private static final double[] EVERYWHERE = new double[LogitScale.SIZE];

    static {
        Arrays.fill(EVERYWHERE, 1);
    }

    private final Knowledge knowledge;
    private final WindowChances window;
    private final double[] shifts;
    private final double[] shiftWeights;
    private final List<Map<Double, double[]>> insideChances = new ArrayList<>();
    private final Map<Goal, Double> goalChances = new HashMap<>();
    private final Map<Parting, ApartShares> apartShares = new HashMap<>();

    private record Goal(double percent, List<Integer> spots, Parting parting) {}

    private Outlook(Knowledge knowledge, WindowChances window) {
        this.knowledge = knowledge;
        this.window = window;
        this.shifts = knowledge.nextShifts();
        this.shiftWeights = knowledge.nextShiftWeights();
        for (int spot = 0; spot < knowledge.spots(); spot++) {
            insideChances.add(new HashMap<>());
        }
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
     * @param rf Rf to expect [1]
     * @param low it reads below with probability 0.05 [1]
     * @param high it reads above with probability 0.05 [1]
     * @param below chance to read below the window [1]
     * @param above chance to read above it [1]
     */
    public record Spot(double rf, double low, double high, double below, double above) {}

    /**
     * The chance that every spot of some reads inside the window on one plate [1]; the plate's own shared error moves all of
     * them alike, so it is no product of chances unless the setting has none.
     */
    public double chance(double percent, List<Integer> spots) {
        return summed(insideTogether(percent, spots));
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
            double weight = knowledge.scenarios().get(i / shifts.length).weight() * shiftWeights[i % shifts.length];
            all[i] = weight * all[i] < NEGLIGIBLE ? 0 : all[i];
        }
        double[][] counts = new double[knowledge.spots()][];
        Arrays.fill(counts, EVERYWHERE);
        for (int spot : spots) {
            counts[spot] = window.at(percent).inside();
        }
        apartShares
                .computeIfAbsent(parting, pairs -> new ApartShares(knowledge, pairs))
                .multiply(all, knowledge.model().strength(percent), counts);
        return all;
    }

    /** The chance of some spots to read inside together, for each scenario and each error of the next plate. */
    private double[] insideTogether(double percent, List<Integer> spots) {
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        double[] all = new double[scenarios.size() * shifts.length];
        Arrays.fill(all, 1);
        for (int spot : spots) {
            double[] inside = insideChances.get(spot).computeIfAbsent(percent, share -> insideChances(spot, share));
            for (int i = 0; i < all.length; i++) {
                all[i] *= inside[i];
            }
        }
        return all;
    }

    private double summed(double[] all) {
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        double chance = 0;
        for (int i = 0; i < all.length; i++) {
            chance += scenarios.get(i / shifts.length).weight() * shiftWeights[i % shifts.length] * all[i];
        }
        return Math.min(1, chance);
    }

    /** The chance of one spot to read inside, for each scenario and each error of the next plate. */
    private double[] insideChances(int spot, double percent) {
        double[] inside = window.at(percent).inside();
        double strength = knowledge.model().strength(percent);
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        double[] chances = new double[scenarios.size() * shifts.length];
        for (int i = 0; i < chances.length; i++) {
            TraitCloud cloud = scenarios.get(i / shifts.length).spots().get(spot);
            chances[i] = cloud.expect(inside, strength, shifts[i % shifts.length]);
        }
        return chances;
    }

    /** The Rf [1] to expect of one spot at a share of the strong solvent [% v/v]. */
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
        double strength = knowledge.model().strength(percent);
        double sum = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            for (int h = 0; h < shifts.length; h++) {
                sum += scenario.weight()
                        * shiftWeights[h]
                        * scenario.spots().get(spot).expect(onMarks, strength, shifts[h]);
            }
        }
        return Math.min(1, sum); // the weights sum to 1 but for rounding
    }

    /** What one spot will do at a share of the strong solvent [% v/v]. */
    public Spot spot(int spot, double percent) {
        double[] onMarks = new double[LogitScale.SIZE];
        double strength = knowledge.model().strength(percent);
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            for (int h = 0; h < shifts.length; h++) {
                scenario.spots().get(spot).spread(onMarks, strength, shifts[h], scenario.weight() * shiftWeights[h]);
            }
        }
        WindowChances.Row row = window.at(percent);
        double[] bins = new double[RF_BINS + 1];
        double rf = 0;
        double below = 0;
        double above = 0;
        for (int mark = 0; mark < onMarks.length; mark++) {
            double weight = onMarks[mark];
            if (weight > 0) {
                rf += weight * knowledge.model().rf()[mark];
                below += weight * row.below()[mark];
                above += weight * row.above()[mark];
                bins[(int) (knowledge.model().rf()[mark] * RF_BINS + 0.5)] += weight;
            }
        }
        Mixture mixture = mixture(bins, percent);
        return new Spot(
                Math.min(1, rf),
                mixture.quantile(TAIL),
                mixture.quantile(1 - TAIL),
                Math.min(1, below),
                Math.min(1, above));
    }

    /** The readings to expect, as a mixture of Student curves around the Rf of the bins that have weight. */
    private Mixture mixture(double[] bins, double percent) {
        double middle = knowledge.model().noise().middle(percent);
        double[] weight = new double[bins.length];
        double[] centre = new double[bins.length];
        double[] sigma = new double[bins.length];
        int count = 0;
        for (int bin = 0; bin < bins.length; bin++) {
            if (bins[bin] > NO_WEIGHT) {
                weight[count] = bins[bin];
                centre[count] = (double) bin / RF_BINS;
                sigma[count] = knowledge
                        .model()
                        .noise()
                        .sigmaFrom(middle, centre[count], knowledge.scatter().readingError());
                count++;
            }
        }
        return new Mixture(weight, centre, sigma, count);
    }

    /** Weighted Student curves. */
    private static final class Mixture {
        private final double[] weight;
        private final double[] centre;
        private final double[] sigma;
        private final int count;

        Mixture(double[] weight, double[] centre, double[] sigma, int count) {
            this.weight = weight;
            this.centre = centre;
            this.sigma = sigma;
            this.count = count;
        }

        /** The chance to read below an Rf [1]. */
        double below(double rf) {
            double below = 0;
            for (int i = 0; i < count; i++) {
                below += weight[i] * Noise.below((rf - centre[i]) / sigma[i]);
            }
            return below;
        }

        /** The Rf [1] below which the reading lies with a probability, held between 0 and 1: halving, then a straight line. */
        double quantile(double probability) {
            double low = 0;
            double high = 1;
            double belowLow = below(low);
            double belowHigh = below(high);
            if (belowLow >= probability) {
                return low;
            }
            if (belowHigh <= probability) {
                return high;
            }
            while (high - low > QUANTILE_STEP) {
                double middle = (low + high) / 2;
                double belowMiddle = below(middle);
                if (belowMiddle < probability) {
                    low = middle;
                    belowLow = belowMiddle;
                } else {
                    high = middle;
                    belowHigh = belowMiddle;
                }
            }
            return low + (high - low) * (probability - belowLow) / (belowHigh - belowLow);
        }
    }

    /** Possible samples, drawn evenly: for questions that no sum over single spots answers. */
    public PossibleSamples possibleSamples() {
        return PossibleSamples.of(knowledge);
    }
}
