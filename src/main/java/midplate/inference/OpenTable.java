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
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of open measurements: comma, header, RFC 4180, UTF-8. What is wrong with it is a {@link BadMeasurements} that names file,
 * row, column and cell.
 *
 * @param file its name
 * @param columns their names, in this order
 */
record OpenTable(String file, List<String> columns) {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]{1,2})?");

    /** What stands in each row below the header, at least one. */
    <T> List<T> rows(byte[] bytes, Function<Row, T> read) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text(bytes)), CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            header(records);
            List<T> rows = new ArrayList<>();
            for (CSVRecord line : records.subList(1, records.size())) {
                rows.add(read.apply(row(line)));
            }
            if (rows.isEmpty()) {
                throw new BadMeasurements(file, "2", "-", "", "at least one row", "Put the rows back.");
            }
            return rows;
        } catch (IOException | UncheckedIOException e) {
            throw new BadMeasurements(
                            file, "-", "-", String.valueOf(e.getMessage()), "CSV as in RFC 4180", "Mind the quotes.")
                    .because(e);
        }
    }

    private String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadMeasurements(file, "-", "-", "bytes that are no UTF-8", "text in UTF-8", "Save it in UTF-8.")
                    .because(e);
        }
    }

    private void header(List<CSVRecord> records) {
        List<String> found = records.isEmpty() ? List.of() : records.get(0).toList();
        if (!found.equals(columns)) {
            String todo = "Name the columns so, in this order.";
            throw new BadMeasurements(file, "1", "-", String.join(",", found), String.join(",", columns), todo);
        }
    }

    private Row row(CSVRecord line) {
        Row row = new Row(line);
        if (line.size() != columns.size()) {
            String last = line.get(line.size() - 1);
            String column = columns.get(Math.min(line.size(), columns.size()) - 1);
            String allowed = columns.size() + " cells in a row, not " + line.size();
            throw row.bad(column, last, allowed, "Count the commas; a cell with a comma in it stands in quotes.");
        }
        return row;
    }

    /** One row. */
    final class Row {
        private final CSVRecord line;

        private Row(CSVRecord line) {
            this.line = line;
        }

        String cell(String column) {
            return line.get(columns.indexOf(column));
        }

        /** The structure, as SMILES. */
        String smiles() {
            String smiles = cell("smiles");
            if (smiles.isBlank() || !smiles.equals(smiles.strip())) {
                throw bad("smiles", smiles, "a structure without blanks around it", "Fill or correct the cell.");
            }
            return smiles;
        }

        /** A number between two limits, themselves included. */
        double number(String column, double low, double high) {
            String cell = cell(column);
            double value = NUMBER.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
            if (!(value >= low && value <= high)) {
                String allowed = String.format(Locale.ROOT, "one number in [%s, %s]", low, high);
                throw bad(column, cell, allowed, "Correct the cell, or remove the row.");
            }
            return value;
        }

        BadMeasurements bad(String column, String cell, String allowed, String todo) {
            return new BadMeasurements(file, Long.toString(line.getRecordNumber()), column, cell, allowed, todo);
        }
    }
}
