package midplate.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** What was drawn on a plate by hand with a pencil: lines, ticks, letters, circles. */
final class Pencil {
    /** How the front was marked. */
    enum Front {
        DRAWN,
        WET_EDGE,
        NOT
    }

    /** Letters and digits as lines on a field of 4 × 6, from the lower left. */
    private static final String[][] SIGNS = {
        {"A", "0,0 2,6 4,0", "1,2 3,2"},
        {"B", "0,0 0,6 3,6 4,5 3,3 0,3", "3,3 4,1.5 3,0 0,0"},
        {"C", "4,5 3,6 1,6 0,4 0,2 1,0 3,0 4,1"},
        {"D", "0,0 0,6 2,6 4,4 4,2 2,0 0,0"},
        {"E", "4,6 0,6 0,0 4,0", "0,3 3,3"},
        {"F", "4,6 0,6 0,0", "0,3 3,3"},
        {"1", "1,5 2,6 2,0"},
        {"2", "0,5 1,6 3,6 4,5 4,4 0,0 4,0"},
        {"3", "0,6 3,6 4,5 2,3.4 4,2 3,0 0,0"},
        {"4", "3,0 3,6 0,2 4,2"},
        {"5", "4,6 0,6 0,3.5 3,3.5 4,2 3,0 0,0"},
        {"6", "3,6 1,4 0,2 1,0 3,0 4,1.5 3,3 0,2.6"},
        {"S", "4,5 3,6 1,6 0,5 1,3.3 3,2.8 4,1.5 3,0 1,0 0,1"},
        {"P", "0,0 0,6 3,6 4,4.6 3,3 0,3"},
        {"R", "0,0 0,6 3,6 4,4.6 3,3 0,3", "1.5,3 4,0"},
        {":", "2,1.8 2,2.2", "2,4 2,4.4"}
    };

    private record Stroke(Path2D path, double widthMm, double dark) {}

    private final Chance chance;
    private final Sample sample;
    private final List<Stroke> strokes = new ArrayList<>();
    private final Front front;
    private final boolean start;
    private final boolean ruler;
    private final double dark;
    private boolean circled;
    private String labels = "none";

    private Pencil(Chance chance, Sample sample) {
        this.chance = chance;
        this.sample = sample;
        double kind = chance.between(0, 1);
        this.front = kind < 0.72 ? Front.DRAWN : kind < 0.88 ? Front.WET_EDGE : Front.NOT;
        this.start = chance.happens(0.92);
        this.ruler = chance.happens(0.5);
        this.dark = chance.between(0.3, 0.75);
    }

    static Pencil of(Chance chance, Sample sample) {
        Pencil pencil = new Pencil(chance, sample);
        pencil.line();
        pencil.labels();
        pencil.circles();
        return pencil;
    }

    Front front() {
        return front;
    }

    boolean start() {
        return start;
    }

    boolean circled() {
        return circled;
    }

    boolean ruler() {
        return ruler;
    }

    String labelled() {
        return labels;
    }

    private interface Height {
        double at(double x);
    }

    private void across(Height height, double wobbleMm) {
        Course course = sample.course();
        Unevenness wave = chance.unevenness(chance.between(4, 12));
        Unevenness shake = chance.unevenness(1.2);
        double from = chance.happens(0.5) ? 0.2 : chance.between(0.5, 4);
        double to = course.widthMm() - (chance.happens(0.5) ? 0.2 : chance.between(0.5, 4));
        Path2D path = new Path2D.Double();
        for (double x = from; x <= to; x += 0.4) {
            double h = height.at(x) + wobbleMm * (wave.at(x, 0) + 0.25 * shake.at(x, 0));
            if (x == from) {
                path.moveTo(x, h);
            } else {
                path.lineTo(x, h);
            }
        }
        strokes.add(new Stroke(path, chance.between(0.3, 0.6), dark * chance.between(0.8, 1.1)));
    }

