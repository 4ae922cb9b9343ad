package midplate.inference;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the rows of {@code column.csv}: comma, header, RFC 4180. Rows that cannot be used are read all the same. */
final class ColumnReader {
    static final String FILE = "column.csv";

    private static final List<String> COLUMNS = List.of(
            "cas",
            "name",
            "smiles",
            "cartridge",
            "petroleum_ether_parts",
            "ethyl_acetate_parts",
            "flow_ml_min",
            "load_ul",
            "start_ml",
            "end_ml");
    private static final Pattern CARTRIDGE = Pattern.compile("([0-9]{1,5}(?:\\.[0-9]{1,3})?)g");
    private static final double MOST_PARTS = 1e6;
    private static final double MOST_ML = 1e6;
    private static final double UL_PER_ML = 1000;

    private ColumnReader() {}

    static List<ColumnMeasurement> read(byte[] bytes) {
        return new OpenTable(FILE, COLUMNS).rows(bytes, ColumnReader::row);
    }

    private static ColumnMeasurement row(OpenTable.Row row) {
        String smiles = row.smiles();
        Matcher cartridge = CARTRIDGE.matcher(row.cell("cartridge"));
        double grams = cartridge.matches() ? Double.parseDouble(cartridge.group(1)) : 0;
        if (!(grams > 0)) {
            String allowed = "grams of silica above 0, such as 4g";
            throw row.bad("cartridge", row.cell("cartridge"), allowed, "Correct the cell, or remove the row.");
        }
        double weak = row.number("petroleum_ether_parts", 0, MOST_PARTS);
        double strong = row.number("ethyl_acetate_parts", 0, MOST_PARTS);
        if (!(weak + strong > 0)) {
            String allowed = "parts of which one is above 0";
            throw row.bad("ethyl_acetate_parts", row.cell("ethyl_acetate_parts"), allowed, "Correct the parts.");
        }
        row.number("flow_ml_min", 0, MOST_ML);
        return new ColumnMeasurement(
                smiles,
                grams,
                100 * strong / (weak + strong),
                row.number("load_ul", 0, MOST_ML) / UL_PER_ML,
                row.number("start_ml", -MOST_ML, MOST_ML),
                row.number("end_ml", -MOST_ML, MOST_ML));
    }
}
