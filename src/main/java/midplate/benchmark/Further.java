package midplate.benchmark;

/** What a contender may be asked beyond the questions that all get; each takes its time. */
public enum Further {
    /** The same questions about compounds as the model expects them: what it could do if it were true; see {@link ExpectedCompounds}. */
    IF_TRUE,
    /** What compounds measured one after the other have in common beyond the model; see {@link SharedScatter}. */
    SHARED_SCATTER,
    /** Second plates without labels; see {@link UnlabelledMarks}. */
    UNLABELLED,
    /** The same questions with all else told: the best that a model of this form can do; see {@link Told#ALL_ELSE}. */
    CEILING,
    /** The same questions after a training without the nearest neighbours of the structures asked about; see {@link Neighbours}. */
    NEIGHBOURS_LEFT_OUT,
    /** Plates that a fresh error moves as a whole; see {@link PlateErrorTask}. */
    PLATE_ERROR,
    /** Rounds of plates before anything was read; see {@link ScoutingTask}. */
    SCOUTING,
    /** One pair after the other as if it had not been measured; see {@link TheoryTable}. */
    THEORY
}
