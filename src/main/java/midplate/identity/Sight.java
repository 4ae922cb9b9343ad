package midplate.identity;

import java.util.Locale;

/** What a way of seeing does with a compound. */
public enum Sight {
    /** It shows, as a rule. */
    SHOWS,
    /** It may show, weakly or only now and then. */
    MAY_SHOW,
    /** Nothing that is known of the compound answers. */
    BLIND,
    /** Too little is known of the compound to say. */
    NOT_KNOWN;

    /** The word in answers: {@code may-show}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
