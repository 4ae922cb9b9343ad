package midplate.catalogue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The functional groups that are counted, in the order of {@code groups.csv}.
 *
 * @param all the groups, each id once
 */
public record FunctionalGroups(List<FunctionalGroup> all) {
    /** What an atom counts as that no group knows. */
    public static final String UNRECOGNISED = "unrecognised";

    static final String FILE = "groups.csv";

    private static final List<String> COLUMNS =
            List.of("id", "kind", "energy", "source", "basis", "confidence", "about", "note", "smarts");
    private static final Pattern ID = Pattern.compile("[a-z]+(-[a-z]+)*");
    private static final double LEAST_ENERGY = -5;
    private static final double MOST_ENERGY = 20;

    /** Keeps its own copy. */
    public FunctionalGroups {
        all = List.copyOf(all);
    }

    /** The groups packed with the program, read once. */
    public static FunctionalGroups builtIn() {
        return Packed.GROUPS;
    }

    private static final class Packed {
        static final FunctionalGroups GROUPS = read(DataFolder.packed(), SourceReader.read(DataFolder.packed()));
    }

    static FunctionalGroups read(DataFolder folder, Map<String, Source> sources) {
        Map<String, FunctionalGroup.Kind> kinds = Arrays.stream(FunctionalGroup.Kind.values())
                .collect(Collectors.toMap(FunctionalGroup.Kind::id, Function.identity()));
        Map<String, FunctionalGroup> groups = new LinkedHashMap<>();
        List<CsvRow> rows = CsvTable.read(folder, FILE, COLUMNS);
        for (CsvRow row : rows) {
            row.number("energy", LEAST_ENERGY, MOST_ENERGY);
            Basis basis = row.basis();
            FunctionalGroup.Kind kind = row.named("kind", kinds, "the program");
            FunctionalGroup group = new FunctionalGroup(
                    row.matching("id", ID, "small letters and hyphens"),
                    kind,
                    Double.parseDouble(row.text("energy")),
                    basis,
                    row.confidence(basis),
                    row.named("source", sources, SourceReader.FILE),
                    about(row),
                    row.filled("note"),
                    kind == FunctionalGroup.Kind.UNKNOWN ? row.text("smarts") : row.filled("smarts"));
            if (groups.put(group.id(), group) != null) {
                throw row.bad("id", "each id once", "Remove one of the two rows.");
            }
        }
        for (CsvRow row : rows) {
            if (!groups.keySet().containsAll(about(row))) {
                throw row.bad("about", "ids of groups in this file", "Correct the cell.");
            }
        }
        return new FunctionalGroups(List.copyOf(groups.values()));
    }

    private static List<String> about(CsvRow row) {
        String cell = row.text("about");
        return cell.isEmpty() ? List.of() : List.of(cell.split(" "));
    }

    /** The group of that id. */
    public Optional<FunctionalGroup> find(String id) {
        return all.stream().filter(group -> group.id().equals(id)).findFirst();
    }

    /** The ids, in order. */
    public List<String> ids() {
        return all.stream().map(FunctionalGroup::id).toList();
    }
}
