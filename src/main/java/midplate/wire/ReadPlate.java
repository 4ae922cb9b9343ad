package midplate.wire;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.plate.Reading;
import midplate.plate.UnlabelledLane;
import midplate.words.Message;

/**
 * A plate that was given by its spots.
 *
 * @param readings of the spots that have a name, in the order given
 * @param unlabelled lanes with spots that have none, by their numbers
 * @param warnings mistakes that were probably made in running and measuring it
 * @param notes how some of its numbers were taken
 */
public record ReadPlate(
        Map<String, Reading> readings, List<UnlabelledLane> unlabelled, List<Message> warnings, List<Message> notes) {
    /** Keeps its own copies. */
    public ReadPlate {
        readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
        unlabelled = List.copyOf(unlabelled);
        warnings = List.copyOf(warnings);
        notes = List.copyOf(notes);
    }
}
