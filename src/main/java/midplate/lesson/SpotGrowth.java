package midplate.lesson;

/**
 * How large a spot is after its way: {@code σ² = σ0² + H·d}, drawn 4σ long.
 *
 * <p>σ [mm] standard deviation of where its molecules are, σ0 that at the start, H [mm] height of a theoretical plate, d [mm] the way it
 * travelled. On conventional layers the exchange between eluent and silica controls H, so that spots grow longer than broad (published);
 * H itself is recalled and not read, and how much a spot grows across is an own choice. A plate height changes with speed, particles and
 * solute; here it is one number.
 *
 * @see "Guiochon1979"
 * @see "Poole2003"
 */
public final class SpotGrowth {
    /** A spot at the start is 2 mm long and broad, 4σ0 [mm]; common practice, no source. */
    public static final double START_MM = 2;

    /**
     * H along the run of conventional layers [mm]; from memory, confidence M: 0.035 to 0.075.
     *
     * @see "Poole2003"
     */
    public static final double PLATE_HEIGHT_MM = 0.05;

    /** The same across the run [mm]: a quarter of it, own choice. */
    public static final double ACROSS_MM = PLATE_HEIGHT_MM / 4;

    private static final double SIGMAS = 4;

    private SpotGrowth() {}

    /** How long a spot is after a way [mm]: {@code 4·√(σ0² + H·d)}. */
    public static double alongMm(double wayMm) {
        return size(PLATE_HEIGHT_MM, wayMm);
    }

    /** How broad it is then [mm]. */
    public static double acrossMm(double wayMm) {
        return size(ACROSS_MM, wayMm);
    }

    private static double size(double heightMm, double wayMm) {
        if (!(wayMm >= 0)) {
            throw new IllegalArgumentException("way " + wayMm + " mm; allowed is 0 or more");
        }
        double start = START_MM / SIGMAS;
        return SIGMAS * Math.sqrt(start * start + heightMm * wayMm);
    }
}
