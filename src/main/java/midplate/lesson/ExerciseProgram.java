package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.ApartNames;
import midplate.advice.Glassware;
import midplate.advice.NextPlate;
import midplate.advice.Question;
import midplate.advice.Ratio;
import midplate.advice.Shelf;
import midplate.advice.Window;
import midplate.advice.Wishes;
import midplate.plate.Setting;

/** The program against the unknowns: told what students are told, it pours what it would advise, reads as they read, and goes on. */
public final class ExerciseProgram {
    /** After so many plates it gives up. */
    public static final int MOST_PLATES = 8;

    private final LessonModel model;
    private final Exercise exercise;
    private final int first;

    /** One that plays an exercise on the plates that students get. */
    public ExerciseProgram(LessonModel model, Exercise exercise) {
        this(model, exercise, 0);
    }

    /**
     * One that gets other chance.
     *
     * @param first the number before that of its first plate
     */
    ExerciseProgram(LessonModel model, Exercise exercise, int first) {
        this.model = model;
        this.exercise = exercise;
        this.first = first;
    }

    /**
     * A plate that it ran.
     *
     * @param ratio what it poured
     * @param plate what was read
     */
    public record Played(Ratio ratio, ExercisePlate plate) {}

    /** Its plates, the last of them done unless there are {@value #MOST_PLATES}. */
    public List<Played> plates() {
        List<Played> played = new ArrayList<>();
        while (played.size() < MOST_PLATES) {
            Ratio ratio = next(played.stream().map(Played::plate).toList());
            ExercisePlate plate = ExercisePlate.of(exercise, first + played.size() + 1, ratio.percentStrong());
            played.add(new Played(ratio, plate));
            if (plate.isDone()) {
                break;
            }
        }
        return List.copyOf(played);
    }

    /** What it would pour after these plates. */
    public Ratio next(List<ExercisePlate> plates) {
        LessonSample sample = exercise.sample();
        Question question = new Question(
                sample.sorbent(),
                sample.weak(),
                sample.strong(),
                Optional.empty(),
                exercise.names(),
                plates.stream().map(plate -> plate.noted(sample)).toList(),
                Window.USUAL,
                Setting.CLASS,
                Glassware.usual(Setting.CLASS),
                wishes(),
                exercise.told());
        return model.adviser().apply(question).advice().ratio();
    }

    /** Every spot apart from every other. */
    private Wishes wishes() {
        List<String> names = exercise.names();
        List<ApartNames> apart = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int other = 0; other < i; other++) {
                apart.add(new ApartNames(names.get(other), names.get(i)));
            }
        }
        return new Wishes(Shelf.UNTOLD, apart, NextPlate.USUAL);
    }
}
