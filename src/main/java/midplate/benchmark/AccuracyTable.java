package midplate.benchmark;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The results as Markdown tables, and their place in a document between two marks. */
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

    private static final List<Column> FIFTHS = List.of(
            Column.chance("0–0.2", "plates.all.fifth-1.said", "plates.all.fifth-1.came"),
            Column.chance("0.2–0.4", "plates.all.fifth-2.said", "plates.all.fifth-2.came"),
            Column.chance("0.4–0.6", "plates.all.fifth-3.said", "plates.all.fifth-3.came"),
            Column.chance("0.6–0.8", "plates.all.fifth-4.said", "plates.all.fifth-4.came"),
            Column.chance("0.8–1", "plates.all.fifth-5.said", "plates.all.fifth-5.came"));

    private static final String GUESSES = "unlabelled.guess.right";
    private static final List<Column> UNLABELLED = List.of(
            Column.chance("mean probability said → guesses right", "unlabelled.guess.said", GUESSES),
            Column.chance("every compound apart", "unlabelled.guess.apart.said", "unlabelled.guess.apart.right"),
            Column.chance("said 0.8–1", "unlabelled.guess.fifth-5.said", "unlabelled.guess.fifth-5.came"),
            new Column("error, second plate labelled", "unlabelled.error.second-labelled", Form.RF),
            new Column("error, second plate unlabelled", "unlabelled.error.second-unlabelled", Form.RF),
            new Column("error, first plate alone", "unlabelled.error.first-alone", Form.RF),
            new Column("chance said less came true", "unlabelled.plates.said-less-came", Form.SIGNED));

    private AccuracyTable() {}

    /**
     * Two tables, a contender a row, each figure with its standard error: accuracy, and chances said and come true. A third
     * one for a second plate without labels, with the contenders that were asked about it, unless there are none.
     */
    public static String of(Accuracy accuracy) {
        String tables = table("model", COLUMNS, accuracy.contenders()) + "\n"
                + table("model: mean chance said → share come true", FIFTHS, accuracy.contenders());
        Map<String, Map<String, Figure>> matching = new LinkedHashMap<>(accuracy.contenders());
        matching.values().removeIf(figures -> !figures.containsKey(GUESSES));
        return matching.isEmpty()
                ? tables
                : tables + "\n" + table("model: second plate without labels", UNLABELLED, matching);
    }

    private static String table(String corner, List<Column> columns, Map<String, Map<String, Figure>> contenders) {
        String heads = columns.stream().map(Column::head).collect(Collectors.joining(" | "));
        String head = "| " + corner + " | " + heads + " |\n";
        String rule = "| --- |" + " ---: |".repeat(columns.size()) + "\n";
        String rows = contenders.entrySet().stream()
                .map(contender -> row(contender.getKey(), columns, contender.getValue()))
                .collect(Collectors.joining());
        return head + rule + rows;
    }

    private static String row(String name, List<Column> columns, Map<String, Figure> figures) {
        return columns.stream()
                .map(column -> column.text(figures))
                .collect(Collectors.joining(" | ", "| " + name + " | ", " |\n"));
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

    private record Column(String head, String figure, Form form, Optional<String> said) {
        Column(String head, String figure, Form form) {
            this(head, figure, form, Optional.empty());
        }

        static Column chance(String head, String said, String came) {
            return new Column(head, came, Form.CAME, Optional.of(said));
        }

        String text(Map<String, Figure> figures) {
            String before =
                    said.map(name -> Form.SAID.text(figures.get(name)) + " → ").orElse("");
            return before + form.text(figures.get(figure));
        }
    }

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
