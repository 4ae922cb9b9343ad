package midplate.inference;

import java.util.Map;
import midplate.plate.Reading;

/**
 * A plate that was run, in terms of the models: which pair, at which share, and what was read.
 *
 * @param pair id of the pair's model
 * @param percent share of the strong solvent [% v/v], in [0, 100]
 * @param readings by the spots' names
 */
public record PlateRun(String pair, double percent, Map<String, Reading> readings) {
    /** Keeps its own copy. */
    public PlateRun {
        readings = Map.copyOf(readings);
    }
}
