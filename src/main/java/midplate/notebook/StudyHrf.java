package midplate.notebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reference spots by which hRf are corrected, and the spots to correct.
 *
 * @param system id of the tabulated system; may be empty while none was chosen
 * @param measured the hRf of its reference spots as measured, by their names
 * @param spots the spots to correct
 */
public record StudyHrf(String system, Map<String, Entered> measured, List<Spot> spots) {
    /** Keeps its own copies, in the same order. */
    public StudyHrf {
        measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
        spots = List.copyOf(spots);
    }

    /**
     * A spot to correct.
     *
     * @param id its name in the study
     * @param name what a person calls it; may be empty while it is typed
     * @param hrf its hRf as measured
     */
    public record Spot(String id, String name, Entered hrf) {}
}
