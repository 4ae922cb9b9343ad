package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import midplate.inference.PairName;
import midplate.inference.Series;

/**
 * Marks what is made of a second plate without labels. Each figure is a mean over all samples asked about:
 *
 * <ul>
 *   <li>{@code unlabelled.guess.right}: a spot without a label is 1 when the likeliest set of compounds said to lie there is
 *       the set that does, else 0; {@code .said} the probability said of that set; {@code .said-less-came} the second less
 *       the first; {@code .fifth-N.said} and {@code .came} the same by fifth of the probability said.
 *   <li>{@code unlabelled.guess.apart.right} and {@code .said}: the same on plates where every compound has a spot of its
 *       own. Where all lie in one there is little to guess.
 *   <li>{@code unlabelled.guess.sure}: 1 when the probability said is 0.8 or more, else 0. These are the guesses of the
 *       last fifth.
 *   <li>{@code unlabelled.error.second-unlabelled}: absolute deviation in Rf of each compound at each of the six other
 *       ratios; {@code .second-labelled} the same when the second plate has labels and each compound is read by itself;
 *       {@code .first-alone} the same without the second plate. {@code unlabelled.error.lost-without-labels} is the first
 *       less the second of these, {@code .won-by-second} the third less the first, value by value.
 *   <li>{@code unlabelled.plates.said}: the chance said of the ratio advised after both plates; {@code .hit} 1 when all
 *       compounds lie at Rf 0.2 to 0.8 there, else 0; {@code .said-less-came} the first less the second.
 * </ul>
 *
 * A value belongs to all compounds of its sample.
 */
final class UnlabelledMarks {
    private static final int FIFTHS = 5;

    private final Samples samples;

    UnlabelledMarks(Samples samples) {
        this.samples = samples;
    }

    /** Asks a contender and marks its answer; one that knows no unlabelled spots is left out. */
    void mark(UnlabelledTask task, Contender contender) {
        contender.match(task.told(), task.others()).ifPresent(answer -> {
            guesses(task, answer, contender.name());
            errors(task, answer, contender);
            double hit = task.hitAt(answer.choice().percent()) ? 1 : 0;
            double chance = answer.choice().chance();
            samples.add("unlabelled.plates.said", task.members(), chance);
            samples.add("unlabelled.plates.hit", task.members(), hit);
            samples.add("unlabelled.plates.said-less-came", task.members(), chance - hit);
        });
    }

    private void guesses(UnlabelledTask task, Matched answer, String name) {
        List<Set<Integer>> truth = task.truth();
        if (answer.guesses().size() != truth.size()) {
            throw new IllegalStateException(
                    name + " named " + answer.guesses().size() + " spots; seen were " + truth.size() + ".");
        }
        List<Series> members = task.members();
        for (int place = 0; place < truth.size(); place++) {
            double said = answer.guesses().get(place).probability();
            boolean isRight = answer.guesses().get(place).spots().equals(truth.get(place));
            double right = isRight ? 1 : 0;
            int fifth = 1 + Math.min(FIFTHS - 1, (int) (said * FIFTHS));
            guess("unlabelled.guess", members, said, right);
            samples.add("unlabelled.guess.said-less-came", members, said - right);
            samples.add("unlabelled.guess.sure", members, fifth == FIFTHS ? 1 : 0);
            if (task.apart()) {
                guess("unlabelled.guess.apart", members, said, right);
            }
            samples.add("unlabelled.guess.fifth-" + fifth + ".said", members, said);
            samples.add("unlabelled.guess.fifth-" + fifth + ".came", members, right);
        }
    }

    private void guess(String figure, List<Series> members, double said, double right) {
        samples.add(figure + ".said", members, said);
        samples.add(figure + ".right", members, right);
    }

    private void errors(UnlabelledTask task, Matched answer, Contender contender) {
        double[] percents = task.others();
        List<TrialReading> first = task.labelled(task.first());
        List<TrialReading> second = task.labelled(task.second());
        List<Series> members = task.members();
        for (int spot = 0; spot < task.spots().size(); spot++) {
            List<Guess> alone = guesses(contender, List.of(first.get(spot)), percents);
            List<Guess> both = guesses(contender, List.of(first.get(spot), second.get(spot)), percents);
            for (int i = 0; i < percents.length; i++) {
                double truth = task.spots().get(spot).rf(percents[i]);
                double without = Math.abs(answer.rfs().get(spot).get(i) - truth);
                double with = Math.abs(both.get(i).rf() - truth);
                double before = Math.abs(alone.get(i).rf() - truth);
                samples.add("unlabelled.error.second-unlabelled", members, without);
                samples.add("unlabelled.error.second-labelled", members, with);
                samples.add("unlabelled.error.first-alone", members, before);
                samples.add("unlabelled.error.lost-without-labels", members, without - with);
                samples.add("unlabelled.error.won-by-second", members, before - without);
            }
        }
    }

    private static List<Guess> guesses(Contender contender, List<TrialReading> trials, double[] percents) {
        List<TrialReading> sorted = new ArrayList<>(trials);
        sorted.sort(null);
        return contender.guesses(PairName.HEXANE_ETHYL_ACETATE, sorted, percents);
    }
}
