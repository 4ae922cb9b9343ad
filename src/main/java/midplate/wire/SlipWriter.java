package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import midplate.advice.SpotForecast;
import midplate.lesson.SeenPlate;
import midplate.lesson.SeenSpot;
import midplate.lesson.Slip;
import midplate.lesson.SlipAnswer;
import midplate.plate.Reading;
import midplate.words.Texts;

/** Writes what a slip does. */
final class SlipWriter {
    private static final int MM = 3;
    private static final int RF = 4;
    private static final int PERCENT = 3;

    private final Texts texts;

    SlipWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(SlipAnswer told) {
        ObjectNode answer = JsonWriting.object();
        answer.put("slip", told.slip().id()).put("kind", told.slip().kind().id());
        answer.set("size", size(told.size(), told.given()));
        answer.set("what", JsonWriting.message(told.what(), texts));
        answer.set("right", plate(told.right()));
        answer.set("careful", noted(told.careful(), told.careful()));
        answer.set("seen", plate(told.seen()));
        ArrayNode noted = answer.putArray("noted");
        told.noted().forEach(each -> noted.add(noted(each, told.careful())));
        answer.put("errs", told.errs().id());
        answer.set("does", JsonWriting.messages(told.does(), texts));
        answer.set("formula", JsonWriting.message(told.formula(), texts));
        answer.set("noticed", JsonWriting.messages(told.noticed(), texts));
        answer.set("now", JsonWriting.message(told.now(), texts));
        answer.set("next", JsonWriting.message(told.next(), texts));
        return JsonWriting.text(answer);
    }

    private static ObjectNode size(Slip.Size size, double given) {
        ObjectNode node = JsonWriting.object().put("field", size.field());
        node.set("value", JsonWriting.number(given, MM));
        node.set("low", JsonWriting.number(size.low(), MM));
        node.set("high", JsonWriting.number(size.high(), MM));
        node.set("usual", JsonWriting.number(size.usual(), MM));
        node.set("none", JsonWriting.number(size.none(), MM));
        node.set("step", JsonWriting.number(size.step(), MM));
        return node;
    }

    private static ObjectNode plate(SeenPlate plate) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.number(plate.percentStrong(), PERCENT));
        node.set("startMm", JsonWriting.number(plate.startMm(), MM));
        node.set("originMm", JsonWriting.number(plate.originMm(), MM));
        node.set("frontMm", JsonWriting.number(plate.frontMm(), MM));
        plate.surfaceMm().ifPresent(mm -> node.set("surfaceMm", JsonWriting.number(mm, MM)));
        if (!plate.smear().isEmpty()) {
            node.set("smear", JsonWriting.numbers(plate.smear(), MM));
        }
        ArrayNode spots = node.putArray("spots");
        for (SeenSpot spot : plate.spots()) {
            ObjectNode each = spots.addObject()
                    .put("name", spot.name())
                    .put("look", spot.look().id());
            each.set("mm", JsonWriting.number(spot.mm(), MM));
            each.set("leftMm", JsonWriting.number(spot.leftMm(), MM));
            each.set("acrossMm", JsonWriting.number(spot.acrossMm(), MM));
            each.set("alongMm", JsonWriting.number(spot.alongMm(), MM));
            each.set("share", JsonWriting.number(spot.share(), RF));
        }
        return node;
    }

    private static ObjectNode noted(SlipAnswer.Noted noted, SlipAnswer.Noted careful) {
        ObjectNode node = JsonWriting.object().put("reading", noted.reading());
        node.set("startMm", JsonWriting.number(noted.startMm(), MM));
        node.set("frontMm", JsonWriting.number(noted.frontMm(), MM));
        ArrayNode spots = node.putArray("spots");
        for (SlipAnswer.Spot spot : noted.spots()) {
            ObjectNode each = spots.addObject().put("name", spot.name());
            spot.centreMm().ifPresent(mm -> each.set("centreMm", JsonWriting.number(mm, MM)));
            spot.reading().ifPresent(reading -> rf(each, reading));
        }
        noted.advised().ifPresent(advised -> node.set("advice", advice(advised, careful.advised())));
        return node;
    }

    private static void rf(ObjectNode node, Reading reading) {
        node.set("rf", JsonWriting.number(reading.rf(), RF));
        node.put("limit", reading.limit().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static ObjectNode advice(SlipAnswer.Advised advised, Optional<SlipAnswer.Advised> right) {
        ObjectNode node = JsonWriting.object().put("ratio", advised.ratio());
        node.set("percentStrong", JsonWriting.number(advised.percentStrong(), PERCENT));
        node.set("bestPercentStrong", JsonWriting.number(advised.bestPercentStrong(), PERCENT));
        node.set("chance", JsonWriting.number(advised.chance(), RF));
        right.ifPresent(careful -> {
            ObjectNode error = node.putObject("error");
            error.set("percentStrong", JsonWriting.number(advised.percentStrong() - careful.percentStrong(), PERCENT));
            error.set(
                    "bestPercentStrong",
                    JsonWriting.number(advised.bestPercentStrong() - careful.bestPercentStrong(), PERCENT));
        });
        node.set("chanceThen", JsonWriting.number(advised.lands().chance(), RF));
        ArrayNode lands = node.putArray("lands");
        for (SpotForecast spot : advised.lands().spots()) {
            ObjectNode each = lands.addObject().put("name", spot.spot());
            each.set("rf", JsonWriting.number(spot.rf(), RF));
            each.put("window", place(spot.rf()));
        }
        return node;
    }

    private static String place(double rf) {
        int outside = SlipAnswer.Advised.outside(rf);
        return outside == 0 ? "inside" : outside < 0 ? "below" : "above";
    }
}
