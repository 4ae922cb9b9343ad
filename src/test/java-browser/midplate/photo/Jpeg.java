package midplate.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes pixels as a JPEG, with the orientation of EXIF where the camera was held otherwise than it stores. */
final class Jpeg {
    private Jpeg() {}

    /**
     * The file.
     *
     * @param pixels 0xRRGGBB as they are to be shown
     * @param width as shown
     * @param height as shown
     * @param quality 1–100
     * @param orientation of EXIF: 1 as it is, 3 upside down, 6 and 8 a quarter
     */
    static byte[] of(int[] pixels, int width, int height, int quality, int orientation) throws IOException {
        boolean lies = orientation == 6 || orientation == 8;
        int w = lies ? height : width;
        int h = lies ? width : height;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int from = switch (orientation) {
                    case 3 -> (height - 1 - y) * width + width - 1 - x;
                    case 6 -> x * width + width - 1 - y;
                    case 8 -> (height - 1 - x) * width + y;
                    default -> y * width + x;
                };
                image.setRGB(x, y, pixels[from]);
            }
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality / 100f);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return orientation == 1 ? bytes.toByteArray() : oriented(bytes.toByteArray(), orientation);
    }

    /** With a segment of EXIF that tells nothing but the orientation, behind the first one. */
    private static byte[] oriented(byte[] jpeg, int orientation) {
        int[] exif = {
            0xff,
            0xe1,
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
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        int first = 4 + ((jpeg[4] & 0xff) << 8 | jpeg[5] & 0xff);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, first);
        for (int value : exif) {
            bytes.write(value);
        }
        bytes.write(jpeg, first, jpeg.length - first);
        return bytes.toByteArray();
    }
}
