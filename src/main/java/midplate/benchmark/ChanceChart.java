package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import midplate.benchmark.ChartFrame.Point;
import midplate.benchmark.Svg.Anchor;
import midplate.benchmark.Svg.Stroke;

/** Draws how often chances came true against what they said, by tenths of what was said. */
final class ChanceChart {
    /** The file beside the results. */
    static final String FILE = "chances.svg";

    private static final int WIDTH = 860;
    private static final int HEIGHT = 560;
    private static final ChartFrame FRAME = new ChartFrame(80, 30, 440, 440, 1, 1);
    private static final double LEGEND = 560;
    private static final Stroke DIAGONAL = new Stroke("#52606d", 1, "4 4");

    private ChanceChart() {}

    static String of(Accuracy accuracy) {
        List<String> names = List.copyOf(accuracy.contenders().keySet());
        Map<String, Figure> program = accuracy.contenders().getOrDefault(names.get(0), Map.of());
        Svg svg = new Svg(
                WIDTH,
                HEIGHT,
                "Chances said and come true",
                "Each point is a tenth of the chances said; on the diagonal chances are true. Bars are two standard errors."
                        + " " + names.get(0) + ": " + told(program));
        FRAME.axes(svg, 0.2, 0.2, "%.1f");
        svg.line(FRAME.x(0), FRAME.y(0), FRAME.x(1), FRAME.y(1), DIAGONAL);
        svg.upwards(28, FRAME.top() + FRAME.height() / 2, "share of plates that were hits");
        svg.text(FRAME.x(0.5), FRAME.top() + FRAME.height() + 72, Anchor.MIDDLE, "chance said, mean of each tenth");
        counts(svg, program);
        List<ChartStyle> styles = new ArrayList<>();
        // the program last, so that nothing is drawn over it
        for (int i = names.size() - 1; i >= 0; i--) {
            ChartStyle style = ChartStyle.of(names, names.get(i));
            FRAME.curve(svg, style, points(accuracy.contenders().getOrDefault(names.get(i), Map.of())), 2);
            styles.add(0, style);
        }
        ChartStyle.legend(svg, LEGEND, FRAME.top() + 12, styles, names);
        double notes = FRAME.top() + 12 + 20 * names.size() + 16;
        svg.small(LEGEND, notes, Anchor.START, "Bars: two standard errors over compounds.");
        svg.small(LEGEND, notes + 16, Anchor.START, "Straight and dashed: said as often as it came true.");
        svg.small(LEGEND, notes + 32, Anchor.START, "Small numbers: how many samples, " + names.get(0) + ".");
        return svg.toString();
    }

    private static void counts(Svg svg, Map<String, Figure> figures) {
        double y = FRAME.top() + FRAME.height() + 42;
        for (int tenth = 1; tenth <= PlateMarks.TENTHS; tenth++) {
            Figure came = figures.get(id(tenth) + ".came");
            double middle = (tenth - 0.5) / PlateMarks.TENTHS;
            svg.small(FRAME.x(middle), y, Anchor.MIDDLE, came == null ? "0" : Long.toString(came.count()));
        }
    }

    private static String id(int tenth) {
        return "plates.all.tenth-" + tenth;
    }

    private static List<Point> points(Map<String, Figure> figures) {
        List<Point> points = new ArrayList<>();
        for (int tenth = 1; tenth <= PlateMarks.TENTHS; tenth++) {
            Figure said = figures.get(id(tenth) + ".said");
            Figure came = figures.get(id(tenth) + ".came");
            if (said != null && came != null) {
                points.add(new Point(said.value(), came.value(), came.standardError()));
            }
        }
        return points;
    }

    private static String told(Map<String, Figure> figures) {
        return points(figures).stream()
                .map(point -> String.format(Locale.ROOT, "said %.2f, came true %.2f", point.across(), point.value()))
                .collect(Collectors.joining("; ", "", "."));
    }
}
