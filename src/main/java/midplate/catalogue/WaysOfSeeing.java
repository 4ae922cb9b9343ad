package midplate.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import midplate.catalogue.WayOfSeeing.Heat;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.catalogue.WayOfSeeing.Row;
import midplate.catalogue.WayOfSeeing.Sureness;

/**
 * The ways to see what is colourless, in the order in which they are used: what leaves the plate as it is comes first. From {@code
 * seeing.csv} and {@code seeing-groups.csv}.
 *
 * @param all the ways, each id once
 */
public record WaysOfSeeing(List<WayOfSeeing> all) {
    static final String FILE = "seeing.csv";
    static final String GROUPS_FILE = "seeing-groups.csv";

    private static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "leaves",
            "heat",
            "how",
            "negative",
            "cautions",
            "least_ug",
            "most_ug",
            "amount_confidence",
            "source",
            "basis",
            "confidence",
            "note");
    private static final List<String> GROUP_COLUMNS =
            List.of("way", "group", "answer", "least", "source", "basis", "confidence", "note");
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern CONFIDENCE = Pattern.compile("[HML]");
    private static final Pattern WHOLE = Pattern.compile("[1-9][0-9]?");
    private static final double LEAST_UG = 0.0001;
    private static final double MOST_UG = 1000;

    /** Keeps its own copy. */
    public WaysOfSeeing {
        all = List.copyOf(all);
    }

    /** The ways packed with the program, read once. */
    public static WaysOfSeeing builtIn() {
        return Packed.WAYS;
    }

    private static final class Packed {
        static final WaysOfSeeing WAYS = read(DataFolder.packed(), SourceReader.read(DataFolder.packed()));
    }

    static WaysOfSeeing read(DataFolder folder, Map<String, Source> sources) {
        Map<String, Leaves> leaves = byId(Leaves.values(), Leaves::id);
        Map<String, Heat> heats = byId(Heat.values(), Heat::id);
        Map<String, CsvRow> rows = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            if (rows.put(row.matching("id", ID, "lower case and digits with hyphens"), row) != null) {
                throw row.bad("id", "each id once", "Remove one of the two rows.");
            }
        }
        Map<String, List<Row>> groups = groups(folder, sources, rows.keySet());
        List<WayOfSeeing> ways = new ArrayList<>();
        Leaves last = Leaves.UNCHANGED;
        for (CsvRow row : rows.values()) {
            WayOfSeeing way = way(row, leaves, heats, sources, groups.getOrDefault(row.text("id"), List.of()));
            if (way.leaves().compareTo(last) < 0) {
                throw row.bad(
                        "leaves", "what leaves more of the plate stands before what leaves less", "Move the row up.");
            }
            last = way.leaves();
            ways.add(way);
        }
        if (ways.isEmpty()) {
            throw new BadSolventData(FILE, "-", "-", "0 rows", "1 row or more", "Put them back.");
        }
        return new WaysOfSeeing(ways);
    }

    private static <T> Map<String, T> byId(T[] values, Function<T, String> id) {
        return Arrays.stream(values).collect(Collectors.toMap(id, Function.identity()));
    }

    private static WayOfSeeing way(
            CsvRow row,
            Map<String, Leaves> leaves,
            Map<String, Heat> heats,
            Map<String, Source> sources,
            List<Row> groups) {
        if (groups.isEmpty()) {
            throw row.bad("id", "a way that " + GROUPS_FILE + " says something of", "Add rows of it there.");
        }
        row.number("least_ug", LEAST_UG, MOST_UG);
        double least = Double.parseDouble(row.text("least_ug"));
        row.number("most_ug", least, MOST_UG);
        Basis basis = row.basis();
        row.filled("note");
        return new WayOfSeeing(
                row.text("id"),
                row.filled("name"),
                row.named("leaves", leaves, "the program"),
                row.named("heat", heats, "the program"),
                row.filled("how"),
                row.filled("negative"),
                cautions(row),
                least,
                Double.parseDouble(row.text("most_ug")),
                row.matching("amount_confidence", CONFIDENCE, "H, M or L"),
                row.named("source", sources, SourceReader.FILE),
                basis,
                row.confidence(basis),
                groups);
    }

    private static List<String> cautions(CsvRow row) {
        String cell = row.text("cautions");
        List<String> keys = cell.isEmpty() ? List.of() : List.of(cell.split(" ", -1));
        if (!WayOfSeeing.CAUTIONS.containsAll(keys) || new HashSet<>(keys).size() < keys.size()) {
            throw row.bad(
                    "cautions",
                    "some of " + String.join(", ", WayOfSeeing.CAUTIONS) + ", each once, with one blank between",
                    "Correct the cell.");
        }
        return keys;
    }

    private static Map<String, List<Row>> groups(DataFolder folder, Map<String, Source> sources, Set<String> ways) {
        Set<String> known =
                new LinkedHashSet<>(FunctionalGroups.read(folder, sources).ids());
        known.add(WayOfSeeing.ANY);
        Map<String, Sureness> answers = byId(Sureness.values(), Sureness::id);
        Map<String, List<Row>> groups = new HashMap<>();
        Set<String> seen = new HashSet<>();
        for (CsvRow row : CsvTable.read(folder, GROUPS_FILE, GROUP_COLUMNS)) {
            String way = row.oneOf("way", ways);
            String group = row.oneOf("group", known);
            Basis basis = row.basis();
            Sureness sureness = row.named("answer", answers, "the program");
            if (!seen.add(way + "/" + group + "/" + sureness)) {
                throw row.bad("group", "each group once for a way and an answer", "Remove one of the two rows.");
            }
            groups.computeIfAbsent(way, any -> new ArrayList<>())
                    .add(new Row(
                            group,
                            sureness,
                            Integer.parseInt(row.matching("least", WHOLE, "a whole number in [1, 99]")),
                            row.named("source", sources, SourceReader.FILE),
                            basis,
                            row.confidence(basis),
                            row.text("note")));
        }
        return groups;
    }

    /** The way of that id. */
    public Optional<WayOfSeeing> find(String id) {
        return all.stream().filter(way -> way.id().equals(id)).findFirst();
    }

    /** The ids, in order. */
    public List<String> ids() {
        return all.stream().map(WayOfSeeing::id).toList();
    }
}
