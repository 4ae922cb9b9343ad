package midplate.catalogue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.chemistry.Solvent;

/** Reads what is said in words: {@code cautions.csv} and {@code gaps.csv}. */
final class NoteReader {
    static final String CAUTIONS = "cautions.csv";
    static final String GAPS = "gaps.csv";

    /** In place of a solvent: the caution holds for every one. */
    static final String ANY = "any";

    private static final List<String> CAUTION_COLUMNS = List.of("solvent", "key", "text", "source", "basis");
    private static final List<String> GAP_COLUMNS = List.of("solvent", "property", "condition", "note");
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private NoteReader() {}

    /** The cautions of each solvent by its id, and those of every solvent under {@link #ANY}. */
    static Map<String, List<Caution>> cautions(
            DataFolder folder, Map<String, Solvent> solvents, Map<String, Source> sources) {
        Map<String, List<Caution>> cautions = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (CsvRow row : CsvTable.read(folder, CAUTIONS, CAUTION_COLUMNS)) {
            String id = row.text("solvent");
            if (!id.equals(ANY)) {
                row.named("solvent", solvents, SolventReader.FILE + "; \"" + ANY + "\" means every one");
            }
            String key = row.matching("key", KEY, "lower case with hyphens");
            if (!seen.add(id + "/" + key)) {
                throw row.bad("key", "each key once for a solvent", "Remove one of the two rows.");
            }
            Source source = row.named("source", sources, SourceReader.FILE);
            cautions.computeIfAbsent(id, any -> new ArrayList<>())
                    .add(new Caution(key, row.filled("text"), source, row.basis()));
        }
        cautions.replaceAll((id, list) -> List.copyOf(list));
        return cautions;
    }

    static List<Gap> gaps(DataFolder folder, Map<String, Solvent> solvents, Map<String, List<PublishedValue>> values) {
        Map<String, PropertyKind> kinds = PropertyKind.byId();
        Set<Gap> gaps = new HashSet<>();
        List<Gap> ordered = new ArrayList<>();
        for (CsvRow row : CsvTable.read(folder, GAPS, GAP_COLUMNS)) {
            Solvent solvent = row.named("solvent", solvents, SolventReader.FILE);
            row.named("property", kinds, "the program");
            Gap gap = new Gap(solvent, row.text("property"), row.text("condition"), row.filled("note"));
            boolean filled = values.getOrDefault(solvent.id(), List.of()).stream()
                    .anyMatch(value -> value.property().equals(gap.property())
                            && value.condition().equals(gap.condition()));
            if (filled || !gaps.add(new Gap(solvent, gap.property(), gap.condition(), ""))) {
                throw row.bad(
                        "property", "what " + PropertyReader.FILE + " lacks, each gap once", "Remove the row here.");
            }
            ordered.add(gap);
        }
        return List.copyOf(ordered);
    }
}
