package midplate.photo;

import org.jspecify.annotations.Nullable;

/**
 * What became of a spot that a person would mark.
 *
 * @param mark the truth
 * @param found what was proposed for it, or null where it was missed
 * @param offRf how far its Rf is off
 * @param offMm how far its centre is off on the straightened plate [mm]
 * @param runMm the run there [mm]
 */
record Outcome(Mark mark, @Nullable Proposed found, double offRf, double offMm, double runMm) {
    boolean isMissed() {
        return found == null;
    }

    boolean isWithin(double rf) {
        return found != null && Math.abs(offRf) <= rf;
    }

    /** Whether the centre lies within two of its stated errors. */
    boolean isWithinTwoErrors() {
        return found != null && Math.abs(offMm) <= 2 * found.errorMm();
    }

    /** Whether Rf lies within two of its errors, which counts the lines as read with a ruler. */
    boolean isRfWithinTwoErrors() {
        if (found == null) {
            return false;
        }
        double rf = mark.rf();
        double lines = 0.25 * ((1 - rf) * (1 - rf) + rf * rf);
        return Math.abs(offRf) <= 2 * Math.sqrt(found.errorMm() * found.errorMm() + lines) / runMm;
    }
}
