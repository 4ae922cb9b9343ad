package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;

/** A table in Markdown: words to the left, figures to the right. */
final class MarkdownTable {
    private final StringBuilder text = new StringBuilder();

    /** A table with these heads, the first of them over the names of the rows. */
    MarkdownTable(String corner, List<String> heads) {
        List<String> first = new ArrayList<>(List.of(corner));
        first.addAll(heads);
        line(first);
        text.append("| --- |").append(" ---: |".repeat(heads.size())).append('\n');
    }

    /** Adds a row. */
    void row(String name, List<String> cells) {
        List<String> all = new ArrayList<>(List.of(name));
        all.addAll(cells);
        line(all);
    }

    private void line(List<String> cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
