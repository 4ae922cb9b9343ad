package midplate.plate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * One plate that was run: the eluent, and what was read for each spot. A spot that was not read is missing from the map.
 *
 * @param eluent what ran up the plate
 * @param readings the readings by the spots' names, in the order given; may be empty
 * @param unlabelled the lanes in which spots were seen that nobody named; may be empty
 * @param notSeen names of spots that were looked for on this plate and not seen, which is not to say that they are absent
 */
public record Run(Eluent eluent, Map<String, Reading> readings, List<UnlabelledLane> unlabelled, Set<String> notSeen) {
    /** Keeps its own copies; refuses a spot without a name. */
    public Run {
        Map<String, Reading> copy = new LinkedHashMap<>(readings);
        for (String spot : copy.keySet()) {
            if (spot.isBlank()) {
                throw new Refusal(
                        "readings",
                        Message.of("plate.spot-unnamed"),
                        "\"" + spot + "\"",
                        Message.of("allowed.visible-name"),
                        Message.of("todo.name-spot"));
            }
        }
        readings = Collections.unmodifiableMap(copy);
        unlabelled = List.copyOf(unlabelled);
        notSeen = Set.copyOf(notSeen);
    }

    /** A plate on which every spot seen has its name. */
    public Run(Eluent eluent, Map<String, Reading> readings) {
        this(eluent, readings, List.of(), Set.of());
    }
}
