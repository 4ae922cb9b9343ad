package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.plate.UnlabelledSpot;

/**
 * Knowledge from plates on which some spots have no label: a mixture over the ways to match them, each weighed by how likely
 * all readings are under it. In a setting with an error shared by a plate each way has scenarios of its own; ways of little
 * weight get few of them, so that all together are never many.
 */
final class MatchedKnowledge {
    /** Ways lighter than this share of all are dropped [1]. */
    private static final double NEGLIGIBLE = 1e-3;
    /** Scenarios that are shared out among the ways by weight. */
    private static final int SCENARIOS = 64;

    private final PairModel model;
    private final PlateScatter scatter;
    private final List<TraitPrior> priors;
    private final int plates;
    private final Map<Known, SpotEvidence> evidence = new HashMap<>();

    private record Known(int spot, List<Trial> trials) {}

    private MatchedKnowledge(PairModel model, PlateScatter scatter, List<TraitPrior> priors, int plates) {
        this.model = model;
        this.scatter = scatter;
        this.priors = priors;
        this.plates = plates;
    }

    /**
     * Bayes' rule for all spots of a sample.
     *
     * @param model the pair
     * @param scatter the setting
     * @param names of the spots
     * @param own plates in this pair, in their order
     * @param labelled the labelled readings of each spot
     * @param priors what was known of each spot before
     */
    static Knowledge from(
            PairModel model,
            PlateScatter scatter,
            List<String> names,
            List<PlateRun> own,
            List<List<Trial>> labelled,
            List<TraitPrior> priors) {
        double[] percents = own.stream().mapToDouble(PlateRun::percent).toArray();
        PlateScatter search = scatter.unshared();
        SpotTraces.Likelihoods tables = new SpotTraces.Likelihoods(model, search);
        List<SpotTraces> spots = new ArrayList<>();
        List<Integer> nameless = new ArrayList<>();
        for (int spot = 0; spot < names.size(); spot++) {
            List<Trial> trials = labelled.get(spot);
            spots.add(SpotTraces.of(model, search, percents, priors.get(spot), trials, tables));
            if (trials.isEmpty() && priors.get(spot) == model.prior()) {
                nameless.add(spot);
            }
        }
        List<LaneToMatch> lanes = LaneToMatch.of(names, own, model.noise());
        Matchings matchings = Matchings.search(spots, lanes, Anchors.of(nameless, lanes), own.size());
        return new MatchedKnowledge(model, scatter, priors, own.size()).weighed(matchings, spots, names);
    }

