package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import midplate.advice.Ratio;

/**
 * What a teacher keeps: what the unknowns are, where they run in this possible course, which ratios do, how far readings of a class scatter, and how many plates a
 * careful user needs.
 */
public final class ExerciseKey {
    private static final int MOST_RATIOS = 7;
    /** Plates by which the scatter is told. */
    private static final int TRIED = 400;
    /** The program is played this often, with other chance each time. */
    private static final int ROUNDS = 10;
    /** For what is drawn: expected readings. */
    private static final int EXPECTED = 4;

    private final Exercise exercise;
    private final LessonModel model;

    /** The key of an exercise. */
    public ExerciseKey(LessonModel model, Exercise exercise) {
        this.model = model;
        this.exercise = exercise;
    }

    /**
     * A ratio with where the unknowns run.
     *
     * @param ratio what is poured
     * @param rf the Rf of each in the possible course [1]
     * @param serves whether it does what is asked
     */
    public record Row(Ratio ratio, List<Double> rf, Serves serves) {
        /** Keeps its own copy. */
        public Row {
            rf = List.copyOf(rf);
        }
    }

    /** Whether a ratio does what is asked. */
    public enum Serves {
        /** It does. */
        YES,
        /** It does not. */
        NO
    }

    /**
     * Shares that do what is asked, by the possible course [% v/v].
     *
     * @param from the weakest
     * @param to the strongest
     */
    public record Range(double from, double to) {}

    /**
     * What a class reads of an unknown at the best ratio.
     *
     * @param mean of the readings [1]
     * @param deviation their standard deviation from plate to plate [1]
     */
    public record Expected(double mean, double deviation) {}

    /**
     * How often the program needed so many plates.
     *
     * @param plates how many; {@link ExerciseProgram#MOST_PLATES} also where it was not done by then
     * @param times of {@value #ROUNDS}
     */
    public record Needed(int plates, int times) {}

    /** Ratios from weak to strong, spread over those at which something moves; the best one is among them. */
    public List<Row> rows() {
        List<Ratio> ratios = new ArrayList<>(exercise.truth().usual(MOST_RATIOS));
        if (!ratios.contains(best())) {
            ratios.add(best());
        }
        ratios.sort((one, other) -> Double.compare(one.percentStrong(), other.percentStrong()));
        return ratios.stream()
                .map(ratio -> {
                    List<Double> rf = exercise.truth().at(ratio.percentStrong());
                    return new Row(ratio, rf, Exercise.isReached(rf) ? Serves.YES : Serves.NO);
                })
                .toList();
    }

    /** The shares that do what is asked, by twentieths of a per cent. */
    public List<Range> ranges() {
        return exercise.truth().stretches(Exercise::isReached).stream()
                .map(each -> new Range(each.from(), each.to()))
                .toList();
    }

    /** Of the ratios that are poured and do what is asked the one that leaves most room: from the edges of the window, and between spots. */
    public Ratio best() {
        return exercise.truth().ratios(Exercise::isReached).stream()
                .max((one, other) -> Double.compare(room(one), room(other)))
                .orElseThrow();
    }

    private double room(Ratio ratio) {
        List<Double> rf = exercise.truth().at(ratio.percentStrong());
        double inside = rf.stream()
                .mapToDouble(each -> Math.min(each - 0.2, 0.8 - each))
                .min()
                .orElse(0);
        return Math.min(inside, ExercisePlate.between(rf));
    }

    /** What a class reads of each unknown at the best ratio, over {@value #TRIED} plates drawn by the seed. */
    public List<Expected> expected() {
        TrueCourse truth = exercise.truth();
        SeededDraws draws = Exercise.draws(exercise.code(), EXPECTED, 0);
        List<List<Double>> read = IntStream.range(0, TRIED)
                .mapToObj(i -> truth.plates().read(truth.sample(), best().percentStrong(), draws::normal))
                .toList();
        return IntStream.range(0, exercise.names().size())
                .mapToObj(spot -> expected(
                        read.stream().mapToDouble(plate -> plate.get(spot)).toArray()))
                .toList();
    }

    private static Expected expected(double[] read) {
        double mean = IntStream.range(0, read.length).mapToDouble(i -> read[i]).sum() / read.length;
        double squares = IntStream.range(0, read.length)
                .mapToDouble(i -> (read[i] - mean) * (read[i] - mean))
                .sum();
        return new Expected(mean, Math.sqrt(squares / (read.length - 1)));
    }

    /** How many plates the program needs, over {@value #ROUNDS} rounds: the fewest a careful user can count on. */
    public List<Needed> needed() {
        int[] times = new int[ExerciseProgram.MOST_PLATES + 1];
        for (int round = 0; round < ROUNDS; round++) {
            times[
                    new ExerciseProgram(model, exercise, round * ExercisePlate.MOST)
                            .plates()
                            .size()]++;
        }
        return IntStream.range(0, times.length)
                .filter(plates -> times[plates] > 0)
                .mapToObj(plates -> new Needed(plates, times[plates]))
                .toList();
    }
}
