package midplate.benchmark;

import java.util.List;
import midplate.benchmark.Svg.Anchor;
import midplate.benchmark.Svg.Stroke;

/** How a contender is drawn: the program strongest, the published laws faint. Colour is never the only difference. */
enum ChartStyle {
    PROGRAM("#0b5394", 2.4, "none"),
    BEFORE("#b45309", 1.8, "7 3"),
    CEILING("#2f7d32", 1.6, "2 3"),
    OTHER("#8592a0", 1.3, "none"),
    OTHER_DASHED("#8592a0", 1.3, "9 4"),
    OTHER_DOTTED("#8592a0", 1.3, "1.5 3.5"),
    OTHER_MIXED("#8592a0", 1.3, "9 3 2 3");

    private static final List<ChartStyle> OTHERS = List.of(OTHER, OTHER_DASHED, OTHER_DOTTED, OTHER_MIXED);
    private static final double LINE_HEIGHT = 20;
    private static final double SAMPLE = 30;

    @SuppressWarnings("ImmutableEnumChecker") // a record of two texts and a number
    private final Stroke stroke;

    ChartStyle(String colour, double width, String dashes) {
        stroke = new Stroke(colour, width, dashes);
    }

    /** The style of a contender by its place among all. */
    static ChartStyle of(List<String> contenders, String name) {
        if (contenders.indexOf(name) == 0) {
            return PROGRAM;
        }
        if (name.equals(Contenders.BEFORE)) {
            return BEFORE;
        }
        List<String> others = contenders.stream()
                .skip(1)
                .filter(one -> !one.equals(Contenders.BEFORE))
                .toList();
        return OTHERS.get(others.indexOf(name) % OTHERS.size());
    }

    Stroke stroke() {
        return stroke;
    }

    boolean isMarked() {
        return this == PROGRAM || this == BEFORE;
    }

    void mark(Svg svg, double x, double y) {
        if (this == PROGRAM) {
            svg.dot(x, y, stroke.colour());
        } else {
            svg.square(x, y, stroke.colour());
        }
    }

    /** What is what: a line each, downwards from a point. */
    static void legend(Svg svg, double x, double y, List<ChartStyle> styles, List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            double at = y + i * LINE_HEIGHT;
            ChartStyle style = styles.get(i);
            svg.line(x, at, x + SAMPLE, at, style.stroke);
            if (style.isMarked()) {
                style.mark(svg, x + SAMPLE / 2, at);
            }
            svg.text(x + SAMPLE + 8, at + 4, Anchor.START, names.get(i));
        }
    }
}
