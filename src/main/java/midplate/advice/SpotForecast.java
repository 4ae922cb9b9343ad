package midplate.advice;

/**
 * What one spot will do on a plate.
 *
 * @param spot its name
 * @param rf the Rf to expect as read on that plate [1]
 * @param low lower end of the 90 % band of {@link midplate.inference.Outlook.Spot} [1]
 * @param high its upper end [1]
 * @param below chance that it reads below the window [1]
 * @param above chance that it reads above the window [1]
 */
public record SpotForecast(String spot, double rf, double low, double high, double below, double above) {}
