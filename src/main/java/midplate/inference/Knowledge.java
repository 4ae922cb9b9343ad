package midplate.inference;

import java.util.ArrayList;
import java.util.List;

/**
 * What is known of all spots of a sample together, and what the next plate may do to them.
 *
 * <p>In a setting without shared error the spots are independent: one scenario. Otherwise each scenario is one possible set
 * of errors of the plates that were run; inside a scenario the spots are independent, over the scenarios they are not. The
 * next plate's own shared error is summed over five points.
 */
public final class Knowledge {
    /** Points of a spot's cloud in one scenario of many. */
    static final int POINTS = 32;

    private final PairModel model;
    private final PlateScatter scatter;
    private final List<Scenario> scenarios;
    private final List<SpotGuess> guesses;
    private final double matched;

    /** One possible past: its weight, and a cloud for each spot. */
    record Scenario(double weight, List<TraitCloud> spots) {}

    private Knowledge(
            PairModel model, PlateScatter scatter, List<Scenario> scenarios, List<SpotGuess> guesses, double matched) {
        this.model = model;
        this.scatter = scatter;
        this.scenarios = List.copyOf(scenarios);
        this.guesses = List.copyOf(guesses);
        this.matched = matched;
    }

    /**
     * Knowledge that others worked out.
     *
     * @param guesses which unlabelled spot is which
     * @param matched share of the ways to match them that is in the scenarios [1]
     */
    static Knowledge of(
            PairModel model, PlateScatter scatter, List<Scenario> scenarios, List<SpotGuess> guesses, double matched) {
        return new Knowledge(model, scatter, scenarios, guesses, matched);
    }

    /** Knowledge of spots that nothing joins: plates have no error of their own. */
    static Knowledge ofApart(PairModel model, PlateScatter scatter, List<TraitCloud> spots) {
        return new Knowledge(model, scatter, List.of(new Scenario(1, List.copyOf(spots))), List.of(), 1);
    }

    /**
     * Bayes' rule for all spots of a sample.
     *
     * @param model the pair
     * @param scatter the setting
     * @param plates number of plates
     * @param spots the readings of each spot, in any order
     * @param priors what was known of each spot before
     */
    static Knowledge from(
            PairModel model, PlateScatter scatter, int plates, List<List<Trial>> spots, List<TraitPrior> priors) {
        List<List<Trial>> sorted = spots.stream()
                .map(trials -> trials.stream().sorted(Trial.BY_CONTENT).toList())
                .toList();
        List<SpotEvidence> evidence = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            evidence.add(SpotEvidence.of(model, scatter, sorted.get(i), priors.get(i)));
        }
        boolean anything = sorted.stream().anyMatch(trials -> !trials.isEmpty());
        if (!scatter.isShared() || !anything) {
            List<TraitCloud> clouds = evidence.stream().map(SpotEvidence::cloud).toList();
            return new Knowledge(model, scatter, List.of(new Scenario(1, clouds)), List.of(), 1);
        }
        SharedPlateError error = new SharedPlateError(plates, sorted, model, scatter);
        return new Knowledge(model, scatter, scenarios(error.tried(), evidence), List.of(), 1);
    }

    private static List<Scenario> scenarios(SharedPlateError.Tried[] tried, List<SpotEvidence> evidence) {
        double[] logWeights = new double[tried.length];
        List<List<TraitCloud>> clouds = new ArrayList<>();
        double greatest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < tried.length; k++) {
            double offset = (k + 0.5) / tried.length;
            List<TraitCloud> spots = new ArrayList<>();
            logWeights[k] = tried[k].logWeight();
            for (SpotEvidence spot : evidence) {
                SpotEvidence.Shifted shifted = spot.shifted(tried[k].shifts());
                logWeights[k] += shifted.logEvidence();
                spots.add(shifted.cloud().thinned(POINTS, offset));
            }
            clouds.add(spots);
            greatest = Math.max(greatest, logWeights[k]);
        }
        double[] weights = new double[tried.length];
        for (int k = 0; k < weights.length; k++) {
            weights[k] = Math.exp(logWeights[k] - greatest);
        }
        TraitPrior.normalized(weights);
        List<Scenario> scenarios = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > 1e-9) {
                scenarios.add(new Scenario(weights[k], clouds.get(k)));
            }
        }
        return scenarios;
    }

    /** The pair. */
    public PairModel model() {
        return model;
    }

    /** How many spots there are. */
    public int spots() {
        return scenarios.get(0).spots().size();
    }

    /** What the unlabelled spots may be, by plate, lane and place; empty where every spot seen has its name. */
    public List<SpotGuess> guesses() {
        return guesses;
    }

    /** The share of the ways to match unlabelled spots that counts here [1]; the rest was left out as too many. */
    public double matched() {
        return matched;
    }

    /** What is known of a spot by itself, whatever the scenario. */
    TraitCloud cloud(int spot) {
        return TraitCloud.joined(
                scenarios.stream().map(each -> each.spots().get(spot)).toList(),
                scenarios.stream().mapToDouble(Scenario::weight).toArray());
    }

    PlateScatter scatter() {
        return scatter;
    }

    List<Scenario> scenarios() {
        return scenarios;
    }

    /** Errors the next plate may have [ln units]. */
    double[] nextShifts() {
        if (!scatter.isShared()) {
            return new double[] {0};
        }
        double[] shifts = NormalPoints.points();
        for (int i = 0; i < shifts.length; i++) {
            shifts[i] *= scatter.sharedError();
        }
        return shifts;
    }

    /** Their weights, sum 1. */
    double[] nextShiftWeights() {
        return scatter.isShared() ? NormalPoints.weights() : new double[] {1};
    }

    /** Mean of c of a spot [ln units]. */
    public double meanC(int spot) {
        double mean = 0;
        for (Scenario scenario : scenarios) {
            mean += scenario.weight() * scenario.spots().get(spot).meanC();
        }
        return mean;
    }

    /** Mean of s of a spot [1]. */
    public double meanS(int spot) {
        double mean = 0;
        for (Scenario scenario : scenarios) {
            mean += scenario.weight() * scenario.spots().get(spot).meanS();
        }
        return mean;
    }
}
