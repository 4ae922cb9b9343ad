package midplate.catalogue;

import java.util.Locale;

/** What the model of a solvent pair rests on. */
public enum PairBasis {
    /** Plates of many compounds in that pair. */
    MEASURED,
    /** Published eluent strengths, which foretold measured pairs about as well as they are said to. */
    THEORY,
    /** The same where the strengths are uncertain, or the law is known to fail. */
    GUESS;

    /** The word in answers: {@code measured}, {@code theory}, {@code guess}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
