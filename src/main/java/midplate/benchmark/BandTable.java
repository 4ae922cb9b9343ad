package midplate.benchmark;

import java.util.List;
import java.util.Map;

/** 90 % bands: how often they hold the truth, on which side it lies otherwise, and how narrow they are. */
final class BandTable {
    private static final Map<String, String> KINDS = Map.of(
            "one-trial-informative", "one trial",
            "two-trials", "two trials",
            "methanol-one-trial-informative", "one trial with methanol");
    private static final List<String> ORDER =
            List.of("one-trial-informative", "two-trials", "methanol-one-trial-informative");

    private BandTable() {}

    static String of(Accuracy accuracy) {
        MarkdownTable table = new MarkdownTable(
                "90 % bands",
                List.of(
                        "hold the truth",
                        "where Rf < 1/3 is foretold",
                        "1/3 to 2/3",
                        "> 2/3",
                        "truth below",
                        "truth above",
                        "mean interval score"));
        String program = accuracy.first().orElse(Contenders.PROGRAM);
        // the contenders that calibrate their bands
        List<String> names = List.of(program, Contenders.BEFORE, Contenders.ONE_SLOPE);
        for (String kind : ORDER) {
            for (String name : names) {
                Map<String, Figure> figures = accuracy.contenders().get(name);
                if (figures != null) {
                    table.row(KINDS.get(kind) + ", " + name, cells(kind, figures));
                }
            }
            Map<String, Figure> paired = accuracy.differences().get(Accuracy.less(program, Contenders.BEFORE));
            if (paired != null && accuracy.contenders().containsKey(Contenders.BEFORE)) {
                table.row(KINDS.get(kind) + ", difference of the first two", differences(kind, paired));
            }
        }
        return table.toString();
    }

    private static List<String> cells(String kind, Map<String, Figure> figures) {
        return List.of(
                FigureForm.PERCENT.text(figures.get(kind + ".cover90")),
                FigureForm.PERCENT.text(figures.get(kind + ".cover90.low-third")),
                FigureForm.PERCENT.text(figures.get(kind + ".cover90.middle-third")),
                FigureForm.PERCENT.text(figures.get(kind + ".cover90.high-third")),
                FigureForm.PERCENT.text(figures.get(kind + ".truth-below-band")),
                FigureForm.PERCENT.text(figures.get(kind + ".truth-above-band")),
                FigureForm.RF.text(figures.get(kind + ".interval-score")));
    }

    /** Thirds are sorted by what each foretells, so they cannot be paired. */
    private static List<String> differences(String kind, Map<String, Figure> figures) {
        return List.of(
                FigureForm.PERCENT_DIFFERENCE.text(figures.get(kind + ".cover90")),
                "",
                "",
                "",
                FigureForm.PERCENT_DIFFERENCE.text(figures.get(kind + ".truth-below-band")),
                FigureForm.PERCENT_DIFFERENCE.text(figures.get(kind + ".truth-above-band")),
                FigureForm.RF_DIFFERENCE.text(figures.get(kind + ".interval-score")));
    }
}
