package midplate.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import midplate.chemistry.Solvent;

/** Reads {@code properties.csv}: one published value a row. */
final class PropertyReader {
    static final String FILE = "properties.csv";

    private static final List<String> COLUMNS = List.of(
            "solvent",
            "property",
            "value",
            "unit",
            "condition",
            "uncertainty",
            "source",
            "locator",
            "basis",
            "confidence",
            "derived_from",
            "use",
            "note");
    private static final Pattern USE =
            Pattern.compile("|(" + PublishedValue.PREFERRED + "|" + PublishedValue.KEPT + ")\\S.*");

    private PropertyReader() {}

    /** The values of each solvent, by its id, in the order of the file. */
    static Map<String, List<PublishedValue>> read(
            DataFolder folder,
            Map<String, Solvent> solvents,
            Map<String, Source> sources,
            Map<String, String> hazardTexts) {
        Map<String, PropertyKind> kinds = PropertyKind.byId();
        Map<String, List<PublishedValue>> values = new LinkedHashMap<>();
        Map<String, List<CsvRow>> rivals = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            Solvent solvent = row.named("solvent", solvents, SolventReader.FILE);
            row.named("property", kinds, "the program").check(row, hazardTexts);
            PublishedValue value = value(row, sources);
            values.computeIfAbsent(solvent.id(), id -> new ArrayList<>()).add(value);
            String place = solvent.id() + "/" + value.property() + "/" + value.condition();
            rivals.computeIfAbsent(place, key -> new ArrayList<>()).add(row);
        }
        rivals.values().forEach(PropertyReader::checkRivals);
        values.replaceAll((id, list) -> List.copyOf(list));
        return values;
    }

    private static PublishedValue value(CsvRow row, Map<String, Source> sources) {
        Basis basis = row.basis();
        PublishedValue value = new PublishedValue(
                row.text("property"),
                row.text("value"),
                row.text("unit"),
                row.text("condition"),
                row.text("uncertainty"),
                row.named("source", sources, SourceReader.FILE),
                row.text("locator"),
                basis,
                row.confidence(basis),
                row.text("derived_from"),
                row.matching("use", USE, "nothing, or \"preferred: reason\", or \"kept: reason\""),
                row.text("note"));
        if (basis == Basis.OWN && value.note().isEmpty()) {
            throw row.bad("note", "the reasoning, where the basis is own", "Tell it.");
        }
        return value;
    }

    /** Of several values for one property and condition exactly one is preferred, with the reason. */
    private static void checkRivals(List<CsvRow> rows) {
        if (rows.size() == 1) {
            return;
        }
        List<CsvRow> preferred = rows.stream()
                .filter(row -> row.text("use").startsWith(PublishedValue.PREFERRED))
                .toList();
        if (preferred.size() != 1) {
            CsvRow last = preferred.isEmpty() ? rows.get(rows.size() - 1) : preferred.get(preferred.size() - 1);
            List<String> numbers = rows.stream().map(CsvRow::number).toList();
            throw last.bad(
                    "use",
                    "\"preferred: reason\" in exactly one of the rows " + numbers + ", here in " + preferred.size(),
                    "Mark one as preferred and the others as kept, or tell their conditions apart.");
        }
    }
}
