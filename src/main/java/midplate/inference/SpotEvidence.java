package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The readings of one spot, ready to be weighed under any errors of the plates. */
final class SpotEvidence {
    private final TraitPrior prior;
    private final Posterior posterior;
    private final List<Trial> trials;
    private final List<double[]> likelihoods;
    private final Climb[] climbs;

    private SpotEvidence(
            TraitPrior prior, Posterior posterior, List<Trial> trials, List<double[]> likelihoods, Climb[] climbs) {
        this.prior = prior;
        this.posterior = posterior;
        this.trials = trials;
        this.likelihoods = likelihoods;
        this.climbs = climbs;
    }

    static SpotEvidence of(PairModel model, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {
        List<double[]> likelihoods = new ArrayList<>();
        Climb[] climbs = new Climb[trials.size()];
        for (int i = 0; i < climbs.length; i++) {
            likelihoods.add(trials.get(i).likelihood(model, scatter));
            climbs[i] = model.climb(trials.get(i).percent());
        }
        Posterior all = prior.nodes();
        if (scatter.isShared() && !trials.isEmpty()) {
            all = all.lightened(widest(all, scatter, likelihoods, climbs));
        }
        return new SpotEvidence(prior, all, trials, likelihoods, climbs);
    }

    /** Weights that are large wherever any error of the plates may put them. */
    private static double[] widest(Posterior all, PlateScatter scatter, List<double[]> likelihoods, Climb[] climbs) {
        double[] widest = null;
        for (double reach : new double[] {-2, -1, 0, 1, 2}) {
            double[] shifts = new double[climbs.length];
            Arrays.fill(shifts, reach * scatter.sharedError());
            double[] weights = all.weigh(likelihoods, climbs, shifts).weights();
            widest = widest == null ? weights : greater(widest, weights);
        }
        return widest == null ? new double[0] : widest;
    }

    private static double[] greater(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            one[i] = Math.max(one[i], other[i]);
        }
        return one;
    }

    /** What is known when no plate had an error of its own. */
    TraitCloud cloud() {
        if (trials.isEmpty()) {
            return prior.cloud();
        }
        return posterior.cloud(posterior.weigh(likelihoods, climbs, new double[climbs.length]));
    }

    /** What is known under some errors of the plates, and how well they fit the readings. */
    record Shifted(double logEvidence, TraitCloud cloud) {}

    Shifted shifted(double[] plateErrors) {
        Posterior.Weighed weighed = weighed(plateErrors);
        return new Shifted(Math.log(weighed.evidence()), posterior.cloud(weighed));
    }

    /** The first of the two alone. */
    double logEvidence(double[] plateErrors) {
        return Math.log(Math.max(Double.MIN_NORMAL, weighed(plateErrors).evidence()));
    }

    private Posterior.Weighed weighed(double[] plateErrors) {
        double[] shifts = new double[climbs.length];
        for (int i = 0; i < shifts.length; i++) {
            shifts[i] = plateErrors[trials.get(i).plate()];
        }
        return posterior.weigh(likelihoods, climbs, shifts);
    }
}
