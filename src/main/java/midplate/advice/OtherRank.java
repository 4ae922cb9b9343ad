package midplate.advice;

import java.util.Locale;

/** By what other eluents are put in order. Where that says nothing, chances do. */
public enum OtherRank {
    /** The chance that the two closest spots come apart with every spot inside the window. */
    APART,
    /** Nothing chlorinated and nothing that forms peroxides fast, then the fewest flags. */
    SAFETY,
    /** What boils highest boils lowest: fractions of a column are evaporated soonest. */
    DRYING,
    /** What was measured before theory, theory before a guess, then the narrower band. */
    MEASURED;

    /** The word in requests and answers: {@code apart}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
