package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.plate.Reading;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import midplate.words.Texts;

/** Writes what was read of a spot, and of a plate. */
final class ReadingWriter {
    private ReadingWriter() {}

    /** All of a plate: spots by their names, those without one by lane and place, and what to tell about it. */
    static String text(ReadPlate plate, Texts texts) {
        ObjectNode body = JsonWriting.object();
        ObjectNode readings = body.putObject("readings");
        plate.readings().forEach((spot, reading) -> write(reading, readings.putObject(spot)));
        if (!plate.unlabelled().isEmpty()) {
            ArrayNode unlabelled = body.putArray("unlabelled");
            for (UnlabelledLane lane : plate.unlabelled()) {
                for (UnlabelledSpot spot : lane.spots()) {
                    write(
                            spot.reading(),
                            unlabelled.addObject().put("lane", lane.lane()).put("index", spot.index()));
                }
            }
        }
        body.set("warnings", JsonWriting.messages(plate.warnings(), texts));
        return JsonWriting.text(body);
    }

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
