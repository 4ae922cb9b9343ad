package midplate.lesson;

import java.util.Optional;
import midplate.advice.SpotForecast;

/**
 * A spot of a class.
 *
 * @param name its name
 * @param forecast what the model expects of it before any plate; empty where its structure is not told
 */
public record ClassSpot(String name, Optional<SpotForecast> forecast) {}
