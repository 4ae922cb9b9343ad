package midplate.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import midplate.chemistry.RetentionFactor;
import midplate.inference.PairName;

/**
 * A model in which compounds differ in one trait only: {@code ln(Rf/(1 − Rf)) = c + G(%)}, with G [ln units] a strength law
 * and c [ln units] the compound's own, normal around 0 with standard deviation 3 before any trial.
 *
 * <p>Readings scatter normally in Rf. The posterior of c stands on 161 nodes from −10 to 10. A forecast is its mean with
 * 1.645 standard deviations, scatter of the reading included, to either side; a chance is the share of the posterior inside
 * the window, multiplied over spots. For one thread.
 */
final class OneTraitModel implements Contender {
    private static final int NODES = 161;
    private static final double END = 10;
    private static final double PRIOR_DEVIATION = 3;
    private static final double NORMAL_95 = 1.645;
    private static final double LOW = 0.2;
    private static final double HIGH = 0.8;
    private static final PairName ADVISED = PairName.HEXANE_ETHYL_ACETATE;

    private final String name;
    private final StrengthLaw law;
    private final Map<Place, double[]> curves = new HashMap<>();
    private final double[] candidates = candidates();
    private final boolean[][] inWindow = new boolean[candidates.length][NODES];

    OneTraitModel(String name, StrengthLaw law) {
        this.name = name;
        this.law = law;
        for (int i = 0; i < candidates.length; i++) {
            double[] curve = curve(ADVISED, candidates[i], 0);
            for (int node = 0; node < NODES; node++) {
                inWindow[i][node] = curve[node] >= LOW && curve[node] <= HIGH;
            }
        }
    }

    /** 0 to 10 % by halves, to 100 % by ones. */
    private static double[] candidates() {
        double[] percents = new double[111];
        for (int i = 0; i < percents.length; i++) {
            percents[i] = i < 20 ? 0.5 * i : i - 10;
        }
        return percents;
    }

    private static double node(int i) {
        return -END + i * (2 * END / (NODES - 1));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
        double[] posterior = posterior(pair, trials);
        List<Guess> guesses = new ArrayList<>();
        for (double percent : percents) {
            double[] curve = curve(pair, percent, 0);
            double mean = 0;
            double square = 0;
            for (int i = 0; i < NODES; i++) {
                mean += posterior[i] * curve[i];
                square += posterior[i] * curve[i] * curve[i];
            }
            double noise = law.noise(pair, percent);
            double reach = NORMAL_95 * Math.sqrt(Math.max(0, square - mean * mean) + noise * noise);
            double rf = Math.min(1, mean);
            guesses.add(new Guess(rf, Math.max(0, rf - reach), Math.min(1, rf + reach)));
        }
        return guesses;
    }

    @Override
    public Choice choose(List<List<TrialReading>> spots) {
        double[] chances = new double[candidates.length];
        Arrays.fill(chances, 1);
        for (List<TrialReading> trials : spots) {
            double[] posterior = posterior(ADVISED, trials);
            for (int i = 0; i < candidates.length; i++) {
                double inside = 0;
                for (int node = 0; node < NODES; node++) {
                    inside += inWindow[i][node] ? posterior[node] : 0;
                }
                chances[i] *= inside;
            }
        }
        int best = 0;
        for (int i = 1; i < chances.length; i++) {
            if (chances[i] > chances[best]) {
                best = i;
            }
        }
        return new Choice(candidates[best], Math.min(1, chances[best]));
    }

    private double[] posterior(PairName asked, List<TrialReading> trials) {
        double[] logs = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            double z = node(i) / PRIOR_DEVIATION;
            logs[i] = -0.5 * z * z;
        }
        for (TrialReading trial : trials) {
            double[] curve = curve(trial.pair(), trial.percent(), law.shift(asked, trial.pair()));
            double noise = law.noise(trial.pair(), trial.percent());
            for (int i = 0; i < NODES; i++) {
                double z = (curve[i] - trial.rf()) / noise;
                logs[i] -= 0.5 * z * z;
            }
        }
        double highest = Arrays.stream(logs).max().orElse(0);
        double[] posterior =
                Arrays.stream(logs).map(log -> Math.exp(log - highest)).toArray();
        double sum = Arrays.stream(posterior).sum();
        return Arrays.stream(posterior).map(weight -> weight / sum).toArray();
    }

    private double[] curve(PairName pair, double percent, double shift) {
        return curves.computeIfAbsent(new Place(pair, percent, shift), place -> {
            double strength = law.strength(pair, percent) + shift;
            double[] rf = new double[NODES];
            for (int i = 0; i < NODES; i++) {
                rf[i] = RetentionFactor.fromLogit(node(i) + strength);
            }
            return rf;
        });
    }

    private record Place(PairName pair, double percent, double shift) {}
}
