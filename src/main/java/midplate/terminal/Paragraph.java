package midplate.terminal;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;

/** A piece of text, broken between words so that no line is longer than 80 signs. */
final class Paragraph {
    static final int WIDTH = 80;

    private final String first;
    private final String indent;
    private final String text;

    private Paragraph(String first, String indent, String text) {
        this.first = first;
        this.indent = indent;
        this.text = text;
    }

    static Paragraph of(String text) {
        return new Paragraph("", "", text);
    }

    static Paragraph indented(String text) {
        return new Paragraph("  ", "  ", text);
    }

    static Paragraph item(String text) {
        return new Paragraph("- ", "  ", text);
    }

    /** Items below a heading; neither where there are no lines. */
    static void section(PrintWriter out, String heading, Stream<String> lines) {
        List<String> all = lines.toList();
        if (!all.isEmpty()) {
            out.println();
            out.println(heading);
            all.forEach(line -> item(line).print(out));
        }
    }

    void print(PrintWriter out) {
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : visible(text).split(" +", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                out.println(line);
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        out.println(line);
    }

    /** Control signs shown as question marks: what came from outside must not steer the terminal. */
    private static String visible(String text) {
        return text.replaceAll("\\p{Cntrl}", "?");
    }
}
