package midplate.inference;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is known of one spot: weighted points (c, s, t) whose weights sum to 1. Plain arrays, since all time is spent here. */
final class TraitCloud {
    private static final int GUIDES = 256;
    private static final int MOST_WINDOWS = 4;

    private final double[] c;
    private final double[] s;
    private final double[] t;
    private final double[] weight;
    /** The same points where t does not matter: those that differ in it alone are one. */
    private final Points alike;
    /** The same by rows, where they are those of a grid. */
    private final @Nullable Rows rows;

    private final double[] summed;
    /** The same whoever works it out, so it does not matter if two threads do. */
    private volatile int @Nullable [] guide;

    /** Made when first asked for: most clouds of a scenario never are. */
    private volatile @Nullable KeptLatest<WindowChances.Window, ByShare<double[]>> chances;

    /** Points; the arrays are not to be changed once they are in a cloud. */
    record Points(double[] c, double[] s, double[] t, double[] weight) {
        /** So many, to be filled in. */
        static Points of(int count) {
            return new Points(new double[count], new double[count], new double[count], new double[count]);
        }
    }

    private TraitCloud(Points points, Points alike, @Nullable Rows rows) {
        this.c = points.c();
        this.s = points.s();
        this.t = points.t();
        this.weight = points.weight();
        this.alike = alike;
        this.rows = rows;
        this.summed = weight.clone();
        for (int i = 1; i < summed.length; i++) {
            summed[i] += summed[i - 1];
        }
    }

    /** A cloud of points. */
    static TraitCloud of(Points points) {
        return new TraitCloud(points, points, null);
    }

    /** A cloud of points of the grid of spots, row by row, in which compounds do not differ in t. */
    static TraitCloud ofGrid(Points points) {
        return new TraitCloud(points, points, Rows.of(points));
    }

    /** A cloud of points of the grid of spots, row by row, around which t is spread: each becomes two, a deviation [1] to either side. */
    static TraitCloud ofGrid(Points points, double[] deviations) {
        Points sides = Points.of(2 * deviations.length);
        for (int at = 0; at < sides.weight().length; at++) {
            int i = at / 2;
            sides.c()[at] = points.c()[i];
            sides.s()[at] = points.s()[i];
            sides.t()[at] = points.t()[i] + (at % 2 == 0 ? -deviations[i] : deviations[i]);
            sides.weight()[at] = points.weight()[i] / 2;
        }
        return new TraitCloud(sides, points, Rows.of(points));
    }

    /** Clouds put together, each with its share. */
    static TraitCloud joined(List<TraitCloud> clouds, double[] shares) {
        Points points = Points.of(clouds.stream().mapToInt(TraitCloud::size).sum());
        int at = 0;
        for (int i = 0; i < shares.length; i++) {
            TraitCloud cloud = clouds.get(i);
            for (int point = 0; point < cloud.size(); point++, at++) {
                points.c()[at] = cloud.c[point];
                points.s()[at] = cloud.s[point];
                points.t()[at] = cloud.t[point];
                points.weight()[at] = shares[i] * cloud.weight[point];
            }
        }
        return of(points);
    }

    /**
     * The chances to read inside a window that were worked out for this cloud by the share of the strong solvent, to look up and
     * to add to. They are kept for the windows asked about last: the same readings come again.
     */
    ByShare<double[]> chances(WindowChances.Window window) {
        KeptLatest<WindowChances.Window, ByShare<double[]>> known = chances;
        if (known == null) {
            known = new KeptLatest<>(MOST_WINDOWS);
            chances = known;
        }
        return known.get(window, ByShare::new);
    }

