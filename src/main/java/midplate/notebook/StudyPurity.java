package midplate.notebook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A spot that may be pure, as it was entered.
 *
 * @param spot id of the compound of the study that it is, where it is one
 * @param rf its Rf
 * @param spotsSeen how many spots were seen in its lane
 * @param seenBy ids of the ways in which they were looked for
 * @param volumeUl what one touch of the capillary leaves [µl]
 * @param concentrationPercent of the solution that was spotted [% w/v]
 * @param touches how often the capillary touched the layer there
 * @param atStart what was left on the start line, where somebody looked
 */
public record StudyPurity(
        Optional<String> spot,
        Entered rf,
        Entered spotsSeen,
        List<String> seenBy,
        Entered volumeUl,
        Entered concentrationPercent,
        Entered touches,
        Optional<AtStart> atStart) {
    /** Keeps its own copy. */
    public StudyPurity {
        seenBy = List.copyOf(seenBy);
    }

    /** What was left on the start line. */
    public enum AtStart {
        /** Nothing. */
        NONE,
        /** A weak spot. */
        WEAK,
        /** A strong spot. */
        STRONG;

        /** The word in studies. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
