package midplate.notebook;

import java.util.Optional;

/**
 * The silica of a column as it was entered; each kind keeps what was typed for it, one counts.
 *
 * @param kind the kind that counts
 * @param grams dry silica in a cartridge [g]; there where the kind is a cartridge
 * @param diameterMm inner diameter of a glass column [mm]; there where the kind is glass
 * @param bedMm height of the silica in it [mm]; there where the kind is glass
 */
public record StudyBed(Kind kind, Optional<Entered> grams, Optional<Entered> diameterMm, Optional<Entered> bedMm) {
    /** Whichever the program advises. */
    public static final StudyBed ADVISED =
            new StudyBed(Kind.ADVISED, Optional.empty(), Optional.empty(), Optional.empty());

    /** What holds the silica. */
    public enum Kind {
        /** What the program advises. */
        ADVISED,
        /** A packed cartridge. */
        CARTRIDGE,
        /** A glass column packed by hand. */
        GLASS
    }
}
