package midplate.inference;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What rounds of plates are worth before they are run: {@code V(R) = E[1 if some plate of R meets the aim, else the chance of
 * the next plate, its ratio chosen by what R showed]}, with R a set of shares of the strong solvent, each one plate.
 *
 * <p>Samples are drawn from what is known, their plates are read with the model's noise and an error of each plate, and the next
 * ratio is chosen by Bayes' rule from those readings alone; its chance is then taken for the very sample drawn. So V is what
 * the rule of choice reaches, never more, whatever it leaves out: the errors of the plates of R are summed over for each spot by
 * itself. Rounds are rehearsed with the same samples and errors. For one thread.
 *
 * @see "RaiffaSchlaifer1961"
 */
public final class PreposteriorAnalysis {
    /** Bins of Rf in which distances on the next plate are told, so wide that five of them are apart. */
    private static final int BINS = 50;

    private static final int APART = (int) Math.round(Parting.LEAST_RF * BINS);
    private static final double HALF = 0.5;

    private final Knowledge knowledge;
    private final WindowChances window;
    private final Parting parting;
    private final double[] next;
    private final int[] order;
    private final SpotParticles[] particles;
    private final RehearsedPlates plates;
    private final int samples;

    /**
     * What is drawn.
     *
     * @param samples how many samples, at least 2
     * @param seed of everything drawn
     */
    public record Draws(int samples, int seed) {
        /** Refuses too few. */
        public Draws {
            if (!(samples >= 2)) {
                throw new IllegalArgumentException("samples: came " + samples + "; allowed is 2 or more.");
            }
        }
    }

    PreposteriorAnalysis(Knowledge knowledge, WindowChances window, Parting parting, List<Double> next, Draws draws) {
        if (next.isEmpty()) {
            throw new IllegalArgumentException("next: came none; allowed is one share or more.");
        }
        this.knowledge = knowledge;
        this.window = window;
        this.parting = parting;
        this.next = next.stream().mapToDouble(Double::doubleValue).toArray();
        this.order = IntStream.range(0, knowledge.spots())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(knowledge::meanC).thenComparingDouble(knowledge::meanS))
                .mapToInt(Integer::intValue)
                .toArray();
        this.particles = new SpotParticles[order.length];
        ReadingLikelihoods likelihoods = new ReadingLikelihoods(knowledge);
        for (int spot : order) {
            particles[spot] = new SpotParticles(knowledge, spot, window, this.next, likelihoods);
        }
        this.samples = draws.samples();
        this.plates = new RehearsedPlates(knowledge, order, draws);
    }

    /** What a round of plates at these shares [% v/v] is worth; no plate at all leaves the chance of the next one. */
    public RoundValue value(List<Double> round) {
        double[] percents = round.stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .distinct()
                .toArray();
        double[] each = new double[samples];
        int now = 0;
        for (int k = 0; k < samples; k++) {
            if (isMet(k, percents)) {
                each[k] = 1;
                now++;
            } else {
                each[k] = chance(k, next[chosen(k, percents)]);
            }
        }
        return new RoundValue(each, (double) now / samples);
    }

    private boolean isMet(int sample, double[] percents) {
        for (double percent : percents) {
            RehearsedPlates.Plates shown = plates.at(percent);
            boolean inside = true;
            for (double read : shown.readings()[sample]) {
                inside &=
                        read >= window.window().low() && read <= window.window().high();
            }
            if (inside && areApart(sample, knowledge.model().climb(percent), shown.shifts()[sample])) {
                return true;
            }
        }
        return false;
    }

    private boolean areApart(int sample, Climb climb, double shift) {
        double[] rf = knowledge.model().rf();
        for (SpotPair pair : parting.pairs()) {
            double one = developed(rf[LogitScale.mark(plates.eta(sample, pair.one(), climb) + shift)]);
            double other = developed(rf[LogitScale.mark(plates.eta(sample, pair.other(), climb) + shift)]);
            if (Math.abs(one - other) < Parting.LEAST_RF) {
                return false;
            }
        }
        return true;
    }

    private double developed(double once) {
        return parting.developments() == 1 ? once : 1 - Math.pow(1 - once, parting.developments());
    }

    /** The chance of a plate of that share for a sample whose traits are given [1]. */
    private double chance(int sample, double percent) {
        WindowChances.Row row = window.at(percent);
        double[] shifts = knowledge.nextShifts();
        double[] weights = knowledge.nextShiftWeights();
        double chance = 0;
        for (int h = 0; h < shifts.length; h++) {
            if (areApart(sample, row.climb(), shifts[h])) {
                double all = weights[h];
                for (int spot : order) {
                    all *= row.inside()[LogitScale.mark(plates.eta(sample, spot, row.climb()) + shifts[h])];
                }
                chance += all;
            }
        }
        return chance;
    }

    /** The place of the next share with the best chance by what the plates of a round showed. */
    private int chosen(int sample, double[] percents) {
        double[] all = new double[next.length];
        Arrays.fill(all, 1);
        double[][] weights = new double[order.length][];
        double[] read = new double[percents.length];
        for (int spot : order) {
            for (int r = 0; r < read.length; r++) {
                read[r] = plates.at(percents[r]).readings()[sample][spot];
            }
            weights[spot] = particles[spot].weighed(percents, read);
            double[] sums = new double[next.length];
            double sum = particles[spot].addInside(weights[spot], sums);
            for (int p = 0; p < all.length; p++) {
                all[p] *= sums[p] / sum;
            }
        }
        return parting.pairs().isEmpty() ? greatest(all) : greatestApart(all, weights);
    }

    private static int greatest(double[] all) {
        int best = 0;
        for (int p = 1; p < all.length; p++) {
            best = all[p] > all[best] ? p : best;
        }
        return best;
    }

    /** The same with the chance that the pairs come apart; where the window alone is too unlikely it is not asked. */
    private int greatestApart(double[] all, double[][] weights) {
        int best = greatest(all);
        double most = all[best] * apart(best, weights);
        for (int p = 0; p < all.length; p++) {
            if (all[p] > most) {
                double chance = all[p] * apart(p, weights);
                if (chance > most) {
                    most = chance;
                    best = p;
                }
            }
        }
        return best;
    }

    private double apart(int share, double[][] weights) {
        double chance = 1;
        for (SpotPair pair : parting.pairs()) {
            double[] one = particles[pair.one()].spread(weights[pair.one()], share, BINS);
            double[] other = particles[pair.other()].spread(weights[pair.other()], share, BINS);
            double apart = 0;
            for (int i = 0; i < BINS; i++) {
                for (int j = 0; j < BINS; j++) {
                    int distance = Math.abs(i - j);
                    apart += distance < APART ? 0 : one[i] * other[j] * (distance == APART ? HALF : 1);
                }
            }
            chance *= apart;
        }
        return chance;
    }
}
