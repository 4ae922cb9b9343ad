package midplate.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.plate.Reading;

/** Writes what was read of one spot. */
final class ReadingWriter {
    private ReadingWriter() {}

    /** Into an object: {@code rf}, {@code limit} and, where it is known, {@code standardError}. */
    static void write(Reading reading, ObjectNode node) {
        node.set("rf", JsonWriting.number(reading.rf(), 4));
        node.put("limit", limit(reading));
        reading.standardError().ifPresent(error -> node.set("standardError", JsonWriting.number(error, 4)));
    }

    private static String limit(Reading reading) {
        return switch (reading.limit()) {
            case NONE -> "none";
            case AT_START -> "at-start";
            case AT_FRONT -> "at-front";
        };
    }
}
