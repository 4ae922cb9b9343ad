package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The main figures beside those of a training without the nearest neighbours of the structures asked about. */
final class NeighbourTable {
    private record Row(String head, String figure, FigureForm form) {}

    private static final List<Row> ROWS = List.of(
            new Row("error, one trial", "one-trial-informative.error", FigureForm.RF),
            new Row("error, two trials", "two-trials.error", FigureForm.RF),
            new Row("possible plates hit", "plates.possible.hit", FigureForm.PERCENT),
            new Row("chance said less came true", "plates.all.said-less-came", FigureForm.SIGNED),
            new Row("90 % bands hold, one trial", "one-trial-informative.cover90", FigureForm.PERCENT));

    private NeighbourTable() {}

    static String of(Accuracy accuracy) {
        List<String> names = List.copyOf(accuracy.neighboursLeftOut().keySet());
        List<String> heads = new ArrayList<>();
        for (String name : names) {
            heads.add(name);
            heads.add("neighbours left out");
            heads.add("difference");
        }
        names.stream().skip(1).forEach(name -> heads.add("both left out: " + Accuracy.less(names.get(0), name)));
        MarkdownTable table = new MarkdownTable("neighbours of those asked about", heads);
        table.row("structures to learn from, by fold", structures(accuracy, names));
        for (Row row : ROWS) {
            table.row(row.head(), cells(accuracy, names, row));
        }
        return table.toString();
    }

    private static List<String> structures(Accuracy accuracy, List<String> names) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            cells.add(String.valueOf(accuracy.setting().get("structuresToLearnFrom")));
            cells.add(String.valueOf(accuracy.setting().get("structuresWithoutNeighbours")));
            cells.add("");
        }
        names.stream().skip(1).forEach(name -> cells.add(""));
        return cells;
    }

    private static List<String> cells(Accuracy accuracy, List<String> names, Row row) {
        FigureForm paired = row.form().ofDifference();
        List<String> cells = new ArrayList<>();
        for (String name : names) {
            cells.add(row.form().text(figure(accuracy.contenders(), name, row)));
            cells.add(row.form().text(figure(accuracy.neighboursLeftOut(), name, row)));
            cells.add(paired.text(figure(accuracy.differences(), Accuracy.toUsual(name), row)));
        }
        names.stream()
                .skip(1)
                .map(name -> Accuracy.withoutNeighbours(names.get(0), name))
                .forEach(pair -> cells.add(paired.text(figure(accuracy.differences(), pair, row))));
        return cells;
    }

    private static @Nullable Figure figure(Map<String, Map<String, Figure>> part, String name, Row row) {
        return part.getOrDefault(name, Map.of()).get(row.figure());
    }
}
