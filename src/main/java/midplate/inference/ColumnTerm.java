package midplate.inference;

/** What the law of columns has beyond {@code V = V₀ + h·m·e^(−η)}, a void and what is held in the proportion of a plate. */
public enum ColumnTerm {
    /** γ: what is held does not grow in proportion with what a plate holds. */
    STEEPNESS,
    /** λ: by how much less columns hold than plates as the eluent gets stronger. */
    DRIFT,
    /** δ: compounds differ on columns beyond what their plates say. */
    SPOT,
    /** Larger loads make wider bands. */
    LOAD
}
