package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import midplate.advice.Ratio;
import midplate.advice.Window;
import midplate.chemistry.Solvent;
import midplate.inference.PairModel;
import midplate.plate.Limit;
import midplate.words.Message;

/**
 * Hints in the model's own terms, from the plates run so far: the capacity factor {@code k = (1 − Rf)/Rf} of the lowest and the highest
 * spot, by how much ln k must change, how much of that a step of the ratio brings, and last what the program would pour.
 *
 * @see "Geiss1987"
 */
public final class ExerciseHints {
    /** Most hints of one state of things. */
    public static final int MOST = 4;

    private static final double LEAST_PERCENT = 1;
    private static final double MOST_PERCENT = 100;

    private final LessonModel model;
    private final Exercise exercise;

    /** Hints for an exercise. */
    public ExerciseHints(LessonModel model, Exercise exercise) {
        this.model = model;
        this.exercise = exercise;
    }

    /** All hints after these plates, the first the smallest help. */
    public List<Message> after(List<ExercisePlate> plates) {
        List<Message> hints = new ArrayList<>();
        if (plates.isEmpty()) {
            hints.add(Message.of("lesson.exercise-hint-first"));
            hints.add(advice(plates));
            return hints;
        }
        ExercisePlate last = plates.get(plates.size() - 1);
        Comparator<ExercisePlate.Spot> byHeight = Comparator.comparingDouble(ExercisePlate.Spot::mm);
        ExercisePlate.Spot lowest = last.own().values().stream().min(byHeight).orElseThrow();
        ExercisePlate.Spot highest = last.own().values().stream().max(byHeight).orElseThrow();
        hints.add(Message.of(
                "lesson.exercise-hint-k",
                "plate",
                last.number(),
                "lowest",
                k(last, lowest),
                "highest",
                k(last, highest)));
        double up = lnK(last.known(lowest)) - lnK(Window.USUAL.low());
        double down = lnK(Window.USUAL.high()) - lnK(last.known(highest));
        hints.add(needed(last, lowest, up, highest, down));
        step(last.percentStrong(), up > 0 || (down <= 0 && up > down)).ifPresent(hints::add);
        hints.add(advice(plates));
        return hints;
    }

    private static String name(ExercisePlate.Spot spot) {
        return spot.names().get(0);
    }

    private static double lnK(double rf) {
        return Math.log((1 - rf) / rf);
    }

    private static Message k(ExercisePlate plate, ExercisePlate.Spot spot) {
        double rf = plate.known(spot);
        String key = spot.limit() == Limit.AT_START
                ? "lesson.exercise-k-least"
                : spot.limit() == Limit.AT_FRONT ? "lesson.exercise-k-most" : "lesson.exercise-k";
        return Message.of(key, "spot", name(spot), "rf", rf, "k", (1 - rf) / rf, "log", lnK(rf));
    }

    /**
     * What ln k needs.
     *
     * @param up by how much ln k of the lowest spot is too large; below 0 where it is not
     * @param down by how much ln k of the highest spot is too small
     */
    private Message needed(
            ExercisePlate last, ExercisePlate.Spot lowest, double up, ExercisePlate.Spot highest, double down) {
        if (up > 0 && down > 0) {
            return Message.of("lesson.exercise-hint-span", "span", lnK(last.known(lowest)) - lnK(last.known(highest)));
        }
        if (up > 0) {
            return Message.of(
                    "lesson.exercise-hint-stronger",
                    "spot",
                    name(lowest),
                    "least",
                    up,
                    "other",
                    name(highest),
                    "most",
                    -down);
        }
        if (down > 0) {
            return Message.of(
                    "lesson.exercise-hint-weaker",
                    "spot",
                    name(highest),
                    "least",
                    down,
                    "other",
                    name(lowest),
                    "most",
                    -up);
        }
        return Message.of(last.isDone() ? "lesson.exercise-hint-done" : "lesson.exercise-hint-apart");
    }

    /** By how much ln k of a compound of average size changes from this ratio to the double, or the half, of its strong solvent. */
    private Optional<Message> step(double percent, boolean stronger) {
        double to = stronger ? Math.min(MOST_PERCENT, Math.max(LEAST_PERCENT, 2 * percent)) : percent / 2;
        if (to == percent || (!stronger && to < LEAST_PERCENT / 2)) {
            return Optional.empty();
        }
        PairModel pair = exercise.truth().model();
        double change = Math.round(100 * Math.abs(pair.strength(to) - pair.strength(percent))) / 100.0;
        return Optional.of(Message.of(
                stronger ? "lesson.exercise-hint-step-stronger" : "lesson.exercise-hint-step-weaker",
                "from",
                percent,
                "to",
                to,
                "strong",
                exercise.sample().strong().said(),
                "change",
                change));
    }

    private Message advice(List<ExercisePlate> plates) {
        Ratio ratio = new ExerciseProgram(model, exercise).next(plates);
        return Message.of(
                plates.isEmpty() ? "lesson.exercise-hint-begin" : "lesson.exercise-hint-advice",
                "eluent",
                eluent(ratio));
    }

    private Message eluent(Ratio ratio) {
        Solvent weak = exercise.sample().weak();
        Solvent strong = exercise.sample().strong();
        if (ratio.strong() == 0 || ratio.weak() == 0) {
            return Message.of("lesson.exercise-pure", "solvent", (ratio.strong() == 0 ? weak : strong).said());
        }
        return Message.of(
                "lesson.exercise-eluent",
                "weak",
                ratio.weak(),
                "strong",
                ratio.strong(),
                "percent",
                ratio.percentStrong(),
                "solvents",
                Message.of("lesson.exercise-pair", "weak", weak.said(), "strong", strong.said()));
    }
}
