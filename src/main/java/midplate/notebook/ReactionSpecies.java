package midplate.notebook;

import java.util.Locale;
import java.util.Optional;

/**
 * What may be seen on the plates of a reaction.
 *
 * @param compound its id, its name, and what it is as far as somebody said it
 * @param part its part in the reaction
 * @param spot id of the compound of the study that it is, where it is one
 */
public record ReactionSpecies(StudySpot compound, Part part, Optional<String> spot) {
    /** The part that something has in a reaction. */
    public enum Part {
        /** What is used up. */
        START,
        /** What is wanted. */
        PRODUCT,
        /** Whatever else is seen. */
        OTHER;

        /** The word in studies. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
