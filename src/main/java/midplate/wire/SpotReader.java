package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads the spots that are asked about: names, and structures where they are known. */
final class SpotReader {
    static final List<String> FIELDS = List.of("name", "smiles", "groups", "class");

    private static final String EXAMPLE = "[{\"name\": \"A\"}]";

    private final FaultList faults;
    private final Set<String> names = new LinkedHashSet<>();
    private final CompoundReader compounds;
    private final List<SpotStructure> structures = new ArrayList<>();

    SpotReader(Compounds compounds, FaultList faults) {
        this.faults = faults;
        this.compounds = new CompoundReader(compounds, faults);
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

    /** What spots are said to be, in the order asked. */
    List<SpotStructure> structures() {
        return List.copyOf(structures);
    }

    private void spot(JsonFields fields) {
        if (!fields.has("name")) {
            fields.missing("name", Message.of("allowed.name"), Message.of("todo.name-spot"));
        }
        Optional<Compounds.Described> compound = compounds.read(fields);
        fields.text("name", QuestionReader.LONGEST_NAME).ifPresent(name -> {
            if (!names.add(name)) {
                faults.add(
                        fields.path("name"),
                        Message.of("fault.duplicate-spot", "spot", name),
                        name,
                        Message.of("allowed.own-name"),
                        Message.of("todo.give-own-name"));
            }
            compound.ifPresent(known -> structures.add(new SpotStructure(name, fields.place(), known)));
        });
    }
}
