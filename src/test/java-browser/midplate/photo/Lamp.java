package midplate.photo;

import java.util.ArrayList;
import java.util.List;

/** The light on the plane of a plate: how it falls off, shadows, and what shines back from the surface. */
final class Lamp {
    private record Shine(double x, double h, double along, double across, double angle, double strength) {}

    private final Course course;
    private final double angle;
    private final double ratio;
    private final double shadow;
    private final double shadowAngle;
    private final double shadowAt;
    private final double shadowSoft;
    private final Unevenness bend;
    private final List<Shine> shines = new ArrayList<>();
    private final boolean halo;

    private Lamp(Chance chance, Course course, boolean uv) {
        this.course = course;
        this.angle = chance.between(0, 2 * Math.PI);
        this.ratio = chance.happens(0.5) ? chance.between(1, 1.4) : chance.evenlyInLog(1.2, 3);
        this.shadow = !uv && chance.happens(0.2) ? chance.between(0.15, 0.4) : 0;
        this.shadowAngle = chance.between(0, 2 * Math.PI);
        this.shadowAt = chance.between(-25, 25);
        this.shadowSoft = chance.evenlyInLog(1.5, 8);
        this.bend = chance.unevenness(18);
        this.halo = uv;
        if (chance.happens(uv ? 0.1 : 0.15)) {
            shines.add(new Shine(
                    chance.between(0, course.widthMm()),
                    chance.between(0, course.heightMm()),
                    chance.between(4, 14),
                    chance.between(1.5, 6),
                    chance.between(0, 3.2),
                    uv ? chance.between(0.1, 0.5) : chance.evenlyInLog(0.15, 2)));
        }
    }

    static Lamp of(Chance chance, Course course, Ground ground) {
        return new Lamp(chance, course, ground == Ground.GREEN);
    }

    double ratio() {
        return ratio;
    }

    boolean hasShadow() {
        return shadow > 0;
    }

    boolean glares() {
        return !shines.isEmpty();
    }

    /** The light that falls on a place, 1 where it is brightest on the plate. */
    double at(double x, double h) {
        double dx = x - course.widthMm() / 2;
        double dh = h - course.heightMm() / 2;
        double reach = Math.abs(course.widthMm() * Math.cos(angle)) + Math.abs(course.heightMm() * Math.sin(angle));
        double t = Math.max(-0.4, (dx * Math.cos(angle) + dh * Math.sin(angle)) / reach + 0.5);
        double fall = 1 + (Math.sqrt(ratio) - 1) * t;
        double light = 1 / (fall * fall);
        if (shadow > 0) {
            double side = dx * Math.cos(shadowAngle) + dh * Math.sin(shadowAngle) - shadowAt + 6 * bend.at(x, h);
            light *= 1 - shadow / (1 + Math.exp(-side / shadowSoft));
        }
        return light;
    }

    /** What shines from the surface at a place, in units of the brightest light. */
    double glare(double x, double h) {
        double sum = 0;
        for (Shine shine : shines) {
            double dx = x - shine.x();
            double dh = h - shine.h();
            double u = (dx * Math.cos(shine.angle()) + dh * Math.sin(shine.angle())) / shine.along();
            double v = (dh * Math.cos(shine.angle()) - dx * Math.sin(shine.angle())) / shine.across();
            double r2 = u * u + v * v;
            sum += shine.strength() * Math.exp(-0.5 * r2 * (halo ? 1 : Math.sqrt(r2 + 0.3)));
        }
        return sum;
    }
}
