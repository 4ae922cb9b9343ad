package midplate.benchmark;

/**
 * The ratio that a contender advises for the next plate.
 *
 * @param percent share of ethyl acetate in hexane [% v/v], 0 to 100
 * @param chance that all spots will lie at Rf 0.2 to 0.8 [1], 0 to 1
 */
public record Choice(double percent, double chance) {
    /** Refuses what is no ratio or no chance; a slip of the contender. */
    public Choice {
        if (!(percent >= 0 && percent <= 100 && chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("Choice: came " + percent + " % with chance " + chance
                    + "; allowed are a percentage in [0, 100] and a chance in [0, 1].");
        }
    }
}
