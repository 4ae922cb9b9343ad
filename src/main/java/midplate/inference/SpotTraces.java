package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import midplate.inference.Sightings.Sighting;

/**
 * One spot with what has been taken for its readings so far, and how likely these are. Never changes but for what it
 * remembers: the same reading added twice gives the same object, so that possibilities which agree about a spot share the work.
 */
final class SpotTraces {
    private final Ground ground;
    private final SortedMap<Integer, Sightings> plates;
    private final List<Trial> trials;
    private final double logEvidence;
    private final double logAgreement;
    private final Map<Added, SpotTraces> with = new HashMap<>();

    /** What does not depend on which reading is whose. */
    private record Ground(
            PairModel model, PlateScatter scatter, double[] percents, Posterior nodes, Likelihoods tables) {}

    private record Added(int plate, Sighting sighting) {}

    /** Likelihoods that were worked out once. */
    static final class Likelihoods {
        private final PairModel model;
        private final PlateScatter scatter;
        private final Map<Trial, double[]> known = new HashMap<>();

        Likelihoods(PairModel model, PlateScatter scatter) {
            this.model = model;
            this.scatter = scatter;
        }

        double[] of(Trial trial) {
            return known.computeIfAbsent(
                    new Trial(0, trial.percent(), trial.reading(), trial.blur()),
                    each -> each.likelihood(model, scatter));
        }
    }

    private SpotTraces(Ground ground, SortedMap<Integer, Sightings> plates) {
        this.ground = ground;
        this.plates = plates;
        List<Trial> all = new ArrayList<>();
        double agreement = 0;
        for (Map.Entry<Integer, Sightings> entry : plates.entrySet()) {
            all.add(entry.getValue().trial(entry.getKey(), ground.percents()[entry.getKey()]));
            agreement += entry.getValue().logAgreement();
        }
        all.sort(Trial.BY_CONTENT.thenComparing(Comparator.comparingInt(Trial::plate)));
        this.trials = List.copyOf(all);
        this.logAgreement = agreement;
        this.logEvidence =
                Math.log(Math.max(Double.MIN_NORMAL, weighed(ground.nodes()).evidence()));
    }

    /**
     * A spot with its labelled readings.
     *
     * @param model the pair
     * @param scatter the setting, without an error shared by a plate
     * @param percents the share of each plate [% v/v]
     * @param prior what was known of the spot before
     * @param labelled its readings, at most one for each plate
     * @param tables likelihoods that spots have in common
     */
    static SpotTraces of(
            PairModel model,
            PlateScatter scatter,
            double[] percents,
            TraitPrior prior,
            List<Trial> labelled,
            Likelihoods tables) {
        TreeMap<Integer, Sightings> plates = new TreeMap<>();
        for (Trial trial : labelled) {
            plates.put(trial.plate(), Sightings.NONE.with(new Sighting(trial.reading(), 0)));
        }
        SpotTraces all = new SpotTraces(new Ground(model, scatter, percents, prior.nodes(), tables), plates);
        if (labelled.isEmpty()) {
            return all;
        }
        Posterior nodes = prior.nodes().lightened(all.weighed(prior.nodes()).weights());
        return new SpotTraces(new Ground(model, scatter, percents, nodes, tables), plates);
    }

    private Posterior.Weighed weighed(Posterior nodes) {
        Climb[] climbs = new Climb[trials.size()];
        List<double[]> likelihoods = new ArrayList<>();
        for (int i = 0; i < climbs.length; i++) {
            likelihoods.add(ground.tables().of(trials.get(i)));
            climbs[i] = ground.model().climb(trials.get(i).percent());
        }
        return nodes.weigh(likelihoods, climbs, new double[climbs.length]);
    }

    /** This spot with one more lane in which it was seen. */
    SpotTraces with(int plate, Sighting sighting) {
        Added added = new Added(plate, sighting);
        SpotTraces known = with.get(added);
        if (known == null) {
            TreeMap<Integer, Sightings> more = new TreeMap<>(plates);
            more.merge(plate, Sightings.NONE.with(sighting), (old, one) -> old.with(sighting));
            known = new SpotTraces(ground, more);
            with.put(added, known);
        }
        return known;
    }

    /** All its readings, one for each plate, in an order that depends on what was read. */
    List<Trial> trials() {
        return trials;
    }

    /** Logarithm of how likely the trials are, the plates' errors counted to the readings. */
    double logEvidence() {
        return logEvidence;
    }

    /** Logarithm of how well lanes of one plate agree. */
    double logAgreement() {
        return logAgreement;
    }

    /** Both together. */
    double logLikelihood() {
        return logEvidence + logAgreement;
    }
}
