package midplate.photo;

import java.util.ArrayList;
import java.util.List;

/** What a plate lies on, with what lies about, as the share of white light it gives back (under UV: what it glows). */
final class Bench {
    private record Thing(double x, double h, double angle, double halfLength, double halfWidth, double[] rgb) {}

    private final String kind;
    private final double[] base;
    private final double rough;
    private final double across;
    private final Unevenness fine;
    private final Unevenness broad;
    private final List<Thing> things = new ArrayList<>();

    private Bench(Chance chance, Course course, Ground ground) {
        boolean uv = ground == Ground.GREEN;
        this.kind = uv
                ? chance.any("cabinet", "cabinet", "cabinet", "cabinet", "cabinet", "cabinet", "glowing paper")
                : chance.any("wood", "grey", "dark", "white paper", "mat", "tissue", "steel");
        this.base = base(kind, chance);
        this.rough = uv ? 0.15 : chance.between(0.03, 0.12);
        this.across = kind.equals("wood") ? 12 : 1;
        this.fine = chance.unevenness(kind.equals("tissue") ? 1.5 : 0.5);
        this.broad = chance.unevenness(chance.between(8, 40));
        int count = chance.happens(0.5) ? chance.count(1, 3) : 0;
        for (int i = 0; i < count; i++) {
            double glow = uv ? 0.03 : 1;
            double far = 0.5 * course.widthMm() + chance.between(9, 40);
            double bright = glow * chance.evenlyInLog(0.04, 0.6);
            double[] rgb = {
                bright * chance.between(0.5, 1), bright * chance.between(0.5, 1), bright * chance.between(0.4, 1)
            };
            boolean round = chance.happens(0.4);
            things.add(new Thing(
                    course.widthMm() / 2 + chance.sign() * far,
                    chance.between(-10, course.heightMm() + 10),
                    chance.normal(0.5),
                    round ? -chance.between(4, 12) : chance.between(20, 80),
                    chance.between(2.5, 6),
                    rgb));
        }
    }

    static Bench of(Chance chance, Course course, Ground ground) {
        return new Bench(chance, course, ground);
    }

    String kind() {
        return kind;
    }

    private static double[] base(String kind, Chance chance) {
        double bright = chance.between(0.8, 1.2);
        double[] rgb = switch (kind) {
            case "cabinet" -> new double[] {0.006, 0.004, 0.012};
            case "glowing paper" -> new double[] {0.012, 0.02, 0.07};
            case "wood" -> new double[] {0.38, 0.22, 0.11};
            case "grey" -> new double[] {0.3, 0.31, 0.32};
            case "dark" -> new double[] {0.05, 0.05, 0.055};
            case "white paper" -> new double[] {0.72, 0.73, 0.74};
            case "mat" -> new double[] {0.08, 0.2, 0.3};
            case "tissue" -> new double[] {0.6, 0.6, 0.6};
            default -> new double[] {0.42, 0.43, 0.44};
        };
        for (int channel = 0; channel < 3; channel++) {
            rgb[channel] *= bright;
        }
        return rgb;
    }

    double[] at(double x, double h) {
        double uneven = 1 + rough * fine.at(x * across, h) + 1.5 * rough * broad.at(x * across / 3, h);
        double[] rgb = {base[0] * uneven, base[1] * uneven, base[2] * uneven};
        for (Thing thing : things) {
            double dx = x - thing.x();
            double dh = h - thing.h();
            double along = -dx * Math.sin(thing.angle()) + dh * Math.cos(thing.angle());
            double side = dx * Math.cos(thing.angle()) + dh * Math.sin(thing.angle());
            double inside = thing.halfLength() < 0
                    ? -thing.halfLength() - Math.hypot(dx, dh)
                    : Math.min(thing.halfLength() - Math.abs(along), thing.halfWidth() - Math.abs(side));
            if (inside > 0) {
                double edge = Math.min(1, 0.5 + inside / 1.5) * (thing.halfLength() < 0 ? 1 : 1 - 0.3 * side / 6);
                for (int channel = 0; channel < 3; channel++) {
                    rgb[channel] = thing.rgb()[channel] * edge;
                }
            }
        }
        return rgb;
    }
}
