package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.lesson.ExerciseCode;
import midplate.lesson.ExerciseHints;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePair;
import midplate.lesson.ExercisePlate;
import midplate.lesson.LessonCode;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads which exercise is meant, and what was done of it. */
final class ExerciseReader {
    static final List<String> NEW = List.of("code", "level", "weak", "strong", "seed");
    static final List<String> CODE = List.of("code");
    static final List<String> RUN = List.of("code", "percentStrong", "plate");
    static final List<String> HINT = List.of("code", "plates", "count");
    static final List<String> PLACED = List.of("code", "placed");

    private static final List<String> LEVELS =
            Arrays.stream(ExerciseLevel.values()).map(ExerciseLevel::id).toList();
    private static final int LONGEST_CODE = 40;
    private static final int KNOWNS = 3;

    private final FaultList faults;

    ExerciseReader(FaultList faults) {
        this.faults = faults;
    }

    /** The exercise of a code that must be there. */
    Optional<ExerciseCode> code(JsonFields fields) {
        if (!fields.has("code")) {
            fields.missing(
                    "code",
                    Message.of("allowed.lesson-code", "example", example()),
                    Message.of("todo.type-lesson-code"));
        }
        return fields.text("code", LONGEST_CODE).flatMap(typed -> {
            try {
                return Optional.of(ExerciseCode.read(fields.path("code"), typed));
            } catch (Refusal refusal) {
                faults.add(refusal.field(), refusal);
                return Optional.empty();
            }
        });
    }

    private static String example() {
        return new ExerciseCode(ExerciseLevel.GROUPS_TOLD, ExercisePair.HEXANE_ETHYL_ACETATE, 0).text();
    }

    /** The exercise of a code, or a new one of a level, a pair and a seed. */
    Optional<ExerciseCode> codeOrNew(JsonFields fields) {
        if (fields.has("code")) {
            NEW.stream()
                    .filter(name -> !name.equals("code") && fields.has(name))
                    .forEach(name -> faults.add(
                            fields.path(name),
                            Message.of("fault.exercise-code-and-choice", "name", name),
                            fields.any(name).map(Json::shown).orElse(""),
                            Message.of("allowed.exercise-code-or-choices"),
                            Message.of("todo.leave-out")));
            return code(fields);
        }
        if (fields.size() == 0) {
            return code(fields);
        }
        int before = faults.count();
        if (!fields.has("level")) {
            fields.missing("level", Allowed.words(LEVELS), Message.of("todo.take-one-of-these"));
        }
        Optional<ExerciseLevel> level = fields.choice("level", LEVELS).flatMap(ExerciseLevel::byId);
        Optional<ExercisePair> pair = pair(fields);
        int seed = whole(fields, "seed", 0, LessonCode.MOST_SEED);
        return level.isEmpty() || pair.isEmpty() || faults.count() > before
                ? Optional.empty()
                : Optional.of(new ExerciseCode(level.get(), pair.get(), seed));
    }

    private Optional<ExercisePair> pair(JsonFields fields) {
        List<String> weak = Arrays.stream(ExercisePair.values())
                .map(ExercisePair::weak)
                .distinct()
                .toList();
        if (!fields.has("weak")) {
            fields.missing("weak", Allowed.words(weak), Message.of("todo.take-one-of-these"));
        }
        Optional<String> named = fields.choice("weak", weak);
        List<String> strong = Arrays.stream(ExercisePair.values())
                .filter(each -> named.isEmpty() || each.weak().equals(named.get()))
                .map(ExercisePair::strong)
                .toList();
        if (!fields.has("strong")) {
            fields.missing("strong", Allowed.words(strong), Message.of("todo.take-one-of-these"));
        }
        Optional<String> stronger = fields.choice("strong", strong);
        return named.flatMap(one -> stronger.flatMap(other -> ExercisePair.of(one, other)));
    }

    /** Which plate it is, from 1. */
    int plate(JsonFields fields) {
        return whole(fields, "plate", 1, ExercisePlate.MOST);
    }

    /** How many hints are asked for. */
    int count(JsonFields fields) {
        return whole(fields, "count", 1, ExerciseHints.MOST);
    }

    private int whole(JsonFields fields, String name, int low, int high) {
        Message allowed = Allowed.closed(low, high);
        if (!fields.has(name)) {
            fields.missing(name, allowed, Message.of("todo.give", "wanted", Message.of("kind.whole-number")));
            return low;
        }
        OptionalDouble number = fields.number(name);
        if (number.isEmpty()) {
            return low;
        }
        double value = number.getAsDouble();
        if (value == Math.rint(value) && value >= low && value <= high) {
            return (int) value;
        }
        faults.add(
                fields.path(name),
                Message.of("fault.exercise-whole", "low", low, "high", high),
                fields.any(name).map(Json::shown).orElse(""),
                allowed,
                Message.of("todo.give", "wanted", Message.of("kind.whole-number")));
        return low;
    }

    /** The share of a plate that must be there [% v/v]. */
    double percent(JsonFields fields) {
        if (!fields.has("percentStrong")) {
            fields.missing("percentStrong", Allowed.closed(0, 100), Message.of("todo.give-percent-of-volumes"));
        }
        return fields.percent("percentStrong").orElse(0);
    }

    /** The shares of the plates run so far, in their order [% v/v]; none where nothing came. */
    List<Double> plates(JsonFields fields) {
        List<Double> percents = new ArrayList<>();
        fields.items("plates", ExercisePlate.MOST).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.percent(fields.path("plates[" + i + "]"), list.get(i), faults)
                        .ifPresent(percents::add);
            }
        });
        return percents;
    }

    /** Where the known compounds are expected [1], in their order. */
    List<Double> placed(JsonFields fields) {
        Message allowed = Message.of("allowed.exercise-placed", "count", KNOWNS);
        if (!fields.has("placed")) {
            fields.missing("placed", allowed, Message.of("todo.place-exercise"));
        }
        List<Double> placed = new ArrayList<>();
        fields.items("placed", KNOWNS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                rf(fields.path("placed[" + i + "]"), list.get(i)).ifPresent(placed::add);
            }
            if (list.size() < KNOWNS) {
                faults.add(
                        fields.path("placed"),
                        Message.of("fault.exercise-placed", "count", list.size()),
                        Message.of("came.entries", "count", list.size()),
                        allowed,
                        Message.of("todo.place-exercise"));
            }
        });
        return placed;
    }

    private OptionalDouble rf(String path, Json value) {
        OptionalDouble number = JsonFields.number(path, value, faults);
        if (number.isEmpty() || (number.getAsDouble() >= 0 && number.getAsDouble() <= 1)) {
            return number;
        }
        faults.add(
                path,
                Message.of("plate.rf-out-of-range", "rf", number.getAsDouble()),
                value.shown(),
                Allowed.closed(0, 1),
                Message.of("todo.place-exercise"));
        return OptionalDouble.empty();
    }
}