    private void line() {
        Course course = sample.course();
        if (start) {
            across(course::startAt, ruler ? 0.03 : 0.18);
        }
        if (front == Front.DRAWN) {
            across(course::frontAt, ruler && sample.curvedMm() < 0.3 ? 0.1 : 0.22);
        }
        double tick = chance.between(0.8, 2);
        if (start && chance.happens(0.6)) {
            for (Lane lane : sample.lanes()) {
                double x = lane.startXMm() + chance.normal(0.15);
                double h = course.startAt(x);
                stroke(x, h - tick, x + chance.normal(0.1), h + tick * chance.between(0, 1));
            }
        }
    }

    private void stroke(double x, double h, double toX, double toH) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, h);
        path.lineTo(toX, toH);
        strokes.add(new Stroke(path, chance.between(0.3, 0.5), dark));
    }

    private void labels() {
        double kind = chance.between(0, 1);
        double size = chance.between(2.2, 3.6);
        labels = kind < 0.4 ? "letters" : kind < 0.75 ? "numbers" : "none";
        int first = kind < 0.4 ? 0 : 6;
        double room = sample.course().startAt(0) - 1;
        for (int i = 0; i < sample.lanes().size() && kind < 0.75; i++) {
            double h = Math.max(0.6, (room - size) / 2 + chance.normal(0.3));
            sign(SIGNS[first + i], sample.lanes().get(i).startXMm() - size / 3, h, Math.min(size, room - 1));
        }
        if (chance.happens(0.25)) {
            double top = sample.course().heightMm();
            double above = top - sample.course().frontAt(0);
            double high = Math.min(3, above - 2.5);
            double x = chance.between(3, sample.course().widthMm() - 14);
            String[][] text = {SIGNS[chance.count(6, 11)], SIGNS[15], SIGNS[6]};
            for (int i = 0; i < text.length && high > 1.2; i++) {
                sign(text[i], x + i * high * 0.95, top - 1 - high + chance.normal(0.15), high);
            }
        }
    }

    private void sign(String[] sign, double x, double h, double size) {
        double lean = chance.normal(0.08);
        for (int part = 1; part < sign.length; part++) {
            Path2D path = new Path2D.Double();
            boolean first = true;
            for (String point : sign[part].split(" ")) {
                String[] at = point.split(",");
                double v = Double.parseDouble(at[1]) / 6 * size;
                double u = Double.parseDouble(at[0]) / 6 * size + lean * v + chance.normal(0.02 * size);
                if (first) {
                    path.moveTo(x + u, h + v);
                } else {
                    path.lineTo(x + u, h + v + chance.normal(0.02 * size));
                }
                first = false;
            }
            strokes.add(new Stroke(path, chance.between(0.3, 0.5), dark));
        }
    }

    private void circles() {
        boolean all = chance.happens(0.06);
        for (Blot blot : sample.blots()) {
            if (blot.form() == Form.STREAK || !(all || chance.happens(0.02))) {
                continue;
            }
            circled = true;
            double a = 0.5 * blot.widthMm() * chance.between(1.05, 1.35) + 0.3;
            double b = 0.5 * blot.lengthMm() * chance.between(1.05, 1.35) + 0.3;
            Unevenness wave = chance.unevenness(1.5);
            Path2D path = new Path2D.Double();
            double begin = chance.between(0, 6);
            for (double t = 0; t < 6.6; t += 0.15) {
                double r = 1 + 0.08 * wave.at(t, 0);
                double x = blot.xMm() + a * r * Math.cos(begin + t);
                double h = blot.mm() + b * r * Math.sin(begin + t);
                if (t == 0) {
                    path.moveTo(x, h);
                } else {
                    path.lineTo(x, h);
                }
            }
            strokes.add(new Stroke(path, chance.between(0.3, 0.45), dark * 0.9));
        }
    }

    /** How much graphite lies where, 0…255, rows from the plate's lower edge. */
    BufferedImage drawn(double pixelsPerMm) {
        int width = (int) Math.ceil(sample.course().widthMm() * pixelsPerMm);
        int height = (int) Math.ceil(sample.course().heightMm() * pixelsPerMm);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(pixelsPerMm, pixelsPerMm);
        for (Stroke stroke : strokes) {
            int level = (int) Math.round(255 * Math.min(1, stroke.dark()));
            pen.setColor(new Color(level, level, level));
            pen.setStroke(new BasicStroke((float) stroke.widthMm(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            pen.draw(stroke.path());
        }
        pen.dispose();
        return image;
    }
}
