package midplate.photo;

import java.util.List;

/**
 * A plate as it came out of the chamber, before anybody wrote on it or looked at it.
 *
 * @param course its size, start line and front
 * @param lanes from left to right
 * @param blots what lies on it
 * @param ground its layer
 * @param curvedMm how far the front's middle is off the straight line through its ends [mm]
 */
record Sample(Course course, List<Lane> lanes, List<Blot> blots, Ground ground, double curvedMm) {
    double driftMm() {
        return lanes.stream()
                .mapToDouble(lane -> Math.abs(lane.frontXMm() - lane.startXMm()))
                .max()
                .orElse(0);
    }

    double laneDistance() {
        double least = course.widthMm();
        for (int i = 1; i < lanes.size(); i++) {
            least = Math.min(least, lanes.get(i).startXMm() - lanes.get(i - 1).startXMm());
        }
        return least;
    }

    /** The light that comes back from a place, by the layer's law, for these substances on it [share]. */
    double reflection(List<Blot> of, double x, double h, int channel) {
        double absorbed = ground.absorption(channel);
        double dyeLeft = 1;
        for (Blot blot : of) {
            double amount = blot.amount(course, x, h);
            absorbed += amount * blot.absorbs()[channel];
            dyeLeft *= 1 - blot.bleaches() * (1 - Math.exp(-3 * amount));
        }
        return Ground.reflection(absorbed + ground.dye(channel) * dyeLeft);
    }
}
