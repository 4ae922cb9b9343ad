package midplate.benchmark;

import java.util.List;
import midplate.inference.Series;

/**
 * Marks forecasts of single spots: error, cover of the 90 % band, and the interval score of Gneiting and Raftery,
 * {@code (u − l) + (2/α)·(l − y)·[y < l] + (2/α)·(y − u)·[y > u]} with α = 0.1, which is smaller for narrower bands that
 * hold the truth y.
 *
 * @see "GneitingRaftery2007"
 */
final class RatioMarks {
    private static final double TOLERANCE = 1e-9;
    private static final double ALPHA = 0.1;
    private static final String[] THIRDS = {"low", "middle", "high"};

    private final Samples samples;

    RatioMarks(Samples samples) {
        this.samples = samples;
    }

    /** Asks a contender and marks its answers; a kind of question that it does not answer is left out. */
    void mark(RatioTask task, Contender contender) {
        if (!contender.foretells(task.kind().pair(), task.trials().get(0).pair())) {
            return;
        }
        double[] percents =
                task.percents().stream().mapToDouble(Double::doubleValue).toArray();
        List<Guess> guesses = contender.guesses(task.kind().pair(), task.trials(), percents);
        if (guesses.size() != percents.length) {
            throw new IllegalStateException(
                    contender.name() + " gave " + guesses.size() + " guesses; asked were " + percents.length + ".");
        }
        for (int i = 0; i < percents.length; i++) {
            Guess guess = guesses.get(i);
            double truth = task.truths().get(i);
            mark(task.kind().id(), task.series(), guess, truth);
            if (task.kind() != RatioKind.TWO_TRIALS
                    && task.trials().get(0).pair() == task.kind().pair()
                    && task.informative()) {
                mark(task.kind().id() + "-informative", task.series(), guess, truth);
            }
        }
    }

    private void mark(String kind, Series series, Guess guess, double truth) {
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
        samples.add(kind + ".interval-score", member, guess.high() - guess.low() + 2 / ALPHA * (below + above));
    }
}
