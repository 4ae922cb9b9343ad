package midplate.column;

/**
 * A program with what it is worth on a column.
 *
 * @param program what is poured; its last step may be endless
 * @param chance that some run of fractions is a good cut [1]
 * @param runMl eluent from the first drop to the last fraction [ml]: what is to be ready
 * @param meanMl eluent when the target has left, on average over the cases [ml]
 * @param fractionMl volume of a fraction [ml]
 */
record WeighedProgram(Program program, double chance, double runMl, double meanMl, double fractionMl) {
    /** The first eluent [% v/v]. */
    double firstPercent() {
        return program.steps().get(0).percentStrong();
    }

    int steps() {
        return program.steps().size();
    }
}
