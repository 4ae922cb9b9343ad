package midplate.web;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A simple picture of a plate of 40 mm by 70 mm, invented: a bright green layer on black with two lanes of dark spots between pencil
 * lines at 10 mm and 60 mm, lying a little askew. What it shows is known because it was drawn so.
 */
final class DrawnPlate {
    static final int WIDTH_MM = 40;
    static final int HEIGHT_MM = 70;
    static final double START_MM = 10;
    static final double FRONT_MM = 60;

    private static final int WIDE = 900;
    private static final int HIGH = 1200;
    private static final double PIXELS_PER_MM = 14;
    private static final double ASKEW = Math.toRadians(3);

    /** A spot: its lane from the left, its Rf. */
    record Spot(int lane, double rf) {}

    /** Two lanes, as drawn. */
    static final List<Spot> SPOTS = List.of(new Spot(1, 0.3), new Spot(1, 0.62), new Spot(2, 0.3));

    private static final double[] LANE_MM = {13, 27};
    private static final double SPOT_MM = 3.4;

    private DrawnPlate() {}

    private static AffineTransform place() {
        AffineTransform place = AffineTransform.getTranslateInstance(WIDE / 2.0, HIGH / 2.0);
        place.rotate(ASKEW);
        place.scale(PIXELS_PER_MM, -PIXELS_PER_MM);
        place.translate(-WIDTH_MM / 2.0, -HEIGHT_MM / 2.0);
        return place;
    }

    /** Where a place of the plate [mm] is drawn, in fractions of the picture from its top left. */
    static Point2D at(double fromLeftMm, double fromBelowMm) {
        Point2D pixel = place().transform(new Point2D.Double(fromLeftMm, fromBelowMm), null);
        return new Point2D.Double(pixel.getX() / WIDE, pixel.getY() / HIGH);
    }

    static BufferedImage picture() {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(new Color(14, 15, 22));
        pen.fillRect(0, 0, WIDE, HIGH);
        pen.transform(place());
        pen.setColor(new Color(84, 214, 132));
        pen.fill(new Rectangle2D.Double(0, 0, WIDTH_MM, HEIGHT_MM));
        SPOTS.forEach(spot -> soft(pen, LANE_MM[spot.lane() - 1], START_MM + spot.rf() * (FRONT_MM - START_MM)));
        pen.setColor(new Color(70, 96, 82));
        pen.setStroke(new BasicStroke(0.4f));
        pen.draw(new Line2D.Double(0.5, START_MM, WIDTH_MM - 0.5, START_MM));
        pen.draw(new Line2D.Double(0.5, FRONT_MM, WIDTH_MM - 0.5, FRONT_MM));
        pen.dispose();
        return grained(image);
    }

    /** A spot of many thin layers, darkest in the middle. */
    private static void soft(Graphics2D pen, double x, double mm) {
        pen.setColor(new Color(20, 60, 40, 22));
        for (double part = 1; part > 0.2; part -= 0.04) {
            double size = part * SPOT_MM;
            pen.fill(new Ellipse2D.Double(x - size / 2, mm - size / 2, size, size));
        }
    }

    private static BufferedImage grained(BufferedImage image) {
        Random grain = new Random(7);
        for (int y = 0; y < HIGH; y++) {
            for (int x = 0; x < WIDE; x++) {
                int by = (int) Math.round(2 * grain.nextGaussian());
                Color was = new Color(image.getRGB(x, y));
                image.setRGB(
                        x,
                        y,
                        new Color(held(was.getRed() + by), held(was.getGreen() + by), held(was.getBlue() + by))
                                .getRGB());
            }
        }
        return image;
    }

    private static int held(int value) {
        return Math.max(0, Math.min(255, value));
    }

    /** The picture turned by quarters clockwise. */
    static BufferedImage turned(BufferedImage image, int quarters) {
        boolean lies = quarters % 2 != 0;
        int wide = lies ? image.getHeight() : image.getWidth();
        int high = lies ? image.getWidth() : image.getHeight();
        BufferedImage turned = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = turned.createGraphics();
        pen.translate(wide / 2.0, high / 2.0);
        pen.rotate(quarters * Math.PI / 2);
        pen.drawImage(image, -image.getWidth() / 2, -image.getHeight() / 2, null);
        pen.dispose();
        return turned;
    }

    /** A picture of one colour. */
    static BufferedImage plain(Color colour) {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(colour);
        pen.fillRect(0, 0, WIDE, HIGH);
        pen.dispose();
        return image;
    }

    static byte[] written(BufferedImage image, String format) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            if (!ImageIO.write(image, format, bytes)) {
                throw new IllegalArgumentException(format);
            }
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] jpeg() {
        return written(picture(), "jpeg");
    }

    /** A JPEG that lies on its side and says so by its orientation 6: to be shown turned clockwise. */
    static byte[] jpegOnItsSide() {
        byte[] bare = written(turned(picture(), 3), "jpeg");
        byte[] says = {
            (byte) 0xff,
            (byte) 0xe1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1, // one entry
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            6,
            0,
            0,
            0,
            0,
            0,
            0
        };
        byte[] both = new byte[bare.length + says.length];
        System.arraycopy(bare, 0, both, 0, 2);
        System.arraycopy(says, 0, both, 2, says.length);
        System.arraycopy(bare, 2, both, 2 + says.length, bare.length - 2);
        return both;
    }

    /** What begins as a PNG of 60 megapixels does, and nothing else. */
    static byte[] hugePng() {
        byte[] begin = {
            (byte) 0x89,
            'P',
            'N',
            'G',
            13,
            10,
            26,
            10,
            0,
            0,
            0,
            13,
            'I',
            'H',
            'D',
            'R', //
            0,
            0,
            0x27,
            0x10,
            0,
            0,
            0x17,
            0x70,
            8,
            2,
            0,
            0,
            0,
            0,
            0,
            0,
            0 // 10000 by 6000
        };
        byte[] file = new byte[4096];
        System.arraycopy(begin, 0, file, 0, begin.length);
        return file;
    }

    /** What begins as HEIC does. */
    static byte[] heic() {
        byte[] begin = {
            0, 0, 0, 24, 'f', 't', 'y', 'p', 'h', 'e', 'i', 'c', 0, 0, 0, 0, 'm', 'i', 'f', '1', 'h', 'e', 'i', 'c'
        };
        byte[] file = new byte[4096];
        System.arraycopy(begin, 0, file, 0, begin.length);
        return file;
    }
}
