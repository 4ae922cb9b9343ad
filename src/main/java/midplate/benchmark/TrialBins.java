package midplate.benchmark;

/**
 * Trials sorted by the Rf of their spot, so that it can be seen which trials tell most: at most 0.05, then tenths up to 0.95,
 * then 0.95 and more. The first and the last are the trials that tell little; see {@link RatioTask#informative}.
 */
final class TrialBins {
    /** How many there are. */
    static final int COUNT = 11;

    private static final double EDGE = 0.05;
    /** Against the last bits of a division: 0.15 belongs to the bin that it opens. */
    private static final double TOLERANCE = 1e-9;

    private TrialBins() {}

    /** The bin of a trial, from 1, by its Rf [1]. */
    static int of(double rf) {
        if (!RatioTask.informative(rf)) {
            return rf < 0.5 ? 1 : COUNT;
        }
        return 2 + (int) ((rf - EDGE) * 10 + TOLERANCE);
    }

    /** What the names of its figures begin with: {@code one-trial.trial-rf-02}. */
    static String id(int bin) {
        return "one-trial.trial-rf-" + (bin < 10 ? "0" : "") + bin;
    }
}
