package midplate.benchmark;

/** How much of a sample is told before a question is asked. */
enum Told {
    /** The trial plates of the question. */
    TRIALS,
    /**
     * All that was measured: of one compound every other reading in the pair asked about, of a plate all readings of its
     * compounds. No trial plate could tell more, so what is still missed is the form of the model and the scatter of readings.
     */
    ALL_ELSE
}
