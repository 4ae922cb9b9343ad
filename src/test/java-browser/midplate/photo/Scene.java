package midplate.photo;

import java.util.ArrayList;
import java.util.List;

/** A plate where it lies, lit: the linear light that comes from each place of its plane. */
final class Scene {
    private record Crumb(double x, double h, double radius) {}

    private final Sample sample;
    private final Pencil pencil;
    private final Layer layer;
    private final Lamp lamp;
    private final Bench bench;
    private final boolean uv;
    private final double[] shines;
    private final double[] haze;
    private final double rim;
    private final double rimLevel;
    private final double depth;
    private final double[] shadowTo;
    private final Unevenness cut;
    private final double roughCut;
    private final List<Crumb> crumbs = new ArrayList<>();

    private Scene(Chance chance) {
        Chance of = chance.of("scene");
        Ground ground = of.happens(0.42)
                ? Ground.GREEN
                : of.any(Ground.WHITE, Ground.WHITE, Ground.CREAM, Ground.PERMANGANATE, Ground.ANISALDEHYDE);
        this.sample = Running.of(chance.of("run"), ground);
        this.pencil = Pencil.of(chance.of("pencil"), sample);
        this.layer = Layer.of(chance.of("layer"), sample, pencil);
        this.lamp = Lamp.of(chance.of("lamp"), sample.course(), ground);
        this.bench = Bench.of(chance.of("bench"), sample.course(), ground);
        this.uv = ground == Ground.GREEN;
        double blue = of.between(0.12, 0.45);
        this.shines = uv ? new double[] {of.between(0.05, 0.3), 1, blue} : new double[] {1, 1, 1};
        double hazy = of.happens(0.4) ? of.between(0.02, 0.2) : of.between(0, 0.03);
        this.haze = uv ? new double[] {0.35 * hazy, 0.06 * hazy, hazy} : new double[3];
        this.rim = of.happens(0.3) ? of.between(0.2, 0.9) : 0;
        this.rimLevel = of.between(0.1, 0.5);
        this.depth = of.between(0.3, 1.6);
        double toward = of.between(0, 2 * Math.PI);
        this.shadowTo = new double[] {Math.cos(toward), Math.sin(toward)};
        this.cut = of.unevenness(of.between(0.6, 2));
        this.roughCut = of.evenlyInLog(0.02, 0.12);
        int count = of.happens(0.4) ? of.count(2, 14) : 0;
        for (int i = 0; i < count; i++) {
            boolean side = of.happens(0.5);
            double off = of.sign() > 0 ? -of.evenlyInLog(0.2, 6) : of.evenlyInLog(0.2, 6);
            double width = sample.course().widthMm();
            double height = sample.course().heightMm();
            crumbs.add(new Crumb(
                    side ? (off < 0 ? off : width + off) : of.between(0, width),
                    side ? of.between(0, height) : off < 0 ? off : height + off,
                    of.evenlyInLog(0.08, 0.4)));
        }
    }

    static Scene of(Chance chance) {
        return new Scene(chance);
    }

    Sample sample() {
        return sample;
    }

    Pencil pencil() {
        return pencil;
    }

    Layer layer() {
        return layer;
    }

    Lamp lamp() {
        return lamp;
    }

    Bench bench() {
        return bench;
    }

    double rimMm() {
        return rim;
    }

    /** Without grain, graphite and glare: what these substances on the plate let through at a place. */
    double clean(List<Blot> of, double x, double h, int channel) {
        return lamp.at(x, h) * (shines[channel] * sample.reflection(of, x, h, channel) + haze[channel]);
    }

    /** The light of the surface's glare at a place. */
    double glare(double x, double h, int channel) {
        double[] colour = uv ? new double[] {0.35, 0.12, 1} : new double[] {1, 1, 1};
        return lamp.glare(x, h) * colour[channel];
    }

    /** How far inside the plate a place is, less than 0 outside [mm]. */
    private double inside(double x, double h) {
        Course course = sample.course();
        double across = roughCut * (0.7 * cut.at(0, h) + cut.at(3, h / 7) + 0.3 * cut.at(9, 3 * h));
        double along = roughCut * (0.7 * cut.at(x, 50) + cut.at(x / 7, 70) + 0.3 * cut.at(3 * x, 90));
        return Math.min(
                Math.min(x - across, course.widthMm() - x - across),
                Math.min(h - along, course.heightMm() - h - along));
    }

    /** The light from a place. */
    void at(double x, double h, double pixelsPerMm, double[] rgb) {
        double inside = inside(x, h);
        double covers = Math.max(0, Math.min(1, inside * pixelsPerMm + 0.5));
        double light = lamp.at(x, h);
        for (int channel = 0; channel < 3; channel++) {
            rgb[channel] = 0;
        }
        if (covers > 0) {
            double layered =
                    rim == 0 ? 1 : Math.max(0, Math.min(1, (inside - rim * (1 + 0.35 * cut.at(x, h))) * pixelsPerMm));
            for (int channel = 0; channel < 3; channel++) {
                double support = (uv ? 0.06 : rimLevel) * (uv ? haze[channel] + 0.02 : 1);
                double back = layer.at(x, h, channel) * shines[channel] + haze[channel];
                rgb[channel] = covers * (light * (layered * back + (1 - layered) * support) + glare(x, h, channel));
            }
        }
        if (covers < 1) {
            double[] under = bench.at(x, h);
            double dark = shaded(x, h);
            boolean crumb = isCrumb(x, h);
            for (int channel = 0; channel < 3; channel++) {
                double back = crumb ? shines[channel] * 0.8 : under[channel] * dark + haze[channel] * 0.1;
                rgb[channel] += (1 - covers) * light * back;
            }
        }
    }

    private boolean isCrumb(double x, double h) {
        for (Crumb crumb : crumbs) {
            if (Math.hypot(x - crumb.x(), h - crumb.h()) < crumb.radius()) {
                return true;
            }
        }
        return false;
    }

    private double shaded(double x, double h) {
        double inside = inside(x - depth * shadowTo[0], h - depth * shadowTo[1]);
        return 1 - 0.6 / (1 + Math.exp(-inside / (0.3 + 0.3 * depth)));
    }
}