    private Knowledge weighed(Matchings matchings, List<SpotTraces> labelled, List<String> names) {
        double before = labelled.stream().mapToDouble(SpotTraces::logEvidence).sum();
        List<Weighed> all = new ArrayList<>();
        double[] weights = new double[matchings.found().size()];
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < weights.length; i++) {
            Matching matching = matchings.found().get(i);
            Weighed weighed = weigh(matching);
            all.add(weighed);
            weights[i] = matching.logRest(before) + weighed.logEvidence();
            greatest = Math.max(greatest, weights[i]);
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(weights[i] - greatest);
        }
        TraitPrior.normalized(weights);
        double kept = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = weights[i] >= NEGLIGIBLE ? weights[i] : 0;
            kept += weights[i];
        }
        TraitPrior.normalized(weights);
        List<Knowledge.Scenario> scenarios = new ArrayList<>();
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 0) {
                scenarios.addAll(scenarios(all.get(i), weights[i]));
            }
        }
        double share = kept * matchings.kept();
        return Knowledge.of(model, scatter, scenarios, guesses(matchings, weights, share, names), share);
    }

    /** A way with its evidence: by each set of errors the plates may have had, or one where they have none. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Weighed(
            List<SpotEvidence> spots, SharedPlateError.Tried[] tried, double[] logWeights, double logEvidence) {}

    private Weighed weigh(Matching matching) {
        List<SpotEvidence> spots = new ArrayList<>();
        List<List<Trial>> trials = new ArrayList<>();
        for (int spot = 0; spot < matching.spots(); spot++) {
            List<Trial> each = matching.spot(spot).trials();
            TraitPrior prior = priors.get(spot);
            trials.add(each);
            spots.add(evidence.computeIfAbsent(
                    new Known(spot, each), known -> SpotEvidence.of(model, scatter, each, prior)));
        }
        if (!scatter.isShared()) {
            double log = 0;
            for (int spot = 0; spot < matching.spots(); spot++) {
                log += matching.spot(spot).logEvidence();
            }
            return new Weighed(spots, new SharedPlateError.Tried[0], new double[0], log);
        }
        SharedPlateError error = new SharedPlateError(plates, trials, model, scatter);
        SharedPlateError.Tried[] tried = error.tried();
        double[] logWeights = new double[tried.length];
        double greatest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < tried.length; k++) {
            logWeights[k] = tried[k].logWeight();
            for (SpotEvidence spot : spots) {
                logWeights[k] += spot.logEvidence(tried[k].shifts());
            }
            greatest = Math.max(greatest, logWeights[k]);
        }
        double sum = 0;
        for (double each : logWeights) {
            sum += Math.exp(each - greatest);
        }
        return new Weighed(spots, tried, logWeights, greatest + Math.log(sum / tried.length) + error.logSpread());
    }

    private static List<Knowledge.Scenario> scenarios(Weighed way, double weight) {
        if (way.tried().length == 0) {
            return List.of(new Knowledge.Scenario(
                    weight, way.spots().stream().map(SpotEvidence::cloud).toList()));
        }
        double[] parts = new double[way.logWeights().length];
        double greatest = Double.NEGATIVE_INFINITY;
        for (double each : way.logWeights()) {
            greatest = Math.max(greatest, each);
        }
        for (int k = 0; k < parts.length; k++) {
            parts[k] = Math.exp(way.logWeights()[k] - greatest);
        }
        TraitPrior.normalized(parts);
        int count = (int) Math.ceil(SCENARIOS * weight);
        double[] fewer = count >= parts.length ? parts : drawn(parts, count);
        List<Knowledge.Scenario> scenarios = new ArrayList<>();
        for (int k = 0; k < fewer.length; k++) {
            if (fewer[k] > 1e-9) {
                double offset = (k + 0.5) / fewer.length;
                double[] shifts = way.tried()[k].shifts();
                scenarios.add(new Knowledge.Scenario(
                        weight * fewer[k],
                        way.spots().stream()
                                .map(spot -> spot.shifted(shifts).cloud().thinned(Knowledge.POINTS, offset))
                                .toList()));
            }
        }
        return scenarios;
    }

    /** So many of the parts, taken at even steps of their summed weights, with equal weights that sum to 1. */
    private static double[] drawn(double[] parts, int count) {
        double[] fewer = new double[parts.length];
        double summed = 0;
        int taken = 0;
        for (int k = 0; k < parts.length; k++) {
            summed += parts[k];
            while (taken < count && (taken + 0.5) / count <= summed) {
                fewer[k] += 1.0 / count;
                taken++;
            }
        }
        fewer[fewer.length - 1] += (double) (count - taken) / count;
        return fewer;
    }

    private static List<SpotGuess> guesses(Matchings matchings, double[] weights, double share, List<String> names) {
        List<SpotGuess> guesses = new ArrayList<>();
        for (int l = 0; l < matchings.lanes().size(); l++) {
            LaneToMatch lane = matchings.lanes().get(l);
            for (int place = 0; place < lane.seen().size(); place++) {
                Map<List<Integer>, Double> possible = new LinkedHashMap<>();
                for (int i = 0; i < weights.length; i++) {
                    if (weights[i] > 0) {
                        possible.merge(matchings.found().get(i).at(l, lane, place), share * weights[i], Double::sum);
                    }
                }
                List<SpotGuess.Possibility> sorted = possible.entrySet().stream()
                        .sorted(Map.Entry.<List<Integer>, Double>comparingByValue()
                                .reversed()
                                .thenComparing(entry -> entry.getKey().toString()))
                        .map(entry -> new SpotGuess.Possibility(
                                entry.getKey().stream().map(names::get).toList(), entry.getValue()))
                        .toList();
                UnlabelledSpot spot = lane.seen().get(place);
                guesses.add(new SpotGuess(lane.run(), lane.lane(), spot.index(), spot.reading(), sorted));
            }
        }
        guesses.sort(Comparator.comparingInt(SpotGuess::run)
                .thenComparingInt(SpotGuess::lane)
                .thenComparingInt(SpotGuess::index));
        return guesses;
    }
}
