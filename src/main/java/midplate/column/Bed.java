package midplate.column;

/** The silica of a column. */
public sealed interface Bed permits Cartridge, GlassColumn {
    /** Mass of dry silica [g]. */
    double silicaGrams();

    /** What a forecast on it rests on. */
    BedBasis basis();
}
