package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.ToDoubleFunction;
import midplate.lesson.Development;
import midplate.lesson.DippedPlate;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes a plate while it develops. */
final class ClimbWriter {
    /** Decimals of lengths [mm] and times [min]: a line straight in √t must meet them again. */
    private static final int DECIMALS = 5;

    private static final int RF_DECIMALS = 4;

    private final Texts texts;

    ClimbWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(Development seen) {
        ObjectNode answer = JsonWriting.object();
        answer.set("percentStrong", JsonWriting.exact(seen.percentStrong()));
        DippedPlate plate = seen.plate();
        ObjectNode lines = answer.putObject("plate");
        lines.set("heightMm", JsonWriting.exact(plate.heightMm()));
        lines.set("startMm", JsonWriting.exact(plate.startMm()));
        lines.set("levelMm", JsonWriting.exact(plate.levelMm()));
        lines.set("stopMm", JsonWriting.exact(plate.stopMm()));
        ObjectNode speed = answer.putObject("speed").put("unit", "mm²/s").put("source", "PlanarFlow");
        speed.set("low", JsonWriting.number(seen.speed().slow(), 3));
        speed.set("value", JsonWriting.number(seen.speed().middle(), 3));
        speed.set("high", JsonWriting.number(seen.speed().fast(), 3));
        answer.set("minutes", numbers(seen.moments(), Development.Moment::minutes));
        answer.set("frontMm", numbers(seen.moments(), Development.Moment::frontMm));
        ArrayNode compounds = answer.putArray("compounds");
        seen.spots().forEach(spot -> compounds.add(spot(spot)));
        ArrayNode events = answer.putArray("events");
        seen.events().forEach(event -> events.add(event(event)));
        answer.set("sentences", JsonWriting.messages(seen.sentences(), texts));
        return JsonWriting.text(answer);
    }

    private static ObjectNode spot(Development.Spot spot) {
        ObjectNode node = JsonWriting.object().put("name", spot.name());
        node.set("rf", JsonWriting.number(spot.rf(), RF_DECIMALS));
        node.set("low", JsonWriting.number(spot.low(), RF_DECIMALS));
        node.set("high", JsonWriting.number(spot.high(), RF_DECIMALS));
        node.set("centreMm", numbers(spot.places(), Development.Place::centreMm));
        node.set("alongMm", numbers(spot.places(), Development.Place::alongMm));
        node.set("acrossMm", numbers(spot.places(), Development.Place::acrossMm));
        return node;
    }

    private ObjectNode event(Development.Event event) {
        ObjectNode node = JsonWriting.object().put("id", event.what().id());
        node.set("frontMm", JsonWriting.number(event.frontMm(), DECIMALS));
        node.set("minutes", JsonWriting.number(event.minutes(), DECIMALS));
        node.set("lowMinutes", JsonWriting.number(event.lowMinutes(), DECIMALS));
        node.set("highMinutes", JsonWriting.number(event.highMinutes(), DECIMALS));
        Message said = Message.of("lesson.climb-event-" + event.what().id(), "frontMm", event.frontMm());
        node.set("said", JsonWriting.message(said, texts));
        return node;
    }

    private static <T> ArrayNode numbers(List<T> list, ToDoubleFunction<T> value) {
        return JsonWriting.numbers(
                list.stream().map(each -> value.applyAsDouble(each)).toList(), DECIMALS);
    }
}
