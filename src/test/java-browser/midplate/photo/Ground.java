package midplate.photo;

/**
 * What a plate's layer looks like before there is a spot on it, and what its spots can look like, in linear light.
 *
 * <p>Layers are seen by the law of Kubelka and Munk for a thick scattering layer, R = 1 + F − √(F² + 2F) where F is the ratio of absorption
 * and scattering.
 *
 * @see "Kubelka P., Munk F. (1931) Zeitschrift für technische Physik 12, 593 (the law as commonly written; from memory)"
 */
enum Ground {
    GREEN(Light.UV, rgb(0.97, 0.97, 0.97), rgb(0, 0, 0), new double[][] {rgb(1, 1, 1)}),
    WHITE(Light.DAY, rgb(0.86, 0.86, 0.85), rgb(0, 0, 0), new double[][] {
        rgb(0.45, 0.75, 1),
        rgb(0.9, 1, 0.35),
        rgb(0.12, 1, 0.5),
        rgb(1, 0.95, 0.75),
        rgb(0.04, 0.12, 1),
        rgb(1, 0.7, 0.6)
    }),
    CREAM(Light.DAY, rgb(0.87, 0.82, 0.70), rgb(0, 0, 0), new double[][] {
        rgb(0.45, 0.75, 1), rgb(1, 0.95, 0.75), rgb(0.9, 1, 0.35), rgb(0.6, 0.8, 1)
    }),
    PERMANGANATE(Light.DAY, rgb(0.86, 0.80, 0.72), rgb(0.004, 0.16, 0.05), new double[][] {
        rgb(0.02, 0.18, 1), rgb(0.08, 0.3, 1)
    }),
    ANISALDEHYDE(Light.DAY, rgb(0.88, 0.78, 0.77), rgb(0.002, 0.03, 0.02), new double[][] {
        rgb(0.9, 1, 0.3), rgb(0.15, 1, 0.5), rgb(1, 0.75, 0.35), rgb(0.5, 0.75, 1), rgb(1, 0.7, 0.8)
    });

    /** The kinds of light. */
    enum Light {
        UV("uv-254"),
        DAY("daylight");

        private final String word;

        Light(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private final Light light;
    private final double[] reflects;
    private final double[] dye;
    private final double[][] colours;

    Ground(Light light, double[] reflects, double[] dye, double[][] colours) {
        this.light = light;
        this.reflects = reflects;
        this.dye = dye;
        this.colours = colours;
    }

    private static double[] rgb(double red, double green, double blue) {
        return new double[] {red, green, blue};
    }

    Light light() {
        return light;
    }

    double[][] colours() {
        return colours;
    }

    /** The ratio of absorption and scattering of the bare layer. */
    double absorption(int channel) {
        return absorptionOf(reflects[channel]);
    }

    /** What a stain that covers the whole plate adds. */
    double dye(int channel) {
        return dye[channel];
    }

    static double reflection(double absorption) {
        return 1 + absorption - Math.sqrt(absorption * absorption + 2 * absorption);
    }

    static double absorptionOf(double reflection) {
        return (1 - reflection) * (1 - reflection) / (2 * reflection);
    }
}
