package midplate.photo;

/**
 * How a camera turns light into numbers: blur of the lens and of the hand, vignetting, photons, balance of white, sharpening, tone.
 *
 * @param blur of the lens, standard deviation [pixels]
 * @param motion how far the hand moved [pixels]
 * @param motionAngle where to
 * @param vignetting the share of light lost in the corners
 * @param electrons at full scale: shot noise is the root
 * @param read noise of reading, as a share of full scale
 * @param denoise what the camera smooths the noise by [pixels]
 * @param balance factors of red, green and blue
 * @param sharpen strength of sharpening
 * @param tone how much steeper the middle tones are
 * @param exposed what the brightest tenth of the plate gets, as a share of full scale
 * @param quality of the JPEG, 60–95
 */
record Sensor(
        double blur,
        double motion,
        double motionAngle,
        double vignetting,
        double electrons,
        double read,
        double denoise,
        double[] balance,
        double sharpen,
        double tone,
        double exposed,
        int quality) {
    static Sensor of(Chance chance, boolean uv) {
        return new Sensor(
                chance.evenlyInLog(0.6, 2.4),
                chance.happens(0.2) ? chance.between(1, 5) : 0,
                chance.between(0, Math.PI),
                chance.between(0, 0.3),
                chance.evenlyInLog(uv ? 120 : 500, uv ? 8000 : 20000),
                chance.between(0.001, 0.006),
                chance.between(0.3, 0.9),
                new double[] {1 + chance.normal(0.08), 1, 1 + chance.normal(0.1)},
                chance.happens(0.6) ? chance.between(0.1, 0.8) : 0,
                chance.between(0, 0.25),
                chance.between(0.5, 0.97),
                chance.count(60, 95));
    }

    /** Noise of one pixel at a level, as a share of that level. */
    double noise(double level) {
        double light = Math.max(1e-4, level);
        return Math.sqrt(light / electrons + read * read) / light;
    }

    /** Linear light of three channels becomes bytes 0xRRGGBB; the light is used up. */
    int[] develop(Chance chance, float[][] light, int width, int height) {
        vignette(light, width, height);
        Noise noise = chance.noise();
        for (float[] channel : light) {
            Blur.round(channel, width, height, blur);
            if (motion > 0) {
                Blur.along(channel, width, height, motion, motionAngle);
            }
            for (int i = 0; i < channel.length; i++) {
                double level = Math.max(0, channel[i]);
                channel[i] = (float) (level + noise.next() * Math.sqrt(level / electrons + read * read));
            }
            Blur.round(channel, width, height, denoise);
        }
        // by the root of light the steps in the dark are fine enough
        float[] tones = new float[1 << 14];
        for (int i = 0; i < tones.length; i++) {
            tones[i] = (float) tone(Math.pow(i / (tones.length - 1.0), 2));
        }
        int[] pixels = new int[width * height];
        for (int c = 0; c < 3; c++) {
            float[] channel = light[c];
            for (int i = 0; i < channel.length; i++) {
                double root = Math.sqrt(Math.max(0, Math.min(1, channel[i] * balance[c])));
                channel[i] = tones[(int) (root * (tones.length - 1) + 0.5)];
            }
            if (sharpen > 0) {
                Blur.sharpen(channel, width, height, 1.3, sharpen);
            }
            for (int i = 0; i < channel.length; i++) {
                int value = (int) Math.round(255 * Math.max(0, Math.min(1, channel[i])));
                pixels[i] |= value << (16 - 8 * c);
            }
        }
        return pixels;
    }

    private void vignette(float[][] light, int width, int height) {
        double half = Math.hypot(width, height) / 2;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double dx = (x - width / 2.0) / half;
                double dy = (y - height / 2.0) / half;
                float left = (float) (1 - vignetting * (dx * dx + dy * dy));
                for (float[] channel : light) {
                    channel[y * width + x] *= left;
                }
            }
        }
    }

    double vignetted(double radius) {
        return 1 - vignetting * radius * radius;
    }

    private double tone(double linear) {
        double coded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return coded - tone * Math.sin(2 * Math.PI * coded) / (2 * Math.PI);
    }
}
