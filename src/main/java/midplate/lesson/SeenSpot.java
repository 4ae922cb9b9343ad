package midplate.lesson;

/**
 * A spot as a plate shows it.
 *
 * @param name its compound
 * @param mm height of its middle above the lower edge [mm]
 * @param leftMm its middle from the left edge [mm]
 * @param acrossMm its width [mm]
 * @param alongMm its length in the direction of the run [mm]
 * @param look what is to be said of it
 * @param share how much of what was put on is left in it [1], 0 to 1
 */
public record SeenSpot(
        String name, double mm, double leftMm, double acrossMm, double alongMm, Look look, double share) {
    /** How a spot looks. */
    public enum Look {
        /** As it should. */
        CLEAR,
        /** Less of it is left. */
        FAINT,
        /** Drawn out. */
        STREAK,
        /** One patch with its neighbour. */
        MERGED,
        /** Cut by the side of the plate. */
        CUT,
        /** Not to be seen. */
        LOST;

        /** Its word in answers. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    SeenSpot at(double millimetres) {
        return new SeenSpot(name, millimetres, leftMm, acrossMm, alongMm, look, share);
    }

    SeenSpot from(double millimetresFromLeft) {
        return new SeenSpot(name, mm, millimetresFromLeft, acrossMm, alongMm, look, share);
    }

    SeenSpot along(double millimetres) {
        return new SeenSpot(name, mm, leftMm, acrossMm, millimetres, look, share);
    }

    SeenSpot looking(Look other, double left) {
        return new SeenSpot(name, mm, leftMm, acrossMm, alongMm, other, left);
    }
}
