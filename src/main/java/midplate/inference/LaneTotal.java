package midplate.inference;

import java.util.List;

/**
 * The summed weight of all ways in which the candidates of one lane may lie at its places, without listing them.
 *
 * <p>The weight of a way is a product over places, and that of a place depends on who lies there only: {@code q·width} for nobody,
 * {@code a} for one candidate, {@code ∏ b / alike} for several; for a place with a label, and for not being seen, {@code ∏ b}. So
 * places are added one after another, for every set of candidates that may be used up: about {@code n·2ⁿ} steps a place for n
 * candidates. Candidates that nothing tells apart are used up in their order, which makes them far fewer sets.
 */
final class LaneTotal {
    /** More sets than this are not gone through: 12 candidates that are told apart. */
    static final int MOST_SETS = 4096;

    private final List<int[]> units;
    private final int[] strides;
    private final int sets;

    /**
     * A place, its weights not logarithms.
     *
     * @param empty weight of nobody lying there [1/Rf]
     * @param alone weight of each candidate lying there by itself [1/Rf]
     * @param shared weight of each where others lie there too
     * @param alike what two spots there are divided by: 2δ [1 in Rf], 1 on a line
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Place(double empty, double[] alone, double[] shared, double alike) {}

    private LaneTotal(List<int[]> units) {
        this.units = units;
        this.strides = new int[units.size()];
        int count = 1;
        for (int i = 0; i < strides.length; i++) {
            strides[i] = count;
            count *= units.get(i).length + 1;
        }
        this.sets = count;
    }

    /** Whether there are few enough sets of candidates. */
    static boolean isFeasible(List<int[]> units) {
        double count = 1;
        for (int[] unit : units) {
            count *= unit.length + 1;
        }
        return count <= MOST_SETS;
    }

    /**
     * The sum.
     *
     * @param units the candidates by their numbers: each alone, or those together that nothing tells apart, in the order in which
     *     they take places; {@link #isFeasible}
     * @param seen places without a label, in their order
     * @param free weights of the candidates where nobody need lie, in the order of the places: labelled ones, then not seen
     */
    static double of(List<int[]> units, List<Place> seen, List<double[]> free) {
        LaneTotal total = new LaneTotal(units);
        double[] sums = new double[total.sets];
        sums[0] = 1;
        for (Place place : seen) {
            sums = total.with(place, sums);
        }
        for (double[] weights : free) {
            total.addFree(weights, sums);
        }
        double orders = 1;
        for (int[] unit : units) {
            for (int member = 2; member <= unit.length; member++) {
                orders *= member;
            }
        }
        return orders * sums[total.sets - 1];
    }

    /** The sums for each set with one more place; by how many lie there so far: none, one for good, one of several, several. */
    private double[] with(Place place, double[] none) {
        double[] alone = new double[sets];
        double[] first = new double[sets];
        double[] several = new double[sets];
        for (int i = 0; i < strides.length; i++) {
            int[] unit = units.get(i);
            for (int set = sets - 1; set > 0; set--) { // falling: what is added to is not yet read again
                int count = set / strides[i] % (unit.length + 1);
                double product = 1;
                for (int more = 1; more <= count; more++) {
                    int member = unit[count - more];
                    int from = set - more * strides[i];
                    product *= place.shared()[member] / more;
                    double begun = none[from] * product / place.alike();
                    several[set] += product * (first[from] + several[from]) + (more > 1 ? begun : 0);
                    if (more == 1) {
                        first[set] += begun;
                        alone[set] += none[from] * place.alone()[member];
                    }
                }
            }
        }
        double[] sums = new double[sets];
        for (int set = 0; set < sets; set++) {
            sums[set] = none[set] * place.empty() + alone[set] + several[set];
        }
        return sums;
    }

    private void addFree(double[] weights, double[] sums) {
        for (int i = 0; i < strides.length; i++) {
            int[] unit = units.get(i);
            for (int set = sets - 1; set > 0; set--) {
                int count = set / strides[i] % (unit.length + 1);
                double product = 1;
                for (int more = 1; more <= count; more++) {
                    product *= weights[unit[count - more]] / more;
                    sums[set] += product * sums[set - more * strides[i]];
                }
            }
        }
    }
}
