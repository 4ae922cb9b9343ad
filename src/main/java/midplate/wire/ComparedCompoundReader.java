package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import midplate.chemistry.GroupCounts;
import midplate.identity.Compound;
import midplate.words.Message;

/** Reads compounds that are compared: a name, perhaps an Rf, and what each is in one of the three ways of a spot. */
final class ComparedCompoundReader {
    /** The fields of a compound that has no others. */
    static final List<String> FIELDS = List.of("name", "smiles", "groups", "class", "rf");

    private final CompoundReader compounds;
    private final FaultList faults;

    ComparedCompoundReader(Compounds compounds, FaultList faults) {
        this.compounds = new CompoundReader(compounds, faults);
        this.faults = faults;
    }

    /** These fields and those of a compound. */
    static List<String> fieldsWith(String... own) {
        return Stream.concat(FIELDS.stream(), Stream.of(own)).toList();
    }

    /**
     * The compounds of a list, each with a name of its own; faulty ones are left out.
     *
     * @param name of the list
     * @param most that it may hold
     * @param taken the names that are given already, to which theirs are added
     */
    List<Compound> list(JsonFields request, String name, int most, Set<String> taken) {
        return each(request, name, most, FIELDS, fields -> compound(fields, taken));
    }

    /** What a list holds, each with these fields and no other; what reads as nothing is left out. */
    <T> List<T> each(
            JsonFields request, String name, int most, List<String> known, Function<JsonFields, Optional<T>> reader) {
        List<T> read = new ArrayList<>();
        request.items(name, most).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.of(request.path(name + "[" + i + "]"), list.get(i), faults, known)
                        .flatMap(reader)
                        .ifPresent(read::add);
            }
        });
        return List.copyOf(read);
    }

    /**
     * One compound; empty where its name is missing or faulty.
     *
     * @param taken the names that are given already, to which its own is added
     */
    Optional<Compound> compound(JsonFields fields, Set<String> taken) {
        Optional<String> name = name(fields, taken);
        OptionalDouble rf = RfReader.read(fields, "rf", faults);
        Optional<GroupCounts> structure = structure(fields);
        return name.map(called -> new Compound(called, rf, structure));
    }

    /** What it is made of, where that is told. */
    Optional<GroupCounts> structure(JsonFields fields) {
        return compounds.read(fields).map(Compounds.Described::counts);
    }

    /** Its name, which no other has. */
    Optional<String> name(JsonFields fields, Set<String> taken) {
        if (!fields.has("name")) {
            fields.missing("name", Message.of("allowed.name"), Message.of("todo.name-compound"));
        }
        Optional<String> name = fields.text("name", QuestionReader.LONGEST_NAME);
        name.filter(called -> !taken.add(called))
                .ifPresent(called -> faults.add(
                        fields.path("name"),
                        Message.of("fault.duplicate-compound", "name", called),
                        called,
                        Message.of("allowed.own-compound-name"),
                        Message.of("todo.give-own-compound-name")));
        return name;
    }
}
