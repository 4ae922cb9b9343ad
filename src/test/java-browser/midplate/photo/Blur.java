package midplate.photo;

/** Smoothing of one channel of a picture, in place; beyond the edge is as at the edge. */
final class Blur {
    private Blur() {}

    /** By a Gaussian [pixels]. */
    static void round(float[] channel, int width, int height, double deviation) {
        int reach = (int) Math.ceil(3 * deviation);
        float[] kernel = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = (float) Math.exp(-i * i / (2 * deviation * deviation));
            sum += kernel[i + reach];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= sum;
        }
        float[] row = new float[width];
        for (int y = 0; y < height; y++) {
            System.arraycopy(channel, y * width, row, 0, width);
            for (int x = 0; x < width; x++) {
                float value = 0;
                for (int k = -reach; k <= reach; k++) {
                    value += kernel[k + reach] * row[Math.max(0, Math.min(width - 1, x + k))];
                }
                channel[y * width + x] = value;
            }
        }
        float[] before = channel.clone();
        for (int y = 0; y < height; y++) {
            int at = y * width;
            java.util.Arrays.fill(channel, at, at + width, 0);
            for (int k = -reach; k <= reach; k++) {
                int from = Math.max(0, Math.min(height - 1, y + k)) * width;
                float weight = kernel[k + reach];
                for (int x = 0; x < width; x++) {
                    channel[at + x] += weight * before[from + x];
                }
            }
        }
    }

    /** Along a straight line [pixels]. */
    static void along(float[] channel, int width, int height, double length, double angle) {
        float[] before = channel.clone();
        int steps = (int) Math.ceil(length) + 1;
        java.util.Arrays.fill(channel, 0);
        for (int s = 0; s < steps; s++) {
            double t = steps == 1 ? 0 : (s / (steps - 1.0) - 0.5) * length;
            int dx = (int) Math.round(t * Math.cos(angle));
            int dy = (int) Math.round(t * Math.sin(angle));
            for (int y = 0; y < height; y++) {
                int from = Math.max(0, Math.min(height - 1, y + dy)) * width;
                for (int x = 0; x < width; x++) {
                    channel[y * width + x] += before[from + Math.max(0, Math.min(width - 1, x + dx))] / steps;
                }
            }
        }
    }

    /** Adds so many times what smoothing would take away. */
    static void sharpen(float[] channel, int width, int height, double deviation, double strength) {
        float[] smooth = channel.clone();
        round(smooth, width, height, deviation);
        for (int i = 0; i < channel.length; i++) {
            channel[i] += (float) (strength * (channel[i] - smooth[i]));
        }
    }
}
