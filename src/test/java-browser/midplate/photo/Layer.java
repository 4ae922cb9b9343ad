package midplate.photo;

import java.awt.image.BufferedImage;

/** What a plate's layer gives back at each place, in linear light, as fine as it is drawn: spots, grain, graphite, faults. */
final class Layer {
    /** How fine [points/mm]. */
    private static final double FINE = 16;

    private final int width;
    private final int height;
    private final float[][] reflects;
    private final double grain;

    private Layer(int width, int height, float[][] reflects, double grain) {
        this.width = width;
        this.height = height;
        this.reflects = reflects;
        this.grain = grain;
    }

    static Layer of(Chance chance, Sample sample, Pencil pencil) {
        int width = (int) Math.ceil(sample.course().widthMm() * FINE);
        int height = (int) Math.ceil(sample.course().heightMm() * FINE);
        float[] ground = ground(chance.of("ground"), sample, pencil, width, height);
        float[] grain = grain(chance.of("grain"), width, height);
        float[] dye = dye(chance.of("dye"), sample, width, height);
        float[] kept = new float[width * height];
        java.util.Arrays.fill(kept, 1);
        float[][] absorbed = new float[3][width * height];
        for (Blot blot : sample.blots()) {
            lay(blot, sample.course(), width, height, absorbed, kept);
        }
        float[][] reflects = new float[3][width * height];
        BufferedImage graphite = pencil.drawn(FINE);
        int[] drawn = graphite.getRGB(0, 0, width, height, null, 0, width);
        for (int i = 0; i < width * height; i++) {
            double rough = 1 + (grain[i] - 1) * 6;
            double pencilled = 1 - Math.min(0.9, Math.max(0, (drawn[i] & 0xff) / 255.0 * Math.min(1.3, rough)));
            for (int channel = 0; channel < 3; channel++) {
                double absorption = sample.ground().absorption(channel)
                        + absorbed[channel][i]
                        + sample.ground().dye(channel) * kept[i] * dye[i];
                reflects[channel][i] = (float) (Ground.reflection(absorption) * ground[i] * grain[i] * pencilled);
            }
        }
        return new Layer(width, height, reflects, lumps(grain, width, height));
    }

    /** The ground's grain as seen over half a millimetre: standard deviation as a share of the light. */
    double grain() {
        return grain;
    }

    /** Between the nearest four points; outside as at the edge. */
    double at(double x, double h, int channel) {
        double u = Math.max(0, Math.min(width - 1.001, x * FINE - 0.5));
        double v = Math.max(0, Math.min(height - 1.001, h * FINE - 0.5));
        int i = (int) u;
        int j = (int) v;
        double a = u - i;
        double b = v - j;
        float[] of = reflects[channel];
        int at = j * width + i;
        return (of[at] * (1 - a) + of[at + 1] * a) * (1 - b) + (of[at + width] * (1 - a) + of[at + width + 1] * a) * b;
    }

    private static void lay(Blot blot, Course course, int width, int height, float[][] absorbed, float[] kept) {
        double reach = blot.reach();
        double bent = 3;
        int low = (int) Math.max(0, (blot.mm() - reach - bent) * FINE);
        int high = (int) Math.min(height, (blot.mm() + reach + bent) * FINE);
        int left = (int) Math.max(0, (blot.xMm() - reach) * FINE);
        int right = (int) Math.min(width, (blot.xMm() + reach) * FINE);
        for (int j = low; j < high; j++) {
            for (int i = left; i < right; i++) {
                double amount = blot.amount(course, (i + 0.5) / FINE, (j + 0.5) / FINE);
                if (amount > 0) {
                    int at = j * width + i;
                    for (int channel = 0; channel < 3; channel++) {
                        absorbed[channel][at] += (float) (amount * blot.absorbs()[channel]);
                    }
                    kept[at] *= (float) (1 - blot.bleaches() * (1 - Math.exp(-3 * amount)));
                }
            }
        }
    }

    private static float[] grain(Chance chance, int width, int height) {
        double fine = chance.between(0.008, 0.04);
        double coarse = chance.evenlyInLog(0.004, 0.03);
        Noise noise = chance.noise();
        Unevenness lumps = chance.unevenness(0.35);
        Unevenness clouds = chance.unevenness(1.1);
        float[] grain = new float[width * height];
        for (int j = 0; j < height; j++) {
            for (int i = 0; i < width; i++) {
                double x = i / FINE;
                double h = j / FINE;
                grain[j * width + i] =
                        (float) (1 + fine * noise.next() + coarse * lumps.at(x, h) + 0.6 * coarse * clouds.at(x, h));
            }
        }
        return grain;
    }

    private static double lumps(float[] grain, int width, int height) {
        int side = (int) (FINE / 2);
        double sum = 0;
        int count = 0;
        for (int j = 0; j + side <= height; j += side) {
            double before = Double.NaN;
            for (int i = 0; i + side <= width; i += side) {
                double mean = 0;
                for (int k = 0; k < side * side; k++) {
                    mean += grain[(j + k / side) * width + i + k % side];
                }
                mean /= side * side;
                if (!Double.isNaN(before)) {
                    sum += (mean - before) * (mean - before) / 2;
                    count++;
                }
                before = mean;
            }
        }
        return Math.sqrt(sum / count);
    }

    private static float[] dye(Chance chance, Sample sample, int width, int height) {
        Unevenness clouds = chance.unevenness(chance.between(8, 25));
        Unevenness runs = chance.unevenness(3);
        double uneven = chance.between(0.1, 0.45);
        double slope = chance.between(-0.4, 0.4);
        float[] dye = new float[width * height];
        for (int j = 0; j < height; j++) {
            for (int i = 0; i < width; i++) {
                double x = i / FINE;
                double h = j / FINE;
                double value = 1
                        + uneven * clouds.at(x, h)
                        + 0.05 * runs.at(x, h / 12)
                        + slope * (h / sample.course().heightMm() - 0.5);
                dye[j * width + i] = (float) Math.max(0.05, value);
            }
        }
        return dye;
    }

    /** Slow unevenness, the wet edge, fingerprints and faint stains: a factor. */
    private static float[] ground(Chance chance, Sample sample, Pencil pencil, int width, int height) {
        Course course = sample.course();
        Unevenness slow = chance.unevenness(chance.between(10, 30));
        double uneven = chance.between(0.005, 0.03);
        double wet =
                pencil.front() == Pencil.Front.WET_EDGE ? chance.between(0.025, 0.08) : chance.between(-0.01, 0.02);
        double swept = chance.happens(0.2) ? chance.between(0.01, 0.04) : 0;
        Faults faults = Faults.of(chance.of("faults"), course);
        float[] factor = new float[width * height];
        for (int i = 0; i < width; i++) {
            double x = (i + 0.5) / FINE;
            double front = course.frontAt(x);
            for (int j = 0; j < height; j++) {
                double h = (j + 0.5) / FINE;
                double above = h - front;
                double value = 1 + uneven * slow.at(x, h);
                value *= 1 - wet / (1 + Math.exp(above / 0.25));
                value *= 1 - swept * Math.exp(-above * above / 0.5);
                factor[j * width + i] = (float) (value * faults.at(x, h));
            }
        }
        return factor;
    }
}
