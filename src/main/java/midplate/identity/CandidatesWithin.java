package midplate.identity;

import java.util.List;
import java.util.Locale;
import midplate.words.Message;

/**
 * Which of the candidates these plates leave.
 *
 * @param of how many were compared
 * @param within how many of them stay possible: the sample lies within the 90 % band of where they are expected
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
        /** Foretold from its structure, and from how the model errs for the references on the plate. */
        MODEL,
        /** Read on the plate itself: a reference has its structural formula. */
        REFERENCE,
        /** Tabulated for a system with reference spots. */
        CORRECTED;

        /** The word in answers. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether a candidate can still be the sample. */
    public enum Standing {
        /** The sample lies within its 90 % band. */
        LEFT,
        /** It lies outside. */
        OUT
    }

    /**
     * One candidate.
     *
     * @param name what it is called
     * @param rf where it is expected in this eluent [1]
     * @param chanceWithin the chance that it lies so near to the sample that these plates do not part them [1]
     * @param from where its Rf comes from
     * @param standing whether it can still be the sample
     */
    public record Each(String name, RfRange rf, double chanceWithin, From from, Standing standing) {}
}
