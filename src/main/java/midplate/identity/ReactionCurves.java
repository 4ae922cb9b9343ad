package midplate.identity;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import midplate.identity.ReactionAnswer.Course;

/** What grades to expect of each spot over time. */
final class ReactionCurves {
    private static final int POINTS = 33;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final double[] minutes;

    /** From the beginning to so many minutes. */
    ReactionCurves(double until) {
        this.minutes = IntStream.range(0, POINTS)
                .mapToDouble(i -> until * i / (POINTS - 1))
                .toArray();
    }

    /** Of every spot that somebody looked at. */
    Map<String, Course> of(ReactionQuestion question, ReactionPosterior posterior) {
        Map<String, Course> courses = new LinkedHashMap<>();
        List<ReactionDraw> draws = posterior.draws();
        String counts = question.first(SpeciesPart.START).orElseThrow().name();
        for (ReactionSpecies species : question.species()) {
            String name = species.name();
            if (question.plates().stream().noneMatch(plate -> plate.grade(name).isPresent())) {
                continue;
            }
            if (species.part() != SpeciesPart.START) {
                courses.put(name, course(draws, draw -> draw.formedGrades(name, minutes)));
            } else if (name.equals(counts)) {
                courses.put(name, course(draws, draw -> draw.startGrades(minutes)));
            } else { // another starting material has a course of its own
                courses.put(
                        name,
                        course(
                                ReactionPosterior.ofStartAlone(question, species)
                                        .draws(),
                                draw -> draw.startGrades(minutes)));
            }
        }
        return courses;
    }

    private Course course(List<ReactionDraw> draws, Function<ReactionDraw, double[]> grades) {
        double[][] all = draws.stream().map(grades).toArray(double[][]::new);
        double[] value = new double[minutes.length];
        double[] low = new double[minutes.length];
        double[] high = new double[minutes.length];
        for (int i = 0; i < minutes.length; i++) {
            int at = i;
            double[] sorted =
                    Arrays.stream(all).mapToDouble(each -> each[at]).sorted().toArray();
            value[i] = Arrays.stream(sorted).average().orElseThrow();
            low[i] = sorted[(int) (LOW * sorted.length)];
            high[i] = sorted[(int) (HIGH * sorted.length)];
        }
        return new Course(list(minutes), list(value), list(low), list(high));
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
