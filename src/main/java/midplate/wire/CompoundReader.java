package midplate.wire;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import midplate.catalogue.FunctionalGroup;
import midplate.chemistry.GroupCounts;
import midplate.structure.Molecule;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/** Reads what a compound is: its SMILES, its groups with their numbers, or its class; one of the three. */
final class CompoundReader {
    static final List<String> FIELDS = List.of("smiles", "groups", "class");

    private static final int LONGEST_ID = 100;
    private static final int MOST_NEAR = 3;

    private final Compounds compounds;
    private final FaultList faults;

    CompoundReader(Compounds compounds, FaultList faults) {
        this.compounds = compounds;
        this.faults = faults;
    }

    /** The compound; empty where nothing says what it is, or what says so is faulty. */
    Optional<Compounds.Described> read(JsonFields fields) {
        List<String> came = FIELDS.stream().filter(fields::has).toList();
        if (came.size() > 1) {
            faults.add(
                    fields.path(came.get(1)),
                    Message.of("fault.two-structures", "fields", String.join(", ", came)),
                    fields.any(came.get(1)).map(Json::shown).orElse(""),
                    Message.of("allowed.one-structure"),
                    Message.of("todo.keep-one-structure"));
            return Optional.empty();
        }
        return came.isEmpty()
                ? Optional.empty()
                : switch (came.get(0)) {
                    case "smiles" -> smiles(fields);
                    case "groups" -> groups(fields);
                    default -> ofClass(fields);
                };
    }

    private Optional<Compounds.Described> smiles(JsonFields fields) {
        String path = fields.path("smiles");
        Json value = fields.any("smiles").orElseThrow();
        if (!(value instanceof Json.Text text)) {
            JsonFields.wrongType(path, value, Message.of("kind.text"), faults);
            return Optional.empty();
        }
        try {
            Molecule molecule = compounds.molecule(path, text.value());
            return Optional.of(new Compounds.Described(molecule.counts(), Optional.of(molecule)));
        } catch (Refusal refusal) {
            faults.add(path, refusal);
            return Optional.empty();
        }
    }

    private Optional<Compounds.Described> groups(JsonFields fields) {
        Json value = fields.any("groups").orElseThrow();
        return JsonFields.open(fields.path("groups"), value, faults).flatMap(groups -> {
            int before = faults.count();
            Map<String, Integer> counts = new TreeMap<>();
            for (String id : groups.names()) {
                compounds
                        .groups()
                        .find(id)
                        .ifPresentOrElse(group -> count(groups, group, counts), () -> unknown(groups, id));
            }
            if (groups.size() == 0) {
                faults.add(
                        fields.path("groups"),
                        Message.of("fault.no-groups"),
                        "{}",
                        Message.of("allowed.groups"),
                        Message.of("todo.count-groups"));
            }
            return faults.count() > before
                    ? Optional.empty()
                    : Optional.of(new Compounds.Described(
                            new GroupCounts(counts, GroupCounts.Detail.GROUPS), Optional.empty()));
        });
    }

    private void count(JsonFields groups, FunctionalGroup group, Map<String, Integer> counts) {
        OptionalDouble number = groups.number(group.id());
        int most = Compounds.most(group);
        if (number.isEmpty()) {
            return;
        }
        double count = number.getAsDouble();
        if (count >= 1 && count <= most && count == Math.rint(count)) {
            counts.put(group.id(), (int) count);
            return;
        }
        String came = groups.any(group.id()).map(Json::shown).orElse("");
        faults.add(
                groups.path(group.id()),
                Message.of("fault.group-count", "count", came, "most", most),
                came,
                Allowed.closed(1, most),
                Message.of("todo.count-groups"));
    }

    private void unknown(JsonFields groups, String id) {
        List<String> known = compounds.groups().ids();
        List<String> near = near(id, known);
        faults.add(
                groups.path(id),
                Message.of("fault.unknown-group", "came", shortened(id)),
                groups.any(id).map(Json::shown).orElse(""),
                near.isEmpty() ? Allowed.words(known) : Message.of("allowed.groups"),
                todo(near));
    }

    private static Message todo(List<String> near) {
        return near.isEmpty()
                ? Message.of("todo.take-from-list")
                : Message.of("todo.nearest-groups", "names", String.join(", ", near));
    }

    /** The groups that may have been meant: near in letters, or holding the word that came. */
    private static List<String> near(String id, List<String> known) {
        return id.length() > LONGEST_ID
                ? List.of()
                : Stream.concat(
                                Nearest.to(id, known).stream(),
                                known.stream()
                                        .filter(name -> id.length() > 2 && (name.contains(id) || id.contains(name)))
                                        .sorted(Comparator.comparingInt(String::length)))
                        .distinct()
                        .limit(MOST_NEAR)
                        .toList();
    }

    private Optional<Compounds.Described> ofClass(JsonFields fields) {
        return fields.text("class", LONGEST_ID).flatMap(name -> {
            if (name.equals(Compounds.HYDROCARBON)) {
                return Optional.of(described(Map.of()));
            }
            if (compounds.groups().find(name).filter(Compounds::isClass).isPresent()) {
                return Optional.of(described(Map.of(name, 1)));
            }
            List<String> classes = Stream.concat(
                            Stream.of(Compounds.HYDROCARBON),
                            compounds.groups().all().stream()
                                    .filter(Compounds::isClass)
                                    .map(FunctionalGroup::id))
                    .toList();
            List<String> near = near(name, classes);
            faults.add(
                    fields.path("class"),
                    Message.of("fault.unknown-class", "came", shortened(name)),
                    fields.any("class").map(Json::shown).orElse(""),
                    near.isEmpty() ? Allowed.words(classes) : Message.of("allowed.classes"),
                    todo(near));
            return Optional.empty();
        });
    }

    private static Compounds.Described described(Map<String, Integer> counts) {
        return new Compounds.Described(new GroupCounts(counts, GroupCounts.Detail.CLASS), Optional.empty());
    }

    private static String shortened(String name) {
        return new Json.Text(name).shown().replace("\"", "");
    }
}
