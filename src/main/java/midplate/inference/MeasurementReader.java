package midplate.inference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the rows of {@code tlc.csv}: comma, header, RFC 4180; an Rf a little outside 0 to 1 is put at the nearer end. */
final class MeasurementReader {
    static final String FILE = "tlc.csv";

    private static final List<String> COLUMNS = Stream.concat(
                    Stream.of("compound_id", "cas", "name", "smiles"),
                    Stream.concat(Stream.of(OpenSolvent.values()).map(OpenSolvent::column), Stream.of("rf")))
            .toList();
    private static final Pattern ID = Pattern.compile("[0-9]{1,9}");
    private static final double SUM_TOLERANCE = 0.001;
    private static final double RF_LOW = -0.05;
    private static final double RF_HIGH = 1.05;

    private final Map<Integer, String> structures = new HashMap<>();

    private MeasurementReader() {}

    static List<Measurement> read(byte[] bytes) {
        return new OpenTable(FILE, COLUMNS).rows(bytes, new MeasurementReader()::row);
    }

    private Measurement row(OpenTable.Row row) {
        List<Double> fractions = new ArrayList<>();
        double sum = 0;
        for (OpenSolvent solvent : OpenSolvent.values()) {
            double fraction = row.number(solvent.column(), 0, 1);
            fractions.add(fraction);
            sum += fraction;
        }
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            String came = String.format(Locale.ROOT, "%.4f", sum);
            throw row.bad("hexane to methanol", came, "a sum in [0.999, 1.001]", "Correct the fractions.");
        }
        double rf = Math.min(1, Math.max(0, row.number("rf", RF_LOW, RF_HIGH)));
        return new Measurement(series(row), fractions, rf);
    }

    private Series series(OpenTable.Row row) {
        String id = row.cell("compound_id");
        if (!ID.matcher(id).matches()) {
            throw row.bad("compound_id", id, "a whole number in [0, 999999999]", "Correct the cell.");
        }
        String smiles = row.smiles();
        int compound = Integer.parseInt(id);
        String known = structures.putIfAbsent(compound, smiles);
        if (known != null && !known.equals(smiles)) {
            throw row.bad("smiles", smiles, known + ", as above for this id", "Give each structure its own id.");
        }
        return new Series(compound, smiles);
    }
}
