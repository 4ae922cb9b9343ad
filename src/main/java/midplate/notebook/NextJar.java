package midplate.notebook;

import java.util.List;

/**
 * What is wanted of the next plate.
 *
 * @param weak id of the weaker solvent
 * @param strong id of the stronger solvent
 * @param additive what is to be added
 * @param windowLow the lowest Rf wanted
 * @param windowHigh the highest Rf wanted
 * @param windowKind how the window was chosen: {@code usual}, {@code column} or {@code own}
 * @param apart ids of two spots to be kept apart, or none
 * @param amountMl eluent to be mixed [ml]
 * @param jarDiameterMm inner diameter of the jar [mm]
 */
public record NextJar(
        String weak,
        String strong,
        JarAdditive additive,
        Entered windowLow,
        Entered windowHigh,
        String windowKind,
        List<String> apart,
        Entered amountMl,
        Entered jarDiameterMm) {
    /** Keeps its own copy. */
    public NextJar {
        apart = List.copyOf(apart);
    }
}
