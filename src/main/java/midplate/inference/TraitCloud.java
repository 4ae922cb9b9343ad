package midplate.inference;

import java.util.Arrays;

/** What is known of one spot: weighted points (c, s) whose weights sum to 1. Plain arrays, since all time is spent here. */
final class TraitCloud {
    private final double[] c;
    private final double[] s;
    private final double[] weight;
    private final double[] summed;

    TraitCloud(double[] c, double[] s, double[] weight) {
        this.c = c;
        this.s = s;
        this.weight = weight;
        this.summed = weight.clone();
        for (int i = 1; i < summed.length; i++) {
            summed[i] += summed[i - 1];
        }
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

    /** Adds the weights, times a factor, to the marks of η at a strength, moved by a shift. */
    void spread(double[] onMarks, double strength, double shift, double factor) {
        for (int i = 0; i < weight.length; i++) {
            onMarks[LogitScale.mark(c[i] + s[i] * strength + shift)] += factor * weight[i];
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
        double[] thinC = new double[count];
        double[] thinS = new double[count];
        double[] thinWeight = new double[count];
        for (int k = 0; k < count; k++) {
            int point = pointAt((k + offset) / count);
            thinC[k] = c[point];
            thinS[k] = s[point];
            thinWeight[k] = 1.0 / count;
        }
        return new TraitCloud(thinC, thinS, thinWeight);
    }

    /** The point at which the summed weights reach a share in [0, 1). */
    int pointAt(double share) {
        int found = Arrays.binarySearch(summed, share);
        return Math.min(found >= 0 ? found + 1 : -found - 1, summed.length - 1);
    }
}
