package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A course of the starting material together with an eye.
 *
 * @param course how it falls
 * @param logFactor ln k of {@link EyeGrades}
 * @param logWeight logarithm of prior times likelihood of the starting material's grades, up to a constant
 */
record StartHypothesis(StartCourse course, double logFactor, double logWeight) {
    /** Hypotheses this much less likely than the best are left out. */
    private static final double LEFT_OUT = Math.log(1e-3);

    /** Those that the grades of a starting material leave. */
    static List<StartHypothesis> after(List<StartCourse> courses, List<ReactionPlate> plates, String species) {
        List<ReactionPlate> seen = plates.stream()
                .filter(plate -> plate.grade(species).isPresent())
                .toList();
        List<StartHypothesis> all = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        for (StartCourse course : courses) {
            double[] logLeft = seen.stream()
                    .mapToDouble(plate -> Math.log(Math.max(course.left(plate.minutes()), 1e-12)))
                    .toArray();
            for (int eye = 0; eye < EyeGrades.FACTORS.length; eye++) {
                double logFactor = Math.log(EyeGrades.FACTORS[eye]);
                double weight = Math.log(course.prior() * EyeGrades.FACTOR_CHANCES[eye]);
                for (int i = 0; i < logLeft.length; i++) {
                    OptionalInt grade = seen.get(i).grade(species);
                    weight += EyeGrades.logChance(grade.orElseThrow(), EyeGrades.score(logLeft[i], logFactor));
                }
                best = Math.max(best, weight);
                all.add(new StartHypothesis(course, logFactor, weight));
            }
        }
        double least = best + LEFT_OUT;
        return all.stream().filter(each -> each.logWeight() >= least).toList();
    }
}
