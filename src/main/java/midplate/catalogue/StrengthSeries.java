package midplate.catalogue;

import java.util.Locale;
import midplate.chemistry.Sorbent;

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

    /** How the files name this series on that sorbent: {@code silica older}, {@code silica newer}, {@code alumina}. */
    public String condition(Sorbent sorbent) {
        return switch (sorbent) {
            case SILICA -> sorbent.id() + " " + name().toLowerCase(Locale.ROOT);
            case ALUMINA -> sorbent.id();
        };
    }
}
