package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import midplate.advice.Window;
import midplate.lesson.Exercise;
import midplate.lesson.ExerciseKey;
import midplate.lesson.ExerciseKnowns;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePlate;
import midplate.lesson.ExerciseProgram;
import midplate.lesson.LessonSample;
import midplate.plate.Limit;
import midplate.words.Allowed;
import midplate.words.Message;

/** The sentences of exercises. */
final class ExerciseWords {
    /** What is told of the unknowns. */
    Message told(ExerciseLevel level) {
        return switch (level) {
            case GROUPS_TOLD -> Message.of("lesson.exercise-told-groups");
            case NUMBER_TOLD -> Message.of("lesson.exercise-told-number");
            case HARD_TO_PART -> Message.of("lesson.exercise-told-hard");
        };
    }

    /** What is to be reached. */
    Message goal(ExerciseLevel level) {
        return level == ExerciseLevel.HARD_TO_PART
                ? Message.of("lesson.exercise-goal-apart")
                : Message.of("lesson.exercise-goal");
    }

    List<Message> cautions(LessonSample sample) {
        return List.of(
                Message.of(
                        "lesson.exercise-caution-sheet",
                        "weak",
                        sample.weak().said(),
                        "strong",
                        sample.strong().said()),
                Message.of("lesson.exercise-caution-bench"));
    }

    /** What a plate says of what is to be reached. */
    Message read(ExercisePlate plate) {
        if (plate.isDone()) {
            return Message.of("lesson.exercise-done");
        }
        List<Message> outside = new ArrayList<>();
        plate.own().forEach((name, spot) -> {
            if (spot.limit() == Limit.AT_START) {
                outside.add(Message.of("lesson.exercise-at-start", "spot", name));
            } else if (spot.limit() == Limit.AT_FRONT) {
                outside.add(Message.of("lesson.exercise-at-front", "spot", name));
            } else if (spot.rf() < Window.USUAL.low()) {
                outside.add(Message.of("lesson.exercise-too-low", "spot", name));
            } else if (spot.rf() > Window.USUAL.high()) {
                outside.add(Message.of("lesson.exercise-too-high", "spot", name));
            }
        });
        return outside.isEmpty()
                ? Message.of(
                        "lesson.exercise-touching",
                        "count",
                        plate.spotsOfAll(),
                        "all",
                        plate.own().size())
                : Message.of("lesson.exercise-not-yet", "spots", Allowed.list(outside));
    }

    /** A spot where it was expected, beside the model. */
    Message beside(ExerciseKnowns.Placed each) {
        Message name = each.compound().compound().said();
        if (each.away() == 0) {
            return Message.of("lesson.exercise-placed-same", "compound", name);
        }
        String key = each.inside() == ExerciseKnowns.Inside.YES
                ? each.away() > 0 ? "lesson.exercise-placed-above-inside" : "lesson.exercise-placed-below-inside"
                : each.away() > 0 ? "lesson.exercise-placed-above-outside" : "lesson.exercise-placed-below-outside";
        return Message.of(
                key,
                "compound",
                name,
                "away",
                Math.abs(each.away()),
                "low",
                each.model().low(),
                "high",
                each.model().high());
    }

    /** An order that the model is sure of, beside what was expected. */
    Message order(ExerciseKnowns.Order each) {
        String key = switch (each.said()) {
            case RIGHT -> "lesson.exercise-order-right";
            case TURNED -> "lesson.exercise-order-turned";
            case SAME -> "lesson.exercise-order-same";
        };
        return Message.of(
                key,
                "higher",
                each.higher().compound().said(),
                "lower",
                each.lower().compound().said(),
                "samples",
                (int) Math.floor(100 * each.share()));
    }

    /** How much of the order was right. */
    Message orders(List<ExerciseKnowns.Order> orders) {
        int right = (int) orders.stream()
                .filter(each -> each.said() == ExerciseKnowns.Said.RIGHT)
                .count();
        return orders.isEmpty()
                ? Message.of("lesson.exercise-order-none")
                : Message.of("lesson.exercise-orders", "right", right, "all", orders.size());
    }

    /** What the program needed. */
    Message program(List<ExerciseProgram.Played> played) {
        boolean done = played.get(played.size() - 1).plate().isDone();
        return done
                ? Message.of("lesson.exercise-program", "plates", played.size())
                : Message.of("lesson.exercise-program-not", "plates", played.size());
    }

    /** What the key says in sentences. */
    List<Message> key(Exercise exercise, ExerciseKey key) {
        List<Message> all = new ArrayList<>();
        for (ExerciseKey.Range range : key.ranges()) {
            all.add(Message.of(
                    "lesson.exercise-key-range",
                    "from",
                    range.from(),
                    "to",
                    range.to(),
                    "strong",
                    exercise.sample().strong().said()));
        }
        for (ExerciseKey.Needed each : key.needed()) {
            all.add(Message.of(
                    each.plates() == ExerciseProgram.MOST_PLATES
                            ? "lesson.exercise-key-needed-most"
                            : "lesson.exercise-key-needed",
                    "plates",
                    each.plates(),
                    "times",
                    each.times()));
        }
        all.add(Message.of("lesson.exercise-key-scatter"));
        return all;
    }
}
