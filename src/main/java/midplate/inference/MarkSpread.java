package midplate.inference;

import java.util.Arrays;

/** One spot's weights on the marks of η where it has any, so that places can be drawn from it in the order of Rf. */
final class MarkSpread {
    private final int[] mark;
    private final double[] weight;
    private final double[] reached;

    private MarkSpread(int[] mark, double[] weight) {
        this.mark = mark;
        this.weight = weight;
        this.reached = new double[weight.length];
    }

    /** A cloud in an eluent. */
    static MarkSpread of(TraitCloud cloud, Climb climb) {
        int[] marks = new int[cloud.size()];
        int lowest = LogitScale.SIZE;
        int highest = 0;
        for (int i = 0; i < marks.length; i++) {
            marks[i] = LogitScale.mark(climb.eta(cloud.c(i), cloud.s(i), cloud.t(i)));
            lowest = Math.min(lowest, marks[i]);
            highest = Math.max(highest, marks[i]);
        }
        double[] stretch = new double[highest - lowest + 1];
        for (int i = 0; i < marks.length; i++) {
            stretch[marks[i] - lowest] += cloud.weight(i);
        }
        int[] taken = new int[Math.min(marks.length, stretch.length)];
        double[] weight = new double[taken.length];
        int count = 0;
        for (int i = 0; i < stretch.length; i++) {
            if (stretch[i] > 0) {
                taken[count] = lowest + i;
                weight[count++] = stretch[i];
            }
        }
        return new MarkSpread(Arrays.copyOf(taken, count), Arrays.copyOf(weight, count));
    }

    /**
     * Draws values of a function of η evenly: the places {@code (first + k + 1)·step} modulo 1 in the summed weights, with
     * straight lines between the middles of neighbouring weights.
     *
     * @param drawn takes them
     * @param count how many
     * @param first the first place
     * @param step an irrational number
     * @param shift by how many marks all is moved
     * @param counts by what each mark counts
     * @param values the function on the marks
     */
    void draw(double[] drawn, int count, int first, double step, int shift, double[] counts, double[] values) {
        double all = 0;
        for (int i = 0; i < weight.length; i++) {
            double here = weight[i] * counts[held(mark[i] + shift)];
            reached[i] = all + here / 2;
            all += here;
        }
        for (int k = 0; k < count; k++) {
            double place = (first + k + 1) * step;
            drawn[k] = values[held((int) Math.rint(markAt(all * (place - Math.floor(place)))) + shift)];
        }
    }

    private double markAt(double sum) {
        int found = Arrays.binarySearch(reached, sum);
        if (found >= 0) {
            return mark[found];
        }
        int after = -found - 1;
        if (after == 0) {
            return mark[0];
        }
        if (after == mark.length) {
            return mark[after - 1];
        }
        double part = (sum - reached[after - 1]) / (reached[after] - reached[after - 1]);
        return mark[after - 1] + part * (mark[after] - mark[after - 1]);
    }

    private static int held(int mark) {
        return Math.max(0, Math.min(LogitScale.SIZE - 1, mark));
    }
}
