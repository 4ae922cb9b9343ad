package midplate.inference;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the rows of {@code tlc.csv}: comma, header, RFC 4180; an Rf a little outside 0 to 1 is put at the nearer end. */
final class MeasurementReader {
    static final String FILE = "tlc.csv";

    private static final List<String> COLUMNS = Stream.concat(
                    Stream.of("compound_id", "cas", "name", "smiles"),
                    Stream.concat(Stream.of(OpenSolvent.values()).map(OpenSolvent::column), Stream.of("rf")))
            .toList();
    private static final Pattern ID = Pattern.compile("[0-9]{1,9}");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]{1,2})?");
    private static final double SUM_TOLERANCE = 0.001;
    private static final double RF_LOW = -0.05;
    private static final double RF_HIGH = 1.05;

    private final Map<Integer, String> structures = new HashMap<>();

    private MeasurementReader() {}

    static List<Measurement> read(byte[] bytes) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text(bytes)), CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            header(records);
            MeasurementReader reader = new MeasurementReader();
            List<Measurement> rows = new ArrayList<>();
            for (CSVRecord line : records.subList(1, records.size())) {
                rows.add(reader.row(line));
            }
            if (rows.isEmpty()) {
                throw new BadMeasurements(FILE, "2", "-", "", "at least one row", "Put the rows back.");
            }
            return rows;
        } catch (IOException | UncheckedIOException e) {
            throw new BadMeasurements(
                            FILE, "-", "-", String.valueOf(e.getMessage()), "CSV as in RFC 4180", "Mind the quotes.")
                    .because(e);
        }
    }

    private static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadMeasurements(FILE, "-", "-", "bytes that are no UTF-8", "text in UTF-8", "Save it in UTF-8.")
                    .because(e);
        }
    }

    private static void header(List<CSVRecord> records) {
        List<String> found = records.isEmpty() ? List.of() : records.get(0).toList();
        if (!found.equals(COLUMNS)) {
            throw new BadMeasurements(
                    FILE,
                    "1",
                    "-",
                    String.join(",", found),
                    String.join(",", COLUMNS),
                    "Name the columns so, in this order.");
        }
    }

    private Measurement row(CSVRecord line) {
        if (line.size() != COLUMNS.size()) {
            String last = line.get(line.size() - 1);
            String column = COLUMNS.get(Math.min(line.size(), COLUMNS.size()) - 1);
            String allowed = COLUMNS.size() + " cells in a row, not " + line.size();
            throw bad(line, column, last, allowed, "Count the commas; a cell with a comma in it stands in quotes.");
        }
        List<Double> fractions = new ArrayList<>();
        double sum = 0;
        for (OpenSolvent solvent : OpenSolvent.values()) {
            double fraction = number(line, solvent.column(), 0, 1);
            fractions.add(fraction);
            sum += fraction;
        }
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            String came = String.format(Locale.ROOT, "%.4f", sum);
            throw bad(line, "hexane to methanol", came, "a sum in [0.999, 1.001]", "Correct the fractions.");
        }
        double rf = Math.min(1, Math.max(0, number(line, "rf", RF_LOW, RF_HIGH)));
        return new Measurement(series(line), fractions, rf);
    }

    private Series series(CSVRecord line) {
        String id = cell(line, "compound_id");
        if (!ID.matcher(id).matches()) {
            throw bad(line, "compound_id", id, "a whole number in [0, 999999999]", "Correct the cell.");
        }
        String smiles = cell(line, "smiles");
        if (smiles.isBlank() || !smiles.equals(smiles.strip())) {
            throw bad(line, "smiles", smiles, "a structure without blanks around it", "Fill or correct the cell.");
        }
        int compound = Integer.parseInt(id);
        String known = structures.putIfAbsent(compound, smiles);
        if (known != null && !known.equals(smiles)) {
            throw bad(line, "smiles", smiles, known + ", as above for this id", "Give each structure its own id.");
        }
        return new Series(compound, smiles);
    }

    private static double number(CSVRecord line, String column, double low, double high) {
        String cell = cell(line, column);
        double value = NUMBER.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
        if (!(value >= low && value <= high)) {
            String allowed = String.format(Locale.ROOT, "one number in [%s, %s]", low, high);
            throw bad(line, column, cell, allowed, "Correct the cell, or remove the row.");
        }
        return value;
    }

    private static String cell(CSVRecord line, String column) {
        return line.get(COLUMNS.indexOf(column));
    }

    private static BadMeasurements bad(CSVRecord line, String column, String cell, String allowed, String todo) {
        return new BadMeasurements(FILE, Long.toString(line.getRecordNumber()), column, cell, allowed, todo);
    }
}
