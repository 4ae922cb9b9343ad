package midplate.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The published table of glass columns, by growing diameter: {@code flash-columns.csv}.
 *
 * @param rows at least two, each diameter once
 * @see "Still1978"
 */
public record FlashColumns(List<FlashColumn> rows) {
    static final String FILE = "flash-columns.csv";

    private static final List<String> COLUMNS = List.of(
            "diameter_mm",
            "eluent_ml",
            "load_rf_02_mg",
            "load_rf_01_mg",
            "fraction_ml",
            "source",
            "basis",
            "confidence",
            "note");
    private static final double MOST = 100_000;

    /** Keeps its own copy. */
    public FlashColumns {
        rows = List.copyOf(rows);
    }

    /** The table packed with the program, read once. */
    public static FlashColumns builtIn() {
        return Packed.TABLE;
    }

    private static final class Packed {
        static final FlashColumns TABLE = read(DataFolder.packed(), SourceReader.read(DataFolder.packed()));
    }

    static FlashColumns read(DataFolder folder, Map<String, Source> sources) {
        List<FlashColumn> rows = new ArrayList<>();
        double last = 0;
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            double diameter = number(row, "diameter_mm");
            if (!(diameter > last)) {
                throw row.bad("diameter_mm", "more than in the row before", "Put the rows in order, each once.");
            }
            last = diameter;
            Basis basis = row.basis();
            row.filled("note");
            rows.add(new FlashColumn(
                    diameter,
                    number(row, "eluent_ml"),
                    number(row, "load_rf_02_mg"),
                    number(row, "load_rf_01_mg"),
                    number(row, "fraction_ml"),
                    row.named("source", sources, SourceReader.FILE),
                    basis,
                    row.confidence(basis)));
        }
        if (rows.size() < 2) {
            throw new BadSolventData(FILE, "-", "-", rows.size() + " rows", "2 rows or more", "Put them back.");
        }
        return new FlashColumns(rows);
    }

    private static double number(CsvRow row, String column) {
        row.number(column, 1, MOST);
        return Double.parseDouble(row.text(column));
    }

    /** The row of a diameter [mm] as printed; a value between two rows goes straight from one to the other. */
    public double at(double diameterMm, ToDoubleFunction<FlashColumn> value) {
        if (!(diameterMm >= narrowest() && diameterMm <= widest())) {
            throw new IllegalArgumentException(
                    diameterMm + " mm; allowed is " + narrowest() + " to " + widest() + " mm");
        }
        int after = 1;
        while (rows.get(after).diameterMm() < diameterMm) {
            after++;
        }
        FlashColumn low = rows.get(after - 1);
        FlashColumn high = rows.get(after);
        double part = (diameterMm - low.diameterMm()) / (high.diameterMm() - low.diameterMm());
        return (1 - part) * value.applyAsDouble(low) + part * value.applyAsDouble(high);
    }

    /** The smallest diameter [mm]. */
    public double narrowest() {
        return rows.get(0).diameterMm();
    }

    /** The greatest diameter [mm]. */
    public double widest() {
        return rows.get(rows.size() - 1).diameterMm();
    }
}
