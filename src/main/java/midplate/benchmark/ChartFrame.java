package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import midplate.benchmark.Svg.Anchor;
import midplate.benchmark.Svg.Stroke;

/**
 * The axes of one chart: both begin at 0; what lies beyond their ends is drawn at the end.
 *
 * @param left of the plotting area [px]
 * @param top of the plotting area [px]
 * @param width of the plotting area [px]
 * @param height of the plotting area [px]
 * @param mostX where the axis to the right ends
 * @param mostY where the axis upwards ends
 */
record ChartFrame(double left, double top, double width, double height, double mostX, double mostY) {
    private static final double LABEL = 8;
    private static final double CAP = 3;

    double x(double value) {
        return left + width * clamped(value / mostX);
    }

    double y(double value) {
        return top + height * (1 - clamped(value / mostY));
    }

    private static double clamped(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** Grid, axes and their numbers, one each step. */
    void axes(Svg svg, double stepX, double stepY, String format) {
        for (int i = 0; i * stepY <= mostY + stepY / 1000; i++) {
            svg.line(left, y(i * stepY), left + width, y(i * stepY), i == 0 ? Stroke.AXIS : Stroke.GRID);
            svg.text(left - LABEL, y(i * stepY) + 4, Anchor.END, number(format, i * stepY));
        }
        for (int i = 0; i * stepX <= mostX + stepX / 1000; i++) {
            svg.line(x(i * stepX), top, x(i * stepX), top + height, i == 0 ? Stroke.AXIS : Stroke.GRID);
            svg.text(x(i * stepX), top + height + 18, Anchor.MIDDLE, number("%.1f", i * stepX));
        }
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    /** A line through points of so many values, a mark on each, and a bar of {@code errors} to either side. */
    void curve(Svg svg, ChartStyle style, List<Point> points, double errors) {
        List<double[]> places = new ArrayList<>();
        points.forEach(point -> places.add(new double[] {x(point.across()), y(point.value())}));
        svg.path(places, style.stroke());
        for (int i = 0; i < points.size() && style.isMarked(); i++) {
            Point point = points.get(i);
            double reach = errors * (Double.isFinite(point.error()) ? point.error() : 0);
            bar(svg, places.get(i)[0], y(point.value() - reach), y(point.value() + reach), style);
            style.mark(svg, places.get(i)[0], places.get(i)[1]);
        }
    }

    private static void bar(Svg svg, double x, double low, double high, ChartStyle style) {
        Stroke thin = new Stroke(style.stroke().colour(), 1.2, "none");
        svg.line(x, low, x, high, thin);
        svg.line(x - CAP, low, x + CAP, low, thin);
        svg.line(x - CAP, high, x + CAP, high, thin);
    }

    /**
     * A point with the standard error of its height.
     *
     * @param across where on the axis to the right
     * @param value how high
     * @param error the standard error of the height
     */
    record Point(double across, double value, double error) {}
}
