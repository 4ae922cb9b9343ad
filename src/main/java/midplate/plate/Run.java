package midplate.plate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * One plate that was run: the eluent, and what was read for each spot. A spot that was not read is missing from the map.
 *
 * @param eluent what ran up the plate
 * @param readings the readings by the spots' names, in the order given; may be empty
 */
public record Run(Eluent eluent, Map<String, Reading> readings) {
    /** Keeps its own copy; refuses a spot without a name. */
    public Run {
        Map<String, Reading> copy = new LinkedHashMap<>(readings);
        for (String spot : copy.keySet()) {
            if (spot.isBlank()) {
                throw new Refusal(
                        "readings",
                        Message.of("plate.spot-unnamed"),
                        "\"" + spot + "\"",
                        "a name with at least one visible sign",
                        "Name the spot, for example A.");
            }
        }
        readings = Collections.unmodifiableMap(copy);
    }
}
