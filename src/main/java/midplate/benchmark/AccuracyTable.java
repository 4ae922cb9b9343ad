package midplate.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The results as a Markdown table, and its place in a document between two marks. */
public final class AccuracyTable {
    /** The line above the table. */
    public static final String BEGIN = "<!-- accuracy:begin -->";
    /** The line below the table. */
    public static final String END = "<!-- accuracy:end -->";

    private static final List<Column> COLUMNS = List.of(
            new Column("error, one trial", "one-trial-informative.error", Form.RF),
            new Column("error, two trials", "two-trials.error", Form.RF),
            new Column("error, one trial with methanol", "methanol-one-trial-informative.error", Form.RF),
            new Column("90 % bands hold", "one-trial-informative.cover90", Form.PERCENT),
            new Column("possible plates hit", "plates.possible.hit", Form.PERCENT),
            new Column("after a failed trial", "plates.possible.failed-trial.hit", Form.PERCENT),
            new Column("after a spot at the start line", "plates.possible.baseline.hit", Form.PERCENT),
            new Column("after a spot at the front", "plates.possible.front.hit", Form.PERCENT),
            new Column("chance said less came true", "plates.all.said-less-came", Form.SIGNED));

    private static final int FIFTHS = 5;

    private AccuracyTable() {}

    /** Two tables, a contender a row, each figure with its standard error: accuracy, and chances said and come true. */
    public static String of(Accuracy accuracy) {
        return accuracy(accuracy) + "\n" + chances(accuracy);
    }

    private static String accuracy(Accuracy accuracy) {
        String head = "| model | " + COLUMNS.stream().map(Column::head).collect(Collectors.joining(" | ")) + " |\n";
        String rule = "| --- |" + " ---: |".repeat(COLUMNS.size()) + "\n";
        String rows = accuracy.contenders().entrySet().stream()
                .map(contender -> row(contender.getKey(), contender.getValue()))
                .collect(Collectors.joining());
        return head + rule + rows;
    }

    private static String row(String name, Map<String, Figure> figures) {
        return COLUMNS.stream()
                .map(column -> column.form().text(figures.get(column.figure())))
                .collect(Collectors.joining(" | ", "| " + name + " | ", " |\n"));
    }

    /** By fifth of the chance said: its mean there, and the share that came true. */
    private static String chances(Accuracy accuracy) {
        StringBuilder table = new StringBuilder(
                "| model: mean chance said → share come true | 0–0.2 | 0.2–0.4 | 0.4–0.6 | 0.6–0.8 | 0.8–1 |\n");
        table.append("| --- |").append(" ---: |".repeat(FIFTHS)).append("\n");
        accuracy.contenders().forEach((name, figures) -> {
            table.append("| ").append(name).append(" |");
            for (int fifth = 1; fifth <= FIFTHS; fifth++) {
                String prefix = "plates.all.fifth-" + fifth + ".";
                String said = Form.SAID.text(figures.get(prefix + "said"));
                String came = Form.CAME.text(figures.get(prefix + "came"));
                table.append(" ").append(said).append(" → ").append(came).append(" |");
            }
            table.append("\n");
        });
        return table.toString();
    }

    /**
     * A document with this table between the two marks.
     *
     * @throws IllegalArgumentException when the marks are not there once each, in their order
     */
    public static String placed(String document, String table) {
        int begin = once(document, BEGIN) + BEGIN.length();
        int end = once(document, END);
        if (end < begin) {
            throw new IllegalArgumentException(END + " stands before " + BEGIN + "; swap them.");
        }
        return document.substring(0, begin) + "\n" + table + document.substring(end);
    }

    /** What stands between the two marks of a document. */
    public static String found(String document) {
        int begin = once(document, BEGIN) + BEGIN.length();
        int end = once(document, END);
        return document.substring(Math.min(begin, end), end).strip() + "\n";
    }

    private static int once(String document, String mark) {
        int at = document.indexOf(mark);
        if (at < 0 || document.indexOf(mark, at + 1) >= 0) {
            throw new IllegalArgumentException("The document must hold " + mark + " exactly once; add or remove it.");
        }
        return at;
    }

    private record Column(String head, String figure, Form form) {}

    private enum Form {
        RF("%.3f ± %.3f", 1),
        PERCENT("%.0f ± %.0f %%", 100),
        SIGNED("%+.2f ± %.2f", 1),
        SAID("%.2f", 1),
        CAME("%.2f ± %.2f", 1);

        private final String format;
        private final double factor;

        Form(String format, double factor) {
            this.format = format;
            this.factor = factor;
        }

        String text(@Nullable Figure figure) {
            if (figure == null || !Double.isFinite(figure.value())) {
                return "–";
            }
            String text = String.format(Locale.ROOT, format, factor * figure.value(), factor * figure.standardError());
            return text.replace('-', '−');
        }
    }
}
