package midplate.column;

/**
 * Where a compound left an earlier column.
 *
 * @param spot its name
 * @param bed the column
 * @param program what was poured
 * @param startMl eluent run when it began to leave [ml]
 * @param endMl eluent run when it had left [ml]
 * @param errorMl how far either may be off [ml], half a fraction at least
 */
public record ObservedBand(String spot, Bed bed, Program program, double startMl, double endMl, double errorMl) {}
