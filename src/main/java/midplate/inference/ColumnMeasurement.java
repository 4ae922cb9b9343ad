package midplate.inference;

/**
 * One run of one compound on a cartridge of silica.
 *
 * @param smiles its structure
 * @param grams dry silica of the cartridge [g]
 * @param percentStrong ethyl acetate in the petroleum ether [% v/v]
 * @param loadMl volume of the load [ml]
 * @param startMl eluent run when the band began to leave [ml]
 * @param endMl eluent run when it had left [ml]
 */
public record ColumnMeasurement(
        String smiles, double grams, double percentStrong, double loadMl, double startMl, double endMl) {
    /** Whether it can be used: an end not after the start, or a start not after the load, is a fault of the record. */
    boolean isUsable() {
        return startMl > 0 && endMl > startMl;
    }

    /** Midway between start and end [ml]. */
    public double middleMl() {
        return (startMl + endMl) / 2;
    }

    /** u [1], ln(end/start). */
    public double width() {
        return StrictMath.log(endMl / startMl);
    }
}
