package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads the spots that are asked about: names, and structures where they are known. */
final class SpotReader {
    static final List<String> FIELDS = List.of("name", "smiles", "groups");

    private static final String EXAMPLE = "[{\"name\": \"A\"}]";
    private static final int LONGEST_SMILES = 4000;

    private final FaultList faults;
    private final Set<String> names = new LinkedHashSet<>();
    private final List<String> withStructure = new ArrayList<>();

    SpotReader(FaultList faults) {
        this.faults = faults;
    }

    /** The names in the order asked; faulty spots are left out. */
    Set<String> read(JsonFields request) {
        if (!request.has("spots")) {
            request.missing(
                    "spots",
                    Message.of("allowed.spots", "interval", Allowed.closed(1, QuestionReader.MOST_SPOTS)),
                    Message.of("todo.name-one-spot-so", "example", EXAMPLE));
            return names;
        }
        request.items("spots", QuestionReader.MOST_SPOTS).ifPresent(list -> {
            if (list.isEmpty()) {
                faults.add(
                        request.path("spots"),
                        Message.of("fault.no-spots"),
                        "[]",
                        Message.of("allowed.spots", "interval", Allowed.closed(1, QuestionReader.MOST_SPOTS)),
                        Message.of("todo.name-one-spot-so", "example", EXAMPLE));
            }
            for (int i = 0; i < list.size(); i++) {
                JsonFields.of(request.path("spots[" + i + "]"), list.get(i), faults, FIELDS)
                        .ifPresent(this::spot);
            }
        });
        return names;
    }

    /** What to tell about structures that came. */
    List<Note> notes() {
        return withStructure.isEmpty()
                ? List.of()
                : List.of(new Note(
                        Message.of("note.structure-not-used", "spots", String.join(", ", withStructure)),
                        Optional.empty()));
    }

    private void spot(JsonFields fields) {
        if (!fields.has("name")) {
            fields.missing("name", Message.of("allowed.name"), Message.of("todo.name-spot"));
        }
        Optional<String> smiles = fields.text("smiles", LONGEST_SMILES);
        fields.any("groups")
                .flatMap(groups -> JsonFields.open(fields.path("groups"), groups, faults))
                .ifPresent(groups -> {
                    for (String group : groups.names()) {
                        count(groups, group);
                    }
                });
        fields.text("name", QuestionReader.LONGEST_NAME).ifPresent(name -> {
            if (!names.add(name)) {
                faults.add(
                        fields.path("name"),
                        Message.of("fault.duplicate-spot", "spot", name),
                        name,
                        Message.of("allowed.own-name"),
                        Message.of("todo.give-own-name"));
            }
            if (smiles.isPresent() || fields.has("groups")) {
                withStructure.add(name);
            }
        });
    }

    private void count(JsonFields groups, String group) {
        OptionalDouble number = groups.number(group);
        if (number.isPresent() && !(number.getAsDouble() >= 0 && number.getAsDouble() <= 1000)) {
            faults.add(
                    groups.path(group),
                    Message.of("fault.number-out-of-range", "allowed", Allowed.closed(0, 1000)),
                    groups.any(group).map(Json::shown).orElse(""),
                    Allowed.closed(0, 1000),
                    Message.of("todo.count-groups"));
        }
    }
}
