package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Draws plates on which a sample runs beside a reference and under it, with the errors of a hand and of a plate. It knows nothing of
 * how such plates are judged.
 *
 * <p>Every figure is an own choice: run 40 to 60 mm; spots of 2.8 mm, a quarter more or less, longer further up; the front is tilted over
 * the lanes (normal, 0.4 % of the run from lane to lane) and lanes differ (Student's t with 3 degrees of freedom, 0.5 %); a centre is
 * misread (the same t, 0.25 mm), one in fifty by up to 2.5 mm either way; one spot in twenty-five is a streak, half of them unmarked,
 * with its middle put too low; lengths are off by an eighth, one in ten by up to 70 %; all is rounded to half a millimetre. The loads
 * of a co-spot stand between 1 : 3 and 3 : 1; two compounds show as two spots where they lie about a spot apart or farther; one lane
 * in fifty shows a second spot that is none, and one reference in twenty has an impurity. A factor stretches the tilt, the
 * lanes, misreadings and lengths, and how low the middle of a streak is put; how often things go amiss stays.
 */
final class SimulatedPlates {
    private static final double TILT = 0.004;
    private static final double LANES_DIFFER = 0.005;
    private static final double READING_MM = 0.25;
    private static final double GROSS = 0.02;
    private static final double GROSS_MM = 2.5;
    private static final double STREAKS = 0.04;
    private static final double SIZE_OFF = 0.12;
    private static final double WRONG_SIZES = 0.1;
    private static final double PHANTOMS = 0.02;
    private static final double IMPURE = 0.05;
    private static final double START_MM = 10;

    private final Random random;
    private final double factor;

    /**
     * Plates.
     *
     * @param seed of what is drawn
     * @param factor by which every error is stretched [1]
     */
    SimulatedPlates(long seed, double factor) {
        this.random = new Random(seed);
        this.factor = factor;
    }

    /** A spot as read: its middle above the edge and its length [mm], and whether it was told to be a streak. */
    record Seen(double centreMm, double sizeMm, Told told) {}

    /** Whether a streak was told. */
    enum Told {
        ROUND,
        STREAK
    }

    /** A compound spotted in a lane: its Rf and its share of the usual load [1]. */
    private record Spotted(double rf, double load) {}

    /** Lanes from left to right: the sample, then for each reference its co-spot and its own lane. */
    record Plate(double startMm, double frontMm, List<List<Seen>> lanes, double spotMm) {}

    /** What the plate does: its run, the length of a spot halfway, and the tilt of its front from lane to lane. */
    private record Sheet(double runMm, double spotMm, double tilt) {
        double spotAt(double rf) {
            return spotMm * (0.75 + 0.5 * rf);
        }
    }

    /** Sample and one reference that lie so far apart in Rf; 0 is one compound. */
    Plate pair(double apart) {
        double one = 0.2 + 0.55 * random.nextDouble();
        double other = one + (random.nextBoolean() ? apart : -apart);
        return plate(List.of(one), List.of(other));
    }

    /** A sample of some compounds beside some references, all by their Rf. */
    Plate plate(List<Double> sample, List<Double> references) {
        double run = 40 + 20 * random.nextDouble();
        Sheet sheet =
                new Sheet(run, 2.8 * Math.exp(0.25 * random.nextGaussian()), TILT * factor * random.nextGaussian());
        List<List<Seen>> lanes = new ArrayList<>();
        lanes.add(lane(sheet, 0, spotted(sample, 1)));
        for (double reference : references) {
            List<Spotted> its = new ArrayList<>(spotted(List.of(reference), 1));
            if (random.nextDouble() < IMPURE) {
                its.add(new Spotted(0.1 + 0.8 * random.nextDouble(), 0.1));
            }
            double share = 0.25 + 0.5 * random.nextDouble();
            List<Spotted> both = new ArrayList<>(spotted(sample, 2 * share));
            its.forEach(each -> both.add(new Spotted(each.rf(), 2 * (1 - share) * each.load())));
            lanes.add(lane(sheet, lanes.size(), both));
            lanes.add(lane(sheet, lanes.size(), its));
        }
        return new Plate(START_MM, START_MM + run, lanes, sheet.spotMm());
    }

    /** One compound as sample, in a lane on either side of its co-spot and reference: sample, co-spot, reference, sample. */
    Plate twice() {
        double rf = 0.2 + 0.55 * random.nextDouble();
        double run = 40 + 20 * random.nextDouble();
        Sheet sheet =
                new Sheet(run, 2.8 * Math.exp(0.25 * random.nextGaussian()), TILT * factor * random.nextGaussian());
        double share = 0.25 + 0.5 * random.nextDouble();
        List<List<Seen>> lanes = List.of(
                lane(sheet, 0, spotted(List.of(rf), 1)),
                lane(sheet, 1, List.of(new Spotted(rf, 2 * share), new Spotted(rf, 2 * (1 - share)))),
                lane(sheet, 2, spotted(List.of(rf), 1)),
                lane(sheet, 3, spotted(List.of(rf), 1)));
        return new Plate(START_MM, START_MM + run, lanes, sheet.spotMm());
    }

    private static List<Spotted> spotted(List<Double> rfs, double load) {
        return rfs.stream().map(rf -> new Spotted(rf, load)).toList();
    }

    /** A patch of a lane: from where to where [mm], and where most of it is [mm]. */
    private record Patch(double low, double high, double middle, double load) {
        Patch joined(Patch other) {
            double all = load + other.load;
            return new Patch(
                    Math.min(low, other.low),
                    Math.max(high, other.high),
                    (load * middle + other.load * other.middle) / all,
                    all);
        }

        double length() {
            return high - low;
        }
    }

    private List<Seen> lane(Sheet sheet, int place, List<Spotted> spotted) {
        double stretch = 1 + sheet.tilt() * place + LANES_DIFFER * factor * student();
        List<Patch> patches = new ArrayList<>();
        spotted.stream()
                .sorted((one, next) -> Double.compare(one.rf(), next.rf()))
                .forEach(each -> take(patches, patch(sheet, stretch, each)));
        if (random.nextDouble() < PHANTOMS) {
            phantom(patches);
        }
        return patches.stream().map(patch -> seen(patch, sheet.runMm())).toList();
    }

    /** More of a compound makes a longer spot, by the fifth root of the load. */
    private Patch patch(Sheet sheet, double stretch, Spotted spotted) {
        double middle = spotted.rf() * sheet.runMm() * stretch;
        double half = sheet.spotAt(spotted.rf()) * Math.pow(spotted.load(), 0.2) / 2;
        return new Patch(middle - half, middle + half, middle, spotted.load());
    }

    /** A patch beside the last one, or one with it where an eye would not part them. */
    private void take(List<Patch> patches, Patch next) {
        Patch last = patches.isEmpty() ? null : patches.get(patches.size() - 1);
        if (last == null) {
            patches.add(next);
            return;
        }
        double apart = Math.abs(next.middle() - last.middle()) / ((next.length() + last.length()) / 2);
        boolean parted = random.nextDouble() < 1 / (1 + Math.exp(-(apart - 0.95) / 0.1));
        if (parted) {
            patches.add(next);
        } else {
            patches.set(patches.size() - 1, last.joined(next));
        }
    }

    private void phantom(List<Patch> patches) {
        Patch by = patches.get(random.nextInt(patches.size()));
        double away = (random.nextBoolean() ? 1 : -1) * (0.8 + 1.2 * random.nextDouble()) * by.length();
        double half = by.length() / 3;
        patches.add(new Patch(by.middle() + away - half, by.middle() + away + half, by.middle() + away, 0.1));
    }

    private Seen seen(Patch patch, double runMm) {
        boolean gross = random.nextDouble() < GROSS;
        double off = factor * (gross ? GROSS_MM * (2 * random.nextDouble() - 1) : READING_MM * student());
        double length = patch.length() * Math.exp(SIZE_OFF * factor * random.nextGaussian());
        if (random.nextDouble() < WRONG_SIZES) {
            length *= 0.6 + 1.1 * random.nextDouble();
        }
        // the eye halves the outline of a long patch rather than weighing it
        double middle = (patch.middle() + (patch.low() + patch.high()) / 2) / 2;
        Told told = Told.ROUND;
        if (random.nextDouble() < STREAKS) {
            off -= 0.35 * factor * random.nextDouble() * length;
            length *= 1.5 + random.nextDouble();
            told = random.nextBoolean() ? Told.STREAK : Told.ROUND;
        }
        double read = Math.max(0, Math.min(runMm, middle + off));
        return new Seen(START_MM + halves(read), Math.max(0.5, halves(length)), told);
    }

    private static double halves(double mm) {
        return Math.rint(2 * mm) / 2;
    }

    /** Student's t with three degrees of freedom. */
    private double student() {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double normal = random.nextGaussian();
            sum += normal * normal;
        }
        return random.nextGaussian() / Math.sqrt(sum / 3);
    }
}
