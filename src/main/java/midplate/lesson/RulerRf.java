package midplate.lesson;

/**
 * An Rf as somebody measures it with a ruler, and what an error of half a millimetre on either length allows. Lengths are whole half
 * millimetres, so that every number is exact: {@code Rf = way/run}; at the least {@code (way − ½ mm)/(run + ½ mm)}, at the most {@code (way
 * + ½ mm)/(run − ½ mm)}, within 0 to 1 (own algebra).
 *
 * @param halfWay from the start line to the centre of the spot [half mm], 0 to halfRun
 * @param halfRun from the start line to the front [half mm], above 1
 */
public record RulerRf(int halfWay, int halfRun) {
    private static final int HUNDRED = 100;

    /** Refuses what is on no plate. */
    public RulerRf {
        if (halfWay < 0 || halfRun < 2 || halfWay > halfRun) {
            throw new IllegalArgumentException(halfWay + " of " + halfRun + " half mm");
        }
    }

    /** The Rf [1]. */
    public double rf() {
        return (double) halfWay / halfRun;
    }

    /** The least Rf within the ruler's error [1]. */
    public double least() {
        return Math.max(0, (halfWay - 1.0) / (halfRun + 1));
    }

    /** The greatest Rf within the ruler's error [1]. */
    public double most() {
        return Math.min(1, (halfWay + 1.0) / (halfRun - 1));
    }

    /** The least of two decimals that is accepted [1]: {@link #least()}, rounded down. */
    public double acceptedFrom() {
        return Math.max(0, Math.floorDiv(HUNDRED * (halfWay - 1), halfRun + 1)) / (double) HUNDRED;
    }

    /** The greatest of two decimals that is accepted [1]: {@link #most()}, rounded up. */
    public double acceptedTo() {
        return Math.min(HUNDRED, -Math.floorDiv(-HUNDRED * (halfWay + 1), halfRun - 1)) / (double) HUNDRED;
    }

    /** The way [mm]. */
    public double wayMm() {
        return halfWay / 2.0;
    }

    /** The run [mm]. */
    public double runMm() {
        return halfRun / 2.0;
    }
}
