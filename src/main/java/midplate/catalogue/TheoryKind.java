package midplate.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How well published strengths foretell a pair depends on its solvents; each kind has a check of its own. */
public enum TheoryKind {
    /** An alkane and a solvent that binds to single sites and is no alcohol, such as hexane and acetone. */
    ALKANE_LOCALIZING,
    /** No alcohol, and one of the two of another kind, such as toluene and ethyl acetate, or hexane and dichloromethane. */
    OTHER,
    /** With an alcohol, with a solvent of which it is not known how it binds, or with a strength that is uncertain. */
    ALCOHOL;

    /** The word in the files: {@code alkane-localizing}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What a pair of this kind rests on. */
    public PairBasis basis() {
        return this == ALCOHOL ? PairBasis.GUESS : PairBasis.THEORY;
    }

    /**
     * The kind of a pair.
     *
     * @param weak how the weak solvent sits on silica
     * @param strong how the strong one does
     */
    public static TheoryKind of(LocalizationClass weak, LocalizationClass strong) {
        if (isUncertain(weak) || isUncertain(strong)) {
            return ALCOHOL;
        }
        return weak == LocalizationClass.WEAK && localizes(strong) ? ALKANE_LOCALIZING : OTHER;
    }

    static Optional<TheoryKind> byId(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id().equals(id)).findFirst();
    }

    private static boolean isUncertain(LocalizationClass solvent) {
        return solvent == LocalizationClass.VERY_STRONG_LOCALIZING || solvent == LocalizationClass.UNKNOWN;
    }

    static boolean localizes(LocalizationClass solvent) {
        return solvent == LocalizationClass.LOCALIZING_BASIC || solvent == LocalizationClass.LOCALIZING_NON_BASIC;
    }
}