    /** The same points with c moved [ln units]. */
    TraitCloud moved(double by) {
        double[] moved = c.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += by;
        }
        return of(new Points(moved, s, t, weight));
    }

    /** The same points weighed by what readings elsewhere say of them. */
    TraitCloud times(TraitSite site) {
        int traits = site.pull().getDimension();
        Points points = new Points(c, s, t, weight.clone());
        double[] logs = new double[weight.length];
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            double[] x = {c[i], s[i], t[i]};
            for (int j = 0; j < traits; j++) {
                logs[i] += site.pull().getEntry(j) * x[j];
                for (int k = 0; k < traits; k++) {
                    logs[i] -= 0.5 * x[j] * site.precision().getEntry(j, k) * x[k];
                }
            }
            greatest = Math.max(greatest, logs[i]);
        }
        for (int i = 0; i < logs.length; i++) {
            points.weight()[i] *= Math.exp(logs[i] - greatest);
        }
        TraitPrior.normalized(points.weight());
        return of(points);
    }

    int size() {
        return weight.length;
    }

    double c(int point) {
        return c[point];
    }

    double s(int point) {
        return s[point];
    }

    double t(int point) {
        return t[point];
    }

    double weight(int point) {
        return weight[point];
    }

    /** Mean of c [ln units]. */
    double meanC() {
        double mean = 0;
        for (int i = 0; i < weight.length; i++) {
            mean += weight[i] * c[i];
        }
        return mean;
    }

    /** Mean of s [1]. */
    double meanS() {
        double mean = 0;
        for (int i = 0; i < weight.length; i++) {
            mean += weight[i] * s[i];
        }
        return mean;
    }

    /** The expectation of a function of η in an eluent, moved by a shift: {@code Σ w·f(a·c + s·G + t·L + δ)}. */
    double expect(double[] onMarks, Climb climb, double shift) {
        if (rows != null && climb.early() == 0 && climb.hold() == 1) {
            return rows.expect(onMarks, climb.strength(), shift);
        }
        double first = shift * LogitScale.PER_UNIT + LogitScale.FIRST;
        double hold = climb.hold() * LogitScale.PER_UNIT;
        double strength = climb.strength() * LogitScale.PER_UNIT;
        return climb.early() == 0
                ? expect(onMarks, alike.c, alike.s, alike.weight, hold, strength, first)
                : expect(onMarks, hold, strength, climb.early() * LogitScale.PER_UNIT, first);
    }

    private static double expect(
            double[] onMarks, double[] c, double[] s, double[] weight, double hold, double strength, double first) {
        // two sums, since each addition must wait for the one before it
        double sum = 0;
        double odd = 0;
        int end = weight.length - 1;
        for (int i = 0; i < end; i += 2) {
            sum += weight[i] * onMarks[LogitScale.held(hold * c[i] + s[i] * strength + first)];
            odd += weight[i + 1] * onMarks[LogitScale.held(hold * c[i + 1] + s[i + 1] * strength + first)];
        }
        if (weight.length % 2 == 1) {
            sum += weight[end] * onMarks[LogitScale.held(hold * c[end] + s[end] * strength + first)];
        }
        return sum + odd;
    }

    private double expect(double[] onMarks, double hold, double strength, double early, double first) {
        double sum = 0;
        double odd = 0;
        int end = weight.length - 1;
        for (int i = 0; i < end; i += 2) {
            sum += weight[i] * onMarks[LogitScale.held(hold * c[i] + s[i] * strength + t[i] * early + first)];
            odd += weight[i + 1]
                    * onMarks[LogitScale.held(hold * c[i + 1] + s[i + 1] * strength + t[i + 1] * early + first)];
        }
        if (weight.length % 2 == 1) {
            sum += weight[end] * onMarks[LogitScale.held(hold * c[end] + s[end] * strength + t[end] * early + first)];
        }
        return sum + odd;
    }

    /** Adds the weights, times a factor, to the marks of η in an eluent, moved by a shift. */
    void spread(double[] onMarks, Climb climb, double shift, double factor) {
        double first = shift * LogitScale.PER_UNIT + LogitScale.FIRST;
        double hold = climb.hold() * LogitScale.PER_UNIT;
        double strength = climb.strength() * LogitScale.PER_UNIT;
        double early = climb.early() * LogitScale.PER_UNIT;
        Points points = early == 0 ? alike : new Points(c, s, t, weight);
        for (int i = 0; i < points.weight.length; i++) {
            double place = hold * points.c[i] + strength * points.s[i] + early * points.t[i] + first;
            onMarks[LogitScale.held(place)] += factor * points.weight[i];
        }
    }

    /**
     * Fewer points of equal weight, taken at even steps of the summed weights.
     *
     * @param count how many
     * @param offset where in the first step to begin, in [0, 1)
     */
    TraitCloud thinned(int count, double offset) {
        if (weight.length <= count) {
            return this;
        }
        Points thin = Points.of(count);
        int point = 0;
        for (int k = 0; k < count; k++) {
            while (point < summed.length - 1 && summed[point] <= (k + offset) / count) {
                point++;
            }
            thin.c()[k] = c[point];
            thin.s()[k] = s[point];
            thin.t()[k] = t[point];
            thin.weight()[k] = 1.0 / count;
        }
        return of(thin);
    }

    /** The point at which the summed weights reach a share in [0, 1). */
    int pointAt(double share) {
        int[] known = guide();
        int point = known[Math.max(0, Math.min(GUIDES - 1, (int) (share * GUIDES)))];
        while (point < summed.length - 1 && summed[point] <= share) {
            point++;
        }
        return point;
    }

    /** The point at which each of {@value #GUIDES} even stretches of the summed weights begins. */
    private int[] guide() {
        int[] known = guide;
        if (known == null) {
            known = new int[GUIDES];
            int point = 0;
            for (int k = 0; k < GUIDES; k++) {
                while (point < summed.length - 1 && summed[point] <= (double) k / GUIDES) {
                    point++;
                }
                known[k] = point;
            }
            guide = known;
        }
        return known;
    }
}
