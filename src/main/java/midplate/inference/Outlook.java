package midplate.inference;

import java.util.List;

/** What plates yet to be run will show: expectations, bands and chances, all from one {@link Knowledge}. */
public final class Outlook {
    private static final int RF_BINS = 400;
    private static final double TAIL = 0.05;
    private static final double QUANTILE_STEP = 1e-4;

    private final Knowledge knowledge;
    private final WindowChances window;
    private final double[] shifts;
    private final double[] shiftWeights;

    private Outlook(Knowledge knowledge, WindowChances window) {
        this.knowledge = knowledge;
        this.window = window;
        this.shifts = knowledge.nextShifts();
        this.shiftWeights = knowledge.nextShiftWeights();
    }

    /**
     * An outlook on a window.
     *
     * @param knowledge the spots
     * @param window the chances for the same pair and setting
     */
    public static Outlook of(Knowledge knowledge, WindowChances window) {
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
        double[] inside = window.at(percent).inside();
        double strength = knowledge.model().strength(percent);
        double chance = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            double[] all = shiftWeights.clone();
            for (int spot : spots) {
                TraitCloud cloud = scenario.spots().get(spot);
                for (int h = 0; h < all.length; h++) {
                    if (all[h] > 0) {
                        all[h] *= expected(cloud, inside, strength, shifts[h]);
                    }
                }
            }
            for (double each : all) {
                chance += scenario.weight() * each;
            }
        }
        return Math.min(1, chance);
    }

    private static double expected(TraitCloud cloud, double[] onMarks, double strength, double shift) {
        double sum = 0;
        for (int point = 0; point < cloud.size(); point++) {
            sum += cloud.weight(point) * onMarks[LogitScale.mark(cloud.c(point) + cloud.s(point) * strength + shift)];
        }
        return sum;
    }

    /** The Rf [1] to expect of one spot at a share of the strong solvent [% v/v]. */
    public double rf(int spot, double percent) {
        double strength = knowledge.model().strength(percent);
        double rf = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            TraitCloud cloud = scenario.spots().get(spot);
            for (int h = 0; h < shifts.length; h++) {
                rf += scenario.weight()
                        * shiftWeights[h]
                        * expected(cloud, knowledge.model().rf(), strength, shifts[h]);
            }
        }
        return rf;
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
        double[] sigma = new double[bins.length];
        for (int bin = 0; bin < bins.length; bin++) {
            sigma[bin] = knowledge
                    .model()
                    .noise()
                    .sigma(percent, (double) bin / RF_BINS, knowledge.scatter().readingError());
        }
        return new Spot(rf, quantile(bins, sigma, TAIL), quantile(bins, sigma, 1 - TAIL), below, above);
    }

    /** The Rf [1] below which the reading lies with a probability, held between 0 and 1; by halving. */
    private static double quantile(double[] bins, double[] sigma, double probability) {
        double low = 0;
        double high = 1;
        while (high - low > QUANTILE_STEP) {
            double middle = (low + high) / 2;
            double below = 0;
            for (int bin = 0; bin < bins.length; bin++) {
                if (bins[bin] > 1e-9) {
                    below += bins[bin] * Noise.below((middle - (double) bin / RF_BINS) / sigma[bin]);
                }
            }
            if (below < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return probability < 0.5 ? low : high;
    }

    /** Possible samples, drawn evenly: for questions that no sum over single spots answers. */
    public PossibleSamples possibleSamples() {
        return PossibleSamples.of(knowledge);
    }
}
