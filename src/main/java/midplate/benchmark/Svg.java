package midplate.benchmark;

import java.util.List;
import java.util.Locale;

/**
 * Writes a drawing as SVG: a light ground of its own, so that it reads on light and dark pages; text as text; a title and a
 * description for those who do not see it; no scripts, no fonts from elsewhere. Coordinates in pixels from the upper left.
 */
final class Svg {
    private static final String INK = "#1f2933";

    /** Where a text stands from its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    private final StringBuilder text = new StringBuilder();

    Svg(int width, int height, String title, String description) {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\""
                        + " aria-labelledby=\"title description\" font-family=\"system-ui, sans-serif\" font-size=\"13\">",
                width, height, width, height);
        add("<title id=\"title\">%s</title>", escaped(title));
        add("<desc id=\"description\">%s</desc>", escaped(description));
        add(
                "<rect x=\"0.5\" y=\"0.5\" width=\"%d\" height=\"%d\" rx=\"6\" fill=\"#fdfdfb\" stroke=\"#c9ced4\"/>",
                width - 1, height - 1);
    }

    void line(double x1, double y1, double x2, double y2, Stroke stroke) {
        add("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>", x1, y1, x2, y2, stroke.attributes());
    }

    /** A line through points, each x and y. */
    void path(List<double[]> points, Stroke stroke) {
        StringBuilder list = new StringBuilder();
        points.forEach(point -> list.append(String.format(Locale.ROOT, "%.1f,%.1f ", point[0], point[1])));
        add("<polyline points=\"%s\" fill=\"none\" %s/>", list.toString().strip(), stroke.attributes());
    }

    void dot(double x, double y, String colour) {
        add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>", x, y, colour);
    }

    void square(double x, double y, String colour) {
        add("<rect x=\"%.1f\" y=\"%.1f\" width=\"7\" height=\"7\" fill=\"%s\"/>", x - 3.5, y - 3.5, colour);
    }

    void text(double x, double y, Anchor anchor, String words) {
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>",
                x, y, anchor.name().toLowerCase(Locale.ROOT), INK, escaped(words));
    }

    void small(double x, double y, Anchor anchor, String words) {
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\" font-size=\"11\">%s</text>",
                x, y, anchor.name().toLowerCase(Locale.ROOT), INK, escaped(words));
    }

    /** Words that run upwards, centred on their point. */
    void upwards(double x, double y, String words) {
        add(
                "<text transform=\"translate(%.1f %.1f) rotate(-90)\" text-anchor=\"middle\" fill=\"%s\">%s</text>",
                x, y, INK, escaped(words));
    }

    private void add(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    @Override
    public String toString() {
        return text + "</svg>\n";
    }

    /**
     * How a line is drawn.
     *
     * @param colour of the line
     * @param width in pixels
     * @param dashes lengths of dashes and gaps in pixels, {@code none} for none
     */
    record Stroke(String colour, double width, String dashes) {
        static final Stroke AXIS = new Stroke("#52606d", 1, "none");
        static final Stroke GRID = new Stroke("#e4e7eb", 1, "none");

        String attributes() {
            return String.format(
                    Locale.ROOT, "stroke=\"%s\" stroke-width=\"%.1f\" stroke-dasharray=\"%s\"", colour, width, dashes);
        }
    }
}
