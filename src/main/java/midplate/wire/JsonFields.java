package midplate.wire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;

/**
 * The fields of one JSON object, read by name. Whatever is wrong goes to the list of faults and reads as empty, so that the
 * reading goes on and tells everything at once.
 */
final class JsonFields {
    private final String path;
    private final Map<String, Json> members;
    private final FaultList faults;

    private JsonFields(String path, Map<String, Json> members, FaultList faults) {
        this.path = path;
        this.members = members;
        this.faults = faults;
    }

    /** An object with these fields and no other. */
    static Optional<JsonFields> of(String path, Json value, FaultList faults, List<String> known) {
        Optional<JsonFields> fields = open(path, value, faults);
        fields.ifPresent(object -> object.refuseUnknown(known));
        return fields;
    }

    /** An object whose names are data, such as those of spots. */
    static Optional<JsonFields> open(String path, Json value, FaultList faults) {
        if (value instanceof Json.Fields object) {
            return Optional.of(new JsonFields(path, object.members(), faults));
        }
        wrongType(path, value, Message.of("kind.object"), faults);
        return Optional.empty();
    }

    private void refuseUnknown(List<String> known) {
        members.forEach((name, value) -> {
            if (!known.contains(name)) {
                faults.add(
                        path(name),
                        Message.of("fault.unknown-field", "name", shortened(name)),
                        value.shown(),
                        Allowed.words(known),
                        Nearest.to(name, known)
                                .map(near -> Message.of("todo.did-you-mean", "name", near))
                                .orElse(Message.of("todo.leave-out")));
            }
        });
    }

    private static String shortened(String name) {
        return new Json.Text(name).shown().replace("\"", "");
    }

    /** The place of a field in the whole input. */
    String path(String name) {
        return JsonText.joined(path, name);
    }

    /** The place of the object in the whole input. */
    String place() {
        return path;
    }

    /** Whether a field came, faulty or not. */
    boolean has(String name) {
        return members.containsKey(name);
    }

    /** The names in the order they came. */
    Iterable<String> names() {
        return members.keySet();
    }

    /** How many fields came. */
    int size() {
        return members.size();
    }

    /** A field of whatever kind. */
    Optional<Json> any(String name) {
        return Optional.ofNullable(members.get(name));
    }

    /** Tells that a field is missing; what to do is a sentence. */
    void missing(String name, Message allowed, Message todo) {
        faults.add(
                path(name), Message.of("fault.missing-field", "name", name), Message.of("came.nothing"), allowed, todo);
    }

    /** A text with a visible sign and no control signs, without the blanks at its ends; empty when absent or faulty. */
    Optional<String> text(String name, int longest) {
        return any(name).flatMap(value -> text(path(name), value, longest, faults));
    }

    static Optional<String> text(String path, Json value, int longest, FaultList faults) {
        if (!(value instanceof Json.Text text)) {
            wrongType(path, value, Message.of("kind.text"), faults);
            return Optional.empty();
        }
        String plain = text.value().strip();
        boolean control = plain.chars().anyMatch(Character::isISOControl);
        if (plain.isEmpty() || plain.length() > longest || control) {
            faults.add(
                    path,
                    Message.of("fault.text-not-taken", "longest", longest),
                    value.shown(),
                    Message.of("allowed.signs", "longest", longest),
                    Message.of("todo.give-short-text"));
            return Optional.empty();
        }
        return Optional.of(plain);
    }

    /** A finite number; empty when absent or faulty. */
    OptionalDouble number(String name) {
        return any(name).map(value -> number(path(name), value, faults)).orElse(OptionalDouble.empty());
    }

    static OptionalDouble number(String path, Json value, FaultList faults) {
        if (value instanceof Json.Numeral number) {
            return OptionalDouble.of(number.value());
        }
        wrongType(path, value, Message.of("kind.number"), faults);
        return OptionalDouble.empty();
    }

    /** A percentage of the stronger solvent [% v/v], 0 to 100; empty when absent or faulty. */
    OptionalDouble percent(String name) {
        return any(name).map(value -> percent(path(name), value, faults)).orElse(OptionalDouble.empty());
    }

    static OptionalDouble percent(String path, Json value, FaultList faults) {
        OptionalDouble number = number(path, value, faults);
        if (number.isEmpty() || (number.getAsDouble() >= 0 && number.getAsDouble() <= 100)) {
            return number;
        }
        faults.add(
                path,
                Message.of("plate.percent-out-of-range", "percent", number.getAsDouble()),
                value.shown(),
                Allowed.closed(0, 100),
                Message.of("todo.give-percent-of-volumes"));
        return OptionalDouble.empty();
    }

    /** A list of at most so many; empty when absent or faulty. */
    Optional<List<Json>> items(String name, int most) {
        return any(name).flatMap(value -> {
            if (!(value instanceof Json.Items list)) {
                wrongType(path(name), value, Message.of("kind.list"), faults);
                return Optional.empty();
            }
            if (list.items().size() > most) {
                faults.add(
                        path(name),
                        Message.of("fault.too-many", "name", name, "most", most),
                        Message.of("came.entries", "count", list.items().size()),
                        Message.of("allowed.entries", "interval", Allowed.closed(0, most)),
                        Message.of("todo.leave-some-out"));
                return Optional.empty();
            }
            return Optional.of(list.items());
        });
    }

    /** One of a few words; empty when absent or faulty. */
    Optional<String> choice(String name, List<String> choices) {
        return any(name).flatMap(value -> {
            if (value instanceof Json.Text text && choices.contains(text.value())) {
                return Optional.of(text.value());
            }
            if (!(value instanceof Json.Broken)) {
                String came = value instanceof Json.Text text ? text.value() : "";
                faults.add(
                        path(name),
                        Message.of("fault.unknown-choice", "name", name),
                        value.shown(),
                        Allowed.words(choices),
                        Nearest.to(came, choices)
                                .map(near -> Message.of("todo.did-you-mean", "name", near))
                                .orElse(Message.of("todo.take-one-of-these")));
            }
            return Optional.empty();
        });
    }

    /** Tells that a value is of the wrong kind, unless its fault was told already. */
    static void wrongType(String path, Json value, Message wanted, FaultList faults) {
        if (value instanceof Json.Broken) {
            return;
        }
        faults.add(
                path.isEmpty() ? "request" : path,
                Message.of("fault.wrong-type", "kind", value.kind(), "wanted", wanted),
                value.shown(),
                wanted,
                value instanceof Json.Null
                        ? Message.of("todo.fill-or-leave-out")
                        : Message.of("todo.give", "wanted", wanted));
    }
}
