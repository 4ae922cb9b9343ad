package midplate.identity;

import java.util.List;
import java.util.Locale;
import midplate.words.Message;

/**
 * Which of the candidates these plates leave.
 *
 * @param of how many were compared
 * @param within how many of them lie within what the plates tell apart with a chance of at least 0.1
 * @param text that in a sentence
 * @param each one by one, in the order asked
 */
public record CandidatesWithin(int of, int within, Message text, List<Each> each) {
    /** Keeps its own copy. */
    public CandidatesWithin {
        each = List.copyOf(each);
    }

    /** Where the Rf of a candidate comes from. */
    public enum From {
        /** Printed, or read on another plate. */
        PRINTED,
        /** Foretold from its structure. */
        MODEL,
        /** Tabulated for a system with reference spots. */
        CORRECTED;

        /** The word in answers. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One candidate.
     *
     * @param name what it is called
     * @param rf where it is expected in this eluent [1]
     * @param chanceWithin the chance that it lies so near to the sample that these plates do not part them [1]
     * @param from where its Rf comes from
     */
    public record Each(String name, RfRange rf, double chanceWithin, From from) {}
}
