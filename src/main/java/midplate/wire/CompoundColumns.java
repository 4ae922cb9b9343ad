package midplate.wire;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * A table with one column a compound, the Rf below its name, and one row a plate.
 *
 * @param headers of all columns
 * @param compounds the numbers of the columns of compounds
 */
record CompoundColumns(List<String> headers, List<Integer> compounds) {
    /** Keeps its own copies. */
    CompoundColumns {
        headers = List.copyOf(headers);
        compounds = List.copyOf(compounds);
    }

    /** The columns that have a name and mostly numbers from 0 to 1; empty where there is none. */
    static Optional<CompoundColumns> of(List<String> headers, Collection<Integer> known, List<SheetRows.Row> rows) {
        boolean uneven = rows.stream()
                .anyMatch(row -> row.cells().stream().skip(headers.size()).anyMatch(cell -> !cell.isEmpty()));
        List<Integer> compounds = IntStream.range(0, headers.size())
                .filter(i -> !headers.get(i).isEmpty() && !known.contains(i))
                .filter(i -> mostAreRf(TableColumns.filled(rows, i)))
                .boxed()
                .toList();
        return uneven || compounds.isEmpty() ? Optional.empty() : Optional.of(new CompoundColumns(headers, compounds));
    }

    private static boolean mostAreRf(List<String> cells) {
        long rf = cells.stream().filter(TableNumbers::mayBeRf).count();
        return 2 * rf > cells.size()
                && cells.stream().anyMatch(cell -> TableNumbers.mayBeRf(cell) && cell.length() > 1);
    }

    /** Which they are. */
    Message said() {
        return Message.of(
                "import.compound-columns",
                "compounds",
                Allowed.words(
                        compounds.stream().map(headers::get).map(ShownText::of).toList()));
    }

    /** Each row once for each of its compounds, with two more cells behind the last column: the compound and its Rf. */
    List<SheetRows.Row> rows(List<SheetRows.Row> rows) {
        List<SheetRows.Row> spots = new ArrayList<>();
        for (SheetRows.Row row : rows) {
            List<Integer> seen =
                    compounds.stream().filter(i -> !row.cell(i).isEmpty()).toList();
            seen.forEach(i -> spots.add(longer(row, headers.get(i), row.cell(i))));
            if (seen.isEmpty()) {
                spots.add(longer(row, "", ""));
            }
        }
        return spots;
    }

    private SheetRows.Row longer(SheetRows.Row row, String spot, String rf) {
        List<String> cells = new ArrayList<>();
        IntStream.range(0, headers.size()).mapToObj(row::cell).forEach(cells::add);
        cells.add(spot);
        cells.add(rf);
        return new SheetRows.Row(row.line(), cells);
    }
}
