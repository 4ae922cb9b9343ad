package midplate.photo;

/**
 * How strongly a spot is seen, and in which colour.
 *
 * @param absorbs by channel, added to the layer's ratio of absorption and scattering
 * @param bleaches the share of the ground's dye that it takes away, 0…1
 */
record Stain(double[] absorbs, double bleaches) {
    static Stain of(Chance chance, Ground ground, double least) {
        double[] colour = chance.any(ground.colours()).clone();
        for (int channel = 0; channel < 3; channel++) {
            if (ground != Ground.GREEN) {
                colour[channel] *= chance.between(0.85, 1.15);
            }
        }
        double bleaches = ground == Ground.PERMANGANATE ? chance.between(0.5, 0.9) : 0;
        // what is yellow is seen later than what is dark
        double seen = colour[1] < 0.35 ? Math.max(least, 0.2) : least;
        double contrast = Math.max(seen, contrast(chance));
        double low = 0;
        double high = 60;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (contrast(ground, colour, bleaches, middle) < contrast) {
                low = middle;
            } else {
                high = middle;
            }
        }
        for (int channel = 0; channel < 3; channel++) {
            colour[channel] *= high;
        }
        return new Stain(colour, bleaches);
    }

    private static double contrast(Chance chance) {
        double kind = chance.between(0, 1);
        if (kind < 0.04) {
            return chance.between(0.03, 0.08);
        }
        return kind < 0.18 ? chance.between(0.08, 0.15) : chance.evenlyInLog(0.15, 0.9);
    }

    private static double contrast(Ground ground, double[] colour, double bleaches, double scale) {
        double most = 0;
        double dyeLeft = 1 - bleaches * (1 - Math.exp(-3));
        for (int channel = 0; channel < 3; channel++) {
            double bare = Ground.reflection(ground.absorption(channel) + ground.dye(channel));
            double spot = Ground.reflection(
                    ground.absorption(channel) + ground.dye(channel) * dyeLeft + scale * colour[channel]);
            most = Math.max(most, 1 - spot / bare);
        }
        return most;
    }
}
