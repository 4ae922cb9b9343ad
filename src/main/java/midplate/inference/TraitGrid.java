package midplate.inference;

/**
 * The pairs of traits (c, s) that are weighed: c [ln units], how weakly a compound is held in the pair's reference mixture,
 * and s [1], its area relative to the average compound. Node {@code iS·cCount + iC} holds the pair (c of iC, s of iS).
 */
final class TraitGrid {
    /** The grid on which spots are judged. */
    static final TraitGrid SPOTS = new TraitGrid(-12, 12, 301, 0.3, 2.0, 35);

    /** The coarser grid on which a pair is fitted. */
    static final TraitGrid FIT = new TraitGrid(-12, 12, 241, 0.3, 2.0, 35);

    /** The grid of a model in which all compounds have one area. */
    static final TraitGrid ONE_AREA = new TraitGrid(-12, 12, 301, 1, 1, 1);

    private final double[] c;
    private final double[] s;
    private final double[] nodeC;
    private final double[] nodeS;

    private TraitGrid(double cLow, double cHigh, int cCount, double sLow, double sHigh, int sCount) {
        c = steps(cLow, cHigh, cCount);
        s = steps(sLow, sHigh, sCount);
        nodeC = new double[size()];
        nodeS = new double[size()];
        for (int node = 0; node < nodeC.length; node++) {
            nodeC[node] = c[node % c.length];
            nodeS[node] = s[node / c.length];
        }
    }

    private static double[] steps(double low, double high, int count) {
        double[] steps = new double[count];
        for (int i = 0; i < count; i++) {
            steps[i] = count == 1 ? low : low + (high - low) * i / (count - 1);
        }
        return steps;
    }

    int size() {
        return c.length * s.length;
    }

    int cCount() {
        return c.length;
    }

    int sCount() {
        return s.length;
    }

    /** The c of a column [ln units]. */
    double cAt(int iC) {
        return c[iC];
    }

    /** The s of a row [1]. */
    double sAt(int iS) {
        return s[iS];
    }

    double cStep() {
        return c[1] - c[0];
    }

    /** The c of a node [ln units]. */
    double c(int node) {
        return nodeC[node];
    }

    /** The s of a node [1]. */
    double s(int node) {
        return nodeS[node];
    }
}
