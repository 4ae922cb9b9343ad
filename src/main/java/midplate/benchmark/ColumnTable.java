package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Columns foretold from plates. */
final class ColumnTable {
    private record Row(String head, String figure, FigureForm form) {}

    private static final List<Row> ROWS = List.of(
            new Row("4 g, Rf 0.1 to 0.6: middle within ±25 %", "all.4g.within25", FigureForm.PERCENT),
            new Row("– within ±35 %", "all.4g.within35", FigureForm.PERCENT),
            new Row("– told the plate with the same eluent only: ±25 %", "same.4g.within25", FigureForm.PERCENT),
            new Row("– ±35 %", "same.4g.within35", FigureForm.PERCENT),
            new Row("8, 25 and 40 g: ±25 %", "all.other.within25", FigureForm.PERCENT),
            new Row("– ±35 %", "all.other.within35", FigureForm.PERCENT),
            new Row("4 g, told a column in another eluent: ±25 %", "earlier.4g.within25", FigureForm.PERCENT),
            new Row("– in a weaker one", "weaker.4g.within25", FigureForm.PERCENT),
            new Row("– in a stronger one", "stronger.4g.within25", FigureForm.PERCENT),
            new Row("– the same runs without it", "unearlier.4g.within25", FigureForm.PERCENT),
            new Row("90 % bands hold the start, all sizes", "all.cover90.start", FigureForm.PERCENT),
            new Row("– the middle", "all.cover90.middle", FigureForm.PERCENT),
            new Row("– the end", "all.cover90.end", FigureForm.PERCENT),
            new Row("– told a column: the start", "earlier.cover90.start", FigureForm.PERCENT),
            new Row("– the middle", "earlier.cover90.middle", FigureForm.PERCENT),
            new Row("– the end", "earlier.cover90.end", FigureForm.PERCENT));
    private static final List<String> NAMES =
            List.of(ColumnBenchmark.PROGRAM, ColumnBenchmark.IDEAL, ColumnBenchmark.PLAIN, ColumnBenchmark.REPEAT);

    private ColumnTable() {}

    static Optional<String> of(Accuracy accuracy) {
        Map<String, Map<String, Figure>> columns = accuracy.columns();
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        List<String> names = NAMES.stream().filter(columns::containsKey).toList();
        List<String> heads = new ArrayList<>(names);
        heads.add("runs");
        MarkdownTable table = new MarkdownTable("columns", heads);
        for (Row row : ROWS) {
            List<String> cells = new ArrayList<>();
            for (String name : names) {
                cells.add(cell(row, name, columns.getOrDefault(name, Map.of()).get(row.figure())));
            }
            cells.add(count(
                    columns.getOrDefault(ColumnBenchmark.PROGRAM, Map.of()).get(row.figure())));
            table.row(row.head(), cells);
        }
        return Optional.of(table.toString());
    }

    /** Runs that were made twice are others, and fewer: how many stands with them. */
    private static String cell(Row row, String name, @Nullable Figure figure) {
        String text = row.form().text(figure);
        return figure != null && name.equals(ColumnBenchmark.REPEAT) ? text + " (n = " + figure.count() + ")" : text;
    }

    private static String count(@Nullable Figure figure) {
        return figure == null ? "–" : Long.toString(figure.count());
    }
}
