package midplate.catalogue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import midplate.chemistry.Solvent;

/** Reads which compounds streak, and what helps: {@code streakers.csv}. */
final class StreakerReader {
    static final String FILE = "streakers.csv";

    private static final List<String> COLUMNS =
            List.of("group", "kind", "additive", "least", "most", "source", "basis", "note");
    /** More of an additive is a solvent [% v/v]. */
    private static final double MOST_PERCENT = 10;

    private StreakerReader() {}

    static List<Streaker> read(DataFolder folder, Map<String, Solvent> solvents, Map<String, Source> sources) {
        Map<String, FunctionalGroup> groups = FunctionalGroups.read(folder, sources).all().stream()
                .collect(Collectors.toMap(FunctionalGroup::id, Function.identity()));
        Map<String, Streaker.Kind> kinds = Streaker.Kind.byId();
        Set<String> seen = new HashSet<>();
        List<Streaker> streakers = new ArrayList<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            FunctionalGroup group = row.named("group", groups, FunctionalGroups.FILE);
            if (!seen.add(group.id())) {
                throw row.bad("group", "each group once", "Remove one of the two rows.");
            }
            row.basis();
            streakers.add(new Streaker(
                    group.id(),
                    row.named("kind", kinds, "the program"),
                    help(row, solvents),
                    row.named("source", sources, SourceReader.FILE),
                    row.filled("note")));
        }
        return List.copyOf(streakers);
    }

    private static Optional<Streaker.Help> help(CsvRow row, Map<String, Solvent> solvents) {
        if (row.text("additive").isEmpty()) {
            return Optional.empty();
        }
        Solvent additive = row.named("additive", solvents, SolventReader.FILE);
        row.number("least", 0, MOST_PERCENT);
        double least = Double.parseDouble(row.text("least"));
        row.number("most", least, MOST_PERCENT);
        return Optional.of(new Streaker.Help(additive, least, Double.parseDouble(row.text("most"))));
    }
}
