package midplate.notebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A compound of the sample.
 *
 * @param id by which plates and advices refer to it
 * @param name what a person calls it; may be empty while it is typed
 * @param what what it is, as far as somebody said it
 */
public record StudySpot(String id, String name, Optional<Identity> what) {
    /** Which way of saying what a compound is counts. */
    public enum By {
        /** Its structure, as a SMILES. */
        SMILES,
        /** Its functional groups. */
        GROUPS,
        /** Its class. */
        CLASS
    }

    /**
     * What a compound is; each way keeps what was entered, one counts.
     *
     * @param by the way that counts
     * @param smiles the line; may be empty
     * @param groups how many of each, by the id of the group
     * @param compoundClass id of the class; may be empty
     */
    public record Identity(By by, String smiles, Map<String, Entered> groups, String compoundClass) {
        /** Keeps its own copy, in the same order. */
        public Identity {
            groups = Collections.unmodifiableMap(new LinkedHashMap<>(groups));
        }
    }
}
