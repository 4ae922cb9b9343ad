package midplate.benchmark;

/**
 * How much is asked.
 *
 * @param folds parts that the structures are split into, 2 to 20
 * @param setsPerFold sets of spots drawn in each fold, 0 to 1 000 000; a tenth as many with unlabelled spots
 * @param resamples resamples of the compounds for the standard errors, 2 to 10 000
 * @param seed of everything drawn
 * @param threads folds asked about at once, 1 to 64; says nothing about the result
 */
public record Plan(int folds, int setsPerFold, int resamples, long seed, int threads) {
    private static final int SETS_FOR_ONE_UNLABELLED = 10;
    private static final int SETS_FOR_THREE_MOVED = 40;

    /** Five folds, 20 000 sets, 2 000 with unlabelled spots, 400 resamples, two folds at once: what the table of the README is made with. */
    public static final Plan FULL = new Plan(5, 4_000, 400, 20_261_125, 2);

    /** Refuses numbers outside their ranges. */
    public Plan {
        require("folds", folds, 2, 20);
        require("setsPerFold", setsPerFold, 0, 1_000_000);
        require("resamples", resamples, 2, 10_000);
        require("threads", threads, 1, 64);
    }

    /** Samples with a plate without labels drawn in each fold. */
    public int unlabelledPerFold() {
        return setsPerFold / SETS_FOR_ONE_UNLABELLED;
    }

    /** Samples drawn in each fold whose plates are moved by errors of their own. */
    public int plateErrorPerFold() {
        return 3 * setsPerFold / SETS_FOR_THREE_MOVED;
    }

    /** Samples drawn in each fold for rounds of plates. */
    public int scoutingPerFold() {
        return 3 * setsPerFold / SETS_FOR_THREE_MOVED;
    }

    private static void require(String name, int came, int low, int high) {
        if (came < low || came > high) {
            throw new IllegalArgumentException(
                    name + ": came " + came + "; allowed is [" + low + ", " + high + "]. Give a number inside it.");
        }
    }
}
