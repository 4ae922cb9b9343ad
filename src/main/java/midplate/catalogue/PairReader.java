package midplate.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import midplate.chemistry.Solvent;

/** Reads what stands about two solvents: {@code miscibility.csv} and {@code stand-ins.csv}. */
final class PairReader {
    static final String MISCIBILITY = "miscibility.csv";
    static final String STAND_INS = "stand-ins.csv";

    private static final List<String> PAIR_COLUMNS =
            List.of("solvent_a", "solvent_b", "verdict", "source", "locator", "basis", "confidence", "note");
    private static final List<String> STAND_IN_COLUMNS = List.of("solvent", "stands_in_for", "source", "basis", "note");

    private final DataFolder folder;
    private final Map<String, Solvent> solvents;
    private final Map<String, Source> sources;

    PairReader(DataFolder folder, Map<String, Solvent> solvents, Map<String, Source> sources) {
        this.folder = folder;
        this.solvents = solvents;
        this.sources = sources;
    }

    List<Immiscibility> immiscible() {
        List<Immiscibility> pairs = new ArrayList<>();
        for (CsvRow row : CsvTable.read(folder, MISCIBILITY, PAIR_COLUMNS)) {
            Solvent one = row.named("solvent_a", solvents, SolventReader.FILE);
            Solvent other = row.named("solvent_b", solvents, SolventReader.FILE);
            if (one.equals(other)) {
                throw row.bad("solvent_b", "another solvent than solvent_a", "Correct the cell.");
            }
            if (find(pairs, one, other) != null) {
                throw row.bad("solvent_b", "each pair once, in one order only", "Remove one of the two rows.");
            }
            Basis basis = row.basis();
            pairs.add(new Immiscibility(
                    one,
                    other,
                    verdict(row),
                    row.named("source", sources, SourceReader.FILE),
                    row.text("locator"),
                    basis,
                    row.confidence(basis),
                    row.text("note")));
        }
        return List.copyOf(pairs);
    }

    Map<String, StandIn> standIns() {
        Map<String, StandIn> standIns = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, STAND_INS, STAND_IN_COLUMNS)) {
            Solvent solvent = row.named("solvent", solvents, SolventReader.FILE);
            Solvent measured = row.named("stands_in_for", solvents, SolventReader.FILE);
            Source source = row.named("source", sources, SourceReader.FILE);
            if (solvent.equals(measured)) {
                throw row.bad("stands_in_for", "another solvent", "Correct the cell, or remove the row.");
            }
            StandIn standIn = new StandIn(solvent, measured, source, row.basis(), row.filled("note"));
            if (standIns.put(solvent.id(), standIn) != null) {
                throw row.bad("solvent", "each solvent once", "Remove one of the two rows.");
            }
        }
        return standIns;
    }

    /** The verdict on a pair, whichever of the two comes first. */
    static @org.jspecify.annotations.Nullable Immiscibility find(
            List<Immiscibility> pairs, Solvent one, Solvent other) {
        for (Immiscibility pair : pairs) {
            boolean same = pair.one().equals(one) && pair.other().equals(other);
            boolean swapped = pair.one().equals(other) && pair.other().equals(one);
            if (same || swapped) {
                return pair;
            }
        }
        return null;
    }

    private static Immiscibility.Verdict verdict(CsvRow row) {
        Map<String, Immiscibility.Verdict> words = new LinkedHashMap<>();
        Arrays.stream(Immiscibility.Verdict.values())
                .forEach(verdict ->
                        words.put(verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'), verdict));
        return row.named("verdict", words, "the program");
    }
}
