package midplate.column;

import midplate.words.Message;

/** What a forecast on a bed rests on. */
public enum BedBasis {
    /** Cartridges of this size were measured. */
    MEASURED,
    /** Smaller and larger cartridges were measured. */
    BETWEEN,
    /** Larger than any cartridge that was measured. */
    EXTRAPOLATED,
    /** A glass column: the published flash table and the ideal law. */
    PUBLISHED;

    /** What it means, to be put into the words of a language. */
    public Message said() {
        return switch (this) {
            case MEASURED -> Message.of("column.bed-measured");
            case BETWEEN -> Message.of("column.bed-between");
            case EXTRAPOLATED -> Message.of("column.bed-extrapolated");
            case PUBLISHED -> Message.of("column.bed-published");
        };
    }
}
