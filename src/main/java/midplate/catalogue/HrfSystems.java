package midplate.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The eluents with published reference spots: {@code reference-spots.csv}, in the order of the file.
 *
 * @param all each id once
 * @see "ClarkesAnalysis"
 */
public record HrfSystems(List<HrfSystem> all) {
    static final String FILE = "reference-spots.csv";

    private static final List<String> COLUMNS =
            List.of("system", "eluent", "conditions", "reference", "hrf", "source", "basis", "confidence", "note");

    /** Keeps its own copy. */
    public HrfSystems {
        all = List.copyOf(all);
    }

    /** The table packed with the program, read once. */
    public static HrfSystems builtIn() {
        return Packed.TABLE;
    }

    private static final class Packed {
        static final HrfSystems TABLE = read(DataFolder.packed(), SourceReader.read(DataFolder.packed()));
    }

    /** The system of that id, written exactly so. */
    public Optional<HrfSystem> byId(String id) {
        return all.stream().filter(system -> system.id().equals(id)).findFirst();
    }

    static HrfSystems read(DataFolder folder, Map<String, Source> sources) {
        Map<String, HrfSystem> systems = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            HrfSystem one = one(row, sources);
            systems.merge(one.id(), one, (before, more) -> joined(row, before, more));
        }
        return new HrfSystems(List.copyOf(systems.values()));
    }

    private static HrfSystem one(CsvRow row, Map<String, Source> sources) {
        Basis basis = row.basis();
        row.confidence(basis);
        row.filled("note");
        row.number("hrf", 1, 99);
        HrfSystem.HrfStandard standard =
                new HrfSystem.HrfStandard(row.filled("reference"), Double.parseDouble(row.text("hrf")), basis);
        return new HrfSystem(
                row.filled("system"),
                row.filled("eluent"),
                row.filled("conditions"),
                row.named("source", sources, SourceReader.FILE),
                List.of(standard));
    }

    private static HrfSystem joined(CsvRow row, HrfSystem before, HrfSystem more) {
        HrfSystem.HrfStandard last = before.standards().get(before.standards().size() - 1);
        HrfSystem.HrfStandard next = more.standards().get(0);
        if (!(next.hrf() > last.hrf())) {
            throw row.bad("hrf", "more than in the row before", "Put the rows of a system in order, each once.");
        }
        boolean alike = before.eluent().equals(more.eluent())
                && before.conditions().equals(more.conditions())
                && before.source().equals(more.source());
        if (!alike) {
            throw row.bad("system", "one eluent, conditions and source for a system", "Write all rows alike.");
        }
        List<HrfSystem.HrfStandard> standards = new ArrayList<>(before.standards());
        standards.add(next);
        return new HrfSystem(before.id(), before.eluent(), before.conditions(), before.source(), standards);
    }
}
