package midplate.lesson;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.words.Message;

/** What goes wrong on a plate, and how large it is: the ranges of its size follow from the plate. */
public enum Slip {
    /** The ruler's zero lies below the start line: both heights are too large by the same length. */
    FROM_EDGE(Kind.EXACT),
    /** The line that is measured from is not where the sample was put. */
    START_LINE_OFF(Kind.EXACT),
    /** The front is at the top, and the solvent goes on rising and evaporating. */
    FRONT_TO_TOP(Kind.EXACT),
    /** The plate comes out early: the same half millimetre of the ruler counts for more. */
    STOPPED_SHORT(Kind.EXACT),
    /** The front dried before it was marked, and is noted too low. */
    FRONT_NOT_MARKED(Kind.EXACT),
    /** The solvent stands at the spots or above them. */
    IN_THE_POOL(Kind.EXACT),
    /** An eluent so weak that the spots stay at the start line. */
    TOO_WEAK(Kind.MODEL),
    /** An eluent so strong that the spots run with the front. */
    TOO_STRONG(Kind.MODEL),
    /** The first lane lies at the side of the plate. */
    EDGE_TOO_NEAR(Kind.SIZE),
    /** The two lanes whose spots lie nearest in height are too near each other. */
    NEIGHBOURS_TOO_NEAR(Kind.SIZE),
    /** Too much was put on. */
    OVERLOAD(Kind.ILLUSTRATION),
    /** The jar is not saturated: solvent evaporates off the plate while it runs. */
    UNLINED_JAR(Kind.ILLUSTRATION),
    /** The start line was drawn in ink, which runs. */
    INK_LINE(Kind.ILLUSTRATION),
    /** An acid is held by few strong places and trails behind. */
    ACID_STREAKING(Kind.ILLUSTRATION);

    /** What the numbers of a slip rest on. */
    public enum Kind {
        /** Geometry alone. */
        EXACT,
        /** The model that advises. */
        MODEL,
        /** The size of spots against a distance. */
        SIZE,
        /** An own rough choice of direction and size, to show what it looks like. */
        ILLUSTRATION;

        /** Its word in answers. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * The size of a slip.
     *
     * @param field its name in requests, with the unit
     * @param low the least
     * @param high the largest
     * @param usual taken where none is given
     * @param none at which nothing goes wrong
     * @param step in which it may be moved
     */
    public record Size(String field, double low, double high, double usual, double none, double step) {
        /** Whether a number lies in the range; not a number does not. */
        public boolean holds(double size) {
            return size >= low && size <= high;
        }
    }

    /** The fields in which a size comes, in the order of the slips. */
    public static final List<String> FIELDS = List.of(
            "edgeMm",
            "offMm",
            "beyondMm",
            "runMm",
            "lowerMm",
            "surfaceMm",
            "timesWeaker",
            "timesStronger",
            "fromEdgeMm",
            "apartMm",
            "timesMore",
            "evaporatedPercent",
            "smearMm",
            "downPercent");

    /** What is left of a run at least, so that an Rf can be worked out at all [mm]. */
    private static final double LEAST_RUN_MM = 5;

    private final Kind kind;

    Slip(Kind kind) {
        this.kind = kind;
    }

    /** What its numbers rest on. */
    public Kind kind() {
        return kind;
    }

    /** Its word in requests. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The field of its size. */
    public String field() {
        return FIELDS.get(ordinal());
    }

    /** The words of all. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Slip::id).toList();
    }

    /** The slip of a word. */
    public static Optional<Slip> byId(String id) {
        return Arrays.stream(values()).filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** A sentence about it: {@code what}, {@code formula}, {@code now}, {@code next}. */
    Message said(String about, Object... values) {
        return Message.of("lesson.slip-" + about + "-" + id(), values);
    }

    /** How large it can be on a plate. Usual sizes are common practice, no source. */
    public Size size(SlipPlate plate) {
        double run = plate.runMm();
        return switch (this) {
            case FROM_EDGE -> size(0, plate.startMm(), plate.startMm(), 0, 0.5);
            case START_LINE_OFF -> size(Math.max(-3, -plate.startMm()), Math.min(8, run - LEAST_RUN_MM), 3, 0, 0.5);
            case FRONT_TO_TOP -> size(0, 40, 15, 0, 1);
            case STOPPED_SHORT -> size(LEAST_RUN_MM, run, 12, run, 1);
            case FRONT_NOT_MARKED -> size(0, Math.min(15, run - LEAST_RUN_MM), 3, 0, 0.5);
            case IN_THE_POOL -> size(-3, 3, 0.5, -3, 0.1);
            case TOO_WEAK -> size(1, 20, 8, 1, 0.5);
            case TOO_STRONG -> size(1, 20, 4, 1, 0.5);
            case EDGE_TOO_NEAR -> size(0, Math.min(15, plate.widthMm() / 2), 1, 15, 0.5);
            case NEIGHBOURS_TOO_NEAR -> size(0, 20, 2, 20, 0.5);
            case OVERLOAD -> size(1, 10, 4, 1, 0.5);
            case UNLINED_JAR -> size(0, 30, 15, 0, 1);
            case INK_LINE -> size(0, Math.min(40, run), 28, 0, 1);
            case ACID_STREAKING -> size(0, 100, 60, 0, 5);
        };
    }

    private Size size(double low, double high, double usual, double none, double step) {
        return new Size(
                field(), low, high, Math.max(low, Math.min(high, usual)), Math.max(low, Math.min(high, none)), step);
    }
}
