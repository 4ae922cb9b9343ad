package midplate.advice;

/**
 * A mixture in small whole parts by volume, weak : strong.
 *
 * @param weak parts of the weaker solvent, at least 0
 * @param strong parts of the stronger solvent, at least 0, not both 0
 */
public record Ratio(int weak, int strong) {
    /** Refuses parts that are no mixture; a slip in the program, since people give percentages. */
    public Ratio {
        if (weak < 0 || strong < 0 || weak + strong == 0) {
            throw new IllegalArgumentException("Came " + weak + ":" + strong + "; allowed are parts of 0 or more.");
        }
    }

    /** The share of the stronger solvent [% v/v]. */
    public double percentStrong() {
        return 100.0 * strong / (weak + strong);
    }

    /** As a chemist writes it: {@code 7:2}. */
    @Override
    public String toString() {
        return weak + ":" + strong;
    }
}
