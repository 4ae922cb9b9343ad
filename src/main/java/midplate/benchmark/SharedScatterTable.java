package midplate.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is left of readings when all others of the compound are told: whose it is, the plate's or the compound's. */
final class SharedScatterTable {
    private static final List<Map.Entry<String, String>> ROWS = List.of(
            Map.entry("hexane/ethyl-acetate.pure", "hexane"),
            Map.entry("hexane/ethyl-acetate.below-10", "hexane/ethyl acetate, 2 and 5 %"),
            Map.entry("hexane/ethyl-acetate.above-10", "hexane/ethyl acetate, 17 to 100 %"),
            Map.entry("dichloromethane/methanol.all", "dichloromethane/methanol"));

    private SharedScatterTable() {}

    /** The table; empty where nothing was asked. */
    static Optional<String> of(Accuracy accuracy) {
        Map<String, Figure> figures = accuracy.ceilings().getOrDefault(Accuracy.SHARED_SCATTER, Map.of());
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        MarkdownTable table = new MarkdownTable(
                "what is left of a reading, correlation of two compounds",
                List.of(
                        "measured one after the other, unlike",
                        "alike, measured apart",
                        "any two, measured apart",
                        "shared by what was measured together, in Rf midway"));
        for (Map.Entry<String, String> row : ROWS) {
            table.row(
                    row.getValue(),
                    List.of(
                            cell(figures, row.getKey() + ".neighbours"),
                            cell(figures, row.getKey() + ".alike"),
                            cell(figures, row.getKey() + ".others"),
                            FigureForm.RF.text(figures.get(row.getKey() + ".shared"))));
        }
        return Optional.of(table.toString());
    }

    private static String cell(Map<String, Figure> figures, String name) {
        Figure pairs = figures.get(name + "-pairs");
        return FigureForm.CORRELATION.text(figures.get(name))
                + (pairs == null ? "" : String.format(Locale.ROOT, " (n = %.0f)", pairs.value()));
    }
}
