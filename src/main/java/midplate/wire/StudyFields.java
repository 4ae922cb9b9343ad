package midplate.wire;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import midplate.notebook.Entered;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;

/**
 * The fields of one object of a study. Unlike those of a request, texts are taken exactly as they were typed, an empty one too, and a
 * number may be a text that is none yet. What is faulty is told and reads as empty.
 */
final class StudyFields {
    /** The longest text on one line [signs]; a title is shorter. */
    static final int LONGEST_LINE = 1000;

    /** The most of anything in a list; what is read at once bounds the whole. */
    static final int MOST = 2000;

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,40}");
    private static final Pattern TIME =
            Pattern.compile("[0-9]{4}(-[0-9]{2}){2}T[0-9]{2}(:[0-9]{2}){2}(\\.[0-9]{1,9})?Z");

    private final JsonFields fields;
    private final FaultList faults;

    private StudyFields(JsonFields fields, FaultList faults) {
        this.fields = fields;
        this.faults = faults;
    }

    /** An object with all of these fields, perhaps some of those, and no other. */
    static Optional<StudyFields> of(
            String path, Json value, FaultList faults, List<String> required, List<String> optional) {
        List<String> known = Stream.concat(required.stream(), optional.stream()).toList();
        return JsonFields.of(path, value, faults, known).map(fields -> {
            required.stream().filter(name -> !fields.has(name)).forEach(name -> missing(fields, name));
            return new StudyFields(fields, faults);
        });
    }

    private static void missing(JsonFields fields, String name) {
        fields.missing(name, Message.of("allowed.field-filled"), Message.of("todo.add-field"));
    }

    /** Tells where a field is missing that another one makes necessary. */
    void demand(String name) {
        if (!fields.has(name)) {
            missing(fields, name);
        }
    }

    /** Whether a field came, faulty or not. */
    boolean has(String name) {
        return fields.has(name);
    }

    /** The place of a field in the whole study. */
    String path(String name) {
        return fields.path(name);
    }

    /** The value as it came, or nothing. */
    Optional<Json> any(String name) {
        return fields.any(name);
    }

    /** Tells a fault of a field that came. */
    void fault(String name, Message reason, Message allowed, Message todo) {
        faults.add(fields.path(name), reason, fields.any(name).map(Json::shown).orElse(""), allowed, todo);
    }

    /** A text on one line. */
    String line(String name) {
        return line(name, LONGEST_LINE);
    }

    /** A text on one line of at most so many signs. */
    String line(String name, int longest) {
        return fields.any(name)
                .flatMap(value -> StudyText.line(fields.path(name), value, longest, faults))
                .orElse("");
    }

    /** A text on one line, if there is any. */
    Optional<String> lineIfAny(String name) {
        return fields.any(name).flatMap(value -> StudyText.line(fields.path(name), value, LONGEST_LINE, faults));
    }

    /** A text on as many lines as it likes. */
    String text(String name, int longest) {
        return fields.any(name)
                .flatMap(value -> StudyText.lines(fields.path(name), value, longest, faults))
                .orElse("");
    }

    /** A number, or what was typed in its place. */
    Entered entered(String name) {
        return enteredIfAny(name).orElse(Entered.NOTHING);
    }

    /** A number, or what was typed in its place, if there is either. */
    Optional<Entered> enteredIfAny(String name) {
        return fields.any(name).map(value -> StudyNumber.entered(fields.path(name), value, faults));
    }

    /** The share that an eluent was typed for [% v/v], if there is any: it may be beyond all that can be poured. */
    OptionalDouble typedPercent(String name) {
        OptionalDouble percent = fields.number(name);
        return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() + 0.0) : percent; // -0 becomes 0
    }

    /** A number between two others, both allowed; 0 where it is faulty. */
    double number(String name, double low, double high) {
        return fields.any(name)
                .map(value -> StudyNumber.between(fields.path(name), value, low, high, faults))
                .orElse(0.0);
    }

    /** {@code true} or {@code false}, as one of two things. */
    <T> Optional<T> truth(String name, T ifTrue, T ifFalse) {
        return fields.any(name).flatMap(value -> {
            if (value instanceof Json.Truth truth) {
                return Optional.of(truth.value() ? ifTrue : ifFalse);
            }
            JsonFields.wrongType(fields.path(name), value, Message.of("kind.truth"), faults);
            return Optional.empty();
        });
    }

    /** A moment in UTC. */
    Instant time(String name) {
        return fields.any(name)
                .flatMap(value -> {
                    if (value instanceof Json.Text text
                            && TIME.matcher(text.value()).matches()) {
                        try {
                            return Optional.of(Instant.parse(text.value()));
                        } catch (DateTimeException e) {
                            // told below: a day that is in no calendar
                        }
                    }
                    if (value instanceof Json.Text) {
                        fault(
                                name,
                                Message.of("fault.no-time"),
                                Message.of("allowed.time", "example", "2026-10-26T13:02:11Z"),
                                Message.of("todo.give-time"));
                    } else {
                        JsonFields.wrongType(fields.path(name), value, Message.of("kind.text"), faults);
                    }
                    return Optional.<Instant>empty();
                })
                .orElse(Instant.EPOCH);
    }

    /** One of a few words; the first where it is faulty. */
    String choice(String name, List<String> choices) {
        return fields.choice(name, choices).orElse(choices.get(0));
    }

    /** An id of anything in a study but the study itself; empty where it is faulty. */
    String id(String name) {
        return idIfAny(name).orElse("");
    }

    private static Optional<String> id(String path, Json value, FaultList faults) {
        if (value instanceof Json.Text text && ID.matcher(text.value()).matches()) {
            return Optional.of(text.value());
        }
        if (value instanceof Json.Text) {
            faults.add(
                    path,
                    Message.of("fault.no-id"),
                    value.shown(),
                    Message.of("allowed.id"),
                    Message.of("todo.give-id"));
        } else {
            JsonFields.wrongType(path, value, Message.of("kind.text"), faults);
        }
        return Optional.empty();
    }

    /** An id that nothing of its kind had before; it is added to those taken. */
    String freshId(String name, Set<String> taken) {
        String id = id(name);
        if (!id.isEmpty() && !taken.add(id)) {
            fault(
                    name,
                    Message.of("fault.id-twice", "id", id),
                    Message.of("allowed.id-of-its-own"),
                    Message.of("todo.give-id-of-its-own"));
        }
        return id;
    }

    /** A list, each entry read with its place; entries that read as nothing are left out. */
    <T> List<T> each(String name, int most, BiFunction<String, Json, Optional<T>> reader) {
        List<T> read = new ArrayList<>();
        fields.items(name, most).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                reader.apply(fields.path(name + "[" + i + "]"), list.get(i)).ifPresent(read::add);
            }
        });
        return read;
    }

    /** A list of different ids. */
    List<String> ids(String name) {
        Set<String> found = new LinkedHashSet<>();
        each(name, MOST, (path, value) -> id(path, value, faults).filter(id -> once(path, id, found)));
        return List.copyOf(found);
    }

    /** One id, if there is any that can be taken. */
    Optional<String> idIfAny(String name) {
        return fields.any(name).flatMap(value -> id(fields.path(name), value, faults));
    }

    /** The ids of a field that names two spots or none; any other number of them is told. */
    List<String> noneOrTwo(String name, List<String> ids) {
        if (!ids.isEmpty() && ids.size() != 2) {
            fault(
                    name,
                    Message.of("fault.not-two-spots"),
                    Message.of("allowed.two-spots"),
                    Message.of("todo.name-two-spots"));
        }
        return ids;
    }

    /** A list of different words, all among those known. */
    List<String> known(String name, Collection<String> known) {
        Set<String> found = new LinkedHashSet<>();
        each(name, MOST, (path, value) -> {
            if (value instanceof Json.Text text && known.contains(text.value())) {
                return once(path, text.value(), found) ? Optional.of(text.value()) : Optional.empty();
            }
            if (value instanceof Json.Text text) {
                faults.add(
                        path,
                        Message.of("fault.unknown-choice", "name", name),
                        value.shown(),
                        Allowed.words(known),
                        Nearest.to(text.value(), known)
                                .map(near -> Message.of("todo.did-you-mean", "name", near))
                                .orElse(Message.of("todo.take-one-of-these")));
            } else {
                JsonFields.wrongType(path, value, Message.of("kind.text"), faults);
            }
            return Optional.empty();
        });
        return List.copyOf(found);
    }

    private boolean once(String path, String id, Set<String> found) {
        if (found.add(id)) {
            return true;
        }
        faults.add(
                path,
                Message.of("fault.id-twice", "id", id),
                new Json.Text(id).shown(),
                Message.of("allowed.each-name-once"),
                Message.of("todo.keep-one"));
        return false;
    }

    /** A list of exactly two. */
    Optional<List<Json>> two(String name) {
        Optional<List<Json>> list = fields.items(name, 2);
        if (list.isPresent() && list.get().size() != 2) {
            fault(
                    name,
                    Message.of(
                            "fault.wrong-type",
                            "kind",
                            Message.of("kind.list"),
                            "wanted",
                            Message.of("kind.two-numbers")),
                    Message.of("kind.two-numbers"),
                    Message.of("todo.give", "wanted", Message.of("kind.two-numbers")));
            return Optional.empty();
        }
        return list;
    }
}
