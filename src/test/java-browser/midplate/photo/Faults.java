package midplate.photo;

import java.util.ArrayList;
import java.util.List;

/** Faults of a plate that are no spots: fingerprints, faint stains, specks where the layer came off. */
final class Faults {
    private record Patch(double x, double h, double radius, double depth, double ridges, double angle) {}

    private final List<Patch> patches = new ArrayList<>();
    private final Unevenness wobble;

    private Faults(Unevenness wobble) {
        this.wobble = wobble;
    }

    static Faults of(Chance chance, Course course) {
        Faults faults = new Faults(chance.unevenness(4));
        if (chance.happens(0.12)) {
            double edge = chance.any(0.0, 1.0) * course.widthMm();
            faults.patches.add(new Patch(
                    edge,
                    chance.between(0, course.heightMm()),
                    chance.between(4, 7),
                    chance.between(0.015, 0.04),
                    0.45,
                    chance.between(0, 3)));
        }
        int stains = chance.happens(0.15) ? chance.count(1, 2) : 0;
        for (int i = 0; i < stains; i++) {
            faults.patches.add(new Patch(
                    chance.between(0, course.widthMm()),
                    chance.between(0, course.heightMm()),
                    chance.between(3, 8),
                    chance.between(0.01, 0.035),
                    0,
                    0));
        }
        int specks = chance.happens(0.3) ? chance.count(1, 8) : 0;
        for (int i = 0; i < specks; i++) {
            faults.patches.add(new Patch(
                    chance.between(0, course.widthMm()),
                    chance.between(0, course.heightMm()),
                    chance.between(0.08, 0.25),
                    chance.between(0.2, 0.6),
                    0,
                    0));
        }
        return faults;
    }

    /** The share of the light that is left at a place. */
    double at(double x, double h) {
        double left = 1;
        for (Patch patch : patches) {
            double dx = x - patch.x();
            double dh = h - patch.h();
            double r2 = (dx * dx + dh * dh) / (patch.radius() * patch.radius());
            if (r2 < 6) {
                double depth = patch.depth() * Math.exp(-r2 * r2);
                if (patch.ridges() > 0) {
                    double along = dx * Math.cos(patch.angle()) + dh * Math.sin(patch.angle()) + wobble.at(x, h);
                    depth *= 0.6 + 0.6 * Math.sin(2 * Math.PI * along / patch.ridges());
                }
                left *= 1 - depth;
            }
        }
        return left;
    }
}
