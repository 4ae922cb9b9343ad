package midplate.identity;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** How likely each way of forming is, for each hypothesis about the starting material. */
final class FormedFit {
    private final FormedCourse[] courses;
    /** Likelihood times prior, by hypothesis and course, up to a factor of each hypothesis. */
    private final double[][] weights;
    /** Logarithm of the whole of each hypothesis. */
    private final double[] logTotals;

    private FormedFit(FormedCourse[] courses, double[][] weights, double[] logTotals) {
        this.courses = courses;
        this.weights = weights;
        this.logTotals = logTotals;
    }

    /**
     * From the grades on some plates.
     *
     * @param part what it is in the reaction
     * @param grade how strongly it was seen on a plate
     */
    static FormedFit of(
            SpeciesPart part,
            List<StartHypothesis> hypotheses,
            List<ReactionPlate> plates,
            Function<ReactionPlate, OptionalInt> grade) {
        FormedCourse[] courses = FormedCourse.of(part);
        double[][] weights = new double[hypotheses.size()][courses.length];
        double[] logTotals = new double[hypotheses.size()];
        ReactionMesh mesh = ReactionMesh.of(plates);
        int[] grades =
                plates.stream().mapToInt(plate -> grade.apply(plate).orElse(-1)).toArray();
        double[][] logAmounts = {};
        StartCourse last = null;
        for (int h = 0; h < hypotheses.size(); h++) {
            StartHypothesis hypothesis = hypotheses.get(h);
            if (hypothesis.course() != last) { // the eyes of one course stand together
                last = hypothesis.course();
                logAmounts = logAmounts(courses, last, mesh);
            }
            double[] logs = new double[courses.length];
            double best = Double.NEGATIVE_INFINITY;
            for (int c = 0; c < courses.length; c++) {
                logs[c] = logWeight(courses[c], logAmounts[c], grades, hypothesis.logFactor());
                best = Math.max(best, logs[c]);
            }
            double sum = 0;
            for (int c = 0; c < courses.length; c++) {
                weights[h][c] = Math.exp(logs[c] - best);
                sum += weights[h][c];
            }
            logTotals[h] = best + Math.log(sum);
        }
        return new FormedFit(courses, weights, logTotals);
    }

    private static double[][] logAmounts(FormedCourse[] courses, StartCourse start, ReactionMesh mesh) {
        double[][] all = new double[courses.length][];
        for (int c = 0; c < courses.length; c++) {
            all[c] = c > 0 && courses[c].loss() == courses[c - 1].loss()
                    ? all[c - 1] // only what it shows like differs
                    : mesh.logAtPlates(FormedCourse.amounts(start, mesh.minutes(), courses[c].loss() / mesh.last()));
        }
        return all;
    }

    private static double logWeight(FormedCourse course, double[] logAmounts, int[] grades, double logFactor) {
        double weight = Math.log(course.prior());
        double logStrength = Math.log(course.strength());
        for (int i = 0; i < grades.length; i++) {
            if (grades[i] >= 0) {
                weight += EyeGrades.logChance(grades[i], EyeGrades.score(logStrength + logAmounts[i], logFactor));
            }
        }
        return weight;
    }

    /** What the grades add to a hypothesis, as a logarithm. */
    double logTotal(int hypothesis) {
        return logTotals[hypothesis];
    }

    /** The ways of forming. */
    FormedCourse[] courses() {
        return courses.clone();
    }

    /** How likely each way of forming is under a hypothesis; sums to 1. */
    double[] chances(int hypothesis) {
        double[] chances = weights[hypothesis].clone();
        double sum = 0;
        for (double weight : chances) {
            sum += weight;
        }
        for (int c = 0; c < chances.length; c++) {
            chances[c] /= sum;
        }
        return chances;
    }

    /** The way of forming that stands at this place, in [0, 1), when they are laid side by side by their chances. */
    FormedCourse at(int hypothesis, double place) {
        double[] chances = chances(hypothesis);
        double sum = 0;
        for (int c = 0; c < chances.length; c++) {
            sum += chances[c];
            if (place < sum) {
                return courses[c];
            }
        }
        return courses[courses.length - 1];
    }
}
