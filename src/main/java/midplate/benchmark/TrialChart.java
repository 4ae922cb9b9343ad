package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import midplate.benchmark.ChartFrame.Point;
import midplate.benchmark.Svg.Anchor;

/** Draws how far forecasts are off, and how wide their bands are, against the Rf of the trial that they rest on. */
final class TrialChart {
    /** The file beside the results. */
    static final String FILE = "error-against-trial.svg";

    private static final int WIDTH = 860;
    private static final int HEIGHT = 500;
    private static final double TOP = 56;
    private static final double PANEL_HEIGHT = 280;
    private static final double LEGEND = TOP + PANEL_HEIGHT + 78;
    private static final int LEGEND_ROWS = 4;
    private static final ChartFrame ERRORS = new ChartFrame(70, TOP, 330, PANEL_HEIGHT, 1, 0.25);
    private static final ChartFrame WIDTHS = new ChartFrame(500, TOP, 330, PANEL_HEIGHT, 1, 0.4);

    private TrialChart() {}

    static String of(Accuracy accuracy) {
        List<String> names = List.copyOf(accuracy.contenders().keySet());
        Map<String, Figure> program = accuracy.contenders().getOrDefault(names.get(0), Map.of());
        Svg svg = new Svg(
                WIDTH,
                HEIGHT,
                "Error and band against the Rf of the trial",
                "One trial in hexane and ethyl acetate; bars are one standard error over compounds. " + names.get(0)
                        + ": " + told(program));
        frame(svg, ERRORS, "mean absolute error at other ratios [Rf]", 0.05);
        frame(svg, WIDTHS, "mean half width of the 90 % band [Rf]", 0.1);
        List<ChartStyle> styles = new ArrayList<>();
        List<String> legend = new ArrayList<>();
        // the program last, so that nothing is drawn over it
        for (int i = names.size() - 1; i >= 0; i--) {
            ChartStyle style = ChartStyle.of(names, names.get(i));
            Map<String, Figure> figures = accuracy.contenders().getOrDefault(names.get(i), Map.of());
            ERRORS.curve(svg, style, points(figures, ".error"), 1);
            WIDTHS.curve(svg, style, points(figures, ".half-width"), 1);
            styles.add(0, style);
            legend.add(0, names.get(i));
        }
        Map<String, Figure> ceiling = accuracy.ceilings().getOrDefault(names.get(0), Map.of());
        if (!ceiling.isEmpty()) {
            ERRORS.curve(svg, ChartStyle.CEILING, points(ceiling, ".error"), 1);
            WIDTHS.curve(svg, ChartStyle.CEILING, points(ceiling, ".half-width"), 1);
            styles.add(1, ChartStyle.CEILING);
            legend.add(1, names.get(0) + ", all else told");
        }
        int split = Math.min(LEGEND_ROWS, legend.size());
        ChartStyle.legend(svg, ERRORS.left(), LEGEND, styles.subList(0, split), legend.subList(0, split));
        ChartStyle.legend(
                svg, WIDTHS.left(), LEGEND, styles.subList(split, styles.size()), legend.subList(split, legend.size()));
        return svg.toString();
    }

    private static void frame(Svg svg, ChartFrame frame, String measure, double step) {
        frame.axes(svg, 0.2, step, "%.2f");
        svg.text(frame.left(), frame.top() - 22, Anchor.START, measure);
        svg.text(frame.left() + frame.width() / 2, frame.top() + frame.height() + 42, Anchor.MIDDLE, "Rf of the trial");
    }

    private static List<Point> points(Map<String, Figure> figures, String figure) {
        List<Point> points = new ArrayList<>();
        for (int bin = 1; bin <= TrialBins.COUNT; bin++) {
            Figure trial = figures.get(TrialBins.id(bin) + ".trial");
            Figure height = figures.get(TrialBins.id(bin) + figure);
            if (trial != null && height != null) {
                points.add(new Point(trial.value(), height.value(), height.standardError()));
            }
        }
        return points;
    }

    private static String told(Map<String, Figure> figures) {
        return points(figures, ".error").stream()
                .map(point -> String.format(
                        Locale.ROOT, "trial at %.2f, error %.3f ± %.3f", point.across(), point.value(), point.error()))
                .collect(Collectors.joining("; ", "", "."));
    }
}
