package midplate.advice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What happens at every ratio, for a page that draws it: all lists are as long as {@code percentStrong}.
 *
 * @param percentStrong shares of the stronger solvent [% v/v]: 0 to 10 by 0.1, to 20 by 0.5, to 100 by 1, and points
 *     between them where a chance bends ({@link CurvePoints})
 * @param spots the curves of each spot
 * @param chance that every spot reads inside the window [1]
 * @param smallestGap expected smallest distance in Rf between neighbouring spots [1]; empty for one spot
 * @param smallestResolution expected smallest resolution between neighbouring spots [1, relative]; empty for one spot
 * @param goal that every spot reads inside the window and the named pairs lie apart [1]; empty where none was named
 */
public record Curves(
        List<Double> percentStrong,
        Map<String, SpotCurve> spots,
        List<Double> chance,
        List<Double> smallestGap,
        List<Double> smallestResolution,
        List<Double> goal) {
    /** Keeps its own copies. */
    public Curves {
        percentStrong = List.copyOf(percentStrong);
        spots = Collections.unmodifiableMap(new LinkedHashMap<>(spots));
        chance = List.copyOf(chance);
        smallestGap = List.copyOf(smallestGap);
        smallestResolution = List.copyOf(smallestResolution);
        goal = List.copyOf(goal);
    }

    /**
     * One spot at every ratio.
     *
     * @param rf Rf to expect [1]
     * @param low lower end of the 90 % band [1]
     * @param high upper end of the 90 % band [1]
     */
    public record SpotCurve(List<Double> rf, List<Double> low, List<Double> high) {
        /** Keeps its own copies. */
        public SpotCurve {
            rf = List.copyOf(rf);
            low = List.copyOf(low);
            high = List.copyOf(high);
        }
    }
}
