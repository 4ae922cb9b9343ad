package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What structures add: the first plate, the plate after a trial, and forecasts with nothing read. */
final class StructureTable {
    private record Row(String head, String figure, FigureForm form) {}

    private static final List<Row> ROWS = List.of(
            new Row("first plate: possible plates hit", "first.possible.hit", FigureForm.PERCENT),
            new Row("– of one spot", "first.possible.one-spot.hit", FigureForm.PERCENT),
            new Row("– of two", "first.possible.two-spots.hit", FigureForm.PERCENT),
            new Row("– of three", "first.possible.three-spots.hit", FigureForm.PERCENT),
            new Row("first plate: chance said less came true", "first.all.said-less-came", FigureForm.SIGNED),
            new Row("error, nothing read", "from-structure.error", FigureForm.RF),
            new Row("90 % bands hold, nothing read", "from-structure.cover90", FigureForm.PERCENT),
            new Row("– with a rare group", "from-structure.rare.cover90", FigureForm.PERCENT),
            new Row("– with none", "from-structure.common.cover90", FigureForm.PERCENT),
            new Row("90 % bands hold, methanol, nothing read", "methanol-from-structure.cover90", FigureForm.PERCENT),
            new Row("error, one trial", "one-trial-informative.error", FigureForm.RF),
            new Row("90 % bands hold, one trial", "one-trial-informative.cover90", FigureForm.PERCENT),
            new Row("error, one trial with methanol", "methanol-one-trial-informative.error", FigureForm.RF),
            new Row("possible plates hit after a trial", "plates.possible.hit", FigureForm.PERCENT),
            new Row("– after a spot at the start line", "plates.possible.baseline.hit", FigureForm.PERCENT),
            new Row("– after a spot at the front", "plates.possible.front.hit", FigureForm.PERCENT),
            new Row("chance said less came true after a trial", "plates.all.said-less-came", FigureForm.SIGNED),
            new Row("error in ether, one trial in ethyl acetate", "switch-to-ether.error", FigureForm.RF),
            new Row("error with methanol, one trial in ethyl acetate", "switch-to-methanol.error", FigureForm.RF));

    private StructureTable() {}

    static String of(Accuracy accuracy) {
        List<String> names = List.copyOf(accuracy.structures().keySet());
        List<String> heads = new ArrayList<>();
        for (String name : names) {
            heads.add(name);
            if (isCompared(name, names)) {
                heads.add("difference");
            }
        }
        MarkdownTable table = new MarkdownTable("structures", heads);
        for (Row row : ROWS) {
            List<String> cells = new ArrayList<>();
            for (String name : names) {
                cells.add(row.form().text(figure(accuracy.structures(), name, row)));
                if (isCompared(name, names)) {
                    cells.add(row.form()
                            .ofDifference()
                            .text(figure(accuracy.differences(), Accuracy.less(names.get(0), name), row)));
                }
            }
            table.row(row.head(), cells);
        }
        return table.toString();
    }

    /** Of the first contender less the peers that got the same training. */
    private static boolean isCompared(String name, List<String> names) {
        return !name.equals(names.get(0)) && !name.equals(StructureContenders.neighboursLeftOut(names.get(0)));
    }

    private static @Nullable Figure figure(Map<String, Map<String, Figure>> part, String name, Row row) {
        return part.getOrDefault(name, Map.of()).get(row.figure());
    }
}
