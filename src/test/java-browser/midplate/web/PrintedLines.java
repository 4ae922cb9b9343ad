package midplate.web;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The straight lines that a page of a PDF draws with a pen, in millimetres of paper. */
final class PrintedLines extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Line2D> path = new ArrayList<>();
    private final List<Line2D> drawn = new ArrayList<>();
    private Point2D start = new Point2D.Double();
    private Point2D at = new Point2D.Double();

    private PrintedLines(PDPage page) {
        super(page);
    }

    /** The lengths of all of them [mm]. */
    static List<Double> lengthsOn(PDPage page) throws IOException {
        PrintedLines lines = new PrintedLines(page);
        lines.processPage(page);
        return lines.drawn.stream()
                .map(line -> line.getP1().distance(line.getP2()) * MM_PER_POINT)
                .toList();
    }

    @Override
    public void moveTo(float x, float y) {
        start = new Point2D.Double(x, y);
        at = start;
    }

    @Override
    public void lineTo(float x, float y) {
        Point2D to = new Point2D.Double(x, y);
        path.add(new Line2D.Double(at, to));
        at = to;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        at = new Point2D.Double(x3, y3);
    }

    @Override
    public void closePath() {
        path.add(new Line2D.Double(at, start));
        at = start;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.addAll(List.of(
                new Line2D.Double(p0, p1),
                new Line2D.Double(p1, p2),
                new Line2D.Double(p2, p3),
                new Line2D.Double(p3, p0)));
        start = p0;
        at = p0;
    }

    @Override
    public Point2D getCurrentPoint() {
        return at;
    }

    @Override
    public void strokePath() {
        drawn.addAll(path);
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void fillPath(int windingRule) {
        path.clear();
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName shadingName) {}
}
