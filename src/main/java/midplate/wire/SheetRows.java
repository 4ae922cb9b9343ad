package midplate.wire;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a table, cells without blanks at their ends, rows without any cell filled left out.
 *
 * @param rows in the order of the file
 * @param openQuote the line of a quotation mark that is never closed, after which nothing could be read
 */
record SheetRows(List<Row> rows, OptionalLong openQuote) {
    /** The delimiters that are looked for, the rarer in plain text first. */
    static final List<Character> DELIMITERS = List.of('\t', ';', ',');

    /** A line by which spreadsheets tell each other the delimiter. */
    private static final Pattern TOLD = Pattern.compile("\\Asep=([;,\\t])[ \\t]*(?:\\r\\n|\\r|\\n|\\z)");

    private static final int LOOKED_AT = 200;

    /** Keeps its own copy. */
    SheetRows {
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param line of the file in which it begins, from 1
     * @param cells as they stand there
     */
    record Row(long line, List<String> cells) {
        /** The cell of a column; empty where the row is shorter. */
        String cell(int index) {
            return index < cells.size() ? cells.get(index) : "";
        }
    }

    /** All rows of a text. */
    static SheetRows of(String text, char delimiter) {
        return read(text, delimiter, Long.MAX_VALUE);
    }

    private static SheetRows read(String text, char delimiter, long most) {
        CSVFormat form = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true)
                .get();
        List<Row> rows = new ArrayList<>();
        Matcher told = TOLD.matcher(text);
        int skipped = told.find() ? told.end() : 0;
        long line = skipped > 0 ? 2 : 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text.substring(skipped)), form)) {
            long before = line - 1;
            Iterator<CSVRecord> records = parser.iterator();
            while (rows.size() < most && records.hasNext()) {
                List<String> cells = records.next().stream().map(String::strip).toList();
                if (cells.stream().anyMatch(cell -> !cell.isEmpty() && !cell.equals("\u001A"))) {
                    rows.add(new Row(line, cells));
                }
                line = before + parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException
                | IOException unclosed) { // the text is in memory: only a quotation mark can be at fault
            return new SheetRows(rows, OptionalLong.of(line));
        }
        return new SheetRows(rows, OptionalLong.empty());
    }

    /**
     * The delimiter of a text: the one a line {@code sep=} tells; else the one by which a row has the most headers that are known;
     * else the one that cuts most rows alike, into more than one cell.
     */
    static char delimiter(String text) {
        Matcher told = TOLD.matcher(text);
        if (told.find()) {
            return told.group(1).charAt(0);
        }
        char best = ',';
        double most = 0;
        for (char delimiter : DELIMITERS) {
            List<Row> rows = read(text, delimiter, LOOKED_AT).rows();
            double merit = rows.isEmpty() ? 0 : merit(rows);
            if (merit > most) {
                most = merit;
                best = delimiter;
            }
        }
        return best;
    }

    private static double merit(List<Row> rows) {
        OptionalInt head = Headers.row(rows, cell -> Headers.meaning(cell).isPresent());
        Row like = head.isPresent()
                ? rows.get(head.getAsInt())
                : rows.stream()
                        .limit(Headers.LOOKED_AT)
                        .max(Comparator.comparingInt(row -> row.cells().size()))
                        .orElseThrow();
        int cells = like.cells().size();
        long known = like.cells().stream()
                .filter(cell -> Headers.meaning(cell).isPresent())
                .count();
        double alike = rows.stream().filter(row -> row.cells().size() == cells).count() / (double) rows.size();
        return cells > 1 ? known + alike : 0;
    }
}
