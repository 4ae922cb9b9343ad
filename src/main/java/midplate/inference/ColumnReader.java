package midplate.inference;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

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
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]{1,2})?");
    private static final double MOST_PARTS = 1e6;
    private static final double MOST_ML = 1e6;
    private static final double UL_PER_ML = 1000;

    private ColumnReader() {}

    static List<ColumnMeasurement> read(byte[] bytes) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text(bytes)), CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            List<String> found = records.isEmpty() ? List.of() : records.get(0).toList();
            if (!found.equals(COLUMNS)) {
                String todo = "Name the columns so, in this order.";
                throw new BadMeasurements(FILE, "1", "-", String.join(",", found), String.join(",", COLUMNS), todo);
            }
            List<ColumnMeasurement> rows = new ArrayList<>();
            for (CSVRecord line : records.subList(1, records.size())) {
                rows.add(row(line));
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

    private static ColumnMeasurement row(CSVRecord line) {
        if (line.size() != COLUMNS.size()) {
            String last = line.get(line.size() - 1);
            String column = COLUMNS.get(Math.min(line.size(), COLUMNS.size()) - 1);
            String allowed = COLUMNS.size() + " cells in a row, not " + line.size();
            throw bad(line, column, last, allowed, "Count the commas; a cell with a comma in it stands in quotes.");
        }
        String smiles = cell(line, "smiles");
        if (smiles.isBlank() || !smiles.equals(smiles.strip())) {
            throw bad(line, "smiles", smiles, "a structure without blanks around it", "Fill or correct the cell.");
        }
        Matcher cartridge = CARTRIDGE.matcher(cell(line, "cartridge"));
        double grams = cartridge.matches() ? Double.parseDouble(cartridge.group(1)) : 0;
        if (!(grams > 0)) {
            String allowed = "grams of silica above 0, such as 4g";
            throw bad(line, "cartridge", cell(line, "cartridge"), allowed, "Correct the cell, or remove the row.");
        }
        double weak = number(line, "petroleum_ether_parts", 0, MOST_PARTS);
        double strong = number(line, "ethyl_acetate_parts", 0, MOST_PARTS);
        if (!(weak + strong > 0)) {
            String allowed = "parts of which one is above 0";
            throw bad(line, "ethyl_acetate_parts", cell(line, "ethyl_acetate_parts"), allowed, "Correct the parts.");
        }
        number(line, "flow_ml_min", 0, MOST_ML);
        return new ColumnMeasurement(
                smiles,
                grams,
                100 * strong / (weak + strong),
                number(line, "load_ul", 0, MOST_ML) / UL_PER_ML,
                number(line, "start_ml", -MOST_ML, MOST_ML),
                number(line, "end_ml", -MOST_ML, MOST_ML));
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
