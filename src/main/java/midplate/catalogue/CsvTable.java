package midplate.catalogue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A CSV file with a header of known columns: comma, LF, RFC 4180. */
final class CsvTable {
    private CsvTable() {}

    /**
     * All rows of a file.
     *
     * @param columns the columns it must have, no more and no fewer, in any order
     */
    static List<CsvRow> read(DataFolder folder, String file, List<String> columns) {
        String text = folder.text(file);
        try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            List<String> header = header(file, records, columns);
            List<CsvRow> rows = new ArrayList<>();
            for (CSVRecord line : records.subList(1, records.size())) {
                rows.add(row(file, header, line));
            }
            if (rows.isEmpty()) {
                throw new BadSolventData(file, "2", "-", "", "at least one row", "Put the rows back.");
            }
            return rows;
        } catch (IOException | UncheckedIOException e) {
            throw DataFolder.because(
                    e,
                    new BadSolventData(
                            file, "-", "-", String.valueOf(e.getMessage()), "CSV as in RFC 4180", "Mind the quotes."));
        }
    }

    private static List<String> header(String file, List<CSVRecord> records, List<String> columns) {
        List<String> header = records.isEmpty() ? List.of() : records.get(0).toList();
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!columns.contains(column) || !seen.add(column)) {
                throw new BadSolventData(
                        file, "1", column, column, "each of " + columns + " once", "Remove or rename the column.");
            }
        }
        for (String column : columns) {
            if (!seen.contains(column)) {
                throw new BadSolventData(
                        file, "1", column, "", "each of " + columns + " once", "Add the missing column.");
            }
        }
        return header;
    }

    private static CsvRow row(String file, List<String> header, CSVRecord line) {
        String number = Long.toString(line.getRecordNumber());
        if (line.size() != header.size()) {
            String last = line.get(line.size() - 1);
            throw new BadSolventData(
                    file,
                    number,
                    header.get(Math.min(line.size(), header.size()) - 1),
                    last,
                    header.size() + " cells in a row, not " + line.size(),
                    "Count the commas; a cell with a comma in it stands in quotes.");
        }
        for (int i = 0; i < header.size(); i++) {
            String cell = line.get(i);
            if (!cell.equals(cell.strip())) {
                throw new BadSolventData(
                        file, number, header.get(i), cell, "no blanks at either end", "Remove the blanks.");
            }
        }
        return new CsvRow(file, number, header, line.toList());
    }
}
