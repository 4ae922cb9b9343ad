package midplate.photo;

import java.util.ArrayList;
import java.util.List;

/** Runs a plate: draws its size, lanes, front and spots. */
final class Running {
    private final Chance chance;
    private final List<Blot> blots = new ArrayList<>();
    private final Course course;
    private final List<Lane> lanes;
    private final Ground ground;
    private final double curvedMm;

    private Running(Chance chance, Ground ground) {
        this.chance = chance;
        this.ground = ground;
        double[] size = chance.any(new double[] {40, 70}, new double[] {40, 70}, new double[] {40, 70}, new double[] {
            chance.count(30, 60), chance.count(50, 100)
        });
        double start = chance.between(6, 13);
        double slant = chance.normal(0.35);
        double front = size[1] - chance.between(0.06, 0.22) * size[1];
        double lean = Math.max(-1.5, Math.min(1.5, chance.normal(0.5)));
        this.curvedMm = chance.happens(0.5) ? chance.between(-0.4, 0.4) : chance.sign() * chance.between(0.4, 2.5);
        this.course = new Course(size[0], size[1], new double[] {start - slant / 2, start + slant / 2}, new double[] {
            front - lean / 2, front - curvedMm, front + lean / 2
        });
        this.lanes = lanes();
    }

    static Sample of(Chance chance, Ground ground) {
        Running running = new Running(chance, ground);
        for (int lane = 0; lane < running.lanes.size(); lane++) {
            running.fill(lane);
        }
        return new Sample(
                running.course, running.lanes, List.copyOf(running.blots), ground, Math.abs(running.curvedMm));
    }

    private List<Lane> lanes() {
        int most = (int) Math.min(6, (course.widthMm() - 6) / 6);
        int count = chance.any(1, 2, 2, 3, 3, 3, 4, 4, 5, 6);
        count = Math.min(most, count);
        double margin = chance.between(5, 8);
        double distance = (course.widthMm() - 2 * margin) / Math.max(1, count);
        boolean drifts = chance.happens(0.5);
        double common = chance.normal(drifts ? 0.5 : 0.1);
        List<Lane> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = margin + distance * (i + 0.5) + chance.between(-0.13, 0.13) * distance;
            double drift = Math.max(-1.5, Math.min(1.5, common + chance.normal(drifts ? 0.5 : 0.15)));
            found.add(new Lane(x, x + drift));
        }
        return found;
    }

    private double room() {
        return lanes.size() == 1 ? 10 : 0.86 * new Sample(course, lanes, List.of(), ground, 0).laneDistance();
    }

    private void fill(int lane) {
        List<double[]> taken = new ArrayList<>();
        if (chance.happens(0.06)) {
            return;
        }
        if (chance.happens(0.1)) {
            taken.add(put(lane, chance.any(Form.DISC, Form.GAUSS), chance.between(0, 0.012), chance.between(1, 3)));
        }
        boolean streaked = chance.happens(0.07);
        if (streaked) {
            double run = course.runAt(course.widthMm() / 2);
            double length = chance.between(10, Math.min(30, 0.7 * run));
            double half = length / 2 / run;
            taken.add(put(lane, Form.STREAK, chance.between(Math.min(half, 0.4), Math.max(0.45, 0.95 - half)), length));
        }
        int count = streaked ? chance.any(0, 1) : chance.any(1, 1, 1, 2, 2, 2, 3, 3, 4);
        for (int i = 0; i < count; i++) {
            for (int attempt = 0; attempt < 30 && !putFree(lane, taken); attempt++) {
                continue;
            }
        }
    }

    private boolean putFree(int lane, List<double[]> taken) {
        Form form = form();
        double length = Math.max(form.least(), Math.min(form.most(), chance.evenlyInLog(1.3, 6.5)));
        double rf = chance.happens(0.03) ? chance.between(0.96, 1.01) : chance.between(0.05, 0.95);
        double run = course.runAt(course.widthMm() / 2);
        boolean mayTouch = chance.happens(0.2);
        if (mayTouch && !taken.isEmpty()) {
            double[] beside = taken.get(taken.size() - 1);
            rf = beside[0] + chance.sign() * chance.between(0.45, 1.1) * 0.5 * (length + beside[1]) / run;
        }
        if (rf < 0.03 || rf > 1.01) {
            return false;
        }
        for (double[] other : taken) {
            double apart = Math.abs(rf - other[0]) * run / (0.5 * (length + other[1]));
            if (apart < (mayTouch ? 0.45 : 1.25)) {
                return false;
            }
        }
        taken.add(put(lane, form, rf, length));
        return true;
    }

    private Form form() {
        boolean ring = ground == Ground.GREEN && chance.happens(0.05);
        return ring
                ? Form.RING
                : chance.any(
                        Form.GAUSS,
                        Form.GAUSS,
                        Form.GAUSS,
                        Form.DISC,
                        Form.ELLIPSE,
                        Form.ELLIPSE,
                        Form.ELLIPSE,
                        Form.FLAT,
                        Form.FLAT,
                        Form.TAIL,
                        Form.CRESCENT,
                        Form.SHARP_HEAD);
    }

    private double[] put(int lane, Form form, double rf, double length) {
        double x = lanes.get(lane).at(rf) + chance.normal(0.15);
        double wide = form == Form.STREAK ? chance.between(2, 5) : length * chance.between(0.75, 1.5);
        if (form == Form.SHARP_HEAD || form == Form.TAIL) {
            wide = length * chance.between(0.4, 0.9);
        }
        if (form == Form.CRESCENT) {
            wide = length * chance.between(1.6, 2.6);
        }
        double width = Math.min(room(), Math.max(1, wide));
        double bend =
                form == Form.CRESCENT ? chance.sign() * chance.between(0.3, 0.8) * length / (width * width) * 2 : 0;
        Unevenness own = chance.unevenness(chance.between(2, 5));
        double least = form == Form.STREAK || form == Form.SHARP_HEAD ? 0.25 : 0;
        Stain stain = Stain.of(chance, ground, least);
        double most = Blot.most(form, length, width, bend, own);
        double mm = course.heightOf(x, rf);
        blots.add(new Blot(lane, form, x, mm, length, width, bend, own, most, stain.absorbs(), stain.bleaches()));
        return new double[] {rf, length};
    }
}
