package midplate.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Finds by the definition of a spot's centre, from the light without noise, what a person would mark: contrast of 8 % and more and at least 3.5
 * times the noise seen over half a millimetre; neighbours without a dip of 5 % of the lower one are one mark; what is more than half under
 * glare is none.
 */
final class Marks {
    private static final double STEP = 0.02;
    private static final double LEAST = 0.08;
    private static final double NOISES = 3.5;
    private static final double DIP = 0.05;
    /** How far the top of two together may lie outside their own tops [mm]. */
    private static final double BESIDE = 0.4;

    private static final double SEEN_OVER_MM = 0.5;

    private final Scene scene;
    private final View view;
    private final Sensor sensor;
    private final double gain;

    private Marks(Scene scene, View view, Sensor sensor, double gain) {
        this.scene = scene;
        this.view = view;
        this.sensor = sensor;
        this.gain = gain;
    }

    static List<Mark> of(Scene scene, View view, Sensor sensor, double gain) {
        Marks marks = new Marks(scene, view, sensor, gain);
        List<Mark> found = new ArrayList<>();
        for (int lane = 0; lane < scene.sample().lanes().size(); lane++) {
            for (List<Blot> group : marks.groups(lane)) {
                found.add(marks.mark(group));
            }
        }
        return List.copyOf(found);
    }

    /** The darkening along a lane: one channel, from one height on. */
    private record Along(int channel, double from, double[] darkening) {
        int peak(double low, double high) {
            int best = Math.max(0, index(low));
            for (int i = best; i <= Math.min(darkening.length - 1, index(high)); i++) {
                best = darkening[i] > darkening[best] ? i : best;
            }
            return best;
        }

        /** Where between two heights it is least dark; the lower place of two alike. */
        int least(double low, double high) {
            int best = Math.max(0, index(low));
            for (int i = best; i <= Math.min(darkening.length - 1, index(high)); i++) {
                best = darkening[i] < darkening[best] ? i : best;
            }
            return best;
        }

        int index(double mm) {
            return (int) Math.round((mm - from) / STEP);
        }

        double height(double index) {
            return from + STEP * index;
        }

        /** Where the darkening first and last is so high, between points. */
        double[] outline(double level) {
            int first = 0;
            while (darkening[first] < level) {
                first++;
            }
            int last = darkening.length - 1;
            while (darkening[last] < level) {
                last--;
            }
            double low = first == 0 ? 0 : first - share(darkening[first], darkening[first - 1], level);
            double high =
                    last == darkening.length - 1 ? last : last + share(darkening[last], darkening[last + 1], level);
            return new double[] {height(low), height(high)};
        }

        private static double share(double above, double below, double level) {
            return (above - level) / (above - below);
        }
    }

    private Along along(List<Blot> group) {
        Blot middle = strongest(group);
        double low = 1e9;
        double high = -1e9;
        for (Blot blot : group) {
            low = Math.min(low, blot.mm() - blot.reach() - 1);
            high = Math.max(high, blot.mm() + blot.reach() + 1);
        }
        low = Math.max(0, low);
        high = Math.min(scene.sample().course().heightMm(), high);
        int count = (int) ((high - low) / STEP) + 1;
        double[][] darkening = new double[3][count];
        int best = 1;
        double most = 0;
        for (int channel = 0; channel < 3; channel++) {
            for (int i = 0; i < count; i++) {
                darkening[channel][i] = darkening(group, middle, low + i * STEP, channel);
                if (darkening[channel][i] > most) {
                    most = darkening[channel][i];
                    best = channel;
                }
            }
        }
        return new Along(best, low, darkening[best]);
    }

    /** Over the middle half of the spot's width. */
    private double darkening(List<Blot> group, Blot middle, double h, int channel) {
        double sum = 0;
        for (int k = -2; k <= 2; k++) {
            double x = middle.xMm() + k * middle.widthMm() / 8;
            sum += 1 - scene.clean(group, x, h, channel) / scene.clean(List.of(), x, h, channel);
        }
        return sum / 5;
    }

    private static Blot strongest(List<Blot> group) {
        return group.stream()
                .max(Comparator.comparingDouble(
                        blot -> Math.max(blot.absorbs()[0], Math.max(blot.absorbs()[1], blot.absorbs()[2]))))
                .orElseThrow();
    }

