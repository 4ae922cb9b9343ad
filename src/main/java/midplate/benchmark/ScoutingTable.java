package midplate.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Which plates to run at once, beside going straight to the likeliest ratio and beside the habit. */
final class ScoutingTable {
    private ScoutingTable() {}

    static String of(Accuracy accuracy) {
        MarkdownTable table = new MarkdownTable(
                "first plates run at once",
                List.of(
                        "possible samples in the window there or on the next plate",
                        "difference to going straight",
                        "on these plates themselves",
                        "all samples: chance said → came true",
                        "plates on average"));
        String straight = Scouted.Way.STRAIGHT.told();
        accuracy.scouting().forEach((name, figures) -> {
            Figure difference = accuracy.differences()
                    .getOrDefault(Accuracy.less(name, straight), Map.of())
                    .get("rounds.possible.came");
            Figure plates = figures.get("rounds.all.plates");
            table.row(
                    name,
                    List.of(
                            FigureForm.PERCENT.text(figures.get("rounds.possible.came")),
                            name.equals(straight) ? "" : FigureForm.PERCENT_DIFFERENCE.text(difference),
                            FigureForm.PERCENT.text(figures.get("rounds.possible.now")),
                            FigureForm.chance(figures.get("rounds.all.said"), figures.get("rounds.all.came")),
                            plates == null ? "–" : String.format(Locale.ROOT, "%.1f", plates.value())));
        });
        return table.toString();
    }
}
