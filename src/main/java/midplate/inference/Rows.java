package midplate.inference;

import java.util.Arrays;

/**
 * Points (c, s) of a grid by rows of one s, within which c rises by whole steps: along a row η rises by the same whole number of marks
 * from point to point, so what is tabulated over η is read at even distances, without working out η for each point.
 */
final class Rows {
    /** Marks of η between two neighbours of a row. */
    private static final int STRIDE = (int) Math.round(TraitGrid.STEP_C * LogitScale.PER_UNIT);

    private final double[] firstC;
    private final double[] s;
    /** Where each row begins among the weights, and after the last where it ends. */
    private final int[] start;

    private final double[] weight;

    private Rows(double[] firstC, double[] s, int[] start, double[] weight) {
        this.firstC = firstC;
        this.s = s;
        this.start = start;
        this.weight = weight;
    }

    /** Points that come row by row, c rising in each; the points that a row lacks get weight 0. */
    static Rows of(TraitCloud.Points points) {
        int size = points.weight().length;
        double[] firstC = new double[size];
        double[] s = new double[size];
        int[] start = new int[size + 1];
        double[] weight = new double[2 * size];
        int rows = 0;
        int end = 0;
        for (int i = 0; i < size; i++) {
            if (i == 0 || points.s()[i] != points.s()[i - 1]) {
                firstC[rows] = points.c()[i];
                s[rows] = points.s()[i];
                start[rows++] = end;
            }
            int at = start[rows - 1] + (int) Math.round((points.c()[i] - firstC[rows - 1]) / TraitGrid.STEP_C);
            if (at >= weight.length) {
                weight = Arrays.copyOf(weight, 2 * at);
            }
            weight[at] = points.weight()[i];
            end = at + 1;
        }
        start[rows] = end;
        return new Rows(
                Arrays.copyOf(firstC, rows),
                Arrays.copyOf(s, rows),
                Arrays.copyOf(start, rows + 1),
                Arrays.copyOf(weight, end));
    }

    /**
     * The expectation of a function of η = c + s·G + δ.
     *
     * @param onMarks the function
     * @param strength G [ln units]
     * @param shift δ [ln units]
     */
    double expect(double[] onMarks, double strength, double shift) {
        double sum = 0;
        for (int row = 0; row < s.length; row++) {
            int from = (int)
                    Math.floor((firstC[row] + s[row] * strength + shift) * LogitScale.PER_UNIT + LogitScale.FIRST);
            int last = from + (start[row + 1] - start[row] - 1) * STRIDE;
            sum += from >= 0 && last < onMarks.length
                    ? inside(onMarks, start[row], start[row + 1], from)
                    : beyond(onMarks, start[row], start[row + 1], from);
        }
        return sum;
    }

    private double inside(double[] onMarks, int begin, int end, int from) {
        // two sums, since each addition must wait for the one before it
        double sum = 0;
        double odd = 0;
        int mark = from;
        int i = begin;
        for (; i < end - 1; i += 2, mark += 2 * STRIDE) {
            sum += weight[i] * onMarks[mark];
            odd += weight[i + 1] * onMarks[mark + STRIDE];
        }
        return i < end ? sum + odd + weight[i] * onMarks[mark] : sum + odd;
    }

    /** A row that reaches beyond the ends of the ruler. */
    private double beyond(double[] onMarks, int begin, int end, int from) {
        double sum = 0;
        int mark = from;
        for (int i = begin; i < end; i++, mark += STRIDE) {
            sum += weight[i] * onMarks[Math.max(0, Math.min(onMarks.length - 1, mark))];
        }
        return sum;
    }
}
