package midplate.identity;

/**
 * A way in which a starting material may fall.
 *
 * <p>f(t) = p + (1 − p)·g(t), with f what is left of it [1], p the part that stays, and g falling from 1 to 0:
 *
 * <ul>
 *   <li>first order: g = exp(−(t − t₀)/τ) after the delay t₀;
 *   <li>straight: g = 1 − (t − t₀)/(2τ), until it is 0;
 *   <li>slow beginning: g = (1 + exp(−4))/(1 + exp(4·(t/τ − 1))).
 * </ul>
 *
 * @param form which of the three
 * @param stays p, in [0, 1]
 * @param time τ [min], above 0
 * @param delay t₀ [min], at least 0; not used where the beginning is slow
 * @param prior how much it is believed before any plate [1]
 */
record StartCourse(Form form, double stays, double time, double delay, double prior) {
    /** Steepness of the slow beginning. */
    private static final double STEEP = 4;
    /** The fall is over when no more than this of it is left. */
    private static final double NEARLY_OVER = 0.1;

    /** How it falls. */
    enum Form {
        /** Fast first, then ever slower. */
        FIRST_ORDER,
        /** Always as fast, then over. */
        STRAIGHT,
        /** Slow, then fast, then slow. */
        SLOW_BEGINNING
    }

    /** f, what is left after so many minutes [1]. */
    double left(double minutes) {
        return stays + (1 - stays) * falling(minutes);
    }

    private double falling(double minutes) {
        double since = Math.max(0, minutes - delay);
        return switch (form) {
            case FIRST_ORDER -> Math.exp(-since / time);
            case STRAIGHT -> Math.max(0, 1 - since / (2 * time));
            case SLOW_BEGINNING -> (1 + Math.exp(-STEEP)) / (1 + Math.exp(STEEP * (minutes / time - 1)));
        };
    }

    /** Whether some stays and the fall to it is nearly over, or never begins. */
    boolean isAtRest(double minutes) {
        return stays == 1 || (stays > 0 && falling(minutes) < NEARLY_OVER);
    }
}
