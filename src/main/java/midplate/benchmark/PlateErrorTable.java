package midplate.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import midplate.plate.Setting;

/** What a fresh error of each plate does to hits and chances, in each setting. */
final class PlateErrorTable {
    private PlateErrorTable() {}

    static String of(Accuracy accuracy) {
        List<String> heads = Arrays.stream(Setting.values())
                .map(setting -> "`" + setting.id() + "`: possible plates hit; chance said → came true")
                .toList();
        MarkdownTable table = new MarkdownTable("error of each plate, simulated", heads);
        String program = accuracy.first().orElse("");
        for (double size : PlateErrorTask.SIZES) {
            List<String> cells = new ArrayList<>();
            for (Setting setting : Setting.values()) {
                Map<String, Figure> figures =
                        accuracy.plateError().getOrDefault(PlateErrorMarks.name(program, setting, size), Map.of());
                cells.add(FigureForm.PERCENT.text(figures.get("plates.possible.hit")) + "; "
                        + FigureForm.chance(figures.get("plates.all.said"), figures.get("plates.all.hit")));
            }
            table.row(size == 0 ? "none" : String.format(Locale.ROOT, "%.2f", size), cells);
        }
        return table.toString();
    }
}
