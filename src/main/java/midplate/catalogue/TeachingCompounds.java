package midplate.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The compounds that lessons offer: {@code teaching-compounds.csv}, in the order of the file, least polar first as a rule.
 *
 * @param all each id once
 */
public record TeachingCompounds(List<TeachingCompound> all) {
    static final String FILE = "teaching-compounds.csv";

    private static final List<String> COLUMNS =
            List.of("id", "smiles", "seen", "source", "basis", "confidence", "note");

    private static final Map<String, TeachingCompound.Seen> SEEN = Arrays.stream(TeachingCompound.Seen.values())
            .collect(Collectors.toMap(TeachingCompound.Seen::id, seen -> seen));

    /** Keeps its own copy. */
    public TeachingCompounds {
        all = List.copyOf(all);
    }

    /** The table packed with the program, read once. */
    public static TeachingCompounds builtIn() {
        return Packed.TABLE;
    }

    private static final class Packed {
        static final TeachingCompounds TABLE = read(DataFolder.packed(), SourceReader.read(DataFolder.packed()));
    }

    /** The compound of that id, written exactly so. */
    public Optional<TeachingCompound> byId(String id) {
        return all.stream().filter(compound -> compound.id().equals(id)).findFirst();
    }

    static TeachingCompounds read(DataFolder folder, Map<String, Source> sources) {
        List<TeachingCompound> all = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            row.confidence(row.basis());
            row.named("source", sources, SourceReader.FILE);
            String id = row.filled("id");
            if (!ids.add(id)) {
                throw row.bad("id", "an id of its own", "Write each compound once.");
            }
            all.add(new TeachingCompound(id, row.filled("smiles"), seen(row), row.filled("note")));
        }
        return new TeachingCompounds(all);
    }

    private static TeachingCompound.Seen seen(CsvRow row) {
        return row.named("seen", SEEN, FILE);
    }
}
