package midplate.advice;

/**
 * What one spot will do on a plate.
 *
 * @param spot its name
 * @param rf the Rf to expect as read on that plate [1]
 * @param low the Rf is below with probability 0.05 [1]
 * @param high the Rf is above with probability 0.05 [1]
 * @param below chance that it reads below the window [1]
 * @param above chance that it reads above the window [1]
 */
public record SpotForecast(String spot, double rf, double low, double high, double below, double above) {}
