package midplate.advice;

import java.util.List;

/**
 * How likely the plate advised shows everything that was asked for.
 *
 * @param chance that every spot reads inside the window and all named pairs lie apart [1]
 * @param apart each named pair by itself; empty when none was named
 */
public record Goal(double chance, List<ApartChance> apart) {
    /** Keeps its own copy. */
    public Goal {
        apart = List.copyOf(apart);
    }
}
