package midplate.inference;

/**
 * How early compounds of each c and s climb at small shares of the strong solvent, by the layers of their days: for each column of a {@link TraitGrid}, its nodes of one c and one s, the weights of
 * its t, sum 1. They are the same whatever c and s turn out to be, so all that is weighed on one grid shares them.
 */
final class GivenT {
    /** A t rarer than this in its column is left out [1]. */
    private static final double NEGLIGIBLE = 1e-5;

    private final double[] t;
    private final double[] weight;
    private final int[] first;
    private final int[] end;
    private final double[] mean;
    private final double[] square;
    private final double[] columnWeight;

    private GivenT(TraitGrid grid, double[] weights) {
        int columns = grid.cCount() * grid.sCount();
        this.t = new double[grid.tCount()];
        for (int k = 0; k < t.length; k++) {
            t[k] = grid.tAt(k);
        }
        this.weight = new double[columns * t.length];
        this.first = new int[columns];
        this.end = new int[columns];
        this.mean = new double[columns];
        this.square = new double[columns];
        this.columnWeight = new double[columns];
        for (int column = 0; column < columns; column++) {
            fill(column, weights);
        }
    }

    /** What the weights of the nodes of a grid say of t. */
    static GivenT of(TraitGrid grid, double[] weights) {
        return new GivenT(grid, weights);
    }

    private void fill(int column, double[] weights) {
        int from = column * t.length;
        double sum = 0;
        for (int k = 0; k < t.length; k++) {
            sum += weights[from + k];
        }
        columnWeight[column] = sum;
        for (int k = 0; k < t.length && sum > 0; k++) {
            double share = weights[from + k] / sum;
            weight[from + k] = share;
            mean[column] += share * t[k];
            square[column] += share * t[k] * t[k];
            if (share > NEGLIGIBLE) {
                first[column] = end[column] == 0 ? k : first[column];
                end[column] = k + 1;
            }
        }
    }

    /** Whether compounds differ in t. */
    boolean differs() {
        return t.length > 1;
    }

    /** How many t there are. */
    int count() {
        return t.length;
    }

    /** The sum of the weights of each column, which it was made from; not to be changed. */
    double[] columnWeights() {
        return columnWeight;
    }

    /** Mean of t in a column [1]. */
    double mean(int column) {
        return mean[column];
    }

    /** Mean of t² in a column [1]. */
    double square(int column) {
        return square[column];
    }

    /** The place of the first t of a column that matters. */
    int first(int column) {
        return first[column];
    }

    /** The place after the last. */
    int end(int column) {
        return end[column];
    }

    /** The t at a place [1]. */
    double t(int place) {
        return t[place];
    }

    /** The weight of the t at a place in a column [1]. */
    double weight(int column, int place) {
        return weight[column * t.length + place];
    }
}
