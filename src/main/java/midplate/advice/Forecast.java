package midplate.advice;

import java.util.List;

/**
 * A whole plate foretold.
 *
 * @param percentStrong its share of the stronger solvent [% v/v]
 * @param chance that every spot reads inside the window [1]
 * @param spots each spot, in the order asked
 */
public record Forecast(double percentStrong, double chance, List<SpotForecast> spots) {
    /** Keeps its own copy. */
    public Forecast {
        spots = List.copyOf(spots);
    }
}
