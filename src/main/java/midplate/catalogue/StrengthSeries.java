package midplate.catalogue;

import java.util.Locale;
import java.util.Map;
import midplate.chemistry.Sorbent;
import midplate.words.Message;

/**
 * Which table of eluent strengths. On silica two were printed, and they differ for solvents that localize; a calculation
 * keeps to one. On alumina there is one, and both names mean it.
 *
 * @see "SnyderKirkland1979"
 * @see "Snyder1983"
 */
public enum StrengthSeries {
    /** Silica, the solvent as the bulk of the eluent. */
    OLDER,
    /** Silica, the first and localized layer of the solvent. */
    NEWER;

    /** The same, to be put into the words of a language; in English it is {@link #condition(Sorbent)}. */
    public Message said(Sorbent sorbent) {
        return new Message("condition." + condition(sorbent).replace(' ', '-'), Map.of());
    }

    /** How the files name this series on that sorbent: {@code silica older}, {@code silica newer}, {@code alumina}. */
    public String condition(Sorbent sorbent) {
        return switch (sorbent) {
            case SILICA -> sorbent.id() + " " + name().toLowerCase(Locale.ROOT);
            case ALUMINA -> sorbent.id();
        };
    }
}
