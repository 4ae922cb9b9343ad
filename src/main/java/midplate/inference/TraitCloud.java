package midplate.inference;

import java.util.Arrays;
import java.util.List;

/** What is known of one spot: weighted points (c, s) whose weights sum to 1. Plain arrays, since all time is spent here. */
final class TraitCloud {
    private final double[] c;
    private final double[] s;
    private final double[] weight;
    private final double[] summed;
    private final double[] cSteps;

    TraitCloud(double[] c, double[] s, double[] weight) {
        this.c = c;
        this.s = s;
        this.weight = weight;
        this.cSteps = new double[c.length];
        for (int i = 0; i < cSteps.length; i++) {
            cSteps[i] = c[i] * LogitScale.PER_UNIT;
        }
        this.summed = weight.clone();
        for (int i = 1; i < summed.length; i++) {
            summed[i] += summed[i - 1];
        }
    }

    /** Clouds put together, each with its share. */
    static TraitCloud joined(List<TraitCloud> clouds, double[] shares) {
        int size = clouds.stream().mapToInt(TraitCloud::size).sum();
        double[] c = new double[size];
        double[] s = new double[size];
        double[] weight = new double[size];
        int at = 0;
        for (int i = 0; i < shares.length; i++) {
            TraitCloud cloud = clouds.get(i);
            for (int point = 0; point < cloud.size(); point++, at++) {
                c[at] = cloud.c[point];
                s[at] = cloud.s[point];
                weight[at] = shares[i] * cloud.weight[point];
            }
        }
        return new TraitCloud(c, s, weight);
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

    /** The expectation of a function of η at a strength moved by a shift: {@code Σ w·f(c + s·G + δ)}. */
    double expect(double[] onMarks, double strength, double shift) {
        double steps = strength * LogitScale.PER_UNIT;
        double first = shift * LogitScale.PER_UNIT + LogitScale.FIRST;
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * onMarks[LogitScale.held(cSteps[i] + s[i] * steps + first)];
        }
        return sum;
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

    /**
     * Neighbours along c put together, at their common centre, until no more than about so many points are left; two of
     * them at most, which in a cloud that wide shifts no chance by 0.01.
     */
    TraitCloud merged(int enough) {
        int group = Math.min(2, weight.length / enough + 1);
        if (group == 1) {
            return this;
        }
        double[] mergedC = new double[weight.length];
        double[] mergedS = new double[weight.length];
        double[] mergedWeight = new double[weight.length];
        int count = 0;
        for (int i = 0; i < weight.length; count++) {
            double moment = 0;
            mergedS[count] = s[i];
            for (int end = Math.min(i + group, weight.length); i < end && s[i] == mergedS[count]; i++) {
                mergedWeight[count] += weight[i];
                moment += weight[i] * c[i];
            }
            mergedC[count] = moment / mergedWeight[count];
        }
        return new TraitCloud(
                Arrays.copyOf(mergedC, count), Arrays.copyOf(mergedS, count), Arrays.copyOf(mergedWeight, count));
    }

    /** The point at which the summed weights reach a share in [0, 1). */
    int pointAt(double share) {
        int found = Arrays.binarySearch(summed, share);
        return Math.min(found >= 0 ? found + 1 : -found - 1, summed.length - 1);
    }
}
