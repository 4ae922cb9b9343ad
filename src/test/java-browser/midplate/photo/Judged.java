package midplate.photo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * A picture judged.
 *
 * @param seed whose picture
 * @param truth all of the truth
 * @param outcomes of each spot that a person would mark
 * @param counted proposals that count: all but those of spots that nobody need mark
 * @param extra proposals where there is nothing
 * @param fault why nothing could be read, or empty
 */
record Judged(
        long seed, JsonNode truth, List<Outcome> outcomes, List<Proposed> counted, List<Proposed> extra, String fault) {
    JsonNode conditions() {
        return truth.get("conditions");
    }
}
