package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The results as Markdown tables, each figure with its standard error. A table whose questions were not asked is left out.
 *
 * <ol>
 *   <li>Accuracy: a figure a row; the first contender, the model it had before with the paired difference, the ceilings (that of
 *       a second series with how many structures stand behind it, that of compounds as the model expects them), all others.
 *   <li>90 % bands of the program and its simpler forms.
 *   <li>Chances said and come true, a contender a row.
 *   <li>The same after a training without neighbours; what compounds measured together share; plates moved by an error of their own; second plates without labels.
 * </ol>
 */
final class AccuracyTable {
    private static final String SAID_LESS_CAME = "plates.all.said-less-came";
    private static final String HIT = "plates.possible.hit";
    private static final List<Row> ACCURACY = List.of(
            new Row("error, one trial", "one-trial-informative.error", FigureForm.RF, "hexane-ethyl-acetate"),
            new Row("error, two trials", "two-trials.error", FigureForm.RF, "hexane-ethyl-acetate"),
            new Row(
                    "error, one trial with methanol",
                    "methanol-one-trial-informative.error",
                    FigureForm.RF,
                    "dichloromethane-methanol"),
            new Row("possible plates hit", HIT, FigureForm.PERCENT),
            new Row("– after a failed trial", "plates.possible.failed-trial.hit", FigureForm.PERCENT),
            new Row("– after a spot at the start line", "plates.possible.baseline.hit", FigureForm.PERCENT),
            new Row("– after a spot at the front", "plates.possible.front.hit", FigureForm.PERCENT),
            new Row("chance said less came true", SAID_LESS_CAME, FigureForm.SIGNED));

    private AccuracyTable() {}

    /** All tables, an empty line between each two. */
    static String of(Accuracy accuracy) {
        List<String> tables = new ArrayList<>();
        tables.add(accuracy(accuracy));
        tables.add(BandTable.of(accuracy));
        tables.add(chances(accuracy));
        if (!accuracy.neighboursLeftOut().isEmpty()) {
            tables.add(NeighbourTable.of(accuracy));
        }
        SharedScatterTable.of(accuracy).ifPresent(tables::add);
        if (!accuracy.plateError().isEmpty()) {
            tables.add(PlateErrorTable.of(accuracy));
        }
        if (!accuracy.structures().isEmpty()) {
            tables.add(StructureTable.of(accuracy));
        }
        if (!accuracy.scouting().isEmpty()) {
            tables.add(ScoutingTable.of(accuracy));
        }
        if (!accuracy.theory().isEmpty()) {
            tables.add(TheoryTable.of(accuracy));
        }
        UnlabelledTable.of(accuracy).ifPresent(tables::add);
        ColumnTable.of(accuracy).ifPresent(tables::add);
        IdentityTable.of(accuracy).ifPresent(tables::add);
        return String.join("\n", tables);
    }

    private static String accuracy(Accuracy accuracy) {
        List<Column> columns = columns(accuracy);
        MarkdownTable table =
                new MarkdownTable("figure", columns.stream().map(Column::head).toList());
        for (Row row : ACCURACY) {
            table.row(
                    row.head(),
                    columns.stream().map(column -> column.cell().apply(row)).toList());
        }
        return table.toString();
    }

    private static List<Column> columns(Accuracy accuracy) {
        List<Column> columns = new ArrayList<>();
        List<String> others = new ArrayList<>(accuracy.contenders().keySet());
        String program = others.remove(0);
        columns.add(new Column(program, row -> row.text(accuracy.contenders(), program)));
        if (others.remove(Contenders.BEFORE)) {
            columns.add(new Column(Contenders.BEFORE, row -> row.text(accuracy.contenders(), Contenders.BEFORE)));
            columns.add(new Column(
                    "difference", row -> row.difference(accuracy, Accuracy.less(program, Contenders.BEFORE))));
        }
        if (accuracy.ceilings().containsKey(program)) {
            columns.add(new Column("all else told", row -> row.text(accuracy.ceilings(), program)));
        }
        if (accuracy.ceilings().containsKey(Accuracy.REPEAT)) {
            columns.add(new Column("a second series", row -> row.repeat(accuracy)));
        }
        if (accuracy.ceilings().containsKey(Accuracy.IF_TRUE)) {
            columns.add(new Column("if the model were true", row -> row.text(accuracy.ceilings(), Accuracy.IF_TRUE)));
        }
        others.forEach(name -> columns.add(new Column(name, row -> row.text(accuracy.contenders(), name))));
        return columns;
    }

    private static String chances(Accuracy accuracy) {
        MarkdownTable table = new MarkdownTable(
                "mean chance said → share come true", List.of("0–0.2", "0.2–0.4", "0.4–0.6", "0.6–0.8", "0.8–1"));
        accuracy.contenders().forEach((name, figures) -> {
            List<String> cells = new ArrayList<>();
            for (int fifth = 1; fifth <= 5; fifth++) {
                String part = "plates.all.fifth-" + fifth;
                cells.add(FigureForm.chance(figures.get(part + ".said"), figures.get(part + ".came")));
            }
            table.row(name, cells);
        });
        return table.toString();
    }

    private record Column(String head, Function<Row, String> cell) {}

    private record Row(String head, String figure, FigureForm form, Optional<String> repeatedPair) {
        Row(String head, String figure, FigureForm form) {
            this(head, figure, form, Optional.empty());
        }

        Row(String head, String figure, FigureForm form, String repeatedPair) {
            this(head, figure, form, Optional.of(repeatedPair));
        }

        String text(Map<String, Map<String, Figure>> part, String name) {
            return form.text(part.getOrDefault(name, Map.of()).get(figure));
        }

        String difference(Accuracy results, String name) {
            return form.ofDifference()
                    .text(results.differences().getOrDefault(name, Map.of()).get(figure));
        }

        String repeat(Accuracy results) {
            Map<String, Figure> repeats = results.ceilings().getOrDefault(Accuracy.REPEAT, Map.of());
            String name = "repeat." + repeatedPair.orElse("none");
            Figure structures = repeats.get(name + ".structures");
            return form.text(repeats.get(name + ".error"))
                    + (structures == null ? "" : String.format(Locale.ROOT, " (n = %.0f)", structures.value()));
        }
    }
}
