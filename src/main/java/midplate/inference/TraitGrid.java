package midplate.inference;

import java.util.Arrays;

/**
 * The traits (c, s, t) that are weighed: c [ln units], how weakly a compound is held in the pair's reference mixture; s [1], its
 * area relative to the average compound; t [1], how early the layers of its day let it climb. Node {@code
 * (iS·cCount + iC)·tCount + iT} holds c of iC, s of iS and t of iT.
 */
final class TraitGrid {
    private static final double FARTHEST_C = 10;
    /** Step of c on the grid of spots [ln units], a whole number of marks of η. */
    static final double STEP_C = 0.1;

    private static final double LEAST_S = 0.3;
    private static final double MOST_S = 2.0;

    private static final double[] EVEN_T = {-2.4, -1.6, -0.8, 0, 0.8, 1.6, 2.4};
    private static final double[] ONE = {1};
    private static final double[] NONE = {0};

    private final double[] c;
    private final double[] s;
    private final double[] t;
    private final double[] normalT;
    private final double[] nodeC;
    private final double[] nodeS;
    private final double[] nodeT;

    private TraitGrid(double[] c, double[] s, double[] t, double[] normalT) {
        this.c = c;
        this.s = s;
        this.t = t;
        this.normalT = normalT;
        nodeC = new double[size()];
        nodeS = new double[size()];
        nodeT = new double[size()];
        for (int node = 0; node < nodeC.length; node++) {
            int column = node / t.length;
            nodeC[node] = c[column % c.length];
            nodeS[node] = s[column / c.length];
            nodeT[node] = t[node % t.length];
        }
    }

    /**
     * The grid on which spots are judged.
     *
     * @param area whether compounds differ in s
     * @param early whether they differ in t
     */
    static TraitGrid spots(Trait area, Trait early) {
        double[] t = early == Trait.OWN ? EVEN_T : NONE;
        double[] normalT =
                Arrays.stream(t).map(each -> StrictMath.exp(-each * each / 2)).toArray();
        return new TraitGrid(
                steps(-FARTHEST_C, FARTHEST_C, (int) Math.round(2 * FARTHEST_C / STEP_C) + 1),
                areas(area, 28),
                t,
                TraitPrior.normalized(normalT));
    }

    /** The coarser grid on which a pair is fitted; its t are Gauss–Hermite points. */
    static TraitGrid fit(Trait area, Trait early) {
        boolean differ = early == Trait.OWN;
        return new TraitGrid(
                steps(-FARTHEST_C, FARTHEST_C, 121),
                areas(area, 20),
                differ ? NormalPoints.points() : NONE,
                differ ? NormalPoints.weights() : ONE);
    }

    /** Whether compounds differ in a trait. */
    enum Trait {
        OWN,
        ALIKE
    }

    private static double[] areas(Trait area, int count) {
        return area == Trait.OWN ? steps(LEAST_S, MOST_S, count) : ONE;
    }

    private static double[] steps(double low, double high, int count) {
        double[] steps = new double[count];
        for (int i = 0; i < count; i++) {
            steps[i] = low + (high - low) * i / (count - 1);
        }
        return steps;
    }

    /** For each t its weight under a standard normal spread, the sum 1; not to be changed. */
    double[] normalT() {
        return normalT;
    }

    int size() {
        return c.length * s.length * t.length;
    }

    int cCount() {
        return c.length;
    }

    int sCount() {
        return s.length;
    }

    int tCount() {
        return t.length;
    }

    /** The place of a node's c among all c. */
    int cOf(int node) {
        return node / t.length % c.length;
    }

    /** The node of three places. */
    int node(int iC, int iS, int iT) {
        return (iS * c.length + iC) * t.length + iT;
    }

    double cAt(int iC) {
        return c[iC];
    }

    double sAt(int iS) {
        return s[iS];
    }

    double tAt(int iT) {
        return t[iT];
    }

    double cStep() {
        return c[1] - c[0];
    }

    /** The distance between two s [1]; 0 where there is one. */
    double sStep() {
        return s.length > 1 ? s[1] - s[0] : 0;
    }

    /** The c of a node [ln units]. */
    double c(int node) {
        return nodeC[node];
    }

    /** The s of a node [1]. */
    double s(int node) {
        return nodeS[node];
    }

    /** The t of a node [1]. */
    double t(int node) {
        return nodeT[node];
    }
}
