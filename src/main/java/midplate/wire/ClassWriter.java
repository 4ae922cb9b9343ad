package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.lesson.ClassFindings;
import midplate.lesson.ClassPlate;
import midplate.lesson.ClassReading;
import midplate.lesson.InventedClass;
import midplate.lesson.Spread;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes what the readings of a class show, and invented readings. */
final class ClassWriter {
    private static final int RF = 4;

    private final Texts texts;

    ClassWriter(Texts texts) {
        this.texts = texts;
    }

    /** What readings show, after the readings themselves as Rf. */
    String write(List<String> spots, List<ClassReading> readings, ClassFindings found) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode read = answer.putArray("readings");
        readings.forEach(one -> read.add(reading(one, spots)));
        ArrayNode each = answer.putArray("spots");
        found.spots().forEach(spot -> each.add(spot(spot)));
        found.scatter().ifPresent(scatter -> answer.set("scatter", scatter(scatter)));
        found.kept().ifPresent(scatter -> answer.set("withoutFar", scatter(scatter)));
        ArrayNode plates = answer.putArray("plates");
        for (ClassFindings.OfPlate plate : found.plates()) {
            ObjectNode node = plates.addObject();
            put(node, plate);
        }
        ArrayNode far = answer.putArray("far");
        for (ClassFindings.Far one : found.far()) {
            ObjectNode node = reading(one.reading(), spots);
            node.set("text", message(one.text()));
            far.add(node);
        }
        ArrayNode farPlates = answer.putArray("farPlates");
        for (ClassFindings.FarPlate one : found.farPlates()) {
            ObjectNode node = farPlates.addObject();
            put(node, one.plate());
            node.set("text", message(one.text()));
        }
        ArrayNode slips = answer.putArray("slips");
        found.slips().forEach(slip -> slips.add(slip(slip, spots)));
        answer.set("sentences", JsonWriting.messages(found.sentences(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode spot(ClassFindings.OfSpot spot) {
        ObjectNode node = JsonWriting.object()
                .put("spot", spot.spot().name())
                .put("readings", spot.readings())
                .put("plates", spot.onPlates());
        node.set("mean", JsonWriting.number(spot.mean(), RF));
        spot.meanError().ifPresent(error -> node.set("meanError", JsonWriting.number(error, RF)));
        node.set("median", JsonWriting.number(spot.median(), RF));
        ObjectNode histogram = node.putObject("histogram");
        histogram.set("width", JsonWriting.exact(spot.histogram().width()));
        histogram.set(
                "from",
                JsonWriting.number(spot.histogram().first() * spot.histogram().width(), RF));
        ArrayNode counts = histogram.putArray("counts");
        spot.histogram().counts().forEach(counts::add);
        spot.spot().forecast().ifPresent(band -> {
            ObjectNode model = node.putObject("model");
            model.set("rf", JsonWriting.number(band.rf(), RF));
            model.set("low", JsonWriting.number(band.low(), RF));
            model.set("high", JsonWriting.number(band.high(), RF));
            model.put("inside", spot.inside().orElse(0));
        });
        spot.within().ifPresent(within -> node.set("within", JsonWriting.number(within, RF)));
        spot.between().ifPresent(between -> node.set("between", JsonWriting.number(between, RF)));
        node.set("text", message(spot.text()));
        return node;
    }

    private ObjectNode scatter(ClassFindings.Scatter scatter) {
        ObjectNode node = JsonWriting.object().put("way", scatter.way()).put("plates", scatter.onPlates());
        node.set("within", spread(scatter.within()));
        node.set("between", spread(scatter.between()));
        node.set("chance", JsonWriting.number(scatter.chance(), RF));
        node.set("sentences", JsonWriting.messages(scatter.sentences(), texts));
        return node;
    }

    private static ObjectNode spread(Spread spread) {
        ObjectNode node = JsonWriting.object();
        node.set("value", JsonWriting.number(spread.value(), RF));
        node.set("low", JsonWriting.number(spread.low(), RF));
        node.set("high", JsonWriting.number(spread.high(), RF));
        return node;
    }

    private ObjectNode slip(ClassFindings.Slip slip, List<String> spots) {
        ObjectNode node = JsonWriting.object().put("pair", slip.pair()).put("slip", slip.slip());
        node.set("chance", JsonWriting.number(slip.chance(), 2));
        ArrayNode behind = node.putArray("without");
        for (ClassFindings.Behind one : slip.behind()) {
            ObjectNode each = reading(one.reading(), spots);
            each.set("rf", JsonWriting.number(one.rf(), 2));
            behind.add(each);
        }
        node.set("text", message(slip.text()));
        return node;
    }

    private static ObjectNode reading(ClassReading reading, List<String> spots) {
        ObjectNode node = JsonWriting.object().put("pair", reading.pair());
        put(node, reading.plate());
        node.put("lane", reading.lane()).put("spot", spots.get(reading.spot()));
        node.set("rf", JsonWriting.number(reading.rf(), RF));
        return node;
    }

    /** As it is asked for: a number is the pair's own, a name the class's. */
    private static void put(ObjectNode node, ClassPlate plate) {
        if (plate.owner().isEmpty()) {
            node.put("plate", plate.name());
        } else {
            node.put("plate", Integer.parseInt(plate.name()));
        }
    }

    private static void put(ObjectNode node, ClassFindings.OfPlate plate) {
        put(node, plate.plate());
        node.set("pairs", names(plate.pairs()));
        node.set("shift", JsonWriting.number(plate.shift(), RF));
    }

    private static ArrayNode names(List<String> names) {
        ArrayNode list = JsonWriting.array();
        names.forEach(list::add);
        return list;
    }

    private ObjectNode message(Message message) {
        return JsonWriting.message(message, texts);
    }

    /** An invented class. */
    String write(List<String> spots, InventedClass invented) {
        ObjectNode answer = JsonWriting.object().put("code", invented.code().text());
        answer.set("spots", names(spots));
        ArrayNode rows = answer.putArray("rows");
        for (InventedClass.Row row : invented.rows()) {
            ObjectNode node = rows.addObject().put("pair", texts.render(row.pair()));
            node.set("startMm", JsonWriting.number(row.startMm(), 1));
            node.set("frontMm", JsonWriting.number(row.frontMm(), 1));
            node.set("rf", JsonWriting.numbers(row.rf(), 2));
        }
        Message pair = invented.rows().get(invented.slipped()).pair();
        answer.set("invented", message(Message.of("lesson.class-invented")));
        ObjectNode hidden =
                answer.putObject("hidden").put("pair", texts.render(pair)).put("slip", invented.slip());
        hidden.set(
                "text",
                message(Message.of(
                        "edge".equals(invented.slip()) ? "lesson.class-hidden-edge" : "lesson.class-hidden-front",
                        "pair",
                        pair)));
        return JsonWriting.text(answer);
    }
}
