package midplate.column;

/** How the sample comes onto the silica. */
public enum Loading {
    /** Dissolved in little solvent. */
    WET,
    /** Dried onto silica. */
    DRY
}
