package midplate.benchmark;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Second plates without labels, with the contenders that were asked about them; see {@link UnlabelledMarks}. */
final class UnlabelledTable {
    private static final String GUESS = "unlabelled.guess";
    private static final String ERROR = "unlabelled.error";

    private UnlabelledTable() {}

    /** Nothing when nobody was asked. */
    static Optional<String> of(Accuracy accuracy) {
        Map<String, Map<String, Figure>> asked = new LinkedHashMap<>(accuracy.contenders());
        asked.values().removeIf(figures -> !figures.containsKey(GUESS + ".right"));
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        MarkdownTable table = new MarkdownTable(
                "second plate without labels",
                List.of(
                        "mean probability said → guesses right",
                        "every compound apart",
                        "said 0.8–1",
                        "error, second plate labelled",
                        "error, second plate unlabelled",
                        "error, first plate alone",
                        "chance said less came true"));
        asked.forEach((name, figures) -> table.row(name, cells(figures)));
        return Optional.of(table.toString());
    }

    private static List<String> cells(Map<String, Figure> figures) {
        return List.of(
                chance(figures, GUESS + ".said", GUESS + ".right"),
                chance(figures, GUESS + ".apart.said", GUESS + ".apart.right"),
                chance(figures, GUESS + ".fifth-5.said", GUESS + ".fifth-5.came"),
                FigureForm.RF.text(figures.get(ERROR + ".second-labelled")),
                FigureForm.RF.text(figures.get(ERROR + ".second-unlabelled")),
                FigureForm.RF.text(figures.get(ERROR + ".first-alone")),
                FigureForm.SIGNED.text(figures.get("unlabelled.plates.said-less-came")));
    }

    private static String chance(Map<String, Figure> figures, String said, String came) {
        return FigureForm.chance(figures.get(said), figures.get(came));
    }
}