    private List<List<Blot>> groups(int lane) {
        List<List<Blot>> groups = scene.sample().blots().stream()
                .filter(blot -> blot.lane() == lane)
                .sorted(Comparator.comparingDouble(Blot::mm))
                .map(List::of)
                .collect(Collectors.toCollection(ArrayList::new));
        int at = 0;
        while (at + 1 < groups.size()) {
            if (isOne(groups.get(at), groups.get(at + 1))) {
                List<Blot> both = new ArrayList<>(groups.get(at));
                both.addAll(groups.get(at + 1));
                groups.set(at, List.copyOf(both));
                groups.remove(at + 1);
                at = Math.max(0, at - 1);
            } else {
                at++;
            }
        }
        return groups;
    }

    private boolean isOne(List<Blot> lower, List<Blot> upper) {
        Along one = along(lower);
        Along other = along(upper);
        double low = one.height(one.peak(0, 1e3));
        double high = other.height(other.peak(0, 1e3));
        List<Blot> both = new ArrayList<>(lower);
        both.addAll(upper);
        Along sum = along(both);
        int dip = sum.least(Math.min(low, high), Math.max(low, high));
        double lesser = Math.min(
                sum.darkening()[sum.peak(Math.min(low, high) - BESIDE, sum.height(dip))],
                sum.darkening()[sum.peak(sum.height(dip), Math.max(low, high) + BESIDE)]);
        return sum.darkening()[dip] > (1 - DIP) * lesser;
    }

    private Mark mark(List<Blot> group) {
        Along along = along(group);
        Blot middle = strongest(group);
        double most = along.darkening()[along.peak(0, 1e3)];
        double[] half = along.outline(most / 2);
        double[] fifth = along.outline(most / 5);
        double mm = (half[0] + half[1]) / 2;
        double size = fifth[1] - fifth[0];
        double x = middle.xMm();
        double bare = scene.clean(List.of(), x, mm, along.channel());
        double contrast = most * bare / (bare + scene.glare(x, mm, along.channel()));
        boolean marked = contrast >= LEAST
                && contrast >= NOISES * noise(x, mm, along.channel())
                && hidden(half, x, along.channel()) <= 0.5;
        double run = scene.sample().course().runAt(x);
        return new Mark(
                middle.lane(),
                x,
                mm,
                scene.sample().course().rf(x, mm),
                contrast,
                size,
                shape(group, size, run),
                group.size() > 1 ? "merged" : middle.form().name().toLowerCase(Locale.ROOT),
                marked);
    }

    private static String shape(List<Blot> group, double size, double run) {
        if (group.size() > 1) {
            return "merged";
        }
        String shape = group.get(0).form().shape();
        boolean isLong = size > 8 || size > run / 4;
        return shape.equals("compact") && isLong ? "streak" : shape;
    }

    private double level(double x, double h) {
        double[] at = view.pixel(x, h);
        double half = Math.hypot(view.width(), view.height()) / 2;
        return gain * sensor.vignetted(Math.hypot(at[0] - view.width() / 2.0, at[1] - view.height() / 2.0) / half);
    }

    /** Noise seen over half a millimetre, as a share of the light. */
    double noise(double x, double h, int channel) {
        double light = scene.clean(List.of(), x, h, channel) + scene.glare(x, h, channel);
        double pixels = Math.pow(SEEN_OVER_MM * view.pixelsPerMm(scene.sample().course()), 2);
        double camera = sensor.noise(light * level(x, h)) / Math.sqrt(pixels);
        return Math.hypot(scene.layer().grain(), camera);
    }

    /** The share of an outline where glare is stronger than the layer's light, or all is white. */
    private double hidden(double[] outline, double x, int channel) {
        int hidden = 0;
        for (int i = 0; i <= 20; i++) {
            double h = outline[0] + (outline[1] - outline[0]) * i / 20;
            double light = scene.clean(scene.sample().blots(), x, h, channel);
            double bare = scene.clean(List.of(), x, h, channel);
            double glare = scene.glare(x, h, channel);
            double level = (light + glare) * level(x, h) * sensor.balance()[channel];
            hidden += glare > bare || level > 1 ? 1 : 0;
        }
        return hidden / 21.0;
    }
}
