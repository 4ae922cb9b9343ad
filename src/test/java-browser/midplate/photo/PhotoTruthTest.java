package midplate.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The truth about an invented photo")
class PhotoTruthTest {
    private static final Set<String> EVEN = Set.of("gauss", "disc", "ellipse", "flat", "ring");

    @Test
    void anEvenSpotHasItsCentreWhereItWasPut() throws IOException {
        int seen = 0;
        for (long seed = 20; seed < 26; seed++) {
            Photo photo = Photo.of(seed, 300, 400);
            for (Mark mark : photo.marks()) {
                if (EVEN.contains(mark.form())) {
                    Blot blot = nearest(photo, mark);
                    assertEquals(blot.mm(), mark.mm(), 0.06, mark.toString());
                    seen++;
                }
            }
        }
        assertTrue(seen > 10, "spots seen: " + seen);
    }

    private static Blot nearest(Photo photo, Mark mark) {
        Blot nearest = photo.sample().blots().get(0);
        for (Blot blot : photo.sample().blots()) {
            boolean nearer = Math.hypot(blot.xMm() - mark.xMm(), blot.mm() - mark.mm())
                    < Math.hypot(nearest.xMm() - mark.xMm(), nearest.mm() - mark.mm());
            nearest = nearer ? blot : nearest;
        }
        return nearest;
    }

    @Test
    void aDarkSpotIsSeenInThePictureWhereTheTruthSaysSo() throws IOException {
        int seen = 0;
        for (long seed = 20; seed < 30; seed++) {
            Photo photo = Photo.of(seed, 900, 1200);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(photo.jpeg()));
            boolean turned =
                    photo.truth().get("conditions").get("exifOrientation").asInt() != 1;
            for (Mark mark : turned ? List.<Mark>of() : photo.marks()) {
                boolean clear = mark.marked() && mark.contrast() > 0.5 && EVEN.contains(mark.form());
                if (clear && !mark.form().equals("ring") && mark.rf() > 0.05 && mark.rf() < 0.95) {
                    double[] at = photo.seen(mark.xMm(), mark.mm());
                    double[] aside = photo.seen(mark.xMm(), mark.mm() + 1.3 * mark.sizeMm());
                    assertTrue(least(image, at) < least(image, aside), seed + " " + mark);
                    seen++;
                }
            }
        }
        assertTrue(seen > 5, "spots seen: " + seen);
    }

    /** The darkest channel there. */
    private static int least(BufferedImage image, double[] at) {
        int rgb = image.getRGB((int) (at[0] * image.getWidth()), (int) (at[1] * image.getHeight()));
        boolean green = (rgb >> 8 & 0xff) > 1.3 * (rgb >> 16 & 0xff);
        return green ? rgb >> 8 & 0xff : Math.min(rgb & 0xff, Math.min(rgb >> 8 & 0xff, rgb >> 16 & 0xff));
    }

    @Test
    void theSameSeedGivesTheSamePicture() throws IOException {
        assertArrayEquals(Photo.of(21, 300, 400).jpeg(), Photo.of(21, 300, 400).jpeg());
        assertEquals(Photo.of(21, 300, 400).truth(), Photo.of(21, 300, 400).truth());
    }

    @Test
    void cornersStraightenAPlateButForTheLens() throws IOException {
        Photo photo = Photo.of(23, 900, 1200);
        Course course = photo.sample().course();
        double w = course.widthMm();
        double h = course.heightMm();
        List<double[]> corners = List.of(photo.seen(0, 0), photo.seen(w, 0), photo.seen(w, h), photo.seen(0, h));
        double[] middle = Flattened.of(corners, w, h).at(photo.seen(w / 2, h / 2));
        assertArrayEquals(new double[] {w / 2, h / 2}, middle, 0.25);
    }

    @Test
    void twoThatTouchAreOneMarkAndTwoApartAreTwo() throws IOException {
        int merged = 0;
        for (long seed = 20; seed < 45; seed++) {
            Photo photo = Photo.of(seed, 150, 200);
            List<Mark> marks = photo.marks();
            long one =
                    marks.stream().filter(mark -> mark.form().equals("merged")).count();
            merged += (int) one;
            assertTrue(marks.size() + one <= photo.sample().blots().size(), "seed " + seed);
            assertTrue(one > 0 || marks.size() == photo.sample().blots().size(), "seed " + seed);
        }
        assertTrue(merged > 0, "merged: " + merged);
    }
}
