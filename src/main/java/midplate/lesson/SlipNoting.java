package midplate.lesson;

import java.util.Locale;
import java.util.Set;
import midplate.plate.PlateMeasurement;

/**
 * What a pair of students notes of a plate.
 *
 * @param reading how the ruler was read
 * @param plate the lengths that they note
 * @param leftOut spots that they measure and do not take, since these have no sound middle
 */
record SlipNoting(Ruler reading, PlateMeasurement plate, Set<String> leftOut) {
    SlipNoting {
        leftOut = Set.copyOf(leftOut);
    }

    SlipNoting(PlateMeasurement plate) {
        this(Ruler.AS_SEEN, plate, Set.of());
    }

    /** How the ruler was read. */
    enum Ruler {
        /** Half a millimetre too low. */
        TOO_LOW,
        /** As the plate shows it. */
        AS_SEEN,
        /** Half a millimetre too high. */
        TOO_HIGH;

        String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
