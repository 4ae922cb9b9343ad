package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.Series;

/**
 * Marks forecasts of single spots. For each kind of question ({@code one-trial}, {@code two-trials} …), and again for its
 * informative trials ({@code one-trial-informative}):
 *
 * <ul>
 *   <li>{@code .error}: absolute deviation in Rf.
 *   <li>{@code .cover90}: 1 when the 90 % band holds the truth, its ends included, else 0; {@code .cover90.low-third} … the
 *       same where the Rf foretold is below 1/3, from there to 2/3, and above.
 *   <li>{@code .truth-below-band}, {@code .truth-above-band}: 1 when it lies outside on that side, else 0. No truth lies below
 *       Rf 0 or above 1: a band that ends there cannot be missed on that side and counts as held there. {@code
 *       .band-from-0} and {@code .band-to-1} are the shares of such bands.
 *   <li>{@code .interval-score}: that of Gneiting and Raftery, {@code (u − l) + (2/α)·(l − y)·[y < l] + (2/α)·(y − u)·[y > u]}
 *       with α = 0.1, which is smaller for narrower bands that hold the truth y.
 *   <li>{@code one-trial.trial-rf-NN.error}: the same error by Rf of the trial ({@link TrialBins}); {@code .half-width} half the
 *       width of the band, {@code .trial} the Rf of the trial.
 * </ul>
 *
 * @see "GneitingRaftery2007"
 */
final class RatioMarks {
    private static final double TOLERANCE = 1e-9;
    private static final double ALPHA = 0.1;
    private static final String[] THIRDS = {"low", "middle", "high"};

    private final Samples samples;
    private final Told told;

    RatioMarks(Samples samples, Told told) {
        this.samples = samples;
        this.told = told;
    }

    /** Asks a contender and marks its answers; a kind of question that it does not answer is left out. */
    void mark(RatioTask task, Contender contender) {
        boolean switches = !task.inOnePair();
        if (!contender.foretells(task.kind().pair(), task.trials().get(0).pair())
                || (told == Told.ALL_ELSE && switches)) {
            return;
        }
        List<Guess> guesses = told == Told.TRIALS ? fromTrials(task, contender) : fromAllElse(task, contender);
        for (int i = 0; i < guesses.size(); i++) {
            Guess guess = guesses.get(i);
            double truth = task.truths().get(i);
            mark(task.kind().id(), task.series(), guess, truth);
            if (task.kind() != RatioKind.TWO_TRIALS && !switches && task.informative()) {
                mark(task.kind().id() + "-informative", task.series(), guess, truth);
            }
            if (task.kind() == RatioKind.ONE_TRIAL) {
                byTrial(task, guess, truth);
            }
        }
    }

    private static List<Guess> fromTrials(RatioTask task, Contender contender) {
        double[] percents =
                task.percents().stream().mapToDouble(Double::doubleValue).toArray();
        List<Guess> guesses = contender.guesses(task.kind().pair(), task.trials(), percents);
        if (guesses.size() != percents.length) {
            throw new IllegalStateException(
                    contender.name() + " gave " + guesses.size() + " guesses; asked were " + percents.length + ".");
        }
        return guesses;
    }

    private static List<Guess> fromAllElse(RatioTask task, Contender contender) {
        List<Guess> guesses = new ArrayList<>();
        for (int i = 0; i < task.percents().size(); i++) {
            guesses.add(contender.guess(
                    task.kind().pair(), task.allElse(i), task.percents().get(i)));
        }
        return guesses;
    }

    private void byTrial(RatioTask task, Guess guess, double truth) {
        double trial = task.trials().get(0).rf();
        String bin = TrialBins.id(TrialBins.of(trial));
        List<Series> member = List.of(task.series());
        samples.add(bin + ".trial", member, trial);
        samples.add(bin + ".error", member, Math.abs(guess.rf() - truth));
        samples.add(bin + ".half-width", member, (guess.high() - guess.low()) / 2);
    }

    /** Marks one guess under the name of a kind of question. */
    void mark(String kind, Series series, Guess guess, double truth) {
        List<Series> member = List.of(series);
        double below = Math.max(0, guess.low() - truth);
        double above = Math.max(0, truth - guess.high());
        boolean missedBelow = below > TOLERANCE;
        boolean missedAbove = above > TOLERANCE;
        double covered = missedBelow || missedAbove ? 0 : 1;
        String third = THIRDS[Math.min(2, (int) (guess.rf() * 3))];
        samples.add(kind + ".error", member, Math.abs(guess.rf() - truth));
        samples.add(kind + ".cover90", member, covered);
        samples.add(kind + ".cover90." + third + "-third", member, covered);
        samples.add(kind + ".truth-below-band", member, missedBelow ? 1 : 0);
        samples.add(kind + ".truth-above-band", member, missedAbove ? 1 : 0);
        samples.add(kind + ".band-from-0", member, guess.low() <= TOLERANCE ? 1 : 0);
        samples.add(kind + ".band-to-1", member, guess.high() >= 1 - TOLERANCE ? 1 : 0);
        samples.add(kind + ".interval-score", member, guess.high() - guess.low() + 2 / ALPHA * (below + above));
    }
}
