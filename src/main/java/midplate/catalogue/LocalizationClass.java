package midplate.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * How a solvent sits on silica: two eluents of one strength keep the order of spots within a class and may change it
 * between classes.
 *
 * @see "SnyderKirklandDolan2010"
 */
public enum LocalizationClass {
    /** The weak solvent, such as hexane. */
    WEAK,
    /** Spreads over the surface, such as dichloromethane. */
    NON_LOCALIZING,
    /** Binds to single sites and is basic, such as tetrahydrofuran. */
    LOCALIZING_BASIC,
    /** Binds to single sites and is not basic, such as ethyl acetate. */
    LOCALIZING_NON_BASIC,
    /** Binds to single sites very strongly, such as 2-propanol. */
    VERY_STRONG_LOCALIZING,
    /** Looked for and not found. */
    UNKNOWN;

    /** The word in the files: {@code localizing-non-basic}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<LocalizationClass> byId(String id) {
        return Arrays.stream(values())
                .filter(known -> known != UNKNOWN && known.id().equals(id))
                .findFirst();
    }
}
