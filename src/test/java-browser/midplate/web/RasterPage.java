package midplate.web;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A printed page as pixels, measured as with a ruler: plates are found by their edges, lines and spots by what is dark along a lane. All
 * lengths in millimetres of paper.
 */
final class RasterPage {
    /** Pixels an inch: half a millimetre is 8 of them. */
    private static final int DPI = 400;

    private static final double MM = DPI / 25.4;
    private static final int DARK = 128;
    private static final double PLATE_WIDTH = 40;
    private static final double PLATE_HEIGHT = 70;
    private static final double SCALE_LEAST = 30;
    private static final double NEAR = 1;

    private final BufferedImage image;

    private RasterPage(BufferedImage image) {
        this.image = image;
    }

    static RasterPage of(PDDocument document, int page) throws IOException {
        return new RasterPage(new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.GRAY));
    }

    /**
     * A plate as measured.
     *
     * @param left its left edge, from that of the paper
     * @param bottom its lower edge, from the top of the paper
     * @param start the start line, from the lower edge
     * @param front the front, from the lower edge
     * @param lanes the centres of the spots of each lane, from the lower edge, rising
     */
    record Plate(double left, double bottom, double start, double front, List<List<Double>> lanes) {
        /** The Rf of a centre. */
        double rf(double centre) {
            return (centre - start) / (front - start);
        }
    }

    /** Dark stretches of a line of pixels: middle and length of each. */
    private record Stretch(double middle, double length) {}

    private boolean isDark(int x, int y) {
        return (image.getRaster().getSample(x, y, 0)) < DARK;
    }

    private List<Stretch> down(int x, int from, int to) {
        List<Stretch> found = new ArrayList<>();
        int begun = -1;
        for (int y = from; y <= to; y++) {
            boolean dark = y < to && isDark(x, y);
            if (dark && begun < 0) {
                begun = y;
            } else if (!dark && begun >= 0) {
                found.add(new Stretch((begun + y) / 2.0 / MM, (y - begun) / MM));
                begun = -1;
            }
        }
        return found;
    }

    private List<Stretch> across(int y) {
        List<Stretch> found = new ArrayList<>();
        int begun = -1;
        for (int x = 0; x <= image.getWidth(); x++) {
            boolean dark = x < image.getWidth() && isDark(x, y);
            if (dark && begun < 0) {
                begun = x;
            } else if (!dark && begun >= 0) {
                found.add(new Stretch((begun + x) / 2.0 / MM, (x - begun) / MM));
                begun = -1;
            }
        }
        return found;
    }

    /** The longest line across the page near a height, from the top of the paper [mm]: only that of the scale is free of others. */
    double scale() {
        double longest = 0;
        int from = image.getHeight() - (int) (60 * MM);
        for (int y = from; y < image.getHeight(); y++) {
            for (Stretch line : across(y)) {
                if (line.length() > SCALE_LEAST && line.length() < 2 * SCALE_LEAST) {
                    longest = Math.max(longest, line.length());
                }
            }
        }
        return longest;
    }

    /** The plates from top to bottom, each with so many lanes. */
    List<Plate> plates(int lanes) {
        List<double[]> edges = new ArrayList<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (Stretch edge : down(x, 0, image.getHeight())) {
                if (Math.abs(edge.length() - PLATE_HEIGHT) < NEAR) {
                    edges.add(new double[] {x / MM, edge.middle(), edge.length()});
                }
            }
        }
        List<Plate> plates = new ArrayList<>();
        for (double[] left : edges) {
            boolean known = plates.stream().anyMatch(plate -> Math.abs(plate.bottom() - bottom(left)) < NEAR);
            boolean hasRight = edges.stream()
                    .anyMatch(right ->
                            Math.abs(right[0] - left[0] - PLATE_WIDTH) < NEAR && Math.abs(right[1] - left[1]) < NEAR);
            if (hasRight && !known) {
                plates.add(plate(left[0], left[1], left[2], lanes));
            }
        }
        plates.sort((one, other) -> Double.compare(one.bottom(), other.bottom()));
        return plates;
    }

    private static double bottom(double[] edge) {
        return edge[1] + edge[2] / 2;
    }

    private Plate plate(double left, double middle, double length, int lanes) {
        double bottom = middle + length / 2;
        int top = (int) ((middle - length / 2) * MM);
        int low = (int) (bottom * MM);
        // between two lanes there is nothing but the lines of the plate
        List<Stretch> lines = down((int) ((left + PLATE_WIDTH / lanes) * MM), top, low).stream()
                .filter(line -> bottom - line.middle() > NEAR && bottom - line.middle() < PLATE_HEIGHT - NEAR)
                .toList();
        if (lines.size() != 2) {
            throw new AssertionError("Of start line and front " + lines.size() + " were seen");
        }
        // the middle of the edge that is drawn is where the plate ends
        Stretch edge = down((int) ((left + PLATE_WIDTH / lanes) * MM), low - (int) MM, low + (int) MM)
                .get(0);
        double foot = edge.middle();
        double front = foot - lines.get(0).middle();
        double start = foot - lines.get(1).middle();
        List<List<Double>> centres = new ArrayList<>();
        for (int lane = 0; lane < lanes; lane++) {
            int x = (int) Math.round((left + PLATE_WIDTH * (lane + 0.5) / lanes) * MM);
            int from = (int) ((foot - front + 0.4) * MM);
            int to = (int) ((foot - start - 1.6) * MM);
            centres.add(centres(down(x, from, to), foot));
        }
        return new Plate(left, foot, start, front, centres);
    }

    /** Each spot is an outline: its upper edge, then its lower one. */
    private static List<Double> centres(List<Stretch> outlines, double foot) {
        List<Double> centres = new ArrayList<>();
        for (int i = outlines.size() - 2; i >= 0; i -= 2) {
            centres.add(foot - (outlines.get(i).middle() + outlines.get(i + 1).middle()) / 2);
        }
        return centres;
    }
}
