package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import midplate.catalogue.HrfSystem;
import midplate.catalogue.HrfSystems;
import midplate.identity.HrfFaults;
import midplate.identity.HrfQuestion;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads which hRf are to be corrected by which reference spots. */
final class HrfReader {
    static final List<String> FIELDS = List.of("system", "standards", "measured");
    static final List<String> STANDARD = List.of("name", "published", "measured");
    static final List<String> SPOT = List.of("name", "hrf");

    static final int MOST_STANDARDS = 50;
    static final int MOST_SPOTS = 50;

    /** Stands in for a number that cannot be read [1]. */
    private static final double SOME_HRF = 50;

    private final HrfSystems systems;
    private final ColumnParts parts;
    private final FaultList faults;

    HrfReader(HrfSystems systems, FaultList faults) {
        this.systems = systems;
        this.parts = new ColumnParts(faults);
        this.faults = faults;
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    HrfQuestion read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        Optional<String> system = fields.choice(
                "system", systems.all().stream().map(HrfSystem::id).toList());
        List<HrfQuestion.Standard> standards = list(fields, "standards", MOST_STANDARDS, STANDARD, this::standard);
        List<HrfQuestion.Spot> measured = list(fields, "measured", MOST_SPOTS, SPOT, this::spot);
        HrfQuestion question = new HrfQuestion(system, standards, measured);
        // without its system or some of its standards nobody knows what a standard should be
        if (faults.isEmpty()) {
            parts.tell(HrfFaults.in(question, systems));
        }
        faults.throwIfAny();
        return question;
    }

    private <T> List<T> list(
            JsonFields fields, String name, int most, List<String> known, Function<JsonFields, Optional<T>> reader) {
        if (!fields.has(name)) {
            fields.missing(
                    name,
                    Message.of("allowed.entries", "interval", Allowed.closed(1, most)),
                    Message.of(
                            "todo.give-hrf",
                            "example",
                            "[{\"name\": \"A\", \"" + known.get(known.size() - 1) + "\": 42}]"));
        }
        List<T> read = new ArrayList<>();
        fields.items(name, most).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.of(fields.path(name + "[" + i + "]"), list.get(i), faults, known)
                        .flatMap(reader)
                        .ifPresent(read::add);
            }
        });
        return read;
    }

    private Optional<String> name(JsonFields fields) {
        if (!fields.has("name")) {
            fields.missing("name", Message.of("allowed.name"), Message.of("todo.name-compound"));
        }
        return fields.text("name", QuestionReader.LONGEST_NAME);
    }

    private Optional<HrfQuestion.Standard> standard(JsonFields fields) {
        Optional<String> name = name(fields);
        OptionalDouble published = fields.number("published");
        double measured = parts.number(fields, "measured", SOME_HRF, Message.of("todo.measure-hrf"));
        return name.map(called -> new HrfQuestion.Standard(called, published, measured));
    }

    private Optional<HrfQuestion.Spot> spot(JsonFields fields) {
        Optional<String> name = name(fields);
        double hrf = parts.number(fields, "hrf", SOME_HRF, Message.of("todo.measure-hrf"));
        return name.map(called -> new HrfQuestion.Spot(called, hrf));
    }
}
